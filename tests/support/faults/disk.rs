//! A disk that keeps what was synced, and of the rest what it likes.

use super::recording::Deed;
use crate::simulated::random::Random;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

/// A write is kept or lost in pieces of this size, as disks write sectors.
const SECTOR: usize = 512;

/// What the program believes and what is on the disk.
#[derive(Default)]
pub struct Disk {
    /// The files as they lie on the disk, each with what was done to it and not yet synced.
    files: Vec<File>,
    /// Names that last.
    lasting: BTreeMap<PathBuf, usize>,
    /// Changes of names that were not yet synced, in order.
    names: Vec<Naming>,
    /// Names as the program sees them.
    seen: BTreeMap<PathBuf, usize>,
    /// Folders; made at once, for an empty one holds nothing that could be lost.
    folders: Vec<PathBuf>,
}

#[derive(Default)]
struct File {
    lasting: Vec<u8>,
    pending: Vec<Change>,
}

#[derive(Clone)]
enum Change {
    Write { at: usize, bytes: Vec<u8> },
    Resize { to: usize },
}

#[derive(Clone)]
enum Naming {
    Set { path: PathBuf, file: usize },
    Move { from: PathBuf, to: PathBuf, file: usize },
    Remove { path: PathBuf },
}

impl Naming {
    /// The folder that makes it last when it is synced.
    fn folder(&self) -> &Path {
        let (Self::Set { path, .. } | Self::Move { to: path, .. } | Self::Remove { path }) = self;
        path.parent().unwrap_or(path)
    }

    fn done(&self, names: &mut BTreeMap<PathBuf, usize>) {
        match self {
            Self::Set { path, file } => drop(names.insert(path.clone(), *file)),
            Self::Move { from, to, file } => {
                // The old name may not have lasted; what it moves to is the same file.
                if names.get(from) == Some(file) {
                    names.remove(from);
                }
                names.insert(to.clone(), *file);
            }
            Self::Remove { path } => drop(names.remove(path)),
        }
    }
}

impl Change {
    fn done(&self, content: &mut Vec<u8>) {
        match self {
            Self::Write { at, bytes } => {
                if content.len() < at + bytes.len() {
                    content.resize(at + bytes.len(), 0);
                }
                content[*at..at + bytes.len()].copy_from_slice(bytes);
            }
            Self::Resize { to } => content.resize(*to, 0),
        }
    }

    /// What of it reaches the disk when the power fails: each sector or none of them, by chance.
    fn torn(&self, random: &mut Random) -> Vec<Self> {
        match self {
            Self::Resize { .. } => {
                if random.chance(0.5) {
                    vec![self.clone()]
                } else {
                    Vec::new()
                }
            }
            Self::Write { at, bytes } => {
                let mut kept = Vec::new();
                let mut from = 0;
                while from < bytes.len() {
                    let to = ((at + from) / SECTOR + 1) * SECTOR - at;
                    let to = to.min(bytes.len());
                    if random.chance(0.5) {
                        kept.push(Self::Write { at: at + from, bytes: bytes[from..to].to_vec() });
                    }
                    from = to;
                }
                kept
            }
        }
    }
}

impl Disk {
    /// Does what the program did. With `lies` the disk says that it synced and did not.
    pub fn follow(&mut self, deed: &Deed, lies: bool) {
        match deed {
            Deed::Create { path } if !self.seen.contains_key(path) => {
                self.files.push(File::default());
                self.name(Naming::Set { path: path.clone(), file: self.files.len() - 1 });
            }
            Deed::Create { .. } | Deed::Answer => {}
            Deed::Write { path, at, bytes } => {
                self.change(path, Change::Write { at: *at as usize, bytes: bytes.clone() });
            }
            Deed::Resize { path, to } => self.change(path, Change::Resize { to: *to as usize }),
            Deed::Sync { .. } if lies => {}
            Deed::Sync { path } => self.sync(path),
            Deed::Rename { from, to } => {
                let file = *self.seen.get(from).expect("what is renamed is there");
                self.name(Naming::Move { from: from.clone(), to: to.clone(), file });
            }
            Deed::Remove { path } => self.name(Naming::Remove { path: path.clone() }),
            Deed::Folder { path } => self.folders.push(path.clone()),
        }
    }

    fn change(&mut self, path: &Path, change: Change) {
        // A file that was removed and is still open holds nothing that anyone could find again.
        if let Some(file) = self.seen.get(path) {
            self.files[*file].pending.push(change);
        }
    }

    fn name(&mut self, naming: Naming) {
        naming.done(&mut self.seen);
        self.names.push(naming);
    }

    fn sync(&mut self, path: &Path) {
        if let Some(file) = self.seen.get(path) {
            let File { lasting, pending } = &mut self.files[*file];
            for change in pending.drain(..) {
                change.done(lasting);
            }
        }
        let (last, pending) =
            std::mem::take(&mut self.names).into_iter().partition(|name| name.folder() == path);
        self.names = pending;
        let last: Vec<Naming> = last;
        for name in last {
            name.done(&mut self.lasting);
        }
    }

    /// Leaves in an empty folder what a power cut leaves: what lasts, and of the rest what chance keeps.
    pub fn cut(&self, from: &Path, to: &Path, random: &mut Random) {
        let there = |path: &Path| to.join(path.strip_prefix(from).expect("all is in the folder"));
        for folder in &self.folders {
            fs::create_dir_all(there(folder)).expect("a folder");
        }
        let mut names = self.lasting.clone();
        for name in &self.names {
            if random.chance(0.5) {
                name.done(&mut names);
            }
        }
        for (path, file) in names {
            let File { lasting, pending } = &self.files[file];
            let mut content = lasting.clone();
            for change in pending {
                for part in change.torn(random) {
                    part.done(&mut content);
                }
            }
            fs::write(there(&path), content).expect("is written");
        }
    }
}
