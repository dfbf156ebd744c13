//! Readings together: how many, mean, standard deviation, smallest and largest.

/// What readings of one thing say together. Their unit is that of the readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// How many.
    pub count: usize,
    /// Their mean.
    pub mean: f64,
    /// Their standard deviation, divided by one less than their number (GUM 4.2.2); none of a single one.
    pub deviation: Option<f64>,
    /// The smallest.
    pub min: f64,
    /// The largest.
    pub max: f64,
}

impl Spread {
    /// Of readings; none where there are none.
    pub fn of(readings: impl IntoIterator<Item = f64>) -> Option<Self> {
        let readings: Vec<f64> = readings.into_iter().collect();
        if readings.is_empty() {
            return None;
        }
        let count = readings.len();
        let mean = readings.iter().sum::<f64>() / count as f64;
        let squares: f64 = readings.iter().map(|reading| (reading - mean).powi(2)).sum();
        Some(Self {
            count,
            mean,
            deviation: (count > 1).then(|| (squares / (count - 1) as f64).sqrt()),
            min: readings.iter().copied().fold(f64::INFINITY, f64::min),
            max: readings.iter().copied().fold(f64::NEG_INFINITY, f64::max),
        })
    }

    /// From the smallest to the largest.
    pub fn range(&self) -> f64 {
        self.max - self.min
    }
}
