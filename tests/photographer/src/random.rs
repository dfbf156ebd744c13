//! Random numbers that are the same everywhere.

/// SplitMix64 (Steele, Lea, Flood 2014): small, and the same on every machine.
#[derive(Debug, Clone)]
pub struct Random(u64);

impl Random {
    /// A stream of its own for each number under a seed.
    pub fn new(seed: u64, number: u64) -> Self {
        let mut random = Self(seed ^ number.wrapping_mul(0xD1B5_4A32_D192_ED03));
        random.bits();
        random
    }

    /// 64 random bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Evenly between the two.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * (self.bits() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// A whole number below the limit.
    pub fn below(&mut self, limit: usize) -> usize {
        (self.bits() % limit as u64) as usize
    }

    /// True with that probability.
    pub fn chance(&mut self, probability: f64) -> bool {
        self.between(0.0, 1.0) < probability
    }

    /// Normal with mean 0 and deviation 1: the sum of twelve even ones, cut at six.
    pub fn normal(&mut self) -> f64 {
        (0..3).fold(-6.0, |sum, _| {
            let bits = self.bits();
            sum + (0..4).map(|part| (bits >> (16 * part) & 0xFFFF) as f64 / 65536.0).sum::<f64>()
        })
    }
}
