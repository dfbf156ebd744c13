//! A drawing as a PNG picture.

use super::{Drawing, DrawingError, Ink, Op, Weight, font, runs, text_start};
use png::{BitDepth, ColorType, Encoder, PixelDimensions, Unit};
use skrifa::outline::OutlinePen;
use tiny_skia::{FillRule, Paint, Path, PathBuilder, Pixmap, Rect, Stroke, StrokeDash, Transform};

/// Most pixels drawn, in millions: A4 at 600 dots per inch has 35.
const MILLION_PIXELS: u32 = 40;

pub(super) fn write(drawing: &Drawing, dpi: f64, ink: Ink) -> Result<Vec<u8>, DrawingError> {
    let scale = dpi / 25.4;
    let (width, height) = ((drawing.width_mm * scale).round(), (drawing.height_mm * scale).round());
    let too_many = DrawingError::Pixels { width, height, limit: MILLION_PIXELS };
    let sensible = width >= 1.0 && height >= 1.0 && width * height <= f64::from(MILLION_PIXELS) * 1e6;
    let Some(mut pixmap) = sensible.then(|| Pixmap::new(width as u32, height as u32)).flatten() else {
        return Err(too_many);
    };
    pixmap.fill(tiny_skia::Color::WHITE);
    for op in &drawing.ops {
        draw(&mut pixmap, op, scale);
    }
    encode(&pixmap, dpi, ink)
        .map_err(|cause| DrawingError::Format { format: "PNG", cause: cause.to_string() })
}

fn draw(on: &mut Pixmap, op: &Op, scale: f64) {
    let at = |mm: f64| (mm * scale) as f32;
    let mut paint = Paint::default();
    match op {
        Op::Line { points, width, dash } => {
            let mut path = PathBuilder::new();
            for (index, (x, y)) in points.iter().enumerate() {
                if index == 0 { path.move_to(at(*x), at(*y)) } else { path.line_to(at(*x), at(*y)) }
            }
            let dash = dash.and_then(|(drawn, out)| StrokeDash::new(vec![at(drawn), at(out)], 0.0));
            stroke(on, path.finish(), Stroke { width: at(*width), dash, ..Stroke::default() });
        }
        Op::Rect { x, y, width, height, line } => {
            let Some(rect) = Rect::from_xywh(at(*x), at(*y), at(*width), at(*height)) else { return };
            match line {
                Some(line) => {
                    let outline = Stroke { width: at(*line), ..Stroke::default() };
                    stroke(on, Some(PathBuilder::from_rect(rect)), outline);
                }
                None => on.fill_rect(rect, &paint, Transform::identity(), None),
            }
        }
        Op::Text { x, y, size, weight, anchor, text } => {
            let start = text_start(*x, *size, *weight, *anchor, text);
            let path = text_path(text, (at(start), at(*y)), size * scale, *weight);
            if let Some(path) = path {
                on.fill_path(&path, &paint, FillRule::Winding, Transform::identity(), None);
            }
        }
        Op::Modules { x, y, module, side, dark } => {
            // Whole pixels, never grey: a reader's picture of an edge is blurred enough by itself.
            paint.anti_alias = false;
            for (column, row, length) in runs(*side, dark) {
                let edge = |from: f64, modules: usize| at(from + modules as f64 * module).round();
                let (left, right) = (edge(*x, column), edge(*x, column + length));
                let (top, bottom) = (edge(*y, row), edge(*y, row + 1));
                if let Some(rect) = Rect::from_ltrb(left, top, right, bottom) {
                    on.fill_rect(rect, &paint, Transform::identity(), None);
                }
            }
        }
    }
}

fn stroke(on: &mut Pixmap, path: Option<Path>, stroke: Stroke) {
    if let Some(path) = path {
        on.stroke_path(&path, &Paint::default(), &stroke, Transform::identity(), None);
    }
}

/// The outlines of a line of text.
fn text_path(text: &str, (x, y): (f32, f32), size: f64, weight: Weight) -> Option<Path> {
    let mut pen = Pen { path: PathBuilder::new(), x, y };
    for glyph in font::glyphs(text, weight) {
        font::outline(glyph.id, size as f32, weight, &mut pen);
        pen.x += (glyph.advance * size) as f32;
    }
    pen.path.finish()
}

struct Pen {
    path: PathBuilder,
    x: f32,
    y: f32,
}

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.path.move_to(self.x + x, self.y - y);
    }
    fn line_to(&mut self, x: f32, y: f32) {
        self.path.line_to(self.x + x, self.y - y);
    }
    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        self.path.quad_to(self.x + cx, self.y - cy, self.x + x, self.y - y);
    }
    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        self.path.cubic_to(self.x + ax, self.y - ay, self.x + bx, self.y - by, self.x + x, self.y - y);
    }
    fn close(&mut self) {
        self.path.close();
    }
}

fn encode(pixmap: &Pixmap, dpi: f64, ink: Ink) -> Result<Vec<u8>, png::EncodingError> {
    let (width, height) = (pixmap.width(), pixmap.height());
    // Black on white without colour: any one channel is the grey.
    let grey: Vec<u8> = pixmap.pixels().iter().map(|pixel| pixel.red()).collect();
    let mut out = Vec::new();
    let mut encoder = Encoder::new(&mut out, width, height);
    encoder.set_color(ColorType::Grayscale);
    let per_metre = (dpi / 0.0254).round() as u32;
    encoder.set_pixel_dims(Some(PixelDimensions { xppu: per_metre, yppu: per_metre, unit: Unit::Meter }));
    let data = match ink {
        Ink::Smooth => grey,
        Ink::Dots => {
            encoder.set_depth(BitDepth::One);
            grey.chunks(width as usize).flat_map(|row| row.chunks(8).map(packed)).collect()
        }
    };
    let mut writer = encoder.write_header()?;
    writer.write_image_data(&data)?;
    writer.finish()?;
    Ok(out)
}

/// Up to eight pixels in a byte, the first highest; white is 1.
fn packed(pixels: &[u8]) -> u8 {
    pixels.iter().enumerate().fold(0, |byte, (at, grey)| byte | u8::from(*grey >= 128) << (7 - at))
}
