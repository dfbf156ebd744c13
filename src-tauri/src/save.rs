//! Leaving a file where the person finds it: among their downloads, in a folder of our own.

use crate::call::{beside, opened};
use hosewright_api::{ApiError, question};
use serde::Deserialize;
use std::fs::{self, OpenOptions};
use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};
use tauri::ipc::Request;
use tauri::{AppHandle, Manager};

/// What is saved.
#[derive(Deserialize)]
struct Save {
    name: String,
}

/// How many files of one name are kept before a person is asked to tidy up.
const MOST_OF_ONE_NAME: u32 = 1000;

/// Saves a file and says where it is. A file that is there already stays: the new one gets a number.
#[tauri::command]
pub(crate) async fn save(request: Request<'_>, app: AppHandle) -> Result<String, ApiError> {
    let body = request.body().clone();
    beside(move || {
        let (document, bytes) = opened(&body)?;
        let Save { name } = question(document)?;
        let path = write(&folder(&app)?, &name, bytes)?;
        Ok(path.display().to_string())
    })
    .await
}

fn folder(app: &AppHandle) -> Result<PathBuf, ApiError> {
    let paths = app.path();
    let parent = paths.download_dir().or_else(|_| paths.app_data_dir());
    parent.map(|parent| parent.join("hosewright")).map_err(|error| ApiError::file("", error))
}

/// Writes a new file of that name in that folder, whole or not at all.
fn write(folder: &Path, name: &str, bytes: &[u8]) -> Result<PathBuf, ApiError> {
    let (stem, ending) = plain(name)?;
    let failed = |error: std::io::Error| {
        ApiError::file(folder.display().to_string(), format!("the file can not be saved: {error}"))
    };
    fs::create_dir_all(folder).map_err(failed)?;
    for number in 1..=MOST_OF_ONE_NAME {
        let path = folder.join(match number {
            1 => name.to_owned(),
            _ => format!("{stem} {number}{ending}"),
        });
        match OpenOptions::new().write(true).create_new(true).open(&path) {
            Ok(mut file) => {
                let written = file.write_all(bytes).and_then(|()| file.sync_all());
                return written.map(|()| path.clone()).map_err(|error| {
                    // Half a label or backup must not stand where a whole one is looked for.
                    let _ = fs::remove_file(&path);
                    failed(error)
                });
            }
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {}
            Err(error) => return Err(failed(error)),
        }
    }
    Err(ApiError::file(
        folder.display().to_string(),
        format!("there are {MOST_OF_ONE_NAME} files called {name}; move some away"),
    ))
}

/// The stem and the ending of a name that stays in its folder, on every system.
fn plain(name: &str) -> Result<(&str, &str), ApiError> {
    let is_odd = |c: char| c.is_control() || r#"/\:*?"<>|"#.contains(c);
    if name.is_empty() || name.starts_with('.') || name.contains(is_odd) {
        return Err(ApiError::input("name", "a file's name has no separators and does not begin with a dot"));
    }
    Ok(name.split_at(name.rfind('.').unwrap_or(name.len())))
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;

    #[test]
    fn a_file_that_is_there_is_never_overwritten() {
        let folder = tempfile::tempdir().expect("a folder");
        let folder = folder.path().join("hosewright");
        for (name, text, wanted) in [
            ("label.png", "one", "label.png"),
            ("label.png", "two", "label 2.png"),
            ("label.png", "three", "label 3.png"),
            ("list", "four", "list"),
            ("list", "five", "list 2"),
        ] {
            let path = write(&folder, name, text.as_bytes()).expect("saved");
            assert_eq!(path, folder.join(wanted));
            assert_eq!(fs::read_to_string(path).expect("reads"), text);
        }
        assert_eq!(fs::read_to_string(folder.join("label.png")).expect("reads"), "one");
    }

    #[test]
    fn no_name_leads_out_of_the_folder() {
        let folder = tempfile::tempdir().expect("a folder");
        for name in ["", ".", "..", "../a", "/etc/a", "a/b", "a\\b", "C:a", ".hidden", "a\0b"] {
            let error = write(folder.path(), name, b"x").expect_err(name);
            assert_eq!(error.field, "name", "{name}");
        }
        assert_eq!(fs::read_dir(folder.path()).expect("reads").count(), 0);
    }
}
