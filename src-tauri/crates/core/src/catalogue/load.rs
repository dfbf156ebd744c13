//! From the files to the joined tables.

use super::edition::EDITION_COLUMNS;
use super::end::END_COLUMNS;
use super::family::FAMILY_COLUMNS;
use super::flange::FLANGE_COLUMNS;
use super::hose::HOSE_COLUMNS;
use super::hose_type::{INTERCHANGE_COLUMNS, TYPE_COLUMNS};
use super::lookalike::LOOKALIKE_COLUMNS;
use super::meetings::meetings;
use super::names::{Alias, DnAlias, HoseAlias, Names};
use super::rating::{RATING_COLUMNS, TORQUE_COLUMNS};
use super::table::{CatalogueError, read, unique};
use super::twin::{CLASS_COLUMNS, PressureClass, classed, twins};
use super::{
    Age, Catalogue, Caution, CrimpFact, CutTolerance, Edition, Effort, EndRating, EndRow, FailureCause,
    Family, Flange, FluidClass, FluidRow, HoseRow, HoseType, Interchange, LengthTolerance, Limit, Lookalike,
    MarkingRule, OilSpeed, OriginShare, OutOfScope, ReadingTerm, Sign, SizeStep, StakeWeight, Table, Torque,
    TurnTolerance, care, fluid, knowledge, mark, names, reading, rule,
};
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use std::sync::OnceLock;

impl Catalogue {
    /// The catalogue built into the program, read once.
    pub fn embedded() -> &'static Self {
        static EMBEDDED: OnceLock<Catalogue> = OnceLock::new();
        EMBEDDED.get_or_init(|| match Self::read(Table::embedded) {
            Ok(catalogue) => catalogue,
            // The tables are part of the program and a test reads them.
            Err(error) => panic!("the embedded catalogue is broken: {error}"),
        })
    }

    /// Reads and joins the tables whose texts `text_of` gives.
    ///
    /// # Errors
    /// The first thing that is wrong, with its table, line and column and what would be right.
    pub fn read<'t>(text_of: impl Fn(Table) -> &'t str) -> Result<Self, CatalogueError> {
        let none = HashMap::new();
        let label = |row: &super::table::Row<'_>| Ok((row.text("label")?, row.text("source")?));
        let sources: HashMap<_, _> =
            read(Table::Sources, text_of(Table::Sources), "label,source", &none, label)?
                .into_iter()
                .collect();

        // A table whose rows are each called by `$key`, and no two alike.
        macro_rules! rows {
            ($table:ident, $columns:expr, $make:expr) => {
                read(Table::$table, text_of(Table::$table), $columns, &sources, $make)?
            };
            ($table:ident, $columns:expr, $make:expr, |$row:ident| $($key:expr),+) => {{
                let rows = rows!($table, $columns, $make);
                unique(Table::$table, &rows, |$row| [$($key.to_string()),+].join(" "))?;
                rows
            }};
        }

        let hoses = rows!(Hoses, HOSE_COLUMNS, HoseRow::read, |row| row.standard, row.kind, row.dn);
        let classes = rows!(PressureClasses, CLASS_COLUMNS, PressureClass::read);
        let mut types = rows!(HoseTypes, TYPE_COLUMNS, HoseType::read, |row| row.standard, row.kind);
        types.extend(classed(&types, &classes));
        for ((standard, kind), with) in rows!(Interchange, INTERCHANGE_COLUMNS, Interchange::read) {
            types
                .iter_mut()
                .filter(|row| row.standard == standard && row.kind == kind)
                .for_each(|row| row.interchange.push(with.clone()));
        }
        let ends = rows!(Ends, END_COLUMNS, EndRow::read, |row| row.family, row.size);
        let families = rows!(Families, FAMILY_COLUMNS, Family::read, |row| row.family);
        let mut lookalikes = rows!(
            Lookalikes,
            LOOKALIKE_COLUMNS,
            Lookalike::read,
            |row| row.female_family,
            row.female_size,
            row.male_family,
            row.male_size,
            row.starts
        );
        lookalikes.extend(meetings(&ends, &families, &lookalikes));
        Ok(Self {
            twins: twins(&hoses, &types, &classes),
            hoses,
            types,
            editions: rows!(Editions, EDITION_COLUMNS, Edition::read, |row| row.standard, row.kind),
            ends,
            flanges: rows!(Flanges, FLANGE_COLUMNS, Flange::read, |row| row.family, row.size),
            families,
            ratings: rows!(HoseEndRatings, RATING_COLUMNS, EndRating::read, |row| row.family, row.size),
            torques: rows!(Torques, TORQUE_COLUMNS, Torque::read),
            lookalikes,
            causes: rows!(FailureCauses, knowledge::CAUSE_COLUMNS, FailureCause::read, |row| row.code),
            signs: rows!(InspectionSigns, care::SIGN_COLUMNS, Sign::read, |row| row.code),
            stakes: rows!(Stakes, care::STAKE_COLUMNS, StakeWeight::read, |row| row.key),
            cautions: rows!(Cautions, knowledge::CAUTION_COLUMNS, Caution::read, |row| row.id),
            crimp_facts: rows!(CrimpFacts, knowledge::CRIMP_COLUMNS, CrimpFact::read, |row| row.id),
            marking_rules: rows!(MarkingRules, knowledge::MARKING_COLUMNS, MarkingRule::read, |row| row.id),
            fluid_classes: rows!(FluidClasses, fluid::CLASS_COLUMNS, FluidClass::read, |row| row.class),
            fluids: rows!(Fluids, fluid::FLUID_COLUMNS, FluidRow::read, |row| row.class, row.elastomer),
            out_of_scope: rows!(OutOfScope, fluid::SCOPE_COLUMNS, OutOfScope::read, |row| row.key),
            length_tolerances: rows!(LengthTolerances, rule::LENGTH_COLUMNS, LengthTolerance::read),
            turn_tolerances: rows!(TurnTolerances, rule::TURN_COLUMNS, TurnTolerance::read, |row| row.id),
            cut_tolerances: rows!(CutTolerances, rule::CUT_COLUMNS, CutTolerance::read, |row| row.id),
            oil_speeds: rows!(OilSpeeds, rule::SPEED_COLUMNS, OilSpeed::read, |row| row.low_id),
            ages: rows!(Ages, rule::AGE_COLUMNS, Age::read, |row| row.id),
            limits: rows!(Limits, rule::LIMIT_COLUMNS, Limit::read, |row| row.key),
            reading_terms: rows!(
                ReadingTerms,
                reading::TERM_COLUMNS,
                ReadingTerm::read,
                |row| row.term,
                row.reading,
                format!("{:?} {:?}", row.part, row.half)
            ),
            efforts: rows!(
                Efforts,
                reading::EFFORT_COLUMNS,
                Effort::read,
                |row| row.reading,
                format!("{:?}", row.part)
            ),
            size_steps: rows!(SizeSteps, reading::STEP_COLUMNS, SizeStep::read, |row| row.steps),
            origins: rows!(Origins, reading::ORIGIN_COLUMNS, OriginShare::read, |row| row.family),
            finding: OnceLock::new(),
            names: Names {
                families: rows!(FamilyAliases, names::FAMILY_ALIAS_COLUMNS, |row| Alias::read(row, "family")),
                hoses: rows!(HoseAliases, names::HOSE_ALIAS_COLUMNS, HoseAlias::read),
                dns: rows!(DnAliases, names::DN_ALIAS_COLUMNS, DnAlias::read),
                fluids: rows!(
                    FluidAliases,
                    names::FLUID_ALIAS_COLUMNS,
                    |row| Alias::read(row, "class"),
                    |row| row.alias
                ),
            },
            digests: mark::digests(&text_of)?,
            version: version(text_of),
            sources,
        })
    }
}

/// The first twelve digits of the hash over all files.
fn version<'t>(text_of: impl Fn(Table) -> &'t str) -> String {
    let mut hash = Sha256::new();
    for table in Table::ALL {
        hash.update(table.file());
        hash.update(text_of(*table));
    }
    hash.finalize().iter().take(6).map(|byte| format!("{byte:02x}")).collect()
}
