//! The project's own chores: checks, generated types, figures.

fn main() {}
