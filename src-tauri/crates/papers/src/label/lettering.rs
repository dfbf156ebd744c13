//! The words of a label: a tag's code and its facts, set as large as a room allows.

use super::facts::{Fact, Line};
use crate::drawing::font::{self, CAP_HEIGHT};
use crate::{Anchor, Op, Weight};

/// Smallest letters, em in mm: lower case letters are then 1 mm high. European food labelling
/// (Regulation 1169/2011) takes 0.9 mm as the least that is read on a small label.
pub(super) const SMALLEST_EM: f64 = 1.8;

/// Letters that are read with ease, em in mm.
pub(super) const EASY_EM: f64 = 2.3;

/// Largest letters of facts, em in mm.
const LARGEST_EM: f64 = 4.0;

/// The code is at least that large, em in mm: it is read out and typed.
const CODE_SMALLEST_EM: f64 = 3.2;

/// And at most that large.
const CODE_LARGEST_EM: f64 = 8.0;

/// From baseline to baseline, in em.
const LEADING: f64 = 1.2;

/// Depth of a letter's tail below the baseline, in em.
const TAIL: f64 = 0.24;

/// What the letters of a label must be.
#[derive(Debug, Clone, Copy)]
pub(super) struct Demand {
    /// Smallest letters, em in mm.
    pub(super) least_em: f64,
    /// Which facts must stand in words.
    pub(super) keep: Keep,
}

/// Which facts must stand in words, whatever else gives way.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Keep {
    /// All but the reminder that the maker comes first.
    All,
    /// What a person needs without a phone; the QR code has the rest.
    Needed,
    /// What warns: not proved, duties, reprint.
    Warnings,
}

/// Room for words, in mm.
#[derive(Debug, Clone, Copy)]
pub(super) struct Room {
    pub(super) x: f64,
    pub(super) y: f64,
    pub(super) width: f64,
    pub(super) height: f64,
}

/// Words measured once, to be set at any size.
pub(super) struct Lettering {
    /// The code on one line, on two and on three, with the width of the widest at an em of 1.
    code: [(Vec<String>, f64); 3],
    facts: Vec<Measured>,
}

/// A fact and the widths of its words at an em of 1.
struct Measured {
    fact: Fact,
    weight: Weight,
    words: Vec<(String, f64)>,
    space: f64,
}

impl Measured {
    fn new(line: Line) -> Self {
        let width = |text: &str| font::width(text, 1.0, line.weight);
        let words = line.text.split_whitespace().map(|word| (word.to_owned(), width(word))).collect();
        Self { fact: line.fact, weight: line.weight, words, space: width(" ") }
    }

    /// In lines no wider than that many em. None where a word is wider: a word is never broken on
    /// a label, it would be read as two.
    fn broken(&self, width: f64) -> Option<Vec<String>> {
        let mut lines: Vec<String> = Vec::new();
        let mut used = 0.0;
        for (word, wide) in &self.words {
            if *wide > width {
                return None;
            }
            match lines.last_mut() {
                Some(line) if used + self.space + wide <= width => {
                    line.push(' ');
                    line.push_str(word);
                    used += self.space + wide;
                }
                _ => {
                    lines.push(word.clone());
                    used = *wide;
                }
            }
        }
        Some(lines)
    }
}

impl Lettering {
    pub(super) fn new([first, second, check]: [String; 3], facts: Vec<Line>) -> Self {
        let one = vec![format!("{first}-{second}-{check}")];
        let two = vec![first.clone(), format!("{second}-{check}")];
        let three = vec![first, second, check];
        let measured = |lines: Vec<String>| {
            let widest = lines.iter().map(|line| font::width(line, 1.0, Weight::Bold)).fold(0.0, f64::max);
            (lines, widest)
        };
        Self { code: [one, two, three].map(measured), facts: facts.into_iter().map(Measured::new).collect() }
    }

    /// Code and facts within a room, letters as large as possible; facts that may be left off go
    /// one by one, the least important first.
    pub(super) fn set(&self, room: Room, demand: Demand) -> Option<(Vec<Op>, Vec<Fact>)> {
        let mut facts: Vec<&Measured> = self.facts.iter().collect();
        let mut left_off = Vec::new();
        loop {
            // What has no room at the smallest letters has none at larger ones.
            if let Some(smallest) = self.set_at(room, &facts, demand.least_em) {
                let sizes = (0..).map(|step| LARGEST_EM - 0.1 * f64::from(step));
                let mut larger = sizes.take_while(|em| *em > demand.least_em);
                let ops = larger.find_map(|em| self.set_at(room, &facts, em)).unwrap_or(smallest);
                return Some((ops, left_off));
            }
            let spare = facts.iter().rposition(|fact| may_be_left_off(fact.fact, demand.keep))?;
            left_off.push(facts.remove(spare).fact);
        }
    }

    /// Code and facts at that size of letters, if they have room.
    fn set_at(&self, room: Room, facts: &[&Measured], em: f64) -> Option<Vec<Op>> {
        let (code, code_em) = self.code(room.width, em)?;
        let mut lines = Vec::new();
        for fact in facts {
            lines.extend(fact.broken(room.width / em)?.into_iter().map(|line| (line, fact.weight)));
        }
        let mut ops = Vec::new();
        let mut y = room.y;
        let text = |ops: &mut Vec<Op>, y, size, weight, text| {
            ops.push(Op::Text { x: room.x, y, size, weight, anchor: Anchor::Start, text });
        };
        for line in code {
            y += CAP_HEIGHT * code_em;
            text(&mut ops, y, code_em, Weight::Bold, line.clone());
            y += 0.3 * code_em;
        }
        y += 0.1 * em;
        ops.push(Op::Line { points: vec![(room.x, y), (room.x + room.width, y)], width: 0.3, dash: None });
        // The first baseline as far below the rule as lines are from each other, and a little.
        y += 0.2 + LEADING * em;
        let bottom = y + (lines.len() as f64 - 1.0) * LEADING * em + TAIL * em;
        if bottom > room.y + room.height {
            return None;
        }
        for (index, (line, weight)) in lines.into_iter().enumerate() {
            text(&mut ops, y + index as f64 * LEADING * em, em, weight, line);
        }
        Some(ops)
    }

    /// The code on one line where that is wide enough at twice the facts' size, else on two, and on three only where it
    /// could not be typed otherwise.
    fn code(&self, width: f64, em: f64) -> Option<(&[String], f64)> {
        let wanted = (2.0 * em).clamp(CODE_SMALLEST_EM, CODE_LARGEST_EM);
        let [one, two, three] =
            self.code.each_ref().map(|(lines, widest)| (lines.as_slice(), (width / widest).min(wanted)));
        let enough = [(one, wanted), (two, CODE_SMALLEST_EM), (three, CODE_SMALLEST_EM)];
        enough.into_iter().find(|((_, size), least)| size >= least).map(|(lines, _)| lines)
    }
}

/// What warns is never left off, and what no QR code has neither, unless the label is for the code alone.
fn may_be_left_off(fact: Fact, keep: Keep) -> bool {
    match fact {
        Fact::NotProved | Fact::Duty | Fact::Reprint => false,
        Fact::Hose | Fact::Pressure | Fact::Proved => keep == Keep::Warnings,
        Fact::Length | Fact::End | Fact::Made | Fact::Adapter | Fact::Catalogue => keep != Keep::All,
        Fact::Caution => true,
    }
}
