//! A spec <-> the text on its tag, and the code that names it.
