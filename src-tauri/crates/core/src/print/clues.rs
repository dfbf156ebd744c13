//! What the words say, before the tables are asked which hose it can be.

use super::date::{self, Made, is_inch_fraction};
use super::names::{Mention, Names};
use super::pressure::{self, Pressure};
use super::reader::Reader;
use super::words::{Word, is_worn, legible, split_number};
use crate::quantity::Millimetres;
use crate::spec::Cover;

/// A mark of size.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Size {
    /// `DN 12`, worn letters included.
    Dn(String),
    /// `-8`.
    Dash(u16),
    /// `1/2"`, in millimetres.
    Inch(f64),
    /// A bare number behind the type: nominal diameter or dash.
    Bare(u32),
}

/// Everything a print says.
#[derive(Debug, Default)]
pub(super) struct Clues<'c> {
    pub(super) standards: Vec<Mention<'c>>,
    pub(super) kinds: Vec<Mention<'c>>,
    pub(super) sizes: Vec<Size>,
    pub(super) pressure: Option<Pressure>,
    /// What its date can be, the customary reading first.
    pub(super) made: Vec<Made>,
    pub(super) cover: Option<Cover>,
    pub(super) unread: String,
    /// Whether any letter of the print is worn.
    pub(super) is_worn: bool,
}

/// Names of one mention that are written out; a worn letter can leave many.
const WRITTEN: usize = 3;

impl Clues<'_> {
    /// Whether a standard, a type or a size is named.
    pub(super) fn names_hose(&self) -> bool {
        !(self.standards.is_empty() && self.kinds.is_empty() && self.sizes.is_empty())
    }

    /// The year in which it was made, where every reading of its date agrees on it.
    pub(super) fn year(&self) -> Option<u16> {
        let (first, others) = self.made.split_first()?;
        others.iter().all(|other| other.year == first.year).then_some(first.year)
    }

    /// Standards, types and sizes in one line, by the tables' names.
    pub(super) fn named(&self) -> String {
        let mentions = self.standards.iter().chain(&self.kinds);
        let names =
            mentions.filter(|mention| mention.names.len() <= WRITTEN).map(|mention| mention.names.join("/"));
        names.chain(self.sizes.iter().map(Size::to_string)).collect::<Vec<_>>().join(" ")
    }
}

impl std::fmt::Display for Size {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Dn(figure) => write!(to, "DN {figure}"),
            Self::Dash(dash) => write!(to, "-{dash}"),
            Self::Inch(bore) => write!(to, "{} in", bore / Millimetres::PER_INCH),
            Self::Bare(number) => write!(to, "{number}"),
        }
    }
}

/// Words that say nothing more.
const FILLERS: [&str; 10] =
    ["WP", "MAX", "MIN", "WORKING", "PRESSURE", "DIN", "HOSE", "HYDRAULIC", "ID", "TYPE"];

/// Reads the words. What is certain is taken first, what is ambiguous from the rest.
pub(super) fn clues<'c>(words: &[Word], names: &Names<'c>) -> Clues<'c> {
    let mut reader = Reader::new(words);
    let mut clues = Clues {
        made: take_plain_date(&mut reader),
        is_worn: words.iter().any(|word| is_worn(&word.text)),
        ..Clues::default()
    };
    clues.standards = take_mentions(&mut reader, |words, at| names.standard_at(words, at));
    take_parts(&mut reader, &clues.standards);
    clues.pressure = pressure::take(&mut reader);
    clues.kinds = take_mentions(&mut reader, |words, at| names.kind_at(words, at));
    clues.cover = take_cover(&mut reader);
    take_marked_sizes(&mut reader, &mut clues);
    take_bare_numbers(&mut reader, &mut clues, names);
    if clues.made.is_empty() {
        clues.made = take_late_date(&mut reader, &clues);
    }
    let unread: Vec<&str> = reader
        .free()
        .filter_map(|at| words.get(at))
        .map(|word| word.text.as_str())
        .filter(|text| !FILLERS.contains(text))
        .collect();
    clues.unread = unread.join(" ");
    clues
}

/// The part of a standard, `-4` of `DIN 20022-4`: one digit directly behind it. It is no size.
fn take_parts(reader: &mut Reader<'_>, standards: &[Mention<'_>]) {
    for at in standards.iter().map(|standard| standard.words.end) {
        let is_digit =
            reader.word(at).is_some_and(|word| word.glue == '-' && word.is_digits() && word.text.len() == 1);
        if is_digit && reader.is_free(at..at + 1) && reader.is_part_number(at) {
            reader.take(at..at + 1);
        }
    }
}

fn take_plain_date(reader: &mut Reader<'_>) -> Vec<Made> {
    let found = (0..reader.words.len()).find_map(|at| Some((at, date::plain(reader.words, at)?)));
    let Some((at, (made, count))) = found else { return Vec::new() };
    reader.take(at..at + count);
    made
}

/// A date among what is left. SAE hose has months with a slash (SAE J517), a ferrule four digits
/// (DIN 20066 practice); other hose has anything.
fn take_late_date(reader: &mut Reader<'_>, clues: &Clues<'_>) -> Vec<Made> {
    let by = match (clues.standards.as_slice(), clues.kinds.as_slice()) {
        ([], []) => date::Custom::Ferrule,
        ([standard], _) if standard.names == ["SAE J517"] => date::Custom::Sae,
        _ => date::Custom::Hose,
    };
    for at in reader.free() {
        if let Some((made, count)) = date::late(reader, at, by) {
            reader.take(at..at + count);
            return made;
        }
    }
    Vec::new()
}

fn take_mentions<'c>(
    reader: &mut Reader<'_>,
    mention_at: impl Fn(&[Word], usize) -> Option<Mention<'c>>,
) -> Vec<Mention<'c>> {
    let mut mentions = Vec::new();
    for at in 0..reader.words.len() {
        if let Some(mention) =
            mention_at(reader.words, at).filter(|mention| reader.is_free(mention.words.clone()))
        {
            reader.take(mention.words.clone());
            mentions.push(mention);
        }
    }
    mentions
}

fn take_cover(reader: &mut Reader<'_>) -> Option<Cover> {
    const PHRASES: [(&str, Cover); 8] = [
        ("NONCONDUCTIVE", Cover::NonConductive),
        ("NON CONDUCTIVE", Cover::NonConductive),
        ("FLAME RESISTANT", Cover::FlameResistant),
        ("FLAME RES", Cover::FlameResistant),
        ("FIRE RESISTANT", Cover::FlameResistant),
        ("ANTISTATIC", Cover::Antistatic),
        ("ANTI STATIC", Cover::Antistatic),
        ("CONDUCTIVE", Cover::Antistatic),
    ];
    for at in reader.free() {
        for (phrase, cover) in PHRASES {
            let parts: Vec<&str> = phrase.split(' ').collect();
            let here = at..at + parts.len();
            let says = reader
                .words
                .get(here.clone())
                .is_some_and(|words| words.iter().map(|word| word.text.as_str()).eq(parts.iter().copied()));
            if says && reader.is_free(here.clone()) {
                reader.take(here);
                return Some(cover);
            }
        }
    }
    None
}

/// Sizes that say what they are: `DN 12`, `SIZE 25`, `1/2"`, `-8`.
fn take_marked_sizes(reader: &mut Reader<'_>, clues: &mut Clues<'_>) {
    for at in 0..reader.words.len() {
        if !reader.is_free(at..at + 1) {
            continue;
        }
        if let Some((size, count)) = dn_at(reader, at).or_else(|| inch_at(reader, at, clues)) {
            reader.take(at..at + count);
            clues.sizes.push(size);
        } else if let Some(size) = dash_at(reader, at, clues) {
            reader.take(at..at + 1);
            clues.sizes.push(size);
        }
    }
}

fn dn_at(reader: &Reader<'_>, at: usize) -> Option<(Size, usize)> {
    let word = reader.word(at)?;
    let (figure, count) = match word.text.as_str() {
        "DN" | "SIZE" | "NW" | "ND" => {
            (reader.word(at + 1).filter(|_| reader.is_free(at..at + 2))?.text.as_str(), 2)
        }
        text => (text.strip_prefix("DN")?, 1),
    };
    let is_figure = legible(figure) > 0 && split_number(figure).1.is_empty();
    is_figure.then(|| (Size::Dn(figure.to_owned()), count))
}

/// `1/2`, `1 1/4"`, `1-1/4 IN`, `2"`. A date such as 3/16 beside a marked size is none.
fn inch_at(reader: &Reader<'_>, at: usize, clues: &Clues<'_>) -> Option<(Size, usize)> {
    let fraction = |at: usize| {
        let (above, below) = (reader.word(at)?, reader.word(at + 1).filter(|word| word.glue == '/')?);
        let is_fraction = is_inch_fraction(above, below) && reader.is_free(at..at + 2);
        is_fraction.then_some(f64::from(above.whole()?) / f64::from(below.whole()?))
    };
    let unit = |at: usize| {
        let is_inch = reader.word(at).is_some_and(|word| matches!(word.text.as_str(), "IN" | "INCH"));
        usize::from(is_inch && reader.is_free(at..at + 1))
    };
    let inches = |inches: f64| Size::Inch(Millimetres::from_inches(inches).get());
    if reader.is_behind_worn(at) || (reader.word(at)?.glue == '/' && reader.unread_before(at).is_some()) {
        return None;
    }
    let whole = reader.word(at)?.number().filter(|number| *number > 0.0 && *number <= 8.0);
    let follows_directly = reader.word(at + 1).is_some_and(|word| matches!(word.glue, ' ' | '-'));
    if let (Some(whole), Some(part), true) = (whole, fraction(at + 1), follows_directly) {
        // Hose sizes stop at a few inches: a larger whole number before a fraction is another mark.
        if whole.fract() == 0.0 && whole <= 4.0 {
            return Some((inches(whole + part), 3 + unit(at + 3)));
        }
    }
    if let Some(part) = fraction(at) {
        let marked = unit(at + 2);
        // Where the size may have worn away, a fraction that can be a month and a year may be one.
        let can_be_year = reader.word(at + 1).is_some_and(|below| below.text.len() == 2);
        let is_date = marked == 0
            && clues.made.is_empty()
            && (!clues.sizes.is_empty() || (clues.is_worn && can_be_year));
        return (!is_date).then(|| (inches(part), 2 + marked));
    }
    match (whole, unit(at + 1)) {
        (Some(whole), 1) => Some((inches(whole), 2)),
        _ => None,
    }
}

/// A number behind a dash: a dash size where it stands apart or behind a type of the 100R series, a
/// nominal diameter where it has a decimal, and either elsewhere.
fn dash_at(reader: &Reader<'_>, at: usize, clues: &Clues<'_>) -> Option<Size> {
    let word = reader.word(at).filter(|word| word.glue == '-' && !reader.is_part_number(at))?;
    if reader.is_behind_worn(at) || reader.word(at + 1).is_some_and(|next| next.glue == '/') {
        return None;
    }
    if word.number().is_some_and(|number| number.fract() > 0.0) && clues.sizes.is_empty() {
        return Some(Size::Dn(word.text.clone()));
    }
    let number = word.whole().filter(|number| (1..=128).contains(number))?;
    let behind_100r = clues
        .kinds
        .iter()
        .any(|kind| kind.words.end == at && kind.names.iter().all(|name| name.starts_with("100R")));
    if word.apart || behind_100r {
        return Some(Size::Dash(number as u16));
    }
    clues.sizes.is_empty().then_some(Size::Bare(number))
}

/// Bare numbers behind the type: the first is its size, one that the type is rated at in bar its
/// pressure, and so is the last number of a GOST mark, in MPa.
fn take_bare_numbers(reader: &mut Reader<'_>, clues: &mut Clues<'_>, names: &Names<'_>) {
    let is_gost =
        clues.standards.iter().any(|mention| mention.names.iter().all(|name| name.starts_with("GOST")));
    let Some(kind) = clues.kinds.first().cloned() else { return };
    for at in reader.free().filter(|&at| at >= kind.words.end) {
        let Some(word) = reader.word(at) else { continue };
        let Some(number) = word.number() else { continue };
        let is_front = reader.is_free(at..at + 2) && reader.word(at + 1).is_some_and(|next| next.glue == '/');
        let is_back = word.glue == '/' && reader.unread_before(at).is_some();
        let is_of_two = is_front || is_back;
        let is_burst = reader.unread_before(at).is_some_and(pressure::is_no_working_pressure);
        if reader.is_behind_worn(at) || reader.is_part_number(at) || is_of_two || is_burst {
            continue;
        }
        let can_be_pressure =
            reader.can_be_followed_by(at, &pressure::UNIT_NAMES) && names.can_be_pressure(&kind, number);
        let can_be_length = reader.can_be_followed_by(at, &["IN", "INCH", "MM"]);
        let size = word.whole().filter(|number| {
            clues.sizes.is_empty() && (2..=128).contains(number) && !can_be_pressure && !can_be_length
        });
        if let Some(size) = size {
            clues.sizes.push(Size::Bare(size));
            reader.take(at..at + 1);
        } else if clues.pressure.is_none() && !clues.is_worn {
            let unit_bar = if is_gost && word.glue == '-' { 10.0 } else { 1.0 };
            if names.is_rated(&kind, number * unit_bar) {
                clues.pressure = Some(Pressure::of_type(number * unit_bar));
                reader.take(at..at + 1);
            }
        }
    }
}
