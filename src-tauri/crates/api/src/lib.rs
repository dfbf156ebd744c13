//! The use cases over core, store, papers and sight, with the types of the contract.
