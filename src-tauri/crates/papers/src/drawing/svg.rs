//! A drawing as SVG.

use super::{Drawing, Op, Weight, font, runs, text_start};
use std::fmt::Write;

pub(super) fn write(drawing: &Drawing) -> String {
    let (width, height) = (number(drawing.width_mm), number(drawing.height_mm));
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" font-family=\"{}, sans-serif\">\n<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>\n",
        font::FAMILY
    );
    for op in &drawing.ops {
        out += &element(op);
        out.push('\n');
    }
    out += "</svg>\n";
    out
}

fn element(op: &Op) -> String {
    match op {
        Op::Line { points, width, dash } => {
            let points: Vec<_> =
                points.iter().map(|(x, y)| format!("{},{}", number(*x), number(*y))).collect();
            let dash = dash.map_or(String::new(), |(on, off)| {
                format!(" stroke-dasharray=\"{} {}\"", number(on), number(off))
            });
            format!(
                "<polyline points=\"{}\" fill=\"none\" stroke=\"#000\" stroke-width=\"{}\"{dash}/>",
                points.join(" "),
                number(*width)
            )
        }
        Op::Rect { x, y, width, height, line } => {
            let paint = match line {
                Some(line) => format!("fill=\"none\" stroke=\"#000\" stroke-width=\"{}\"", number(*line)),
                None => "fill=\"#000\"".to_owned(),
            };
            format!(
                "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" {paint}/>",
                number(*x),
                number(*y),
                number(*width),
                number(*height)
            )
        }
        Op::Text { x, y, size, weight, anchor, text } => {
            let start = text_start(*x, *size, *weight, *anchor, text);
            let bold = if *weight == Weight::Bold { " font-weight=\"bold\"" } else { "" };
            // The length is stated so that another font, where this one is missing, fits as well.
            format!(
                "<text x=\"{}\" y=\"{}\" font-size=\"{}\"{bold} textLength=\"{}\" lengthAdjust=\"spacingAndGlyphs\" xml:space=\"preserve\">{}</text>",
                number(start),
                number(*y),
                number(*size),
                number(font::width(text, *size, *weight)),
                escaped(text)
            )
        }
        Op::Modules { x, y, module, side, dark } => {
            let mut path = String::new();
            for (column, row, length) in runs(*side, dark) {
                let (left, top) = (x + column as f64 * module, y + row as f64 * module);
                let width = number(length as f64 * module);
                // Writing to a String does not fail.
                let _ =
                    write!(path, "M{} {}h{width}v{}h-{width}z", number(left), number(top), number(*module));
            }
            format!("<path shape-rendering=\"crispEdges\" d=\"{path}\"/>")
        }
    }
}

/// Hundredths of a micrometre are enough for any printer's dots to be whole.
fn number(value: f64) -> String {
    let text = format!("{value:.5}");
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => out += "&amp;",
            '<' => out += "&lt;",
            '>' => out += "&gt;",
            // XML allows no other control characters, not even escaped.
            c if c.is_control() => out.push(' '),
            c => out.push(c),
        }
    }
    out
}
