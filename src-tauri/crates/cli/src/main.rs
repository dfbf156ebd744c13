//! The `hosewright` command line.

fn main() {}
