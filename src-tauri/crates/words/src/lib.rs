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
    /// German.
    German,
    /// Spanish.
    Spanish,
}

impl Language {
    /// Every language, in the order a person is offered them.
    pub const ALL: [Language; 3] = [Language::English, Language::German, Language::Spanish];

    /// The tag by BCP 47.
    pub const fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
            Language::German => "de",
            Language::Spanish => "es",
        }
    }
}

include!(concat!(env!("OUT_DIR"), "/sources.rs"));

/// The words of one language.
pub struct Words {
    language: Language,
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
        Self { language, bundle }
    }

    /// The language they are in.
    pub const fn language(&self) -> Language {
        self.language
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

impl Say for u64 {
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
    use hosewright_core::catalogue::Catalogue;

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

    /// The ids of a language, by the file they stand in.
    fn ids(language: Language) -> Vec<(&'static str, String)> {
        let entries = sources(language).iter().flat_map(|(file, text)| {
            let lines = text.lines().filter_map(|line| line.split_once(" ="));
            lines
                .filter(|(id, _)| id.starts_with(|c: char| c.is_ascii_alphabetic()) && !id.contains(' '))
                .map(move |(id, _)| (*file, id.to_owned()))
        });
        let mut ids: Vec<_> = entries.collect();
        ids.sort();
        ids
    }

    #[test]
    fn every_language_says_all_that_english_says() {
        let english = ids(Language::English);
        assert!(english.len() > 1_000, "the ids are found");
        for language in Language::ALL {
            let other = ids(language);
            let missing: Vec<_> = english.iter().filter(|id| !other.contains(id)).collect();
            let needless: Vec<_> = other.iter().filter(|id| !english.contains(id)).collect();
            assert!(
                missing.is_empty() && needless.is_empty(),
                "{}: missing {missing:?}, needless {needless:?}",
                language.tag()
            );
        }
    }

    /// What stands in the tables is English; the answers say it by its code, so that every language has it.
    #[test]
    fn what_the_tables_say_is_said_in_every_language_and_in_english_as_they_have_it() {
        let tables = Catalogue::embedded();
        let cautions = tables.cautions.iter().map(|row| (format!("caution-{}", row.id), &row.caution));
        let causes = tables.causes.iter().flat_map(|row| {
            [(format!("cause-{}", row.code), &row.name), (format!("cause-{}-seen", row.code), &row.seen)]
        });
        let fluids = tables.fluid_classes.iter().map(|row| (format!("fluid-{}", row.class), &row.name));
        let signs = tables.signs.iter().flat_map(|row| {
            [(format!("sign-{}", row.code), &row.name), (format!("sign-{}-act", row.code), &row.act)]
        });
        let stakes = tables.stakes.iter().map(|row| (format!("stake-{}", row.key), &row.name));
        let said: Vec<_> = cautions.chain(causes).chain(fluids).chain(signs).chain(stakes).collect();
        assert!(said.len() > 100, "the tables are read");
        let english = Words::of(Language::English);
        for (id, text) in said {
            assert_eq!(&english.say(&id, &[]), text, "{id}");
        }
    }

    #[test]
    fn plurals_and_values_are_said_in_each_language() {
        let said =
            [(Language::English, "1 machine", "2 machines"), (Language::German, "1 Maschine", "2 Maschinen")];
        for (language, one, two) in said {
            let words = Words::of(language);
            let count = |machines: usize| words.say("count-machines", &[("machines", &machines)]);
            assert_eq!((count(1), count(2)), (one.to_owned(), two.to_owned()));
        }
        for language in Language::ALL {
            assert_ne!(Words::of(language).say("verdict-stop", &[]), "verdict-stop");
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
