//! The rules, one file for each family, in the order their findings are shown within a verdict.

mod bend;
mod duty;
mod ends;
mod flow;
mod fluid;
mod geometry;
mod original;
mod parts;
mod pressure;
mod scope;
mod suction;
mod temperature;

pub(crate) use flow::usual_speed;

use super::Finding;
use super::subject::Subject;

/// A family of rules: everything it has to say about a spec in its service.
pub(super) type Rule = fn(&Subject<'_>) -> Vec<Finding>;

/// Every family.
pub(super) const ALL: [Rule; 12] = [
    |subject| scope::scope(subject).into_iter().collect(),
    parts::parts,
    pressure::pressure,
    ends::ends,
    duty::duties,
    fluid::fluid,
    temperature::temperature,
    bend::bend,
    suction::suction,
    original::original,
    geometry::geometry,
    flow::flow,
];
