//! Every parser that meets the outside, and what must hold whatever it reads: that it never panics, loses no row, and
//! writes what it read as it was.
//!
//! `run` looks for input that breaks one (coverage-guided, libFuzzer). What it kept, and the seeds written by hand, are read
//! again by `cargo test`.

mod catalogue;
mod documents;
mod register;
mod tables;
mod tags;
mod typed;

/// A parser, or what asks several of them the same.
pub struct Target {
    /// Name of the folder of its inputs.
    pub name: &'static str,
    /// Reads this; panics where what must hold does not.
    pub holds: fn(&[u8]),
    /// Longest inputs that are tried, in bytes: those of the outside are longer only by repetition.
    pub longest: usize,
}

/// All of them.
pub const TARGETS: [Target; 18] = [
    Target { name: "bundle", holds: register::bundle, longest: 8192 },
    Target { name: "catalogue", holds: catalogue::catalogue, longest: 8192 },
    Target { name: "check", holds: documents::check, longest: 8192 },
    Target { name: "code", holds: tags::code, longest: 64 },
    Target { name: "field", holds: documents::field, longest: 8192 },
    Target { name: "fleet", holds: register::fleet, longest: 8192 },
    Target { name: "frame", holds: documents::frame, longest: 8192 },
    Target { name: "hose_list", holds: tables::hose_list, longest: 65536 },
    Target { name: "life", holds: tables::life, longest: 8192 },
    Target { name: "money", holds: typed::money, longest: 64 },
    Target { name: "picture", holds: tags::picture, longest: 65536 },
    Target { name: "print", holds: typed::print, longest: 300 },
    Target { name: "quantity", holds: typed::quantity, longest: 64 },
    Target { name: "readings", holds: documents::readings, longest: 8192 },
    Target { name: "segment", holds: register::segment, longest: 8192 },
    Target { name: "supplier", holds: tables::supplier, longest: 65536 },
    Target { name: "table", holds: tables::table, longest: 65536 },
    Target { name: "tag", holds: tags::tag, longest: 8192 },
];

/// The text that bytes are; none where they are no text.
fn text(bytes: &[u8]) -> Option<&str> {
    std::str::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::TARGETS;
    use std::path::{Path, PathBuf};

    /// What stands in a folder beside this crate; nothing where there is none.
    fn within(folder: &str) -> Vec<PathBuf> {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
        let Ok(entries) = folder.read_dir() else { return Vec::new() };
        entries.map(|entry| entry.expect("an entry").path()).collect()
    }

    #[test]
    fn every_kept_input_is_read_as_it_must_be() {
        for target in &TARGETS {
            let seeds = within(&format!("seeds/{}", target.name));
            assert!(!seeds.is_empty(), "{}: no seeds", target.name);
            for path in seeds.into_iter().chain(within(&format!("corpus/{}", target.name))) {
                let bytes = std::fs::read(&path).expect("a kept input");
                let read = std::panic::catch_unwind(|| (target.holds)(&bytes));
                assert!(read.is_ok(), "{}", path.display());
            }
        }
    }

    #[test]
    fn every_folder_of_inputs_has_its_target() {
        for path in within("seeds").into_iter().chain(within("corpus")) {
            let name = path.file_name().expect("a name").to_string_lossy();
            assert!(TARGETS.iter().any(|target| target.name == name), "{name}: no such target");
        }
    }
}
