//! `register photo` in plain text.

use super::Plain;
use super::text::{columns, wrapped};
use hosewright_api::commands::photo::{PhotoOnRecord, Photos};
use hosewright_api::key;
use hosewright_core::record::Hash;
use hosewright_words::Words;

/// Digits of a hash that are shown: enough to name a photo.
const DIGITS: usize = 12;

/// The beginning of a photo's hash.
pub(super) fn short(hash: Hash) -> String {
    hash.to_string().chars().take(DIGITS).collect()
}

impl Plain for PhotoOnRecord {
    fn plain(&self, words: &Words) -> String {
        let id = if self.known { "photo-known" } else { "photo-added" };
        let (photo, size) = (short(self.sha256), self.length.div_ceil(1000));
        wrapped(&words.say(id, &[("photo", &photo), ("size", &size)]), 2)
    }
}

impl Plain for Photos {
    fn plain(&self, words: &Words) -> String {
        if self.photos.is_empty() {
            return words.say("photo-none", &[]);
        }
        let rows = self.photos.iter().map(|photo| {
            let time = photo.time.format("%Y-%m-%d %H:%M").to_string();
            let state = words.say(&format!("photo-state-{}", key(&photo.state)), &[]);
            let rest = [Some(state), photo.by.clone(), Some(photo.about.to_string())];
            vec![time, short(photo.sha256), rest.into_iter().flatten().collect::<Vec<_>>().join(", ")]
        });
        columns(&rows.collect::<Vec<_>>())
    }
}
