//! The register: one append-only log in SQLite and the tables projected from it.
