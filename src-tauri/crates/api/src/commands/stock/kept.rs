//! A counted thing in one store: its bins, and how many lie in each.

use hosewright_core::stock::Item;
use std::collections::BTreeMap;

/// How a thing stands in a store while changes are put together.
#[derive(Debug, Clone)]
pub(super) struct Kept {
    pub item: Item,
    /// Its usual bin; blank is none.
    pub usual: String,
    pub low: Option<i64>,
    /// How many were counted in each bin; a blank one is the usual.
    pub counted: BTreeMap<String, i64>,
}

impl Kept {
    /// A bin as it is written: blank where it is the usual one.
    pub fn written(&self, bin: &str) -> String {
        if bin == self.usual { String::new() } else { bin.to_owned() }
    }

    fn bin<'a>(&'a self, written: &'a str) -> &'a str {
        if written.is_empty() { &self.usual } else { written }
    }

    /// How many lie in each bin.
    pub fn bins(&self) -> BTreeMap<String, i64> {
        let mut bins: BTreeMap<String, i64> = BTreeMap::new();
        for (written, count) in &self.counted {
            let here = bins.entry(self.bin(written).to_owned()).or_default();
            *here = here.saturating_add(*count);
        }
        bins
    }

    /// Where it lies when nobody says it: in its usual bin, else where most of it is.
    pub fn where_most(&self) -> String {
        let fullest = self.bins().into_iter().max_by_key(|(_, count)| *count);
        match fullest {
            Some((bin, _)) if self.usual.is_empty() => bin,
            _ => self.usual.clone(),
        }
    }

    /// Out of which bins so many are taken: out of where it lies, then out of the fullest. What is not there is missing
    /// from the first.
    pub fn spread(&self, mut open: i64, but: Option<&str>) -> Vec<(String, i64)> {
        let first = self.where_most();
        let mut bins: Vec<(String, i64)> =
            self.bins().into_iter().filter(|(bin, _)| Some(bin.as_str()) != but).collect();
        bins.sort_by_key(|(bin, count)| (*bin != first, std::cmp::Reverse(*count)));
        if bins.is_empty() {
            return vec![(first, open)];
        }
        let mut taken: Vec<(String, i64)> = Vec::new();
        for (bin, count) in bins {
            let here = open.min(count.max(0));
            open -= here;
            taken.push((bin, here));
        }
        if let Some((_, here)) = taken.first_mut() {
            *here += open;
        }
        taken.retain(|(_, here)| *here > 0);
        taken
    }
}
