//! Finding a fluid in the table, and what water does to the limits.

use super::subject::Subject;
use crate::catalogue::{Catalogue, FluidRow, Provenance};
use crate::quantity::Celsius;
