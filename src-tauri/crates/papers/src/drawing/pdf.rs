//! Drawings as the pages of a PDF, with text that can be searched and copied.

use super::{Drawing, DrawingError, Op, Weight, font, runs, text_start};
use krilla::geom::{Path, PathBuilder, Point, Rect};
use krilla::metadata::Metadata;
use krilla::page::PageSettings;
use krilla::paint::{Fill, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph};
use krilla::{Document, SerializeSettings};

/// Points in a millimetre.
const POINTS: f64 = 72.0 / 25.4;

/// The drawings as one PDF, a page each.
///
/// # Errors
/// When a page has no size.
pub fn to_pdf(pages: &[Drawing], title: &str) -> Result<Vec<u8>, DrawingError> {
    let failed = |cause: String| DrawingError::Format { format: "PDF", cause };
    let fonts = Fonts::open().ok_or_else(|| failed("the bundled font can't be read".to_owned()))?;
    let mut document = Document::new_with(SerializeSettings::default());
    document.set_metadata(Metadata::new().title(title.to_owned()));
    for drawing in pages {
        let size = PageSettings::from_wh(points(drawing.width_mm), points(drawing.height_mm));
        let size = size.ok_or_else(|| {
            failed(format!("a page of {} x {} mm has no size", drawing.width_mm, drawing.height_mm))
        })?;
        let mut page = document.start_page_with(size);
        let mut surface = page.surface();
        for op in &drawing.ops {
            draw(&mut surface, op, &fonts);
        }
        surface.finish();
        page.finish();
    }
    document.finish().map_err(|error| failed(format!("{error:?}")))
}

struct Fonts {
    regular: Font,
    bold: Font,
}

impl Fonts {
    fn open() -> Option<Self> {
        let open = |weight| Font::new(font::bytes(weight).into(), 0);
        Some(Self { regular: open(Weight::Regular)?, bold: open(Weight::Bold)? })
    }

    fn of(&self, weight: Weight) -> Font {
        match weight {
            Weight::Regular => self.regular.clone(),
            Weight::Bold => self.bold.clone(),
        }
    }
}

fn points(mm: f64) -> f32 {
    (mm * POINTS) as f32
}

fn draw(on: &mut Surface<'_>, op: &Op, fonts: &Fonts) {
    match op {
        Op::Line { points: through, width, dash } => {
            let mut path = PathBuilder::new();
            for (index, (x, y)) in through.iter().enumerate() {
                let (x, y) = (points(*x), points(*y));
                if index == 0 { path.move_to(x, y) } else { path.line_to(x, y) }
            }
            let dash =
                dash.map(|(drawn, out)| StrokeDash { array: vec![points(drawn), points(out)], offset: 0.0 });
            outline(on, path.finish(), *width, dash);
        }
        Op::Rect { x, y, width, height, line } => {
            let rect = Rect::from_xywh(points(*x), points(*y), points(*width), points(*height));
            let path = rect.and_then(|rect| {
                let mut path = PathBuilder::new();
                path.push_rect(rect);
                path.finish()
            });
            match line {
                Some(line) => outline(on, path, *line, None),
                None => fill(on, path),
            }
        }
        Op::Text { x, y, size, weight, anchor, text } => {
            let start = text_start(*x, *size, *weight, *anchor, text);
            let glyphs: Vec<_> = font::glyphs(text, *weight)
                .map(|glyph| {
                    let id = GlyphId::new(glyph.id.to_u32());
                    KrillaGlyph::new(id, glyph.advance as f32, 0.0, 0.0, 0.0, glyph.range, None)
                })
                .collect();
            on.set_stroke(None);
            on.set_fill(Some(Fill::default()));
            let at = Point::from_xy(points(start), points(*y));
            on.draw_glyphs(at, &glyphs, fonts.of(*weight), text, points(*size), false);
        }
        Op::Modules { x, y, module, side, dark } => {
            // One path for all, so that no hairline shows between neighbours.
            let mut path = PathBuilder::new();
            for (column, row, length) in runs(*side, dark) {
                let (left, top) = (x + column as f64 * module, y + row as f64 * module);
                let width = points(length as f64 * module);
                if let Some(rect) = Rect::from_xywh(points(left), points(top), width, points(*module)) {
                    path.push_rect(rect);
                }
            }
            fill(on, path.finish());
        }
    }
}

fn fill(on: &mut Surface<'_>, path: Option<Path>) {
    if let Some(path) = path {
        on.set_stroke(None);
        on.set_fill(Some(Fill::default()));
        on.draw_path(&path);
    }
}

fn outline(on: &mut Surface<'_>, path: Option<Path>, width: f64, dash: Option<StrokeDash>) {
    if let Some(path) = path {
        on.set_fill(None);
        on.set_stroke(Some(Stroke { width: points(width), dash, ..Stroke::default() }));
        on.draw_path(&path);
    }
}
