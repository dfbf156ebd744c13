//! The routing's shapes against the elastica table.

use crate::vectors::{Compared, Row, rows};
use hosewright_core::quantity::Millimetres;
use hosewright_core::route::{Bend, Layout, Port, Span, Vector, route};

/// The table is written to ten significant digits.
const DIGITS: i32 = 10;

/// What is asked of a routing's energy where the table has no exact one: 0.5 %.
const ENERGY: f64 = 5e-3;

/// `elastica_cases.csv`: energy and smallest radius of every row that has ports.
pub fn route_cases() -> Vec<Compared> {
    let table = rows("elastica_cases.csv");
    let ports = table.iter().filter(|row| row.maybe("length").is_some()).flat_map(shape_case);
    ports.chain(rectangular_case(&table)).collect()
}

/// The stable rows as rods between clamps, with the energy that the table gives.
pub fn spans() -> Vec<(String, Span, f64)> {
    let stable = |row: &Row| row.maybe("length").is_some() && row.text("stable_lowest_energy_3d") == "yes";
    let span = |row: Row| {
        let [start, end] = ["start", "end"].map(|place| Vector(vector(&row, place)));
        let span = Span {
            gap_mm: end - start,
            start: Vector(vector(&row, "start_tangent")),
            end: Vector(vector(&row, "end_tangent")),
            length_mm: row.number("length"),
        };
        (row.id().to_owned(), span, row.number("bending_energy_over_EI"))
    };
    rows("elastica_cases.csv").into_iter().filter(stable).map(span).collect()
}

/// How far a stable row is missed: radius and energy, each as a part of the table's.
pub fn stable_misses() -> Vec<(String, f64, f64)> {
    let radius = |row: &str| {
        rows("elastica_cases.csv").iter().find(|known| known.id() == row).map(|row| row.number("min_radius"))
    };
    spans()
        .into_iter()
        .map(|(id, span, energy)| {
            let shape = span.settle().unwrap_or_else(|why| panic!("{id}: {why:?}")).shape;
            let found = shape.tightest().map_or(f64::INFINITY, |tightest| tightest.radius_mm);
            let known = radius(&id).unwrap_or(f64::NAN);
            (id, (found / known - 1.0).abs(), (shape.bend_energy_per_mm() / energy - 1.0).abs())
        })
        .collect()
}

fn shape_case(row: &Row) -> Vec<Compared> {
    let bend = bend(
        row.id(),
        [vector(row, "start"), vector(row, "end")],
        [vector(row, "start_tangent"), vector(row, "end_tangent")],
        row.number("length"),
    );
    // Rows whose own shape is not stable in space name the one of least energy that was found instead.
    let unstable = row.text("stable_lowest_energy_3d") == "no";
    let [energy, radius] = if unstable {
        ["lowest_energy_found_over_EI", "lowest_energy_min_radius"]
    } else {
        ["bending_energy_over_EI", "min_radius"]
    };
    let mut compared = vec![row.compare(energy, bend.bend_energy_per_mm, DIGITS)];
    if row.maybe(radius).is_some() {
        compared.push(row.compare(radius, radius_mm(&bend), DIGITS));
    } else {
        // Without a radius the energy is an upper bound, by the row's note.
        compared.iter_mut().for_each(|one| one.tolerance = ENERGY);
    }
    compared
}

/// The rectangular elastica, which crosses its line of force at right angles: of the length A it rises by 1
/// and spans B, the lemniscate's constants; its curvature is twice the height, so that its least radius is
/// 1/2 and its energy 2 B.
fn rectangular_case(table: &[Row]) -> Vec<Compared> {
    let row = |id: &str| table.iter().find(|row| row.id() == id).unwrap_or_else(|| panic!("no row {id}"));
    let (length, span) = (row("EC-3"), row("EC-4"));
    let bend = bend(
        "EC-3",
        [[0.0; 3], [1.0, span.number("printed_value"), 0.0]],
        [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0]],
        length.number("printed_value"),
    );
    let close = |one: Compared| Compared { tolerance: 1e-6, ..one };
    vec![
        close(length.compare_with("min_radius", 0.5, radius_mm(&bend), DIGITS)),
        close(span.compare_with(
            "energy",
            2.0 * span.number("printed_value"),
            bend.bend_energy_per_mm,
            DIGITS,
        )),
    ]
}

fn bend(id: &str, positions: [[f64; 3]; 2], tangents: [[f64; 3]; 2], length: f64) -> Bend {
    let port = |position: [f64; 3], direction: [f64; 3]| {
        Some(Port { position_mm: position.map(Millimetres), direction, up: None, rigid_mm: None })
    };
    let layout = Layout {
        a: port(positions[0], tangents[0]),
        // A tangent runs on along the hose; a port's direction is the way the hose leaves it.
        b: port(positions[1], tangents[1].map(|part| -part)),
        free_length_mm: Some(Millimetres(length)),
        ..Layout::default()
    };
    let routed = route(&layout).unwrap_or_else(|error| panic!("{id}: {error}"));
    routed.poses.into_iter().next().unwrap_or_else(|| panic!("{id}: no pose"))
}

fn radius_mm(bend: &Bend) -> f64 {
    bend.min_radius_mm.map_or(f64::INFINITY, Millimetres::get)
}

fn vector(row: &Row, columns: &str) -> [f64; 3] {
    ["x", "y", "z"].map(|axis| row.number(&format!("{columns}_{axis}")))
}
