//! Where along the hose the shape is computed.

/// Intervals along a hose of unit length, finer towards both ends where a taut hose bends only there.
///
/// The places are a smooth function of the interval's number, so the errors of the shape go down
/// with even powers of the number of intervals and can be extrapolated away.
#[derive(Debug, Clone)]
pub(super) struct Mesh {
    /// Place of each node, 0 to 1.
    pub at: Vec<f64>,
    /// Length of each interval.
    pub step: Vec<f64>,
    /// Length that belongs to each node: half of the intervals beside it.
    pub weight: Vec<f64>,
    /// How fast the place moves with the node's number.
    pub stretch: Vec<f64>,
}

impl Mesh {
    /// `intervals` intervals, an even number, with the given grading.
    pub fn new(intervals: usize, grading: Grading) -> Self {
        let half = intervals / 2;
        let mut at = Vec::with_capacity(intervals + 1);
        at.push(0.0);
        for node in 1..=half {
            at.push(grading.place(node as f64 / intervals as f64, at[node - 1]));
        }
        for node in (0..half).rev() {
            at.push(1.0 - at[node]);
        }
        let stretch = at.iter().map(|place| grading.stretch(*place) / intervals as f64).collect();
        Self::of(at, stretch)
    }

    /// Every `stride`-th node.
    pub fn every(&self, stride: usize) -> Self {
        let at = self.at.iter().copied().step_by(stride).collect();
        Self::of(at, self.stretch.iter().step_by(stride).map(|stretch| stretch * stride as f64).collect())
    }

    /// How many intervals.
    pub fn intervals(&self) -> usize {
        self.step.len()
    }

    fn of(at: Vec<f64>, stretch: Vec<f64>) -> Self {
        let step: Vec<f64> = at.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let weight = (0..at.len())
            .map(|node| {
                let before = node.checked_sub(1).map_or(0.0, |before| step[before]);
                (before + step.get(node).copied().unwrap_or(0.0)) / 2.0
            })
            .collect();
        Self { at, step, weight, stretch }
    }
}

/// How the nodes crowd at the ends: their density is 1 + `crowd` (exp(-`rate` s) + exp(-`rate` (1 - s))).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Grading {
    crowd: f64,
    rate: f64,
}

impl Grading {
    /// For a hose that bends within about 1/`reach` of its length from each end (`reach` is the
    /// length times the root of pull over bending stiffness).
    pub fn for_pull(reach: f64) -> Self {
        /// Up to here even steps are fine enough.
        const EVEN: f64 = 6.0;
        /// Steps at the ends are never finer than those of a pull this strong.
        const FINEST: f64 = 1e8;
        let reach = reach.clamp(EVEN, FINEST);
        // Bends fade as exp(-reach s): the nodes fade four times slower, and most stand near the ends.
        Self { crowd: 0.6 * (reach - EVEN), rate: reach / 4.0 }
    }

    /// Nodes up to the place, in units of those of an even mesh.
    fn count(self, place: f64) -> f64 {
        let near = 1.0 - (-self.rate * place).exp();
        let far = (-self.rate * (1.0 - place)).exp() - (-self.rate).exp();
        place + self.crowd / self.rate * (near + far)
    }

    fn density(self, place: f64) -> f64 {
        1.0 + self.crowd * ((-self.rate * place).exp() + (-self.rate * (1.0 - place)).exp())
    }

    /// The place in the near half up to which `part` of the nodes stand; `before` is a place before it.
    fn place(self, part: f64, before: f64) -> f64 {
        if self.crowd == 0.0 {
            return part;
        }
        let wanted = part * self.count(1.0);
        // The count is concave in the near half, so Newton's steps come up from before and never pass.
        let mut place = before;
        for _ in 0..50 {
            let step = (wanted - self.count(place)) / self.density(place);
            place += step;
            if step.abs() <= 1e-14 * place {
                break;
            }
        }
        place
    }

    /// How fast the place moves with the part of the nodes.
    fn stretch(self, place: f64) -> f64 {
        self.count(1.0) / self.density(place)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn steps_and_weights_fill_the_hose_and_are_finer_at_the_ends_of_a_taut_one() {
        for pull in [0.0, 12.0, 100.0, 1e5] {
            let mesh = Mesh::new(64, Grading::for_pull(pull));
            assert!((mesh.step.iter().sum::<f64>() - 1.0).abs() < 1e-12, "pull {pull}");
            assert!((mesh.weight.iter().sum::<f64>() - 1.0).abs() < 1e-12, "pull {pull}");
            assert!(mesh.step.iter().all(|step| *step > 0.0), "pull {pull}");
            let first = mesh.step[0] * pull;
            assert!(first < 0.3, "pull {pull}: the first step is {first} of the bend's reach");
        }
    }
}
