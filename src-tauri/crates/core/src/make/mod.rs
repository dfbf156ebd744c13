//! A checked spec -> its build sheet: cut length, tolerance, steps with their cautions.
