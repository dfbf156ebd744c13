//! Numbers and units as people read them: with a point as the plain answers of the command line have them, or with
//! the decimal sign of a language as its words have them.

use crate::{Language, Words};
use hosewright_core::quantity::Bar;

/// Pressure units a person may prefer first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pressure {
    /// Bar first, psi beside it.
    Bar,
    /// Psi first, bar beside it.
    Psi,
}

/// A number with at most that many decimals and no needless zeros. Minus is a true minus.
pub fn number(value: f64, decimals: usize) -> String {
    let mut text = format!("{value:.decimals$}");
    if text.contains('.') {
        text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
    }
    if text == "-0" {
        text = "0".to_owned();
    }
    text.replace('-', "\u{2212}")
}

/// Numbers as the language of the words writes them. Pressures and percentages are whole numbers: every language
/// writes those alike.
impl Words {
    /// A number that was written with a point, with the decimal sign of the language.
    pub fn figure(&self, written: &str) -> String {
        match self.language() {
            Language::English => written.to_owned(),
            // CLDR: the decimal sign of German and of Spanish as it is written in Spain.
            Language::German | Language::Spanish => written.replace('.', ","),
        }
    }

    /// As [`number()`].
    pub fn number(&self, value: f64, decimals: usize) -> String {
        self.figure(&number(value, decimals))
    }

    /// As [`signed()`].
    pub fn signed(&self, value: f64, decimals: usize) -> String {
        self.figure(&signed(value, decimals))
    }

    /// A number with exactly that many decimals: a column of them can be compared.
    pub fn fixed(&self, value: f64, decimals: usize) -> String {
        self.figure(&format!("{value:.decimals$}"))
    }

    /// As [`length()`].
    pub fn length(&self, mm: f64, decimals: usize) -> String {
        self.figure(&length(mm, decimals))
    }

    /// As [`quantity()`].
    pub fn quantity(&self, value: f64, unit: &str) -> String {
        self.figure(&quantity(value, unit))
    }
}

/// A number with its sign always written.
pub fn signed(value: f64, decimals: usize) -> String {
    let text = number(value, decimals);
    if value > 0.0 && text != "0" { format!("+{text}") } else { text }
}

/// A length in millimetres.
pub fn length(mm: f64, decimals: usize) -> String {
    format!("{} mm", number(mm, decimals))
}

/// A pressure in bar with psi beside it, as the trade prints it.
pub fn pressure(bar: f64, first: Pressure) -> String {
    let (bar, psi) =
        (format!("{} bar", number(bar, 0)), format!("{} psi", number(Bar(bar).printed_psi(), 0)));
    match first {
        Pressure::Bar => format!("{bar} ({psi})"),
        Pressure::Psi => format!("{psi} ({bar})"),
    }
}

/// A number with its unit, with as many decimals as that unit is read to. A pressure has psi beside it.
pub fn quantity(value: f64, unit: &str) -> String {
    match unit {
        "bar" => pressure(value, Pressure::Bar),
        "mm" => length(value, 1),
        "C" => format!("{} \u{b0}C", number(value, 0)),
        "deg" => format!("{}\u{b0}", number(value, 1)),
        "m/s" => format!("{} m/s", number(value, 1)),
        "" => number(value, 2),
        other => format!("{} {other}", number(value, 1)),
    }
}

/// A probability as a percentage that never rounds a doubt away: 99.96 % is no 100 %, and what is
/// below one percent says so.
pub fn percent(probability: f64) -> String {
    let percent = probability * 100.0;
    if percent <= 0.0 {
        "0 %".to_owned()
    } else if percent < 1.0 {
        "<1 %".to_owned()
    } else if (99.5..100.0).contains(&percent) {
        ">99 %".to_owned()
    } else {
        format!("{} %", number(percent, 0))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_short_and_true() {
        assert_eq!(number(20.60, 2), "20.6");
        assert_eq!(number(-3.0, 1), "\u{2212}3");
        assert_eq!(number(-0.01, 1), "0");
        assert_eq!(signed(12.0, 0), "+12");
        assert_eq!(pressure(206.8, Pressure::Bar), "207 bar (3000 psi)");
    }

    #[test]
    fn numbers_have_the_decimal_sign_of_the_language() {
        for (language, mm, turn) in [
            (Language::English, "20.6 mm", "22.5\u{b0}"),
            (Language::German, "20,6 mm", "22,5\u{b0}"),
            (Language::Spanish, "20,6 mm", "22,5\u{b0}"),
        ] {
            let words = Words::of(language);
            assert_eq!(words.length(20.64, 1), mm);
            assert_eq!(words.quantity(22.5, "deg"), turn);
            assert_eq!(words.quantity(206.8, "bar"), "207 bar (3000 psi)");
        }
        let german = Words::of(Language::German);
        assert_eq!(german.fixed(30.5, 3), "30,500");
        assert_eq!(german.signed(-1.5, 1), "\u{2212}1,5");
    }

    #[test]
    fn a_percentage_never_rounds_a_doubt_away() {
        assert_eq!(percent(0.9996), ">99 %");
        assert_eq!(percent(0.004), "<1 %");
        assert_eq!(percent(0.6), "60 %");
        assert_eq!(percent(1.0), "100 %");
    }
}
