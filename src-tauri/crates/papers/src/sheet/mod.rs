//! Sheets of paper: a build sheet, a certificate, a list of hoses. One content, laid out on pages
//! or written as plain text.

mod layout;
mod text;

use crate::Drawing;
use hosewright_words::Words;

/// What stands on a sheet. All texts come in the reader's language.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sheet {
    /// What the sheet is.
    pub title: String,
    /// What it is about, such as the tag's code; on every page.
    pub subject: String,
    /// Its parts in order.
    pub sections: Vec<Section>,
    /// Where it comes from: program, catalogue, date; on every page.
    pub footer: String,
}

/// A part of a sheet under its own heading.
#[derive(Debug, Clone, PartialEq)]
pub struct Section {
    /// Heading; may be empty.
    pub heading: String,
    /// What stands beneath.
    pub body: Body,
}

/// What a section holds.
#[derive(Debug, Clone, PartialEq)]
pub enum Body {
    /// Names and values.
    Facts(Vec<(String, String)>),
    /// A table; rows may be shorter than its head.
    Table {
        /// Names of the columns.
        head: Vec<String>,
        /// Rows.
        rows: Vec<Vec<String>>,
    },
    /// Steps in order, each with a box to tick.
    Steps(Vec<Step>),
    /// Plain paragraphs.
    Text(Vec<String>),
    /// A drawing no wider than the page leaves room for.
    Drawing {
        /// The drawing.
        drawing: Drawing,
        /// What plain text says in its place; empty leaves the section out there.
        said: String,
    },
}

/// A step and the cautions that belong to it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Step {
    /// What to do.
    pub text: String,
    /// What to mind while doing it; stands beneath the step.
    pub cautions: Vec<String>,
}

/// Paper sizes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// 210 x 297 mm (ISO 216).
    A4,
    /// 8 1/2 x 11 in (ANSI/ASME Y14.1).
    Letter,
}

impl Paper {
    /// Room between the margins, in mm.
    pub const fn room_mm(self) -> f64 {
        self.size_mm().0 - 2.0 * layout::MARGIN
    }

    /// Width and height in mm.
    pub const fn size_mm(self) -> (f64, f64) {
        match self {
            Paper::A4 => (210.0, 297.0),
            Paper::Letter => (215.9, 279.4),
        }
    }
}

impl Sheet {
    /// The sheet's pages. Write them with [`to_pdf`](crate::to_pdf) or one by one as pictures.
    pub fn pages(&self, paper: Paper, words: &Words) -> Vec<Drawing> {
        layout::pages(self, paper, words)
    }

    /// The sheet as plain text, no line longer than that many characters where words allow.
    pub fn to_text(&self, width: usize, words: &Words) -> String {
        text::write(self, width, words)
    }
}

#[cfg(test)]
pub(crate) mod example {
    use super::*;

    /// A sheet with every kind of section, its steps long enough for more than one page.
    pub(crate) fn sheet(steps: usize) -> Sheet {
        let text = |text: &str| text.to_owned();
        let section = |heading: &str, body| Section { heading: text(heading), body };
        let facts = vec![
            (text("Hose"), text("EN 853 2SN DN16")),
            (text("Overall length"), text("1240 mm, +12 −8 mm")),
        ];
        let table = Body::Table {
            head: vec![text("End"), text("Family"), text("Cut-off")],
            rows: vec![
                vec![
                    text("A"),
                    text("JIC 37 flare -10 female, 90° elbow with a drop of 55 mm"),
                    text("32.5 mm"),
                ],
                vec![text("B"), text("flange 62 -12")],
            ],
        };
        let step = |at: usize| Step {
            text: format!(
                "Step number {at}: push the hose on to the insertion mark and look whether it has moved."
            ),
            cautions: if at % 3 == 1 {
                vec![text("Keep fingers out of the dies; the press closes with tonnes of force.")]
            } else {
                vec![]
            },
        };
        Sheet {
            title: text("Build sheet"),
            subject: text("7KQ4M-2XR9D-D"),
            sections: vec![
                section("What it is", Body::Facts(facts)),
                section("Ends", table),
                section("Steps", Body::Steps((1..=steps).map(step).collect())),
                section("", Body::Text(vec![text("The maker's instructions come first.")])),
            ],
            footer: text("catalogue 5f0c1d2e"),
        }
    }
}
