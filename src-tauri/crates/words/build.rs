//! Gathers the Fluent catalogues, so that a new file needs no code.

use std::{env, fs, io, path::Path};

fn main() -> io::Result<()> {
    let root = Path::new(&env::var("CARGO_MANIFEST_DIR").map_err(io::Error::other)?).join("locales");
    println!("cargo::rerun-if-changed={}", root.display());
    let mut code = String::from(
        "/// The catalogue files of a language: name and text.\nfn sources(language: Language) -> &'static [(&'static str, &'static str)] {\n    match language {\n",
    );
    for (variant, tag) in [("English", "en"), ("German", "de"), ("Spanish", "es")] {
        code += &format!("        Language::{variant} => &[\n");
        let mut files: Vec<_> = fs::read_dir(root.join(tag))?.collect::<Result<_, _>>()?;
        files.sort_by_key(|file| file.file_name());
        for file in files {
            let path = file.path();
            println!("cargo::rerun-if-changed={}", path.display());
            let name = file.file_name().to_string_lossy().into_owned();
            code += &format!("            ({name:?}, include_str!({:?})),\n", path.display().to_string());
        }
        code += "        ],\n";
    }
    code += "    }\n}\n";
    fs::write(Path::new(&env::var("OUT_DIR").map_err(io::Error::other)?).join("sources.rs"), code)
}
