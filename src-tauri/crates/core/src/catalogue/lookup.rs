//! Finding a row by the names people use.

use super::{Catalogue, Connection, EndRating, EndRow, Flange, HoseRow, HoseType};
use crate::quantity::Dn;
use thiserror::Error;

/// A name that is not in the tables, and the names that are nearest.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
#[error("no {what} \"{given}\" in the tables; the nearest are {}", .nearest.join(", "))]
pub struct UnknownName {
    /// What was looked for: `standard`, `type`, `dn`, `family`, `size`, `fluid`.
    pub what: &'static str,
    /// The name as given.
    pub given: String,
    /// The nearest names that would be right.
    pub nearest: Vec<String>,
}

impl Catalogue {
    /// The type of that standard and name, by any name people use for them.
    ///
    /// # Errors
    /// No such standard, or no such type of it; with the nearest names.
    pub fn hose_type(&self, standard: &str, kind: &str) -> Result<&HoseType, UnknownName> {
        self.types.iter().find(|row| row.standard == standard && row.kind == kind).ok_or_else(|| {
            UnknownName {
                what: "type",
                given: kind.to_owned(),
                nearest: self
                    .types
                    .iter()
                    .filter(|row| row.standard == standard)
                    .map(|row| row.kind.clone())
                    .collect(),
            }
        })
    }

    /// The size rows of a type, its own or those it shares, under its own name.
    pub fn sizes(&self, standard: &str, kind: &str) -> impl Iterator<Item = &HoseRow> {
        self.hoses.iter().chain(&self.twins).filter(move |row| row.standard == standard && row.kind == kind)
    }

    /// The size row of a type, by any name people use for them.
    ///
    /// # Errors
    /// No such standard, type or size of it; with the nearest names.
    pub fn hose(&self, standard: &str, kind: &str, dn: Dn) -> Result<&HoseRow, UnknownName> {
        let kind = self.hose_type(standard, kind)?;
        self.sizes(&kind.standard, &kind.kind).find(|row| row.dn == dn).ok_or_else(|| UnknownName {
            what: "dn",
            given: dn.to_string(),
            nearest: self.sizes(&kind.standard, &kind.kind).map(|row| row.dn.to_string()).collect(),
        })
    }

    /// The threaded or plain end of that family and size, by any name people use for them.
    ///
    /// # Errors
    /// No such family, or no such size of it; with the nearest names.
    pub fn end(&self, family: &str, size: &str) -> Result<&EndRow, UnknownName> {
        self.ends.iter().find(|row| row.family == family && row.size == size).ok_or_else(|| UnknownName {
            what: "size",
            given: size.to_owned(),
            nearest: self
                .ends
                .iter()
                .filter(|row| row.family == family)
                .map(|row| row.size.clone())
                .collect(),
        })
    }

    /// The flange of that family and size, by any name people use for them.
    ///
    /// # Errors
    /// No such family, or no such size of it; with the nearest names.
    pub fn flange(&self, family: &str, size: &str) -> Result<&Flange, UnknownName> {
        self.flanges.iter().find(|row| row.family == family && row.size == size).ok_or_else(|| UnknownName {
            what: "size",
            given: size.to_owned(),
            nearest: self
                .flanges
                .iter()
                .filter(|row| row.family == family)
                .map(|row| row.size.clone())
                .collect(),
        })
    }

    /// The end or flange of that family and size, by any name people use for them.
    ///
    /// # Errors
    /// No such family, or no such size of it; with the nearest names.
    pub fn connection(&self, family: &str, size: &str) -> Result<Connection<'_>, UnknownName> {
        match self.flange(family, size) {
            Ok(flange) => Ok(Connection::Flange(flange)),
            Err(_) => self.end(family, size).map(Connection::End),
        }
    }

    /// What the end may carry as a hose end: the figure of the hose-fitting standards where there is
    /// one, else that of the connection's own table.
    ///
    /// # Errors
    /// No such family, or no such size of it; with the nearest names.
    pub fn rating(&self, family: &str, size: &str) -> Result<EndRating, UnknownName> {
        let connection = self.connection(family, size)?;
        let (family, size) = (connection.family(), connection.size());
        let of_hose_end = self.ratings.iter().find(|row| row.family == family && row.size == size);
        Ok(of_hose_end.cloned().unwrap_or_else(|| connection.ceiling()))
    }
}
