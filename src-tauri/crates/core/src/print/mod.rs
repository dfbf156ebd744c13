//! What stands on the cover -> fields.
