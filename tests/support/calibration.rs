//! How honest probabilities are: scores of stated probabilities against what was true.

/// Expected calibration error over `bins` equal bins (low, high]: the mean over bins, weighted by
/// their share, of the distance between stated and observed (Naeini, Cooper and Hauskrecht 2015).
pub fn expected_calibration_error(stated: &[f64], was_true: &[bool], bins: usize) -> f64 {
    let mut sums = vec![(0.0, 0.0, 0usize); bins];
    for (&p, &y) in stated.iter().zip(was_true) {
        let bin = ((p * bins as f64).ceil() as usize).clamp(1, bins) - 1;
        sums[bin].0 += p;
        sums[bin].1 += f64::from(u8::from(y));
        sums[bin].2 += 1;
    }
    sums.iter().map(|(p, y, _)| (p - y).abs()).sum::<f64>() / stated.len() as f64
}

/// Mean squared distance of stated and true (Brier 1950, two classes).
pub fn brier_score(stated: &[f64], was_true: &[bool]) -> f64 {
    let squares = stated.iter().zip(was_true).map(|(p, &y)| (p - f64::from(u8::from(y))).powi(2));
    squares.sum::<f64>() / stated.len() as f64
}

/// Mean negative logarithm of the probability stated for what was true, in nats (Good 1952).
pub fn log_score(stated: &[f64], was_true: &[bool]) -> f64 {
    let logs = stated.iter().zip(was_true).map(|(p, &y)| -(if y { *p } else { 1.0 - p }).ln());
    logs.sum::<f64>() / stated.len() as f64
}
