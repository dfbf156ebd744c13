//! The events of the register: what is ever written, as plain data.
