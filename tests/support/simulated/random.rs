//! Random numbers that are the same everywhere.

/// A generator of uniform numbers (splitmix64), and the distributions drawn from it.
#[derive(Debug, Clone)]
pub struct Random(pub u64);

impl Random {
    /// Evenly from 0 to 1.
    pub fn uniform(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Evenly between two limits.
    pub fn between(&mut self, min: f64, max: f64) -> f64 {
        min + (max - min) * self.uniform()
    }

    /// True in that share of cases.
    pub fn chance(&mut self, share: f64) -> bool {
        self.uniform() < share
    }

    /// One of so many, evenly.
    pub fn below(&mut self, count: usize) -> usize {
        ((self.uniform() * count as f64) as usize).min(count.saturating_sub(1))
    }

    /// The place of a weight, as often as it weighs.
    pub fn weighted(&mut self, weights: impl Iterator<Item = f64> + Clone) -> usize {
        let mut left = self.uniform() * weights.clone().sum::<f64>();
        let mut last = 0;
        for (at, weight) in weights.enumerate().filter(|(_, weight)| *weight > 0.0) {
            last = at;
            left -= weight;
            if left < 0.0 {
                break;
            }
        }
        last
    }

    /// Standard normal.
    pub fn normal(&mut self) -> f64 {
        let (u, v) = (self.uniform().max(1e-300), self.uniform());
        (-2.0 * u.ln()).sqrt() * (std::f64::consts::TAU * v).cos()
    }

    /// Exponential of that mean.
    pub fn exponential(&mut self, mean: f64) -> f64 {
        -mean * self.uniform().max(1e-300).ln()
    }

    /// Student's t of three degrees of freedom, scaled to a standard deviation of 1.
    pub fn student(&mut self) -> f64 {
        let chi: f64 = (0..3).map(|_| self.normal().powi(2)).sum();
        self.normal() / chi.max(1e-12).sqrt()
    }

    /// Beta of 1 and 5: mostly near 0, mean 1/6.
    pub fn near_zero(&mut self) -> f64 {
        1.0 - self.uniform().powf(0.2)
    }
}
