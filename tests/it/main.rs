//! One binary with a module for each thing a user gets. A file in this folder that is not named
//! here would never run: `every_test_file_is_named` holds that none is forgotten.

#![allow(
    clippy::expect_used,
    clippy::unwrap_used,
    reason = "a test or a bench that can not go on must panic"
)]

mod batch;
mod bench;
mod care;
mod catalogue;
mod check;
mod contract;
mod contradiction;
mod crimp;
mod cutting;
mod diagnose;
mod faults;
mod fences;
mod find;
mod fleets;
mod flow;
mod hose_list;
mod labels;
mod life;
mod lives;
mod lookalikes;
mod make;
mod naming;
mod photos;
mod press;
mod print;
mod quote;
mod register;
mod round;
mod route;
mod settings;
mod share;
mod sight;
mod stock;
mod supplier;
mod tables;
mod tag;
mod trust;
mod units;

#[test]
fn every_test_file_is_named() {
    let here = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("it");
    let named = std::fs::read_to_string(here.join("main.rs")).expect("main.rs is there");
    for file in std::fs::read_dir(&here).expect("the folder is there") {
        let path = file.expect("the folder can be read").path();
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        assert!(
            name == "main" || named.contains(&format!("mod {name};")),
            "tests/it/{name}.rs is not named in main.rs"
        );
    }
}
