//! The bundled font: measuring, breaking and outlines of text.
//!
//! Latin, Greek and Cyrillic need no shaping in it; a character it lacks shows as an empty box.

use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{FontRef, GlyphId, MetadataProvider};
use std::ops::Range;
use std::sync::LazyLock;

/// Weight of the font.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Weight {
    /// For what is read.
    Regular,
    /// For what is looked for.
    Bold,
}

/// Name of the family, for papers that are drawn elsewhere.
pub(crate) const FAMILY: &str = "DejaVu Sans Condensed";

/// Height of capitals and of figures over the em.
pub(crate) const CAP_HEIGHT: f64 = 0.729;

static REGULAR: LazyLock<FontRef<'static>> = LazyLock::new(|| open(bytes(Weight::Regular)));
static BOLD: LazyLock<FontRef<'static>> = LazyLock::new(|| open(bytes(Weight::Bold)));

/// The font file.
pub(crate) fn bytes(weight: Weight) -> &'static [u8] {
    match weight {
        Weight::Regular => include_bytes!("../../fonts/DejaVuSansCondensed.ttf"),
        Weight::Bold => include_bytes!("../../fonts/DejaVuSansCondensed-Bold.ttf"),
    }
}

#[allow(clippy::expect_used, reason = "the font is compiled in and every test of a paper reads it")]
fn open(bytes: &'static [u8]) -> FontRef<'static> {
    FontRef::new(bytes).expect("the bundled font can be read")
}

fn font(weight: Weight) -> &'static FontRef<'static> {
    match weight {
        Weight::Regular => &REGULAR,
        Weight::Bold => &BOLD,
    }
}

/// A glyph of a text.
pub(crate) struct Glyph {
    pub(crate) id: GlyphId,
    /// How far it moves on, in em.
    pub(crate) advance: f64,
    /// The bytes of the text it shows.
    pub(crate) range: Range<usize>,
}

/// The glyphs of a text, one for each character.
pub(crate) fn glyphs(text: &str, weight: Weight) -> impl Iterator<Item = Glyph> {
    let font = font(weight);
    let (map, metrics) = (font.charmap(), font.glyph_metrics(Size::unscaled(), LocationRef::default()));
    let em = f64::from(font.metrics(Size::unscaled(), LocationRef::default()).units_per_em);
    text.char_indices().map(move |(at, character)| {
        let id = map.map(character).unwrap_or_default();
        let advance = f64::from(metrics.advance_width(id).unwrap_or_default()) / em;
        Glyph { id, advance, range: at..at + character.len_utf8() }
    })
}

/// How wide a text is, in the unit of `size`.
pub(crate) fn width(text: &str, size: f64, weight: Weight) -> f64 {
    glyphs(text, weight).map(|glyph| glyph.advance).sum::<f64>() * size
}

/// The text in lines no wider than that, broken at spaces, and within a word only where it has to be.
pub(crate) fn wrap(text: &str, size: f64, weight: Weight, limit: f64) -> Vec<String> {
    let fits = |line: &str| width(line, size, weight) <= limit;
    let mut lines = vec![String::new()];
    for word in text.split_whitespace() {
        let joined = match lines.last() {
            Some(line) if !line.is_empty() => format!("{line} {word}"),
            _ => word.to_owned(),
        };
        if fits(&joined) {
            lines.pop();
            lines.push(joined);
            continue;
        }
        push_word(&mut lines, word, fits);
    }
    lines.retain(|line| !line.is_empty());
    lines
}

/// A word on a line of its own, or on several when it is wider than one.
fn push_word(lines: &mut Vec<String>, word: &str, fits: impl Fn(&str) -> bool) {
    let mut line = String::new();
    for character in word.chars() {
        line.push(character);
        if !fits(&line) && line.chars().count() > 1 {
            line.pop();
            lines.push(std::mem::take(&mut line));
            line.push(character);
        }
    }
    lines.push(line);
}

/// Draws a glyph's outline at a size, baseline at zero and y upwards.
pub(crate) fn outline(id: GlyphId, size: f32, weight: Weight, pen: &mut impl OutlinePen) {
    if let Some(glyph) = font(weight).outline_glyphs().get(id) {
        // An outline that can't be drawn is left out: the font is the bundled one and has none.
        let _ = glyph.draw(DrawSettings::unhinted(Size::new(size), LocationRef::default()), pen);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_letter_of_the_languages_is_in_the_font() {
        for weight in [Weight::Regular, Weight::Bold] {
            // The alphabets of English, German and Spanish, and the signs that the words and papers use.
            let text = "ABCDEFGHIJKLMNOPQRSTUVWXYZ abcdefghijklmnopqrstuvwxyz 0123456789 ÄÖÜẞ äöüß \
                        ÁÉÍÓÚÜÑ áéíóúüñ ªº ¿¡ «»„“”‚‘’ °×±−–—…·Ø≤≥µ½¼¾⅛⅜⅝⅞ €§%&@#";
            for glyph in glyphs(text, weight) {
                let shown = &text[glyph.range.clone()];
                assert_ne!(glyph.id, GlyphId::NOTDEF, "{shown} in {weight:?}");
            }
        }
    }

    #[test]
    fn text_breaks_at_spaces_and_keeps_every_letter() {
        let text = "A JIC 37 flare -10 female unreasonablylongword end";
        let lines = wrap(text, 2.0, Weight::Regular, 15.0);
        assert!(lines.len() > 2, "{lines:?}");
        for line in &lines {
            assert!(width(line, 2.0, Weight::Regular) <= 15.0, "{line}");
        }
        assert_eq!(lines.concat().replace(' ', ""), text.replace(' ', ""));
        assert!(wrap("", 2.0, Weight::Regular, 15.0).is_empty());
        assert_eq!(wrap("ab", 2.0, Weight::Regular, 0.1), ["a", "b"], "at least a letter a line");
    }

    #[test]
    fn the_height_of_capitals_is_the_fonts() {
        for weight in [Weight::Regular, Weight::Bold] {
            let font = font(weight);
            let em = f64::from(font.metrics(Size::unscaled(), LocationRef::default()).units_per_em);
            let id = font.charmap().map('H').unwrap();
            let bounds = font.glyph_metrics(Size::unscaled(), LocationRef::default()).bounds(id).unwrap();
            let height = f64::from(bounds.y_max) / em;
            assert!((height - CAP_HEIGHT).abs() < 1e-3, "{weight:?}: {height}");
        }
    }
}
