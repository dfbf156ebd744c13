//! Where more failed than was to be expected.

use crate::gamma::{at_least, expected_ci95};
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// What was seen at one of many against what was to be expected there.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema, TS)]
pub struct Excess {
    /// Failures.
    pub seen: usize,
    /// Failures that hoses of these ages have elsewhere.
    pub expected: f64,
    /// The first over the second.
    pub ratio: f64,
    /// Its exact 95 % bounds, by Poisson's law.
    pub ratio_ci95: [f64; 2],
    /// The chance that any of those looked at has as many by chance alone: what is left when one picks the worst of many.
    pub by_chance: f64,
}

/// Each as it stands against what was to be expected, in the order given. The chance of each is corrected for how many were
/// looked at (S. Holm, A simple sequentially rejective multiple test procedure, Scand. J. Statist. 6, 1979). Where nothing
/// was to be expected there is nothing to hold it against: none.
pub fn excesses(seen: &[(usize, f64)]) -> Vec<Option<Excess>> {
    let chance = |(count, expected): (usize, f64)| (expected > 0.0).then(|| at_least(count, expected));
    let mut order: Vec<(usize, f64)> =
        (0..).zip(seen).filter_map(|(index, one)| Some((index, chance(*one)?))).collect();
    order.sort_by(|a, b| a.1.total_cmp(&b.1));
    let looked_at = order.len();
    let mut corrected = vec![None; seen.len()];
    let mut least = 0.0_f64;
    for (rank, (index, chance)) in order.into_iter().enumerate() {
        least = least.max(chance * (looked_at - rank) as f64).min(1.0);
        if let Some(slot) = corrected.get_mut(index) {
            *slot = Some(least);
        }
    }
    seen.iter()
        .zip(corrected)
        .map(|(&(count, expected), by_chance)| {
            let by_chance = by_chance?;
            let ratio_ci95 = expected_ci95(count).map(|bound| bound / expected);
            Some(Excess { seen: count, expected, ratio: count as f64 / expected, ratio_ci95, by_chance })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_chance_of_the_worst_of_many_is_that_of_all_of_them() {
        // 5 where 1 is expected: 1 - 65/24 e^-1 = 0.003660 by the sums of Poisson's law.
        let alone = excesses(&[(5, 1.0)]);
        assert!((alone[0].unwrap().by_chance - 0.003_659_8).abs() < 1e-6, "{alone:?}");
        let mut many = vec![(1, 1.0); 99];
        many.push((5, 1.0));
        let found = excesses(&many)[99].unwrap();
        assert!((found.by_chance - 0.365_98).abs() < 1e-4, "{found:?}");
        assert_eq!((found.seen, found.ratio), (5, 5.0));
        // 95 % bounds of 5 by Garwood's table.
        assert!((found.ratio_ci95[0] - 1.623).abs() < 1e-3 && (found.ratio_ci95[1] - 11.668).abs() < 1e-3);
    }

    #[test]
    fn a_corrected_chance_never_falls_down_the_list_and_is_never_above_one() {
        let found: Vec<f64> = excesses(&[(9, 2.0), (6, 2.0), (2, 2.0), (0, 2.0)])
            .iter()
            .map(|one| one.unwrap().by_chance)
            .collect();
        assert!(found.windows(2).all(|pair| pair[0] <= pair[1]) && found[3] <= 1.0, "{found:?}");
    }

    #[test]
    fn where_nothing_was_to_be_expected_nothing_is_said() {
        assert_eq!(excesses(&[(3, 0.0)]), [None]);
        assert!(excesses(&[]).is_empty());
    }
}
