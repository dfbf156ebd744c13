//! Numbers and units as people read them.

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
    fn a_percentage_never_rounds_a_doubt_away() {
        assert_eq!(percent(0.9996), ">99 %");
        assert_eq!(percent(0.004), "<1 %");
        assert_eq!(percent(0.6), "60 %");
        assert_eq!(percent(1.0), "100 %");
    }
}
