//! Holding a value against a limit.

use super::{Case, Finding, Verdict};
use crate::catalogue::{Basis, Provenance};

/// A rule that holds a value against a limit of the tables, and the cases it can be.
#[derive(Clone, Copy)]
pub(super) struct Limit {
    pub(super) rule: &'static str,
    pub(super) unit: &'static str,
    /// Within a limit that is sure enough.
    pub(super) ok: Case,
    /// Within a limit that nobody has verified.
    pub(super) unverified: Case,
    /// Not within.
    pub(super) broken: Case,
}

impl Limit {
    /// The value may reach the limit and not pass it.
    pub(super) fn at_most(self, value: f64, limit: f64, from: &Provenance) -> Finding {
        self.held(value, limit, value <= limit, from)
    }

    /// The value may fall to the limit and not below it.
    pub(super) fn at_least(self, value: f64, limit: f64, from: &Provenance) -> Finding {
        self.held(value, limit, value >= limit, from)
    }

    fn held(self, value: f64, limit: f64, within: bool, from: &Provenance) -> Finding {
        let (verdict, case) = match (within, unverified(from.basis)) {
            (false, _) => (Verdict::Stop, self.broken),
            (true, true) => (Verdict::Caution, self.unverified),
            (true, false) => (Verdict::Pass, self.ok),
        };
        Finding::new(self.rule, verdict, case).measured(value, limit, self.unit).from(from)
    }
}

/// Whether a figure of that basis may never be taken for sure.
pub(crate) fn unverified(basis: Basis) -> bool {
    match basis {
        Basis::Memory | Basis::Proxy | Basis::None => true,
        Basis::Published
        | Basis::Derived
        | Basis::ReferenceLibrary
        | Basis::CommonPractice
        | Basis::LowerOfTwo
        | Basis::Bounded
        | Basis::Yours => false,
    }
}
