//! Standards and types among the words.

use super::pressure::{Pressure, UNITS};
use super::words::{Word, can_be, is_worn, legible, split_number, squeezed};
use crate::catalogue::Catalogue;

/// The catalogue's standards and types, as they are looked for.
pub(super) struct Names<'c> {
    /// Each standard with the ways it is written.
    standards: Vec<(&'c str, Vec<String>)>,
    /// Each type name once.
    kinds: Vec<(&'c str, String)>,
    catalogue: &'c Catalogue,
}

/// One place in the print, and the names it can be.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Mention<'c> {
    pub(super) names: Vec<&'c str>,
    /// The words it is made of.
    pub(super) words: std::ops::Range<usize>,
}

/// Longest name of a type that is printed; the longer ones are the tables' own descriptions.
const LONGEST_KIND: usize = 8;

impl<'c> Names<'c> {
    pub(super) fn of(catalogue: &'c Catalogue) -> Self {
        let mut names = Self { standards: Vec::new(), kinds: Vec::new(), catalogue };
        for row in &catalogue.types {
            if !names.standards.iter().any(|(standard, _)| *standard == row.standard) {
                let mut ways = spellings(&row.standard);
                let aliases = catalogue.standard_aliases().filter(|(_, means)| *means == row.standard);
                ways.extend(aliases.map(|(alias, _)| squeezed(alias)));
                names.standards.push((&row.standard, ways));
            }
            let kind = squeezed(&row.kind);
            if kind.len() <= LONGEST_KIND && !names.kinds.iter().any(|(name, _)| *name == row.kind) {
                names.kinds.push((&row.kind, kind));
            }
        }
        names
    }

    /// Whether any size of such a type is rated at that many bar.
    pub(super) fn is_rated(&self, kind: &Mention<'_>, bar: f64) -> bool {
        let rows = self.catalogue.hoses.iter().chain(&self.catalogue.twins);
        rows.filter(|row| kind.names.contains(&row.kind.as_str()))
            .any(|row| row.max_working_pressure_bar.is_some_and(|rated| rated.get() == bar))
    }

    /// Whether any size of such a type is rated, or bursts, at about that figure in any unit.
    pub(super) fn can_be_pressure(&self, kind: &Mention<'_>, figure: f64) -> bool {
        UNITS.iter().any(|(_, unit_bar)| {
            let printed = Pressure::of_type(figure * unit_bar);
            let rows = self.catalogue.hoses.iter().chain(&self.catalogue.twins);
            rows.filter(|row| kind.names.contains(&row.kind.as_str()))
                .flat_map(|row| [row.max_working_pressure_bar, row.min_burst_pressure_bar])
                .flatten()
                .any(|bar| printed.can_be(bar.get()))
        })
    }

    /// The standard that begins at that word: the longest run of words that is one.
    pub(super) fn standard_at(&self, words: &[Word], at: usize) -> Option<Mention<'c>> {
        (1..=4).rev().find_map(|count| {
            let pattern = joined(words, at, count)?;
            // The number of a standard is one word, or goes on behind a dash (6286-73).
            let mut numbers = words.get(at..at + count)?.iter().filter(|word| has_digit(word)).skip(1);
            if numbers.any(|word| word.glue != '-' || word.apart) {
                return None;
            }
            let digits = pattern.chars().filter(char::is_ascii_digit).count();
            // Worn down to less than this a word is anything.
            if is_worn(&pattern) && (digits < 2 || legible(&pattern) < 3 || is_guesswork(&pattern)) {
                return None;
            }
            // A worn number that can be a type too (10??2? is 100R2S, or the GOST number 10362).
            if is_worn(&pattern) && self.kinds.iter().any(|(_, kind)| can_be(&pattern, kind)) {
                return None;
            }
            let fits = |spelling: &String| can_be(&pattern, spelling);
            let names: Vec<&str> = self
                .standards
                .iter()
                .filter(|(_, spellings)| spellings.iter().any(fits))
                .map(|(standard, _)| *standard)
                .collect();
            (!names.is_empty()).then_some(Mention { names, words: at..at + count })
        })
    }

    /// The type that begins at that word. Letters beyond a known name (100R14B) and names cut short
    /// (100R2, the II of GOST) give every type they can mean.
    pub(super) fn kind_at(&self, words: &[Word], at: usize) -> Option<Mention<'c>> {
        (1..=3).rev().find_map(|count| {
            let pattern = joined(words, at, count)?;
            // Worn words that stand apart are two marks sooner than the halves of one name.
            if count > 1 && is_worn(&pattern) {
                return None;
            }
            let follows = words.get(at + 1..at + count)?;
            let is_class = pattern.len() >= 5 && matches!(pattern.as_bytes(), [b'A'..=b'D', b'S' | b'C', ..]);
            if follows.iter().any(has_digit) && !is_class {
                return None;
            }
            let names = self.kinds_of(&pattern, count);
            (!names.is_empty()).then_some(Mention { names, words: at..at + count })
        })
    }

    fn kinds_of(&self, pattern: &str, words: usize) -> Vec<&'c str> {
        let has_letter = pattern.contains(|c: char| c.is_alphabetic());
        let has_digit = pattern.contains(|c: char| c.is_ascii_digit());
        // Every type has a digit in its name but classes (AS), printed with their number, and those of
        // GOST, printed by their Roman one: II, or Z-II.
        let is_roman = pattern == "II" || pattern.contains('I') && self.is_kind(pattern);
        if legible(pattern) < 2 || is_guesswork(pattern) || !has_letter || !(has_digit || is_roman) {
            return Vec::new();
        }
        let short = format!("100{pattern}");
        if is_worn(pattern) {
            return if can_be_size(pattern) { Vec::new() } else { self.worn_kinds(pattern, &short) };
        }
        let exact: Vec<&str> =
            self.kinds.iter().filter(|(_, kind)| can_be(pattern, kind)).map(|(name, _)| *name).collect();
        if !exact.is_empty() {
            return exact;
        }
        let sae: Vec<&str> =
            self.kinds.iter().filter(|(_, kind)| can_be(&short, kind)).map(|(name, _)| *name).collect();
        if !sae.is_empty() || words > 1 {
            return sae;
        }
        let lettered = |rest: &str| !rest.is_empty() && rest.chars().all(char::is_alphabetic);
        let cut: Vec<&str> = self
            .kinds
            .iter()
            .filter(|(_, kind)| kind.strip_prefix(pattern).is_some_and(lettered))
            .map(|(name, _)| *name)
            .collect();
        if !cut.is_empty() {
            return cut;
        }
        let longer = self
            .kinds
            .iter()
            .filter(|(_, kind)| kind.len() >= 2 && pattern.strip_prefix(kind.as_str()).is_some_and(lettered));
        longer.max_by_key(|(_, kind)| kind.len()).map(|(name, _)| *name).into_iter().collect()
    }

    /// Whether some type is called just so.
    fn is_kind(&self, name: &str) -> bool {
        self.kinds.iter().any(|(_, kind)| kind == name)
    }

    /// Every type that worn letters can be, named whole, without its 100, or cut short.
    fn worn_kinds(&self, pattern: &str, short: &str) -> Vec<&'c str> {
        let head_of = |kind: &str| {
            let letters = kind.chars().rev().take_while(|letter| letter.is_alphabetic()).count();
            (1..=letters).filter_map(|cut| kind.get(..kind.len() - cut)).any(|head| can_be(pattern, head))
        };
        let is = |kind: &str| can_be(pattern, kind) || can_be(short, kind) || head_of(kind);
        self.kinds.iter().filter(|(_, kind)| is(kind)).map(|(name, _)| *name).collect()
    }
}

fn has_digit(word: &Word) -> bool {
    word.text.contains(|letter: char| letter.is_ascii_digit())
}

/// Whether worn letters can be a nominal diameter in one word, such as `DN35`.
fn can_be_size(pattern: &str) -> bool {
    let number =
        |prefix: &str| pattern.strip_prefix(prefix).is_some_and(|rest| split_number(rest).1.is_empty());
    number("D?") || number("?N") || number("D")
}

/// Whether more letters are worn than can be read.
fn is_guesswork(pattern: &str) -> bool {
    2 * legible(pattern) < pattern.chars().count()
}

/// Words put together as one pattern. A word worn away whole is no part of a name of several.
fn joined(words: &[Word], at: usize, count: usize) -> Option<String> {
    let words = words.get(at..at + count)?;
    if count > 1 && words.iter().any(|word| legible(&word.text) == 0) {
        return None;
    }
    Some(words.iter().flat_map(|word| word.text.chars()).filter(|letter| *letter != '.').collect())
}

/// The ways a standard is written: whole, without its year or part, and by its number alone.
fn spellings(standard: &str) -> Vec<String> {
    let mut spellings = vec![squeezed(standard)];
    if let Some((organisation, number)) = standard.split_once([' ', '-']) {
        let number = number.split('-').find(|part| part.len() > 2).unwrap_or(number);
        spellings.push(squeezed(&format!("{organisation}{number}")));
        if number.bytes().all(|byte| byte.is_ascii_digit()) {
            spellings.push(number.to_owned());
        } else {
            // SAE J517 hose is printed "SAE 100R2AT", the number of the standard left out.
            spellings.push(organisation.to_owned());
        }
    }
    spellings
}
