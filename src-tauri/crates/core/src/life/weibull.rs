//! The Weibull distribution of lives.

/// S(t) = exp(-(t/scale)^shape). A shape above 1 wears out, below 1 fails young.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weibull {
    /// Shape, often called beta.
    pub shape: f64,
    /// Scale in the unit of the times, often called eta or characteristic life: 63.2 % have failed by it.
    pub scale: f64,
}

impl Weibull {
    /// Part that is still in service at a time.
    pub fn survival(&self, time: f64) -> f64 {
        (-self.hazard(time)).exp()
    }

    /// The cumulative hazard: what was to be expected of one that is renewed whenever it fails as it was.
    pub fn hazard(&self, time: f64) -> f64 {
        (time / self.scale).powf(self.shape)
    }

    /// The chance that one of that age fails within `span` more.
    pub fn fails_within(&self, age: f64, span: f64) -> f64 {
        -(self.hazard(age) - self.hazard(age + span)).exp_m1()
    }

    /// Time by which a part `failed` (between 0 and 1) has failed: 0.1 gives the B10 life.
    pub fn quantile(&self, failed: f64) -> f64 {
        self.scale * (-(-failed).ln_1p()).powf(1.0 / self.shape)
    }

    /// Mean life; infinite where the shape is too small for a number.
    pub fn mean(&self) -> f64 {
        self.scale * libm::tgamma(1.0 + 1.0 / self.shape)
    }

    /// Standard deviation of the lives.
    pub fn standard_deviation(&self) -> f64 {
        let (first, second) = (libm::tgamma(1.0 + 1.0 / self.shape), libm::tgamma(1.0 + 2.0 / self.shape));
        self.scale * (second - first * first).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn with_a_shape_of_one_it_is_the_exponential() {
        let life = Weibull { shape: 1.0, scale: 8000.0 };
        assert!((life.mean() - 8000.0).abs() < 1e-9);
        assert!((life.standard_deviation() - 8000.0).abs() < 1e-9);
        assert!((life.survival(8000.0) - (-1_f64).exp()).abs() < 1e-15);
    }

    #[test]
    fn quantile_and_survival_are_inverse() {
        let life = Weibull { shape: 2.7, scale: 5000.0 };
        for failed in [1e-9, 0.1, 0.5, 0.999] {
            let survival = life.survival(life.quantile(failed));
            assert!((survival - (1.0 - failed)).abs() < 1e-14, "{failed}");
        }
    }
}
