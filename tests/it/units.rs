//! The trade's units against the exact definitions (NIST SP 811, the yard and pound agreement of 1959).

use hosewright_core::quantity::{Bar, Celsius, LitresPerMinute, Millimetres};
use hosewright_tests::vectors::{Row, rows};
use proptest::prelude::*;
use std::collections::BTreeSet;

/// The examples are written to twelve significant digits.
const TOLERANCE: f64 = 1e-11;

/// Rows of units that no quantity is read in: torque, viscosity and the like have no type, dash sizes are names and
/// not lengths, and no one in the trade writes a pressure in Pa, atm or kgf/cm2, or a flow in m3/s.
const NOT_EXPRESSED: &[&str] = &[];

/// A number with its unit, as the quantity of that kind. None where it is not read.
fn read(kind: &str, number: &str, unit: &str) -> Option<f64> {
    let written = format!("{number} {unit}");
    match kind {
        "length" | "fraction" => written.parse().ok().map(Millimetres::get),
        "pressure" => written.parse().ok().map(Bar::get),
        "temperature" => written.parse().ok().map(Celsius::get),
        "flow" => written.parse().ok().map(LitresPerMinute::get),
        _ => None,
    }
}

/// Both sides of a row as one quantity.
fn sides(row: &Row) -> Option<(f64, f64)> {
    let kind = row.text("group");
    let from = if kind == "fraction" {
        // The unit's column holds the fraction itself, such as 13/64 in.
        row.text("from_unit").parse().ok().map(Millimetres::get)
    } else {
        read(kind, row.text("example_in"), row.text("from_unit"))
    };
    Some((from?, read(kind, row.text("example_out"), row.text("to_unit"))?))
}

#[test]
fn every_unit_that_is_read_is_read_by_its_definition() {
    let mut not_expressed = BTreeSet::new();
    for row in rows("units.csv") {
        let Some((from, to)) = sides(&row) else {
            not_expressed.insert(row.id().to_owned());
            continue;
        };
        let apart = (from - to).abs() / to.abs().max(1.0);
        assert!(apart < TOLERANCE, "{}: {from} and not {to}", row.id());
        if row.text("group") == "fraction" {
            let decimal = Millimetres::from_inches(row.number("example_in")).get();
            assert!((decimal - from).abs() < 1e-12 * from, "{}: {decimal} by decimal inches", row.id());
        }
    }
    let expected: BTreeSet<String> = NOT_EXPRESSED.iter().map(|id| (*id).to_owned()).collect();
    assert_eq!(not_expressed, expected);
}

proptest! {
    #[test]
    fn a_value_written_in_another_unit_comes_back(value in 1e-3..1e4_f64) {
        let near = |found: f64, what: &str| {
            prop_assert!((found / value - 1.0).abs() < 1e-12, "{what}: {found} for {value}");
            Ok(())
        };
        near(format!("{} in", value / 25.4).parse::<Millimetres>().unwrap().get(), "inches")?;
        near(Millimetres::from_inches(value / 25.4).get(), "from inches")?;
        near(format!("{} psi", Bar(value).psi()).parse::<Bar>().unwrap().get(), "psi")?;
        near(format!("{} MPa", value / 10.0).parse::<Bar>().unwrap().get(), "MPa")?;
        let kelvin = format!("{} K", value + 273.15).parse::<Celsius>().unwrap().get();
        prop_assert!((kelvin - value).abs() < 1e-12 * (value + 273.15), "kelvin: {kelvin} for {value}");
        let fahrenheit = format!("{} F", value * 1.8 + 32.0).parse::<Celsius>().unwrap().get();
        prop_assert!((fahrenheit - value).abs() < 1e-12 * (value + 32.0), "Fahrenheit: {fahrenheit} for {value}");
        near(format!("{} gpm", value / 3.785_411_784).parse::<LitresPerMinute>().unwrap().get(), "US gallons")?;
    }

    #[test]
    fn a_fraction_is_its_number_of_steps(whole in 0..4_u32, top in 1..64_u32, power in 1..7_u32) {
        let bottom = 2_u32.pow(power);
        let expected = (f64::from(whole) + f64::from(top) / f64::from(bottom)) * 25.4;
        let written = if whole == 0 { format!("{top}/{bottom} in") } else { format!("{whole} {top}/{bottom}\"") };
        prop_assert!((written.parse::<Millimetres>().unwrap().get() - expected).abs() < 1e-12, "{written}");
    }
}
