//! How far the routing's shapes are from the elastica table.

use hosewright_core::quantity::Millimetres;
use hosewright_core::route::{Layout, Port, route};
use std::collections::HashMap;

/// One row of the table against what the routing gives for its ports.
#[derive(Debug, Clone, PartialEq)]
pub struct RouteFigure {
    /// The row's `case_id`.
    pub case: String,
    /// Whether the row's own shape is the stable one of least energy; otherwise its `lowest_energy` columns count.
    pub stable: bool,
    /// Energy over the table's, less 1.
    pub energy_deviation: f64,
    /// Smallest radius over the table's, less 1; none where the table has only an upper bound of the energy.
    pub radius_deviation: Option<f64>,
    /// The shape's own residual.
    pub residual: f64,
}

/// Every row of the elastica table that has ports and a length.
///
/// # Errors
/// The first row that can not be read or that the routing refuses, in words.
pub fn route_figures() -> Result<Vec<RouteFigure>, String> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/vectors/elastica_cases.csv");
    let mut table = csv::Reader::from_path(path).map_err(|error| error.to_string())?;
    let mut figures = Vec::new();
    for row in table.deserialize() {
        let row = Row(row.map_err(|error| error.to_string())?);
        if row.number("length").is_some() {
            figures.push(row.figure().ok_or_else(|| format!("{}: no figure", row.text("case_id")))?);
        }
    }
    Ok(figures)
}

/// A row by its columns.
struct Row(HashMap<String, String>);

impl Row {
    fn text(&self, column: &str) -> &str {
        self.0.get(column).map_or("", String::as_str)
    }

    fn number(&self, column: &str) -> Option<f64> {
        self.text(column).parse().ok()
    }

    fn vector(&self, columns: &str) -> Option<[f64; 3]> {
        let part = |axis| self.number(&format!("{columns}_{axis}"));
        Some([part("x")?, part("y")?, part("z")?])
    }

    fn figure(&self) -> Option<RouteFigure> {
        let layout = Layout {
            a: Some(port(self.vector("start")?, self.vector("start_tangent")?)),
            // The table's tangent runs on; a port's direction is the way the hose leaves it.
            b: Some(port(self.vector("end")?, self.vector("end_tangent")?.map(|part| -part))),
            free_length_mm: self.number("length").map(Millimetres),
            ..Layout::default()
        };
        let routed = route(&layout).ok()?;
        let bend = routed.poses.first()?;
        let stable = self.text("stable_lowest_energy_3d") == "yes";
        let own = (self.number("bending_energy_over_EI")?, self.number("min_radius"));
        let (energy, radius) = match self.number("lowest_energy_found_over_EI") {
            Some(lowest) if !stable => (lowest, self.number("lowest_energy_min_radius")),
            _ => own,
        };
        Some(RouteFigure {
            case: self.text("case_id").to_owned(),
            stable,
            energy_deviation: bend.bend_energy_per_mm / energy - 1.0,
            radius_deviation: radius.zip(bend.min_radius_mm).map(|(table, ours)| ours.get() / table - 1.0),
            residual: bend.residual,
        })
    }
}

fn port(position: [f64; 3], direction: [f64; 3]) -> Port {
    Port { position_mm: position.map(Millimetres), direction, up: None, rigid_mm: None }
}
