//! Names within a line: free text made safe for the grammar, and the words of fixed lists.

use crate::spec::{Cover, Duty, Gender, Line};

/// Covers by their words.
pub(super) const COVERS: [(Cover, &str); 4] = [
    (Cover::Plain, "plain"),
    (Cover::NonConductive, "non-conductive"),
    (Cover::FlameResistant, "flame-resistant"),
    (Cover::Antistatic, "antistatic"),
];

/// Duties by their words.
pub(super) const DUTIES: [(Duty, &str); 3] = [
    (Duty::NonConductive, "non-conductive"),
    (Duty::FlameResistant, "flame-resistant"),
    (Duty::Antistatic, "antistatic"),
];

/// Lines by their words.
pub(super) const LINES: [(Line, &str); 6] = [
    (Line::Pressure, "pressure"),
    (Line::Return, "return"),
    (Line::Suction, "suction"),
    (Line::CaseDrain, "case-drain"),
    (Line::Pilot, "pilot"),
    (Line::Cylinder, "cylinder"),
];

/// Halves by their words.
pub(super) const GENDERS: [(Gender, &str); 2] = [(Gender::Male, "male"), (Gender::Female, "female")];

/// The word of a value. Each list names every value (a test holds it).
pub(super) fn word_of<T: PartialEq>(list: &[(T, &'static str)], value: &T) -> &'static str {
    list.iter().find(|(known, _)| known == value).map_or("", |(_, word)| word)
}

/// The value of a word.
pub(super) fn value_of<T: Copy>(list: &[(T, &'static str)], word: &str) -> Option<T> {
    list.iter().find(|(_, known)| *known == word).map(|(value, _)| *value)
}

/// A name that may have spaces within.
pub(crate) fn name(text: &str) -> String {
    escape(text, |_, before, after| {
        // A space at either end or beside another is lost when text is copied.
        if before.is_none_or(|c| c == ' ') || after.is_none() { Space::Escape } else { Space::Keep }
    })
}

/// A name that is one word of its line.
pub(super) fn word(text: &str) -> String {
    escape(text, |_, _, _| Space::Underscore)
}

/// A form of an end: a word that can't be taken for a gender.
pub(super) fn form(text: &str) -> String {
    match value_of(&GENDERS, text).and_then(|_| text.split_at_checked(1)) {
        Some((first, rest)) => first.bytes().map(hex).collect::<String>() + rest,
        None => word(text),
    }
}

enum Space {
    Keep,
    Underscore,
    Escape,
}

fn escape(text: &str, space: impl Fn(char, Option<char>, Option<char>) -> Space) -> String {
    if text.is_empty() {
        return "%".to_owned();
    }
    let mut out = String::with_capacity(text.len());
    let mut before = None;
    let mut rest = text.chars().peekable();
    while let Some(c) = rest.next() {
        let keep = match c {
            ' ' => match space(c, before, rest.peek().copied()) {
                Space::Keep => Some(' '),
                Space::Underscore => Some('_'),
                Space::Escape => None,
            },
            '%' | ',' | '_' => None,
            c if prints(c) => Some(c),
            _ => None,
        };
        match keep {
            Some(c) => out.push(c),
            None => out.extend(c.encode_utf8(&mut [0; 4]).bytes().map(hex)),
        }
        before = Some(c);
    }
    out
}

/// Whether a person sees the character and a phone keeps it: no controls, no foreign spaces, no
/// marks that join or turn the writing.
fn prints(c: char) -> bool {
    let hidden = matches!(c, '\u{ad}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}');
    !c.is_control() && !c.is_whitespace() && !hidden
}

fn hex(byte: u8) -> String {
    format!("%{byte:02X}")
}

/// The text behind a written name; `None` when it is not one.
pub(crate) fn unescape(written: &str) -> Option<String> {
    if written == "%" {
        return Some(String::new());
    }
    let mut bytes = Vec::with_capacity(written.len());
    let mut rest = written.bytes();
    while let Some(byte) = rest.next() {
        bytes.push(match byte {
            b'%' => {
                let digit = |byte: u8| char::from(byte).to_digit(16);
                let value = digit(rest.next()?)? * 16 + digit(rest.next()?)?;
                u8::try_from(value).ok()?
            }
            b'_' => b' ',
            other => other,
        });
    }
    String::from_utf8(bytes).ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case("test point", "test point")]
    #[case("", "%")]
    #[case(" a  b ", "%20a %20b%20")]
    #[case("1/2, 5_% x", "1/2%2C 5%5F%25 x")]
    #[case("a\nb\u{a0}c", "a%0Ab%C2%A0c")]
    #[case("Winkelstück", "Winkelstück")]
    #[case("\u{202e}x", "%E2%80%AEx")]
    fn names_keep_what_could_get_lost(#[case] text: &str, #[case] written: &str) {
        assert_eq!(name(text), written);
        assert_eq!(unescape(written).as_deref(), Some(text));
    }

    #[test]
    fn a_word_has_no_space_and_a_form_is_no_gender() {
        assert_eq!(word("AC BC CC DC"), "AC_BC_CC_DC");
        assert_eq!(form("female"), "%66emale");
        assert_eq!(unescape("%66emale").as_deref(), Some("female"));
        assert_eq!(form("elbow90"), "elbow90");
    }

    #[test]
    fn what_was_not_written_so_is_no_name() {
        for broken in ["%2", "a%", "%zz", "%FF"] {
            assert_eq!(unescape(broken), None, "{broken}");
        }
    }

    /// The words on a tag are those of the program's own documents, and none is missing.
    #[test]
    fn every_word_is_the_one_used_everywhere() {
        fn agree<T: serde::Serialize>(list: &[(T, &str)]) {
            for (value, word) in list {
                assert_eq!(serde_json::to_value(value).unwrap(), *word);
            }
        }
        agree(&COVERS);
        agree(&DUTIES);
        agree(&LINES);
        agree(&GENDERS);
        for line in
            [Line::Pressure, Line::Return, Line::Suction, Line::CaseDrain, Line::Pilot, Line::Cylinder]
        {
            // A new kind makes this match fail to compile until it is listed.
            match line {
                Line::Pressure
                | Line::Return
                | Line::Suction
                | Line::CaseDrain
                | Line::Pilot
                | Line::Cylinder => assert_ne!(word_of(&LINES, &line), ""),
            }
        }
        for cover in [Cover::Plain, Cover::NonConductive, Cover::FlameResistant, Cover::Antistatic] {
            match cover {
                Cover::Plain | Cover::NonConductive | Cover::FlameResistant | Cover::Antistatic => {
                    assert_ne!(word_of(&COVERS, &cover), "");
                }
            }
        }
        for duty in [Duty::NonConductive, Duty::FlameResistant, Duty::Antistatic] {
            match duty {
                Duty::NonConductive | Duty::FlameResistant | Duty::Antistatic => {
                    assert_ne!(word_of(&DUTIES, &duty), "");
                }
            }
        }
    }
}
