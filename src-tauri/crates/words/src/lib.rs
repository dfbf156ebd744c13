//! All words for people, from one set of Fluent catalogues (`locales/<language>/*.ftl`), and the
//! one place where numbers and units are written. The core gives codes; the words for them are here.

mod number;

pub use number::{Pressure, length, number, percent, pressure, quantity, signed};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};

/// A language the words are written in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Language {
    /// English.
    English,
}

impl Language {
    /// Every language, in the order a person is offered them.
    pub const ALL: [Language; 1] = [Language::English];

    /// The tag by BCP 47.
    pub const fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
        }
    }
}

include!(concat!(env!("OUT_DIR"), "/sources.rs"));

/// The words of one language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(to, "Words({:?})", self.bundle.locales)
    }
}

impl Words {
    /// The words of that language. Broken catalogue files are found by a test, not by a user: what
    /// can be read of them is used.
    pub fn of(language: Language) -> Self {
        let locale = language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![locale]);
        bundle.set_use_isolating(false);
        for (_, text) in sources(language) {
            let resource = match FluentResource::try_new((*text).to_owned()) {
                Ok(resource) | Err((resource, _)) => resource,
            };
            // An id stands once: a test holds it, and of two the first would be kept.
            let _ = bundle.add_resource(resource);
        }
        Self { bundle }
    }

    /// Whether there are words for that id.
    pub fn has(&self, id: &str) -> bool {
        self.bundle.has_message(id)
    }

    /// The form of an end in words: `elbow90` is an elbow of so many degrees; a form without words of its own is
    /// said as it is written.
    pub fn form(&self, form: &str) -> String {
        let id = format!("form-{form}");
        match form.strip_prefix("elbow") {
            Some(angle) if !angle.is_empty() && angle.bytes().all(|b| b.is_ascii_digit() || b == b'.') => {
                self.say("form-elbow", &[("angle", &angle)])
            }
            // An elbow of no angle has no words of its own.
            None if self.has(&id) => self.say(&id, &[]),
            _ => form.to_owned(),
        }
    }

    /// The words for an id with its values put in. An id without words gives the id itself, so
    /// nothing is ever silently left out; a test holds that every code has words.
    pub fn say(&self, id: &str, values: &[(&str, &dyn Say)]) -> String {
        let Some(pattern) = self.bundle.get_message(id).and_then(|message| message.value()) else {
            return id.to_owned();
        };
        let mut args = FluentArgs::new();
        for (name, value) in values {
            args.set((*name).to_owned(), value.value());
        }
        let mut errors = Vec::new();
        self.bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned()
    }
}

/// What can stand in words: text, or a number that plural rules look at.
pub trait Say {
    /// As Fluent takes it.
    fn value(&self) -> FluentValue<'static>;
}

impl Say for &str {
    fn value(&self) -> FluentValue<'static> {
        FluentValue::from((*self).to_owned())
    }
}

impl Say for String {
    fn value(&self) -> FluentValue<'static> {
        FluentValue::from(self.clone())
    }
}

impl Say for usize {
    fn value(&self) -> FluentValue<'static> {
        FluentValue::from(*self as f64)
    }
}

impl Say for f64 {
    fn value(&self) -> FluentValue<'static> {
        FluentValue::from(*self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_catalogue_file_is_whole() {
        for language in Language::ALL {
            for (file, text) in sources(language) {
                if let Err((_, errors)) = FluentResource::try_new((*text).to_owned()) {
                    panic!("{}/{file}: {errors:?}", language.tag());
                }
            }
        }
    }

    /// Words of two files under one id would silently stand for each other.
    #[test]
    fn an_id_stands_once_in_all_files() {
        for language in Language::ALL {
            let mut bundle = FluentBundle::new_concurrent(vec![language.tag().parse().expect("a locale")]);
            for (file, text) in sources(language) {
                let resource =
                    FluentResource::try_new((*text).to_owned()).expect("a test of its own holds it");
                let twice = bundle.add_resource(resource).err().unwrap_or_default();
                assert!(twice.is_empty(), "{}/{file}: {twice:?}", language.tag());
            }
            let (_, first) = sources(language).first().expect("a file");
            let again = FluentResource::try_new((*first).to_owned()).expect("whole");
            assert!(bundle.add_resource(again).is_err(), "what stands twice is seen");
        }
    }

    #[test]
    fn a_form_is_said_in_words() {
        let words = Words::of(Language::English);
        let said =
            [("elbow45", "45° elbow"), ("elbow22.5", "22.5° elbow"), ("compact90", "compact 90° elbow")];
        for (form, right) in
            said.into_iter().chain([("straight", "straight"), ("block", "block"), ("elbow", "elbow")])
        {
            assert_eq!(words.form(form), right);
        }
    }

    #[test]
    fn words_take_their_values() {
        let words = Words::of(Language::English);
        assert_eq!(words.say("verdict-stop", &[]), "STOP");
        assert_eq!(words.say("no-such-words", &[]), "no-such-words");
    }
}
