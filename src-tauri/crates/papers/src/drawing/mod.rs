//! A drawing: operations in millimetres from the top left, black on white, and their exporters.

pub(crate) mod font;
mod pdf;
mod png;
mod svg;

pub use font::Weight;
pub use pdf::to_pdf;

use thiserror::Error;

/// Something drawn on a page or label of that size.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing {
    /// Width in mm.
    pub width_mm: f64,
    /// Height in mm.
    pub height_mm: f64,
    /// What is drawn, in order.
    pub ops: Vec<Op>,
}

/// One thing drawn. Lengths in mm, y downwards.
#[derive(Debug, Clone, PartialEq)]
pub enum Op {
    /// A line through points, dashed where a dash (drawn, left out) is given.
    Line {
        /// The points.
        points: Vec<(f64, f64)>,
        /// Its width.
        width: f64,
        /// Drawn and left out lengths in turn.
        dash: Option<(f64, f64)>,
    },
    /// A rectangle: filled, or its outline where a line width is given.
    Rect {
        /// Left.
        x: f64,
        /// Top.
        y: f64,
        /// Width.
        width: f64,
        /// Height.
        height: f64,
        /// Width of the outline; none fills it.
        line: Option<f64>,
    },
    /// One line of text.
    Text {
        /// Where its anchor stands.
        x: f64,
        /// The baseline.
        y: f64,
        /// Size of the font (its em).
        size: f64,
        /// Regular or bold.
        weight: Weight,
        /// Which part of the text `x` is.
        anchor: Anchor,
        /// The text.
        text: String,
    },
    /// The dark modules of a square code, without its quiet zone.
    Modules {
        /// Left.
        x: f64,
        /// Top.
        y: f64,
        /// Side of one module.
        module: f64,
        /// Modules in a row.
        side: usize,
        /// Row by row, true is dark.
        dark: Vec<bool>,
    },
}

/// Which part of a text stands at its `x`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Anchor {
    /// Its start.
    Start,
    /// Its middle.
    Middle,
    /// Its end.
    End,
}

/// How a picture is inked.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ink {
    /// Black and white only, as the dots of a label printer are.
    Dots,
    /// Grey at the edges, as a screen shows it best.
    Smooth,
}

/// Why a drawing could not be written.
#[derive(Debug, Error)]
pub enum DrawingError {
    /// More pixels than is sensible.
    #[error(
        "a picture of {width} x {height} pixels is too large, or empty; up to {limit} million pixels are drawn: choose fewer dots per inch"
    )]
    Pixels {
        /// Width.
        width: f64,
        /// Height.
        height: f64,
        /// The most, in millions.
        limit: u32,
    },
    /// The writer of the format refused.
    #[error("the {format} could not be written: {cause}")]
    Format {
        /// Which format.
        format: &'static str,
        /// What it said.
        cause: String,
    },
}

impl Drawing {
    /// An empty one of that size.
    pub fn new(width_mm: f64, height_mm: f64) -> Self {
        Self { width_mm, height_mm, ops: Vec::new() }
    }

    /// As an SVG document, sized in mm. Its text is text, so it can be searched and copied.
    pub fn to_svg(&self) -> String {
        svg::write(self)
    }

    /// As a PNG picture at so many dots per inch, which it also says in its header.
    ///
    /// # Errors
    /// When that would be too many pixels.
    pub fn to_png(&self, dpi: f64, ink: Ink) -> Result<Vec<u8>, DrawingError> {
        png::write(self, dpi, ink)
    }
}

/// The pages below each other as one drawing, parted by a line.
pub fn stacked(pages: &[Drawing]) -> Drawing {
    let width = pages.iter().map(|page| page.width_mm).fold(1.0, f64::max);
    let mut all = Drawing::new(width, pages.iter().map(|page| page.height_mm).sum::<f64>().max(1.0));
    let mut top = 0.0;
    for page in pages {
        if top > 0.0 {
            all.ops.push(Op::Line { points: vec![(0.0, top), (width, top)], width: 0.3, dash: None });
        }
        all.ops.extend(page.ops.iter().map(|op| op.moved(0.0, top)));
        top += page.height_mm;
    }
    all
}

impl Op {
    /// The same, so far to the right and down.
    pub fn moved(&self, right: f64, down: f64) -> Self {
        let mut moved = self.clone();
        match &mut moved {
            Op::Line { points, .. } => points.iter_mut().for_each(|(x, y)| {
                *x += right;
                *y += down;
            }),
            Op::Rect { x, y, .. } | Op::Text { x, y, .. } | Op::Modules { x, y, .. } => {
                *x += right;
                *y += down;
            }
        }
        moved
    }
}

/// Where a text starts, its anchor taken into account.
pub(crate) fn text_start(x: f64, size: f64, weight: Weight, anchor: Anchor, text: &str) -> f64 {
    let width = font::width(text, size, weight);
    match anchor {
        Anchor::Start => x,
        Anchor::Middle => x - width / 2.0,
        Anchor::End => x - width,
    }
}

/// The dark runs of a code, row by row: column, row and length in modules.
fn runs(side: usize, dark: &[bool]) -> Vec<(usize, usize, usize)> {
    let mut runs = Vec::new();
    for (row, modules) in dark.chunks(side.max(1)).enumerate() {
        let mut column = 0;
        for run in modules.chunk_by(|a, b| a == b) {
            if run.first() == Some(&true) {
                runs.push((column, row, run.len()));
            }
            column += run.len();
        }
    }
    runs
}
