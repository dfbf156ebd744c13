//! The words of a print while they are read.

use super::words::{Word, can_be, is_worn, split_number};

/// The words, and which of them have been read.
pub(super) struct Reader<'w> {
    pub(super) words: &'w [Word],
    read: Vec<bool>,
}

impl<'w> Reader<'w> {
    pub(super) fn new(words: &'w [Word]) -> Self {
        Self { words, read: vec![false; words.len()] }
    }

    /// Whether none of them has been read.
    pub(super) fn is_free(&self, words: std::ops::Range<usize>) -> bool {
        self.read.get(words).is_some_and(|read| !read.contains(&true))
    }

    /// Marks them as read.
    pub(super) fn take(&mut self, words: std::ops::Range<usize>) {
        if let Some(read) = self.read.get_mut(words) {
            read.fill(true);
        }
    }

    /// The words that have not been read.
    pub(super) fn free(&self) -> impl Iterator<Item = usize> + use<'w> {
        let free: Vec<usize> = (0..self.words.len()).filter(|&at| !self.read[at]).collect();
        free.into_iter()
    }

    pub(super) fn word(&self, at: usize) -> Option<&'w Word> {
        self.words.get(at)
    }

    /// The word before, where it has not been read.
    pub(super) fn unread_before(&self, at: usize) -> Option<&'w Word> {
        at.checked_sub(1).filter(|&before| self.is_free(before..at)).and_then(|before| self.word(before))
    }

    /// Whether the word before is worn and has not been read: a number behind it can be the rest of
    /// another, or be called anything.
    pub(super) fn is_behind_worn(&self, at: usize) -> bool {
        self.unread_before(at).is_some_and(|before| is_worn(&before.text))
    }

    /// Whether the word behind is worn and has not been read, and can be one of those names.
    pub(super) fn can_be_followed_by(&self, at: usize, names: &[&str]) -> bool {
        let next = self.word(at + 1).filter(|next| is_worn(&next.text) && self.is_free(at + 1..at + 2));
        next.is_some_and(|next| names.iter().any(|name| can_be(&next.text, name)))
    }

    /// Whether a number is the part or the edition of a standard, as in `20022-4` and `853:2015`: it
    /// stands behind the number of one. The dash of military hose follows the number of its standard.
    pub(super) fn is_part_number(&self, at: usize) -> bool {
        let Some(before) = at.checked_sub(1).and_then(|before| self.word(before)) else { return false };
        let is_number = before.text.len() >= 3 && split_number(&before.text).1.is_empty();
        let is_glued = self.word(at).is_some_and(|word| matches!(word.glue, '-' | ':') && !word.apart);
        let is_military = self.words.iter().any(|word| word.text == "MIL");
        is_glued && is_number && !is_military
    }
}
