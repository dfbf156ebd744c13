//! Numbers and units as people read them.

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
    let (bar, psi) = (format!("{} bar", number(bar, 0)), format!("{} psi", number(psi(bar), 0)));
    match first {
        Pressure::Bar => format!("{bar} ({psi})"),
        Pressure::Psi => format!("{psi} ({bar})"),
    }
}

/// One psi in bar (exact by the definitions of pound, inch and standard gravity; NIST SP 811).
const BAR_PER_PSI: f64 = 0.068_947_572_931_683_6;

/// Psi beside a pressure in bar.
///
/// Ratings are set in steps of 500 psi and printed in whole bar, rounded (3000 psi: 207 bar) or cut off
/// (206 bar, from 20.6 MPa); 500 psi also as 35 bar, from 3.5 MPa (common practice: the tables of ends and flanges
/// hold 35, 103, 137, 172, 206, 275, 310, 344 and 413 bar for such steps). So a figure from the step cut off to whole
/// bar up to half a bar above the step gives the step. Every other figure is converted, and rounded to 10 psi from
/// 1000 psi up, to 1 psi below.
fn psi(bar: f64) -> f64 {
    const STEP: f64 = 500.0;
    let exact = bar / BAR_PER_PSI;
    let step = (exact / STEP).round() * STEP;
    let step_bar = step * BAR_PER_PSI;
    let printed = (step_bar.floor()..=step_bar + 0.5).contains(&bar) || (bar == 35.0 && step == STEP);
    if step > 0.0 && printed {
        step
    } else if exact >= 1000.0 {
        (exact / 10.0).round() * 10.0
    } else {
        exact
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

    /// Steps of 500 psi as ratings print them in bar (common practice; NIST SP 811 for all others).
    #[test]
    fn psi_beside_bar_is_what_the_trade_prints() {
        let steps = [
            (35.0, 500.0),
            (69.0, 1000.0),
            (103.0, 1500.0),
            (137.0, 2000.0),
            (138.0, 2000.0),
            (172.0, 2500.0),
            (206.0, 3000.0),
            (206.84, 3000.0),
            (207.0, 3000.0),
            (241.0, 3500.0),
            (275.0, 4000.0),
            (276.0, 4000.0),
            (310.0, 4500.0),
            (344.0, 5000.0),
            (345.0, 5000.0),
            (413.0, 6000.0),
            (414.0, 6000.0),
        ];
        let converted = [
            (0.0, 0.0),
            (0.3, 0.3 / 0.068_947_6),
            (5.0, 72.5),
            (36.0, 522.1),
            (104.0, 1510.0),
            (205.0, 2970.0),
            (208.0, 3020.0),
            (210.0, 3050.0),
            (250.0, 3630.0),
            (350.0, 5080.0),
            (420.0, 6090.0),
        ];
        for (bar, right) in steps.into_iter().chain(converted) {
            assert!((psi(bar) - right).abs() < 0.05, "{bar} bar: {} psi, {right} is right", psi(bar));
        }
    }

    #[test]
    fn a_percentage_never_rounds_a_doubt_away() {
        assert_eq!(percent(0.9996), ">99 %");
        assert_eq!(percent(0.004), "<1 %");
        assert_eq!(percent(0.6), "60 %");
        assert_eq!(percent(1.0), "100 %");
    }
}
