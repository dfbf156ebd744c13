//! Viscosity against its check values.

use crate::vectors::{Compared, Row, rows};
use hosewright_core::flow::{Walther, basic_values, viscosity_index};
use hosewright_core::quantity::Celsius;

/// The table is written to eight significant digits.
const DIGITS: i32 = 8;

/// `viscosity_cases.csv`: grades, viscosity index and viscosity at temperature.
pub fn viscosity_cases() -> Vec<Compared> {
    rows("viscosity_cases.csv")
        .iter()
        .flat_map(|row| match row.text("group") {
            "iso3448" => grade_case(row),
            "viscosity_index" => index_case(row),
            "d341_two_point" => {
                let [nu1, t1, nu2, t2] = row.numbers_in("description")[..] else {
                    panic!("{}: {}", row.id(), row.text("description"))
                };
                temperature_case(row, Walther::through((Celsius(t1), nu1), (Celsius(t2), nu2)))
            }
            "d341_from_vi" => {
                let line = oil(row, row.number("iso_vg"), row.number("viscosity_index"));
                let mut compared = temperature_case(row, line);
                let nu_100c = row.known(line.at(Celsius(100.0)));
                compared.push(row.compare("nu_100C_mm2_s", nu_100c, DIGITS));
                compared
            }
            group => panic!("{}: no comparison for group {group}", row.id()),
        })
        .collect()
}

fn oil(row: &Row, iso_vg: f64, index: f64) -> Walther {
    Walther::of_grade(iso_vg, index).unwrap_or_else(|error| panic!("{}: {error}", row.id()))
}

/// A grade is its viscosity at 40 C, whatever the index; its limits are 10 % to either side.
fn grade_case(row: &Row) -> Vec<Compared> {
    let midpoint = row.known(oil(row, row.number("iso_vg"), 95.0).at(Celsius(row.number("temperature_C"))));
    let limit = match row.text("description").split(',').next() {
        Some("lower limit") => 0.9,
        Some("upper limit") => 1.1,
        _ => 1.0,
    };
    vec![row.compare("nu_at_temperature_mm2_s", limit * midpoint, DIGITS)]
}

fn index_case(row: &Row) -> Vec<Compared> {
    let nu_100c = row.number("nu_100C_mm2_s");
    let basic = row.known(basic_values(nu_100c));
    let mut compared = Vec::new();
    if let Some(nu_40c) = row.maybe("nu_40C_mm2_s") {
        let index = row.known(viscosity_index(nu_40c, nu_100c));
        compared.push(row.compare("viscosity_index", index, DIGITS));
        compared.push(row.compare("printed_value", index, DIGITS));
    }
    for (column, found) in [("L_mm2_s", basic.l), ("H_mm2_s", basic.h)] {
        if row.maybe(column).is_some() {
            compared.push(row.compare(column, found, DIGITS));
        }
    }
    compared
}

fn temperature_case(row: &Row, line: Walther) -> Vec<Compared> {
    let found = row.known(line.at(Celsius(row.number("temperature_C"))));
    vec![
        row.compare("nu_at_temperature_mm2_s", found, DIGITS),
        row.compare("walther_A", line.a, DIGITS),
        row.compare("walther_B", line.b, DIGITS),
    ]
}
