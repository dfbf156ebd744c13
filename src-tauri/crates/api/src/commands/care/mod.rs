//! The care of a fleet's hoses: what falls due and how bad it would be, the owner's rules, inspections and surveys, and
//! the desk's table of all hoses.

mod affected;
mod desk;
mod due;
mod first;
mod inspect;
mod list;
mod policy;
mod sheet;
mod survey;
mod words;

pub use affected::{Affected, AffectedHose, AffectedQuestion, AffectedRow, affected};
pub use desk::{
    DeskExport, DeskQuestion, DeskTable, Glance, GlanceCause, GlanceQuestion, HoseCodes, codes,
    export as desk_export, glance, hoses,
};
pub use due::{ChancesSaid, DueGlance, DueLine, DueList, DueOrder, DueQuestion, FindingSaid, due};
pub use inspect::{InspectSaid, InspectTried, InspectTry, MachineNamed, inspect_try};
pub use list::{DueExport, ListKind, export as due_export};
pub use policy::{
    GuideRule, Policies, PolicyAt, PolicyAtQuestion, PolicyCounts, PolicyKept, PolicyMove, PolicyTried,
    PolicyTry, at as policy_at, list as policies, tried as policy_try,
};
pub use sheet::{RoundPaper, paper as round_paper};
pub use survey::{Survey, SurveyFound, SurveyPlace, SurveyQuestion, survey};

pub(in crate::commands) use due::{lines, stops};

use hosewright_core::catalogue::Catalogue;
use hosewright_core::record::Body;

/// The rows of the tables that an assembly rests on go into its record, where it was made by the tables of today. What
/// was made by others' is left as it is: their rows are not known here.
pub(in crate::commands) fn marked(catalogue: &Catalogue, body: &mut Body) {
    if let Body::AssemblyMade(made) = body
        && made.rests_on.is_empty()
        && made.catalogue == catalogue.version
    {
        made.rests_on = catalogue.marks(&made.spec);
    }
}
