//! Which of the figures with a unit of pressure is the working pressure.

use super::reader::Reader;
use super::words::{Word, can_be, is_worn, legible, split_number};
use crate::quantity::Bar;

/// A printed pressure is another where they differ by no more than this share, or bar: figures in
/// psi and bar are rounded apart.
const SAME_SHARE: f64 = 0.02;
const SAME_BAR: f64 = 3.0;
/// The same for burst figures, which are given to more digits.
const BURST_SHARE: f64 = 0.005;

/// The highest pressure that is printed, bar: burst figures of the smallest hose lie below it.
const HIGHEST_BAR: f64 = 3000.0;

/// Hydraulic hose, suction hose too, is rated above this, bar. Common practice.
const LOWEST_BAR: f64 = 5.0;

/// The highest figure in bar or MPa that is printed with tenths.
const HIGHEST_IN_TENTHS: f64 = 100.0;

/// Units, in the order in which one is read where a pressure is given in several: the tables are in
/// bar, and psi are rounded.
pub(super) const UNITS: [(&str, f64); 3] = [("BAR", 1.0), ("MPA", 10.0), ("PSI", Bar::PER_PSI)];

/// Their names.
pub(super) const UNIT_NAMES: [&str; 3] = [UNITS[0].0, UNITS[1].0, UNITS[2].0];

/// Words beside a figure that is no working pressure (forbidden on SAE hose, and met).
const NOT_WORKING: [&str; 10] =
    ["BP", "MBP", "BURST", "BURSTING", "PROOF", "TEST", "TESTED", "TP", "PP", "DESIGN"];
/// Words beside a working pressure.
const WORKING: [&str; 3] = ["WP", "WORKING", "PN"];
/// Said of either; alone it is said of the working pressure.
const MOST: [&str; 2] = ["MAX", "MAXIMUM"];

/// Whether two figures are one pressure, as differently rounded figures allow.
pub(crate) fn is_one_pressure(printed: f64, bar: f64) -> bool {
    (printed - bar).abs() <= SAME_BAR.max(SAME_SHARE * bar)
}

/// A working pressure.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pressure {
    /// What the figure can be, bar, lowest first: one where every digit can be read.
    readings: Vec<f64>,
    unit_bar: f64,
    /// Whether it is called working pressure. One that is not may be a burst figure.
    pub(super) is_marked: bool,
}

impl Pressure {
    /// A figure that can be nothing but the working pressure, in bar.
    pub(super) fn of_type(bar: f64) -> Self {
        Self { readings: vec![bar], unit_bar: 1.0, is_marked: true }
    }

    /// The pressure, where every digit can be read. Figures in psi are rounded to a whole bar.
    pub(super) fn bar(&self) -> Option<Bar> {
        let [bar] = self.readings[..] else { return None };
        let is_psi = self.unit_bar == Bar::PER_PSI;
        Some(Bar(if is_psi { bar.round() } else { bar }))
    }

    /// Whether it can be that pressure, as differently rounded figures allow.
    pub(super) fn can_be(&self, bar: f64) -> bool {
        self.is_within(bar, SAME_BAR.max(SAME_SHARE * bar))
    }

    /// Whether it can be that burst pressure.
    pub(super) fn can_be_burst(&self, bar: f64) -> bool {
        self.is_within(bar, SAME_BAR.max(BURST_SHARE * bar))
    }

    fn is_within(&self, bar: f64, most: f64) -> bool {
        let from = self.readings.partition_point(|reading| *reading < bar - most);
        self.readings.get(from).is_some_and(|reading| *reading <= bar + most)
    }

    fn lowest(&self) -> f64 {
        self.readings.first().copied().unwrap_or(0.0)
    }

    fn highest(&self) -> f64 {
        self.readings.last().copied().unwrap_or(f64::INFINITY)
    }

    /// Whether it is the higher one, whatever the worn digits are.
    fn is_above(&self, other: &Self) -> bool {
        self.lowest() > other.highest()
    }

    fn is_one_with(&self, other: &Self) -> bool {
        other.readings.iter().any(|bar| self.can_be(*bar))
    }

    fn rank(&self) -> Option<usize> {
        UNITS.iter().position(|(_, unit)| *unit == self.unit_bar)
    }
}

/// A figure with its unit, where it stands, and what the words beside it say of it.
struct Figure {
    pressure: Pressure,
    words: std::ops::Range<usize>,
    is_working: Option<bool>,
}

/// The working pressure: burst figures are never taken for it. Of several the one that is called so;
/// among those that are not, the lowest, because burst and proof figures are multiples of it. One
/// pressure in several units is read in bar before MPa before psi. Nothing where worn digits leave
/// open which of two figures is the lower.
pub(super) fn take(reader: &mut Reader<'_>) -> Option<Pressure> {
    let mut figures = figures(reader);
    for figure in &figures {
        reader.take(figure.words.clone());
    }
    mark(reader, &mut figures);
    let burst: Vec<Pressure> = figures
        .iter()
        .filter(|figure| figure.is_working == Some(false))
        .map(|f| f.pressure.clone())
        .collect();
    let mut left: Vec<Pressure> =
        figures.into_iter().filter(|figure| figure.is_working != Some(false)).map(|f| f.pressure).collect();
    left.retain(|pressure| pressure.is_marked || !burst.iter().any(|burst| pressure.is_one_with(burst)));
    if left.iter().any(|pressure| pressure.is_marked) {
        left.retain(|pressure| pressure.is_marked);
    }
    let lowest = left.iter().min_by(|a, b| a.highest().total_cmp(&b.highest()))?.clone();
    left.retain(|pressure| !pressure.is_above(&lowest) || pressure.is_one_with(&lowest));
    let is_whole = left.iter().all(|pressure| pressure.bar().is_some());
    let is_one = left.len() == 1 || (is_whole && left.iter().all(|pressure| pressure.is_one_with(&lowest)));
    left.into_iter().filter(|_| is_one).min_by_key(Pressure::rank)
}

fn figures(reader: &Reader<'_>) -> Vec<Figure> {
    let mut figures: Vec<Figure> = Vec::new();
    for at in 0..reader.words.len() {
        let behind_last = figures.last().is_none_or(|last| last.words.end <= at);
        if let Some((pressure, count)) = figure_at(reader, at).filter(|_| behind_last)
            && reader.is_free(at..at + count)
        {
            figures.push(Figure { pressure, words: at..at + count, is_working: None });
        }
    }
    figures
}

/// A figure with its unit that begins at that word, and the number of words it takes.
fn figure_at(reader: &Reader<'_>, at: usize) -> Option<(Pressure, usize)> {
    let word = reader.word(at)?;
    let (figure, unit) = split_number(&word.text);
    if !figure.contains(|letter: char| letter.is_ascii_digit()) {
        return None;
    }
    let (unit, count) = if unit.is_empty() { (reader.word(at + 1)?.text.as_str(), 2) } else { (unit, 1) };
    let unit_bar = UNITS.iter().find(|(name, _)| legible(unit) >= 2 && can_be(unit, name))?.1;
    let is_worn = reader.words.iter().any(|word| is_worn(&word.text) || is_no_decimal(&word.text));
    let readings = readings(figure, unit_bar, is_worn);
    let is_marked = false;
    (!readings.is_empty()).then_some((Pressure { readings, unit_bar, is_marked }, count))
}

/// Whether its full stop stands for a worn letter: no print gives hundreds with tenths (100.18).
fn is_no_decimal(text: &str) -> bool {
    text.split_once('.').is_some_and(|(whole, _)| whole.len() > 2)
}

/// What a figure can be, bar: whole numbers, and small ones in tenths too, as they are printed. A full
/// stop between digits stands for a worn digit too, where letters are worn or no hose is rated so
/// low: 3.0 bar can be 350. Of MPa it is the point of a decimal.
fn readings(figure: &str, unit_bar: f64, is_print_worn: bool) -> Vec<f64> {
    let written = figure.parse::<f64>().ok().map(|number| number * unit_bar).filter(|bar| bar.is_finite());
    let is_low = written.is_some_and(|bar| bar < LOWEST_BAR);
    let is_open = figure.contains('.') && unit_bar != 10.0 && (is_print_worn || is_low);
    if !is_worn(figure) && !is_open {
        return written.into_iter().collect();
    }
    let figure = &figure.replace('.', "?");
    let highest = (HIGHEST_BAR / unit_bar) as u32;
    let whole = (1..=highest).filter(|number| can_be(figure, &number.to_string())).map(f64::from);
    let most_tenths = if unit_bar == Bar::PER_PSI { 0 } else { (HIGHEST_IN_TENTHS * 10.0) as u32 };
    let tenths = (1..=most_tenths)
        .map(|tenths| f64::from(tenths) / 10.0)
        .filter(|number| number.fract() > 0.0 && can_be(figure, &number.to_string()));
    let mut readings: Vec<f64> = whole.chain(tenths).map(|number| number * unit_bar).collect();
    readings.sort_by(f64::total_cmp);
    readings
}

/// What a stretch of words says of the figures beside it.
#[derive(Debug, Clone, Copy)]
struct Said {
    /// Whether a word right behind the figure before calls that one the working pressure.
    is_working_before: bool,
    /// Whether a word right before the figure behind does.
    is_working_behind: bool,
    /// Whether any word says that a figure is none.
    is_not: bool,
}

fn said(reader: &Reader<'_>, words: std::ops::Range<usize>) -> Said {
    let unread: Vec<&Word> = words
        .filter(|&at| reader.is_free(at..at + 1) && !is_factor(reader, at))
        .filter_map(|at| reader.word(at))
        .collect();
    let is_not = unread.iter().any(|word| is_no_working_pressure(word));
    Said {
        is_working_before: is_working(unread.iter().copied(), is_not),
        is_working_behind: is_working(unread.iter().rev().copied(), is_not),
        is_not,
    }
}

/// The DESIGN of a design factor, such as 4:1, which is no pressure.
fn is_factor(reader: &Reader<'_>, at: usize) -> bool {
    let is = |at: usize, text: &str| reader.word(at).is_some_and(|word| word.text == text);
    is(at, "DESIGN") && is(at + 1, "FACTOR")
}

/// Whether a word says that the figure beside it is no working pressure.
pub(super) fn is_no_working_pressure(word: &Word) -> bool {
    NOT_WORKING.contains(&word.text.as_str())
}

/// Whether the first words, from the figure on, call it a working pressure; another figure between
/// whose unit has worn away takes the words for itself.
fn is_working<'w>(words: impl Iterator<Item = &'w Word>, is_not: bool) -> bool {
    let mut is_most = false;
    for word in words {
        match word.text.as_str() {
            text if WORKING.contains(&text) => return true,
            text if MOST.contains(&text) => is_most = true,
            "PRESSURE" | "MIN" => {}
            _ => break,
        }
    }
    is_most && !is_not
}

/// Marks the figures by the words before the first, behind the last and between them. A word between
/// two can be said of either: a burst figure is always the higher, a working pressure the lower.
fn mark(reader: &Reader<'_>, figures: &mut [Figure]) {
    let (Some(first), Some(last)) = (figures.first(), figures.last()) else { return };
    let before = said(reader, 0..first.words.start);
    let behind = said(reader, last.words.end..reader.words.len());
    let between: Vec<Said> =
        figures.windows(2).map(|pair| said(reader, pair[0].words.end..pair[1].words.start)).collect();
    let end = figures.len() - 1;
    say(&mut figures[0], before.is_working_behind, before.is_not);
    for (at, said) in between.into_iter().enumerate() {
        let (left, right) = (&figures[at].pressure, &figures[at + 1].pressure);
        let (is_left_higher, is_right_higher) = (left.is_above(right), right.is_above(left));
        // Of two that can not be told apart neither is working where one of them is not.
        let is_lower = |is_other_higher: bool| is_other_higher || !said.is_not;
        let is_either = said.is_working_before && said.is_working_behind;
        let is_left = said.is_working_before && (!is_either || !is_left_higher);
        let is_right = said.is_working_behind && (!is_either || !is_right_higher);
        say(&mut figures[at], is_left && is_lower(is_right_higher), said.is_not && !is_right_higher);
        say(&mut figures[at + 1], is_right && is_lower(is_left_higher), said.is_not && !is_left_higher);
    }
    say(&mut figures[end], behind.is_working_before, behind.is_not);
}

/// What was said of it first, stands: a mark is put before a figure oftener than behind. A working
/// pressure is called so right beside the figure, which no word farther off undoes.
fn say(figure: &mut Figure, is_working: bool, is_not: bool) {
    if figure.is_working.is_none() && (is_working || is_not) {
        figure.is_working = Some(is_working);
        figure.pressure.is_marked = is_working;
    }
}
