//! Our reader beside zbar and OpenCV on the same pictures in one run: how many each reads, how many each misreads, and
//! how much of a processor's time it takes from a file's bytes to its texts, whatever else the machine does.
//!
//! Without a folder it takes rendered photographs of tags, by stratum; with one, every PNG or JPEG below it that has its
//! text in a `.txt` beside it. With `--every` after the folder each picture must be read by ours, by zbar and by one of OpenCV's
//! readers, or it fails. The peers are in a Python environment under `target/`, made once.
//! `cargo xtask sight` runs it built for release.
#![allow(clippy::print_stdout, reason = "its answer is its output")]

use hosewright_photographer::{Stratum, photo};
use serde_json::Value;
use std::collections::BTreeMap;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;
use std::{env, error::Error, fs, io};

type Result<T> = std::result::Result<T, Box<dyn Error>>;

/// What the peers are, by version; zbar itself is Debian's.
const PACKAGES: [&str; 3] = ["numpy==2.4.6", "opencv-python-headless==5.0.0.93", "pyzbar==0.1.9"];

/// Rendered photographs, and the seed of those whose figures stand in the README.
const COUNT: usize = 1000;
const SEED: u64 = 8;

/// Parts that the pictures are rendered and read in, at once.
const WORKERS: usize = 4;

/// Our own name in the table.
const OURS: &str = "hosewright";

/// A picture with what it says, in the group that it is counted in.
struct Picture {
    group: String,
    path: PathBuf,
    text: String,
}

/// What one reader makes of one picture.
struct Reading {
    group: String,
    texts: Vec<String>,
    is: Is,
    seconds: f64,
}

/// What a reading is worth.
#[derive(PartialEq)]
enum Is {
    /// The picture's text is among those that were read.
    Read,
    /// Others are alone.
    Wrong,
    /// They are, and zbar reads the same off a cleaned copy: the text beside the picture may be wrong.
    Disputed,
    /// Nothing was read.
    Nothing,
}

fn main() -> Result<()> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../..");
    let pictures = match env::args_os().nth(1) {
        Some(folder) => below(Path::new(&folder))?,
        None => rendered(&root.join("target/sight"))?,
    };
    let mut readers: BTreeMap<String, Vec<Reading>> = BTreeMap::new();
    for readings in shared(&pictures, ours) {
        readers.entry(OURS.to_owned()).or_default().extend(readings?);
    }
    let python = python(&root.join("target/sight-peers"))?;
    for answers in shared(&pictures, |part| by_peers(&python, part)) {
        for (peer, readings) in answers? {
            readers.entry(peer).or_default().extend(readings);
        }
    }
    dispute(&python, &pictures, &mut readers)?;
    let mut groups: Vec<String> = Vec::new();
    for picture in &pictures {
        if !groups.contains(&picture.group) {
            groups.push(picture.group.clone());
        }
    }
    for (reader, readings) in &readers {
        println!(
            "\n{reader}\n{:<34}{:>9}{:>8}{:>8}{:>10}{:>12}{:>12}",
            "", "pictures", "read", "wrong", "disputed", "median ms", "slowest ms"
        );
        groups
            .iter()
            .for_each(|group| line(group, readings.iter().filter(|reading| reading.group == *group)));
        line("all", readings.iter());
    }
    if env::args().nth(2).as_deref() == Some("--every") { all_read(&pictures, &readers) } else { Ok(()) }
}

/// Whether each picture is read by ours and by each peer, the readers of one peer taken together.
fn all_read(pictures: &[Picture], readers: &BTreeMap<String, Vec<Reading>>) -> Result<()> {
    let mut left = 0;
    for (number, picture) in pictures.iter().enumerate() {
        for maker in [OURS, "zbar", "OpenCV"] {
            let of_it = readers.iter().filter(|(reader, _)| reader.starts_with(maker));
            if !of_it.into_iter().any(|(_, readings)| readings[number].is == Is::Read) {
                println!("{maker} does not read {}", picture.path.display());
                left += 1;
            }
        }
    }
    if left == 0 { Ok(()) } else { Err(format!("{left} times a picture was not read").into()) }
}

fn line<'a>(name: &str, readings: impl Iterator<Item = &'a Reading>) {
    let readings: Vec<_> = readings.collect();
    let count = |is: Is| readings.iter().filter(|reading| reading.is == is).count();
    let mut times: Vec<f64> = readings.iter().map(|reading| reading.seconds * 1e3).collect();
    times.sort_by(f64::total_cmp);
    let (median, slowest) = (times[times.len() / 2], times[times.len() - 1]);
    let [read, wrong, disputed] = [Is::Read, Is::Wrong, Is::Disputed].map(count);
    println!("{name:<34}{:>9}{read:>8}{wrong:>8}{disputed:>10}{median:>12.1}{slowest:>12.1}", readings.len());
}

/// Every picture below a folder that has its text beside it; the group is the folder's name.
fn below(folder: &Path) -> Result<Vec<Picture>> {
    let mut pictures = Vec::new();
    let mut children =
        fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<io::Result<Vec<_>>>()?;
    children.sort();
    for path in children {
        let text = path.with_extension("txt");
        if path.is_dir() {
            pictures.extend(below(&path)?);
        } else if text != path && text.exists() {
            let group = folder.file_name().unwrap_or_default().to_string_lossy().into_owned();
            pictures.push(Picture { group, text: fs::read_to_string(text)?, path });
        }
    }
    Ok(pictures)
}

fn rendered(folder: &Path) -> Result<Vec<Picture>> {
    fs::create_dir_all(folder)?;
    let numbers: Vec<usize> = (0..COUNT).collect();
    let take = |number: usize| -> Result<Picture> {
        let photo = photo(number, SEED);
        let path = folder.join(format!("{number:04}.jpg"));
        fs::write(&path, photo.to_jpeg()?)?;
        Ok(Picture { group: photo.stratum.name().to_owned(), path, text: photo.text })
    };
    let parts = shared(&numbers, |part| part.iter().map(|number| take(*number)).collect::<Result<Vec<_>>>());
    let mut pictures =
        parts.into_iter().collect::<Result<Vec<_>>>()?.into_iter().flatten().collect::<Vec<_>>();
    pictures.sort_by_key(|picture| Stratum::ALL.iter().position(|stratum| stratum.name() == picture.group));
    Ok(pictures)
}

/// Work on parts of a list at once; the answers in order.
fn shared<T: Sync, R: Send>(all: &[T], work: impl Fn(&[T]) -> Result<R> + Sync) -> Vec<Result<R>> {
    let part = all.len().div_ceil(WORKERS).max(1);
    std::thread::scope(|scope| {
        let work = &work;
        let begun: Vec<_> = all
            .chunks(part)
            .map(|part| scope.spawn(move || work(part).map_err(|error| error.to_string())))
            .collect();
        let ended = begun.into_iter().map(|worker| worker.join());
        ended.map(|done| Ok(done.map_err(|_| "a worker failed")??)).collect()
    })
}

/// Nanoseconds that this thread has had a processor.
fn busy() -> Option<f64> {
    let told = fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    told.split_whitespace().next()?.parse().ok()
}

fn ours(pictures: &[Picture]) -> Result<Vec<Reading>> {
    let mut readings = Vec::new();
    for picture in pictures {
        let file = fs::read(&picture.path)?;
        let (began, busy_before) = (Instant::now(), busy());
        let found = hosewright_sight::read(&file)?;
        // The clock on the wall where the system does not tell.
        let spent = busy().zip(busy_before).map(|(after, before)| (after - before) / 1e9);
        let seconds = spent.unwrap_or_else(|| began.elapsed().as_secs_f64());
        let texts: Vec<String> = found.into_iter().map(|found| found.text).collect();
        readings.push(judged(picture, texts, seconds));
    }
    Ok(readings)
}

/// What a reader's texts are worth: read where one is the picture's, wrong where there are others alone.
fn judged(picture: &Picture, texts: Vec<String>, seconds: f64) -> Reading {
    let is = if texts.iter().any(|text| plain(text) == plain(&picture.text)) {
        Is::Read
    } else if texts.is_empty() {
        Is::Nothing
    } else {
        Is::Wrong
    };
    Reading { group: picture.group.clone(), texts, is, seconds }
}

/// Has the pictures that some reader read otherwise read once more, enlarged and thresholded, by zbar; prints each such
/// reading as what it is.
fn dispute(python: &Path, pictures: &[Picture], readers: &mut BTreeMap<String, Vec<Reading>>) -> Result<()> {
    for (number, picture) in pictures.iter().enumerate() {
        if !readers.values().any(|readings| readings[number].is == Is::Wrong) {
            continue;
        }
        let cleaned = asked(python, &["--cleaned"], std::slice::from_ref(picture))?;
        let cleaned: Vec<String> = cleaned.iter().flat_map(texts_of).map(|text| plain(&text)).collect();
        for (reader, readings) in readers.iter_mut() {
            let reading = &mut readings[number];
            if reading.is != Is::Wrong {
                continue;
            }
            let same = reading.texts.iter().any(|text| cleaned.contains(&plain(text)));
            let doubt = if same { "; zbar reads the same off cleaned copies" } else { "" };
            println!(
                "{reader}, {}: {:?} is not {:?}{doubt}",
                picture.path.display(),
                reading.texts,
                picture.text
            );
            reading.is = if same { Is::Disputed } else { Is::Wrong };
        }
    }
    Ok(())
}

/// Line ends differ between a code and a text file.
fn plain(text: &str) -> String {
    text.replace("\r\n", "\n").trim_end().to_owned()
}

fn by_peers(python: &Path, pictures: &[Picture]) -> Result<BTreeMap<String, Vec<Reading>>> {
    let mut readers: BTreeMap<String, Vec<Reading>> = BTreeMap::new();
    for answer in asked(python, &[], pictures)? {
        let peer = answer["peer"].as_str().unwrap_or_default().to_owned();
        let readings = readers.entry(peer).or_default();
        let picture = &pictures[readings.len()];
        let seconds = answer["seconds"].as_f64().unwrap_or(f64::NAN);
        readings.push(judged(picture, texts_of(&answer), seconds));
    }
    Ok(readers)
}

fn texts_of(answer: &Value) -> Vec<String> {
    let texts = answer["texts"].as_array().into_iter().flatten();
    texts.filter_map(|text| text.as_str().map(str::to_owned)).collect()
}

/// What the peers answer of each picture.
fn asked(python: &Path, how: &[&str], pictures: &[Picture]) -> Result<Vec<Value>> {
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("benches/peers/readers.py");
    let mut child =
        Command::new(python).arg(script).args(how).stdin(Stdio::piped()).stdout(Stdio::piped()).spawn()?;
    let paths: String = pictures.iter().map(|picture| format!("{}\n", picture.path.display())).collect();
    let mut input = child.stdin.take().ok_or("no way to the peers")?;
    // They answer while they are asked.
    let asking = std::thread::spawn(move || input.write_all(paths.as_bytes()));
    let output = child.wait_with_output()?;
    asking.join().map_err(|_| "asking the peers failed")??;
    if !output.status.success() {
        return Err("the peers failed; is zbar's library there (apt install libzbar0)?".into());
    }
    let answers = String::from_utf8(output.stdout)?;
    Ok(answers.lines().map(serde_json::from_str).collect::<std::result::Result<_, _>>()?)
}

/// A Python with the peers in it, made once.
fn python(venv: &Path) -> Result<PathBuf> {
    let python = venv.join("bin/python");
    if !python.exists() {
        run(Command::new("python3").args(["-m", "venv"]).arg(venv))?;
    }
    run(Command::new(&python).args(["-m", "pip", "install", "--quiet"]).args(PACKAGES))?;
    Ok(python)
}

fn run(command: &mut Command) -> Result<()> {
    let ran = command.status()?;
    if ran.success() { Ok(()) } else { Err(format!("{command:?} failed").into()) }
}
