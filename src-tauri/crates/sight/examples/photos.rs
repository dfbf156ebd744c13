//! Reads every picture below a folder and counts those read as the text file beside each says.
//!
//! `cargo run -p hosewright-sight --example photos -- FOLDER`
#![allow(clippy::print_stdout, reason = "its answer is its output")]

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};
use std::{env, error::Error, fs, io};

fn main() -> Result<(), Box<dyn Error>> {
    let root = env::args_os().nth(1).ok_or("name a folder of pictures with a .txt beside each")?;
    let mut folders: Vec<PathBuf> = children(Path::new(&root))?;
    folders.retain(|path| path.is_dir());
    folders.push(root.into());
    for folder in folders {
        count(&folder)?;
    }
    Ok(())
}

fn count(folder: &Path) -> Result<(), Box<dyn Error>> {
    let (mut total, mut read, mut wrong) = (0, 0, Vec::new());
    let (mut slowest, started) = (Duration::ZERO, Instant::now());
    for path in
        children(folder)?.into_iter().filter(|path| path.with_extension("txt") != *path && path.is_file())
    {
        let Ok(truth) = fs::read_to_string(path.with_extension("txt")) else { continue };
        total += 1;
        let began = Instant::now();
        let found = hosewright_sight::read(&fs::read(&path)?)?;
        slowest = slowest.max(began.elapsed());
        let texts: Vec<_> = found.iter().map(|found| plain(&found.text)).collect();
        if texts.contains(&plain(&truth)) {
            read += 1;
        } else if !texts.is_empty() {
            wrong.push(format!("{}: {texts:?}", path.display()));
        }
    }
    if total > 0 {
        let name = folder.display();
        println!(
            "{name}: {read} of {total} read, {} wrong, {:?}, slowest {slowest:?}",
            wrong.len(),
            started.elapsed()
        );
        wrong.iter().for_each(|line| println!("  wrong {line}"));
    }
    Ok(())
}

/// Line ends differ between a code and a text file.
fn plain(text: &str) -> String {
    text.replace("\r\n", "\n").trim_end().to_owned()
}

fn children(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut paths: Vec<_> =
        fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<io::Result<_>>()?;
    paths.sort();
    Ok(paths)
}
