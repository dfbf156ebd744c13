//! Finding a row by the names people use.

use super::names::{UnknownName, plain, plain_size};
use super::{
    Age, AgeOf, Catalogue, Connection, CutTolerance, EndRating, EndRow, Flange, FluidClass, FluidRow,
    HoseRow, HoseType, LengthPractice, LengthTolerance, Limit, OilSpeed, OutOfScope, Practice, TurnTolerance,
};
use crate::quantity::{Dn, Millimetres};
use crate::spec::Line;

/// Hoses.
impl Catalogue {
    /// The type of that standard and name, by any name people use for them.
    ///
    /// # Errors
    /// No such standard, or no such type of it; with the nearest names.
    pub fn hose_type(&self, standard: &str, kind: &str) -> Result<&HoseType, UnknownName> {
        if let Some(row) = self.types.iter().find(|row| row.standard == standard && row.kind == kind) {
            return Ok(row);
        }
        let standard = self.hose_standard(standard)?;
        let of_standard = || self.types.iter().filter(move |row| row.standard == standard);
        let given = plain(kind);
        let given = given.strip_prefix("sae").unwrap_or(&given);
        let meant = self
            .names
            .hoses
            .iter()
            .find(|known| known.standard.as_deref() == Some(standard) && known.alias.alias == given);
        of_standard()
            .find(|row| plain(&row.kind) == given || class_first(row).is_some_and(|name| name == given))
            .or_else(|| of_standard().find(|row| meant.is_some_and(|known| known.alias.name == row.kind)))
            .ok_or_else(|| UnknownName::near("type", kind, of_standard().map(|row| row.kind.as_str())))
    }

    fn hose_standard(&self, given: &str) -> Result<&str, UnknownName> {
        let name = plain(given);
        let by_alias =
            self.names.hoses.iter().find(|known| known.standard.is_none() && known.alias.alias == name);
        self.types
            .iter()
            .map(|row| row.standard.as_str())
            .find(|standard| plain(standard) == name)
            .or_else(|| by_alias.map(|known| known.alias.name.as_str()))
            .ok_or_else(|| {
                UnknownName::near("standard", given, self.types.iter().map(|row| row.standard.as_str()))
            })
    }

    /// The names people use for standards beside the tables' own, those of withdrawn standards
    /// included, without blanks and dashes; and the standard each of them means.
    pub fn standard_aliases(&self) -> impl Iterator<Item = (&str, &str)> {
        let of_standards = self.names.hoses.iter().filter(|known| known.standard.is_none());
        of_standards.map(|known| (known.alias.alias.as_str(), known.alias.name.as_str()))
    }

    /// The size rows of a type by the table's names, its own or those it shares, under its own name.
    pub fn sizes(&self, standard: &str, kind: &str) -> impl Iterator<Item = &HoseRow> {
        self.hoses.iter().chain(&self.twins).filter(move |row| row.standard == standard && row.kind == kind)
    }

    /// The size row of a type, by any name people use for them: DN 13 finds the row of DN 12.
    ///
    /// # Errors
    /// No such standard, type or size of it; with the names that would be right.
    pub fn hose(&self, standard: &str, kind: &str, dn: Dn) -> Result<&HoseRow, UnknownName> {
        let kind = self.hose_type(standard, kind)?;
        let sizes = || self.sizes(&kind.standard, &kind.kind);
        sizes()
            .find(|row| row.dn == dn)
            .or_else(|| sizes().find(|row| self.names.one_size(row.dn, dn)))
            .ok_or_else(|| {
                UnknownName::of("dn", &dn.to_string(), sizes().map(|row| row.dn.to_string()).collect())
            })
    }
}

/// Sizes.
impl Catalogue {
    /// Whether both numbers name one size: standards write 12 or 13, 31 or 32, 51 or 50.
    pub fn one_size(&self, a: Dn, b: Dn) -> bool {
        self.names.one_size(a, b)
    }

    /// Every number that names a size, the given one first.
    pub fn numbers_of_size(&self, dn: Dn) -> impl Iterator<Item = Dn> {
        self.names.numbers_of_size(dn)
    }
}

/// `350cc` for the type `CC 350`: the class may be said first.
fn class_first(row: &HoseType) -> Option<String> {
    row.pressure_class_bar?;
    let (kind, class) = row.kind.split_once(' ')?;
    Some(plain(&format!("{class}{kind}")))
}

/// Ends and flanges.
impl Catalogue {
    /// The end or flange of that family and size, by any name people use for them.
    ///
    /// # Errors
    /// No such family, no such size of it, or a name that fits more than one end; with the names
    /// that would be right.
    pub fn connection(&self, family: &str, size: &str) -> Result<Connection<'_>, UnknownName> {
        let families = self.families_named(family)?;
        let rows = || self.connections().filter(|row| families.contains(&row.family()));
        let given = plain_size(size);
        let mut fitting: Vec<_> = rows().filter(|row| plain_size(row.size()) == given).collect();
        if fitting.is_empty() {
            fitting = rows().filter(|row| self.is_size(*row, &given)).collect();
        }
        match fitting.as_slice() {
            [one] => Ok(*one),
            [] => Err(UnknownName::of("size", size, rows().map(|row| name_of(row, &families)).collect())),
            several => Err(UnknownName::of("size", size, several.iter().map(|row| row.name()).collect())),
        }
    }

    /// Every end and flange.
    pub fn connections(&self) -> impl Iterator<Item = Connection<'_>> {
        self.ends.iter().map(Connection::End).chain(self.flanges.iter().map(Connection::Flange))
    }

    /// The families that go by that name: one, or several that only a size parts.
    ///
    /// # Errors
    /// No such family; with the nearest names.
    pub fn families_named(&self, name: &str) -> Result<Vec<&str>, UnknownName> {
        let given = plain(name);
        let own = self.families.iter().map(|row| row.family.as_str()).find(|family| plain(family) == given);
        if let Some(own) = own {
            return Ok(vec![own]);
        }
        let meant: Vec<_> = self
            .names
            .families
            .iter()
            .filter(|known| known.alias == given)
            .map(|known| known.name.as_str())
            .collect();
        if meant.is_empty() {
            let known = self.families.iter().map(|row| row.family.as_str());
            return Err(UnknownName::near("family", name, known));
        }
        Ok(meant)
    }

    /// Whether `given` is another way to write the row's size: the dash without its hyphen, the
    /// tube without its series or behind it (`15L`), the thread, the inch of a flange.
    fn is_size(&self, row: Connection<'_>, given: &str) -> bool {
        let size = plain_size(row.size());
        let digits = size.trim_start_matches(|c: char| c.is_alphabetic());
        let letters = size.get(..size.len() - digits.len()).unwrap_or_default();
        let dash = size.strip_prefix('-').is_some_and(|dash| given.trim_start_matches(['#', '-']) == dash);
        let series = ["l", "s", "ll", "fm", "fg"].contains(&letters)
            && [digits.to_owned(), format!("{digits}{letters}"), size.clone()]
                .contains(&given.replace('-', ""));
        match row {
            Connection::End(end) => dash || series || is_thread(end, given),
            Connection::Flange(flange) => {
                let inch = flange.dash.is_some_and(|dash| given == sixteenths(dash.unsigned_abs()));
                let dn = given
                    .strip_prefix("dn")
                    .map(|dn| dn.trim_start_matches('-'))
                    .and_then(|dn| dn.parse().ok());
                dash || inch || dn.zip(flange.dn).is_some_and(|(dn, own)| self.names.one_size(dn, own))
            }
        }
    }

    /// The threaded or plain end of that family and size, by any name people use for them.
    ///
    /// # Errors
    /// No such family, no such size of it, or a flange; with the names that would be right.
    pub fn end(&self, family: &str, size: &str) -> Result<&EndRow, UnknownName> {
        match self.connection(family, size)? {
            Connection::End(end) => Ok(end),
            Connection::Flange(_) => {
                Err(UnknownName::near("family", family, self.ends.iter().map(|end| end.family.as_str())))
            }
        }
    }

    /// The flange of that family and size, by any name people use for them.
    ///
    /// # Errors
    /// No such family, no such size of it, or no flange; with the names that would be right.
    pub fn flange(&self, family: &str, size: &str) -> Result<&Flange, UnknownName> {
        match self.connection(family, size)? {
            Connection::Flange(flange) => Ok(flange),
            Connection::End(_) => {
                Err(UnknownName::near("family", family, self.flanges.iter().map(|row| row.family.as_str())))
            }
        }
    }

    /// What the end may carry as a hose end: the figure of the hose-fitting standards where there is
    /// one, else that of the connection's own table.
    ///
    /// # Errors
    /// No such family, or no such size of it; with the names that would be right.
    pub fn rating(&self, family: &str, size: &str) -> Result<EndRating, UnknownName> {
        let connection = self.connection(family, size)?;
        let (family, size) = (connection.family(), connection.size());
        let of_hose_end = self.ratings.iter().find(|row| row.family == family && row.size == size);
        Ok(of_hose_end.cloned().unwrap_or_else(|| connection.ceiling()))
    }
}

/// The size, with its family where there are several.
fn name_of(row: Connection<'_>, families: &[&str]) -> String {
    if families.len() == 1 { row.size().to_owned() } else { row.name() }
}

/// The thread as written, with or without what stands behind its pitch: `7/8-14`, `G1/2`, `M14`.
fn is_thread(end: &EndRow, given: &str) -> bool {
    let Some(thread) = end.thread.as_deref() else { return false };
    let whole = plain_size(thread);
    let bare = thread.split_whitespace().next().map(plain_size).unwrap_or_default();
    let pipe = given.strip_prefix("rc").or_else(|| given.strip_prefix(['g', 'r']));
    given == whole
        || given == bare
        || (given.starts_with('m') && bare.strip_prefix(given).is_some_and(|rest| rest.starts_with('x')))
        || pipe.is_some_and(|size| size.trim_start_matches('-') == plain_size(&end.size))
}

/// Sixteenths of an inch as the trade writes them: 20 is `1-1/4`.
fn sixteenths(dash: u16) -> String {
    let (whole, mut top, mut below) = (dash / 16, dash % 16, 16);
    while top > 0 && top % 2 == 0 {
        top /= 2;
        below /= 2;
    }
    match (whole, top) {
        (whole, 0) => whole.to_string(),
        (0, top) => format!("{top}/{below}"),
        (whole, top) => format!("{whole}-{top}/{below}"),
    }
}

/// Fluids.
impl Catalogue {
    /// The class of a fluid, by any name people use for it.
    ///
    /// # Errors
    /// No such fluid; with the nearest names.
    pub fn fluid(&self, name: &str) -> Result<&FluidClass, UnknownName> {
        let given = plain(name);
        let meant = self.names.fluids.iter().find(|known| known.alias == given);
        self.fluid_classes
            .iter()
            .find(|row| plain(&row.class) == given || plain(&row.name) == given)
            .or_else(|| {
                self.fluid_classes.iter().find(|row| meant.is_some_and(|known| known.name == row.class))
            })
            .ok_or_else(|| {
                UnknownName::near("fluid", name, self.fluid_classes.iter().map(|row| row.class.as_str()))
            })
    }

    /// How a tube material stands a class of fluid; none is not known.
    pub fn resistance(&self, class: &FluidClass, elastomer: &str) -> Option<&FluidRow> {
        let row_of =
            |class: &str| self.fluids.iter().find(|row| row.class == class && row.elastomer == elastomer);
        row_of(&class.class).or_else(|| row_of(class.rated_as.as_deref()?))
    }

    /// Why a fluid or line is refused, when it is.
    pub fn out_of_scope(&self, name: &str) -> Option<&OutOfScope> {
        let given = plain(name);
        self.out_of_scope
            .iter()
            .find(|row| plain(&row.key) == given || row.names.iter().any(|name| plain(name) == given))
    }
}

/// Rules.
impl Catalogue {
    /// The rule of that key, such as `proof-ratio`.
    pub fn limit(&self, key: &str) -> Option<&Limit> {
        self.limits.iter().find(|limit| limit.key == key)
    }

    /// The tolerance of an overall length; none where the practice gives none.
    pub fn length_tolerance(
        &self,
        practice: LengthPractice,
        dn: Dn,
        overall: Millimetres,
    ) -> Option<&LengthTolerance> {
        self.length_tolerances.iter().find(|row| row.practice == practice && row.holds(dn, overall))
    }

    /// The tolerance of the turn between two elbows at that overall length.
    pub fn turn_tolerance(&self, overall: Millimetres) -> Option<&TurnTolerance> {
        self.turn_tolerances.iter().find(|row| row.lengths.holds(overall))
    }

    /// How far from square the cut of a hose of that bore may be; none where no figure was found.
    pub fn cut_tolerance(&self, bore: Millimetres) -> Option<&CutTolerance> {
        self.cut_tolerances.iter().find(|row| row.bores.holds(bore))
    }

    /// The usual speeds of oil in that line; more than one where the practice parts pressure lines.
    pub fn speeds(&self, line: Line, practice: Practice) -> impl Iterator<Item = &OilSpeed> {
        self.oil_speeds.iter().filter(move |row| row.line == line && row.practice == practice)
    }

    /// The ages that limit it, one for each material, duty and practice.
    pub fn ages_of(&self, of: AgeOf) -> impl Iterator<Item = &Age> {
        self.ages.iter().filter(move |row| row.of == of)
    }
}
