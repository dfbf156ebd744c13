//! What a program does to files, recorded by `strace` and read here.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// The calls that change a file, make a change last, or say which file is meant. A call of another kind that changes
/// files under the folder would be missed: those that this list has and the reader does not know make it fail.
pub const CALLS: &str = "open,openat,creat,close,dup,dup2,dup3,lseek,read,write,pwrite64,writev,pwritev,pwritev2,\
ftruncate,truncate,fallocate,fsync,fdatasync,sync_file_range,unlink,unlinkat,rename,renameat,renameat2,link,linkat,\
symlink,mkdir,mkdirat,rmdir,sendto,sendmsg,copy_file_range,sendfile,chmod,fchmod";

/// One thing that a program did.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Deed {
    /// A file was opened that may not have been there.
    Create { path: PathBuf },
    /// Bytes were written.
    Write { path: PathBuf, at: u64, bytes: Vec<u8> },
    /// A file was cut or grown to a length.
    Resize { path: PathBuf, to: u64 },
    /// What a file or folder holds was made to last.
    Sync { path: PathBuf },
    /// A file got another name.
    Rename { from: PathBuf, to: PathBuf },
    /// A file was taken away.
    Remove { path: PathBuf },
    /// A folder was made.
    Folder { path: PathBuf },
    /// The program answered that a call was done.
    Answer,
}

/// Reads a recording; what happened outside of that folder is left out.
///
/// # Panics
/// A call that changes a file there is of a kind that is not known: then a cut would be wrong.
pub fn deeds(recording: &str, folder: &Path) -> Vec<Deed> {
    let mut reader = Reader { folder, open: BTreeMap::new(), deeds: Vec::new() };
    let mut unfinished: BTreeMap<&str, String> = BTreeMap::new();
    for line in recording.lines() {
        let Some((process, call)) = line.split_once(' ') else { continue };
        let call = call.trim_start();
        if let Some(begun) = call.strip_suffix("<unfinished ...>") {
            unfinished.insert(process, begun.to_owned());
        } else if let Some(rest) = call.strip_prefix("<... ") {
            let (_, rest) = rest.split_once("resumed>").expect("a resumed call");
            let begun = unfinished.remove(process).expect("the call was begun");
            reader.call(&format!("{begun}{rest}"));
        } else {
            reader.call(call);
        }
    }
    reader.deeds
}

struct File {
    path: PathBuf,
    at: u64,
}

struct Reader<'a> {
    folder: &'a Path,
    open: BTreeMap<i64, File>,
    deeds: Vec<Deed>,
}

impl Reader<'_> {
    fn call(&mut self, call: &str) {
        let Some((name, rest)) = call.split_once('(') else { return };
        let Some((inside, result)) = rest.rsplit_once(" = ") else { return };
        let result: i64 = result.split_whitespace().next().and_then(|word| word.parse().ok()).unwrap_or(-1);
        if result < 0 {
            return;
        }
        let inside = inside.trim_end().trim_end_matches(')').trim_end();
        let words: Vec<&str> = inside.split(", ").collect();
        let number = |at: usize| words.get(at).and_then(|word| word.parse::<i64>().ok());
        match name {
            "open" | "openat" | "creat" => {
                let path = self.path(words[usize::from(name == "openat")]);
                if !path.starts_with(self.folder) {
                    self.open.remove(&result);
                    return;
                }
                assert!(!inside.contains("O_APPEND"), "appending is not known: {call}");
                if inside.contains("O_CREAT") {
                    self.deeds.push(Deed::Create { path: path.clone() });
                }
                if inside.contains("O_TRUNC") {
                    self.deeds.push(Deed::Resize { path: path.clone(), to: 0 });
                }
                self.open.insert(result, File { path, at: 0 });
            }
            "close" => drop(number(0).and_then(|file| self.open.remove(&file))),
            "unlink" | "mkdir" => self.named(name, self.path(words[0])),
            "unlinkat" | "mkdirat" => self.named(name, self.path(words[1])),
            "rename" => self.renamed(self.path(words[0]), self.path(words[1])),
            "renameat" | "renameat2" => self.renamed(self.path(words[1]), self.path(words[3])),
            "link" | "linkat" | "symlink" | "truncate" | "rmdir" => {
                let ours = words
                    .iter()
                    .any(|word| word.starts_with('"') && self.path(word).starts_with(self.folder));
                assert!(!ours, "not known: {call}");
            }
            "chmod" => {}
            "write" | "sendto" | "writev" | "sendmsg"
                if number(0).is_none_or(|file| !self.open.contains_key(&file)) =>
            {
                if bytes(words.get(1).copied().unwrap_or_default()).starts_with(b"HTTP/1.") {
                    self.deeds.push(Deed::Answer);
                }
            }
            _ => self.on_open(name, call, &words, number(0), result),
        }
    }

    /// A call on a file that is open.
    fn on_open(&mut self, name: &str, call: &str, words: &[&str], file: Option<i64>, result: i64) {
        let Some(file) = file.and_then(|file| self.open.get_mut(&file)) else { return };
        let path = file.path.clone();
        let result = result.unsigned_abs();
        let last = words.last().and_then(|word| word.parse::<u64>().ok());
        match name {
            "lseek" => file.at = result,
            "read" => file.at += result,
            "write" => {
                let at = file.at;
                file.at += result;
                self.written(path, at, words[1], result);
            }
            "pwrite64" => self.written(path, last.expect("an offset"), words[1], result),
            "ftruncate" => self.deeds.push(Deed::Resize { path, to: last.expect("a length") }),
            "fsync" | "fdatasync" => self.deeds.push(Deed::Sync { path }),
            "fchmod" => {}
            _ => panic!("not known: {call}"),
        }
    }

    fn written(&mut self, path: PathBuf, at: u64, word: &str, count: u64) {
        let bytes = bytes(word);
        assert_eq!(bytes.len() as u64, count, "the recording has every byte of {}", path.display());
        self.deeds.push(Deed::Write { path, at, bytes });
    }

    fn named(&mut self, name: &str, path: PathBuf) {
        if path.starts_with(self.folder) {
            self.deeds.push(if name.starts_with("unlink") {
                Deed::Remove { path }
            } else {
                Deed::Folder { path }
            });
        }
    }

    fn renamed(&mut self, from: PathBuf, to: PathBuf) {
        if to.starts_with(self.folder) {
            for file in self.open.values_mut().filter(|file| file.path == from) {
                file.path.clone_from(&to);
            }
            self.deeds.push(Deed::Rename { from, to });
        }
    }

    fn path(&self, word: &str) -> PathBuf {
        self.folder.join(String::from_utf8_lossy(&bytes(word)).into_owned())
    }
}

/// The bytes of a string as `strace -xx` writes it: each as two hexadecimal digits.
fn bytes(word: &str) -> Vec<u8> {
    let digits =
        word.trim_start_matches("[{iov_base=").trim_start_matches("{msg_name=NULL").trim_matches('"');
    digits.split("\\x").skip(1).map_while(|pair| u8::from_str_radix(pair.get(..2)?, 16).ok()).collect()
}
