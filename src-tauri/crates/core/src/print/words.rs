//! The print as a row of words, and patterns of worn letters.

/// One word of a print: letters, digits, a decimal point, and `?` (one worn letter, or a gap) and
/// `*` (any number).
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Word {
    /// In capitals.
    pub(super) text: String,
    /// What stands between it and the word before: `-`, `/`, `:` or a blank.
    pub(super) glue: char,
    /// Whether a blank stands somewhere before it, as in ` -12`.
    pub(super) apart: bool,
}

impl Word {
    /// Digits alone.
    pub(super) fn is_digits(&self) -> bool {
        !self.text.is_empty() && self.text.bytes().all(|byte| byte.is_ascii_digit())
    }

    /// The whole number it is.
    pub(super) fn whole(&self) -> Option<u32> {
        if self.is_digits() && self.text.len() <= 6 { self.text.parse().ok() } else { None }
    }

    /// The decimal number it is.
    pub(super) fn number(&self) -> Option<f64> {
        let plain = self.text.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
        if plain && self.text.len() <= 8 { self.text.parse().ok() } else { None }
    }
}

/// Abbreviations whose full stops are no worn letters.
const ABBREVIATIONS: [(&str, &str); 6] =
    [("W.P.", "WP "), ("B.P.", "BP "), ("I.D.", "ID "), ("MAX.", "MAX "), ("MIN.", "MIN "), ("...", "*")];

/// Fractions of an inch that have a letter of their own.
const FRACTIONS: [(&str, &str); 7] = [
    ("\u{bc}", " 1/4"),
    ("\u{bd}", " 1/2"),
    ("\u{be}", " 3/4"),
    ("\u{215b}", " 1/8"),
    ("\u{215c}", " 3/8"),
    ("\u{215d}", " 5/8"),
    ("\u{215e}", " 7/8"),
];

/// Splits a print into words.
pub(super) fn words(print: &str) -> Vec<Word> {
    let mut text = print.to_uppercase().replace('\u{2026}', "*");
    for (short, long) in ABBREVIATIONS.into_iter().chain(FRACTIONS) {
        text = text.replace(short, long);
    }
    let letters: Vec<char> = text.chars().map(plain).collect();
    let digit = |i: Option<usize>| i.and_then(|i| letters.get(i)).is_some_and(char::is_ascii_digit);
    let mut words = Vec::new();
    let mut word = String::new();
    let (mut glue, mut apart) = (' ', true);
    for (i, &letter) in letters.iter().enumerate() {
        let letter = match letter {
            '.' | ',' if digit(i.checked_sub(1)) && digit(Some(i + 1)) => '.',
            '.' => '?',
            other => other,
        };
        if letter.is_alphanumeric() || matches!(letter, '?' | '*' | '.') {
            word.push(letter);
            continue;
        }
        if !word.is_empty() {
            words.push(Word { text: std::mem::take(&mut word), glue, apart });
            (glue, apart) = (' ', false);
        }
        match letter {
            '"' => words.push(Word { text: "IN".to_owned(), glue: ' ', apart: false }),
            '-' | '/' | ':' => glue = letter,
            _ => apart = true,
        }
    }
    if !word.is_empty() {
        words.push(Word { text: word, glue, apart });
    }
    words
}

/// One spelling for quotation marks and dashes.
fn plain(letter: char) -> char {
    match letter {
        '\u{2033}' | '\u{201c}' | '\u{201d}' => '"',
        '\u{2010}'..='\u{2015}' | '\u{2212}' => '-',
        other => other,
    }
}

/// Whether a word with worn letters can be that name. A worn letter may also be a gap.
pub(super) fn can_be(pattern: &str, name: &str) -> bool {
    if !is_worn(pattern) {
        return pattern == name;
    }
    let length = name.chars().count();
    if length >= LONGEST_NAME {
        return false;
    }
    // Which prefixes of the name the pattern so far can be: bit n for the one of n letters.
    let mut prefixes: u64 = 1;
    for letter in pattern.chars() {
        prefixes = match letter {
            // Every prefix from the shortest on.
            '*' if prefixes != 0 => u64::MAX << prefixes.trailing_zeros(),
            '?' => prefixes | prefixes << 1,
            letter => {
                let here = name.chars().enumerate().filter(|(_, other)| *other == letter);
                here.fold(0, |next, (at, _)| next | (prefixes & 1 << at) << 1)
            }
        };
    }
    prefixes & 1 << length != 0
}

/// Names are shorter than this; the longer ones are the tables' own descriptions.
const LONGEST_NAME: usize = 63;

/// How many letters of a pattern can still be read.
pub(super) fn legible(pattern: &str) -> usize {
    pattern.chars().filter(|letter| !matches!(letter, '?' | '*')).count()
}

/// Whether any letter is worn.
pub(super) fn is_worn(pattern: &str) -> bool {
    pattern.contains(['?', '*'])
}

/// A name without blanks, dashes and full stops, as patterns are compared.
pub(super) fn squeezed(name: &str) -> String {
    name.to_uppercase().chars().filter(|letter| letter.is_alphanumeric()).collect()
}

/// The number at the front of a word, worn letters included, and what stands behind it.
pub(super) fn split_number(text: &str) -> (&str, &str) {
    let end = text.find(|letter: char| !(letter.is_ascii_digit() || matches!(letter, '.' | '?' | '*')));
    text.split_at(end.unwrap_or(text.len()))
}
