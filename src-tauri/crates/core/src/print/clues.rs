//! What the words say, before the tables are asked which hose it can be.

use super::date::{Made, four_digits, is_inch_fraction, month_and_year, plain};
use super::names::{Mention, Names};
use super::words::{Word, can_be, is_worn, legible, split_number};
use crate::quantity::{Bar, Millimetres};
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

/// A working pressure.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pressure {
    /// The figure, worn letters included.
    pub(super) figure: String,
    /// Bar in one unit of the figure.
    pub(super) unit_bar: f64,
    /// Whether it is called working pressure.
    is_marked: bool,
}

impl Pressure {
    /// The pressure, where every digit can be read. Figures in psi are rounded to a whole bar.
    pub(super) fn bar(&self) -> Option<Bar> {
        let bar = self.figure.parse::<f64>().ok()? * self.unit_bar;
        let is_psi = self.unit_bar == Bar::PER_PSI;
        bar.is_finite().then_some(Bar(if is_psi { bar.round() } else { bar }))
    }
}

/// Everything a print says.
#[derive(Debug, Default)]
pub(super) struct Clues<'c> {
    pub(super) standards: Vec<Mention<'c>>,
    pub(super) kinds: Vec<Mention<'c>>,
    pub(super) sizes: Vec<Size>,
    pub(super) pressure: Option<Pressure>,
    pub(super) made: Option<Made>,
    pub(super) cover: Option<Cover>,
    pub(super) unread: String,
    /// Whether any letter of the print is worn.
    pub(super) is_worn: bool,
}

const UNITS: [(&str, f64); 3] = [("BAR", 1.0), ("MPA", 10.0), ("PSI", Bar::PER_PSI)];
/// Words behind or before a figure that is no working pressure (forbidden on SAE hose, and met).
const NOT_WORKING: [&str; 7] = ["BP", "BURST", "PROOF", "TEST", "TP", "PP", "DESIGN"];
const WORKING: [&str; 4] = ["WP", "WORKING", "PN", "MAX"];
/// Words that say nothing more.
const FILLERS: [&str; 10] =
    ["WP", "MAX", "MIN", "WORKING", "PRESSURE", "DIN", "HOSE", "HYDRAULIC", "ID", "TYPE"];

struct Reader<'w> {
    words: &'w [Word],
    read: Vec<bool>,
}

impl<'w> Reader<'w> {
    fn is_free(&self, words: std::ops::Range<usize>) -> bool {
        self.read.get(words).is_some_and(|read| !read.contains(&true))
    }

    fn take(&mut self, words: std::ops::Range<usize>) {
        if let Some(read) = self.read.get_mut(words) {
            read.fill(true);
        }
    }

    fn free(&self) -> impl Iterator<Item = usize> + use<'w> {
        let free: Vec<usize> = (0..self.words.len()).filter(|&at| !self.read[at]).collect();
        free.into_iter()
    }

    fn word(&self, at: usize) -> Option<&'w Word> {
        self.words.get(at)
    }
}

/// Reads the words. What is certain is taken first, what is ambiguous from the rest.
pub(super) fn clues<'c>(words: &[Word], names: &Names<'c>) -> Clues<'c> {
    let mut reader = Reader { words, read: vec![false; words.len()] };
    let mut clues = Clues {
        made: take_plain_date(&mut reader),
        is_worn: words.iter().any(|word| is_worn(&word.text)),
        ..Clues::default()
    };
    clues.standards = take_mentions(&mut reader, |words, at| names.standard_at(words, at));
    take_parts(&mut reader, &clues.standards);
    clues.pressure = take_pressure(&mut reader);
    clues.kinds = take_mentions(&mut reader, |words, at| names.kind_at(words, at));
    clues.cover = take_cover(&mut reader);
    take_marked_sizes(&mut reader, &mut clues);
    take_bare_numbers(&mut reader, &mut clues, names);
    if clues.made.is_none() {
        clues.made = take_late_date(&mut reader, clues.standards.is_empty() && clues.kinds.is_empty());
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

fn take_plain_date(reader: &mut Reader<'_>) -> Option<Made> {
    let (at, (made, count)) = (0..reader.words.len()).find_map(|at| Some((at, plain(reader.words, at)?)))?;
    reader.take(at..at + count);
    Some(made)
}

fn take_late_date(reader: &mut Reader<'_>, on_ferrule: bool) -> Option<Made> {
    let free = |reader: &Reader<'_>, at: usize, count: usize| reader.is_free(at..at + count);
    for at in reader.free() {
        if let Some((made, count)) =
            month_and_year(reader.words, at).filter(|(_, count)| free(reader, at, *count))
        {
            reader.take(at..at + count);
            return Some(made);
        }
        if let Some(made) = reader.word(at).and_then(|word| four_digits(word, on_ferrule)) {
            reader.take(at..at + 1);
            return Some(made);
        }
    }
    None
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

/// The part of a standard, `-4` of `DIN 20022-4`: one digit directly behind the standard's number. It is no size.
fn take_parts(reader: &mut Reader<'_>, standards: &[Mention<'_>]) {
    for at in standards.iter().map(|standard| standard.words.end) {
        let is_numbered =
            reader.word(at - 1).is_some_and(|number| number.text.ends_with(|c: char| c.is_ascii_digit()));
        let is_part =
            |word: &Word| word.glue == '-' && !word.apart && word.is_digits() && word.text.len() == 1;
        if is_numbered && reader.is_free(at..at + 1) && reader.word(at).is_some_and(is_part) {
            reader.take(at..at + 1);
        }
    }
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

/// A figure with its unit that begins at that word, and the number of words it takes.
fn figure_at(reader: &Reader<'_>, at: usize) -> Option<(String, f64, usize)> {
    let word = reader.word(at)?;
    let (figure, unit) = split_number(&word.text);
    if !figure.contains(|letter: char| letter.is_ascii_digit()) {
        return None;
    }
    let (unit, count) = if unit.is_empty() { (reader.word(at + 1)?.text.as_str(), 2) } else { (unit, 1) };
    let unit_bar = UNITS.iter().find(|(name, _)| legible(unit) >= 2 && can_be(unit, name))?.1;
    Some((figure.to_owned(), unit_bar, count))
}

/// The working pressure: burst figures are never taken for it. Of several the one that is called
/// so, in bar before MPa before psi, and of two alike the lower.
fn take_pressure(reader: &mut Reader<'_>) -> Option<Pressure> {
    let mut found: Vec<Pressure> = Vec::new();
    // The first word that can still speak of the figure that follows.
    let mut from = 0;
    for at in 0..reader.words.len() {
        let Some((figure, unit_bar, count)) =
            figure_at(reader, at).filter(|(.., count)| reader.is_free(at..at + count))
        else {
            continue;
        };
        let before = &reader.words[from.max(at.saturating_sub(3))..at];
        let behind = reader.word(at + count).filter(|_| {
            reader
                .word(at + count + 1)
                .is_none_or(|next| !next.text.starts_with(|letter: char| letter.is_ascii_digit()))
        });
        let mark = before.iter().rev().find_map(mark).or_else(|| behind.and_then(mark));
        reader.take(at..at + count);
        from = at + count;
        if mark != Some(false) {
            found.push(Pressure { figure, unit_bar, is_marked: mark == Some(true) });
        }
    }
    let rank = |pressure: &Pressure| UNITS.iter().position(|(_, unit)| *unit == pressure.unit_bar);
    found.into_iter().min_by(|a, b| {
        let figure = |pressure: &Pressure| pressure.bar().map_or(f64::INFINITY, Bar::get);
        b.is_marked.cmp(&a.is_marked).then(rank(a).cmp(&rank(b))).then(figure(a).total_cmp(&figure(b)))
    })
}

/// Whether a word calls a figure a working pressure, or says that it is none.
fn mark(word: &Word) -> Option<bool> {
    if NOT_WORKING.contains(&word.text.as_str()) {
        Some(false)
    } else {
        WORKING.contains(&word.text.as_str()).then_some(true)
    }
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
        let is_date = marked == 0 && clues.made.is_none() && !clues.sizes.is_empty();
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
    let word = reader.word(at).filter(|word| word.glue == '-')?;
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
        let size = word.whole().filter(|number| clues.sizes.is_empty() && (2..=128).contains(number));
        if let Some(size) = size {
            clues.sizes.push(Size::Bare(size));
            reader.take(at..at + 1);
        } else if clues.pressure.is_none() {
            let unit_bar = if is_gost && word.glue == '-' { 10.0 } else { 1.0 };
            if names.is_rated(&kind, number * unit_bar) {
                clues.pressure = Some(Pressure { figure: word.text.clone(), unit_bar, is_marked: true });
                reader.take(at..at + 1);
            }
        }
    }
}
