//! How long hoses last, against published and library values and against the likelihood written out plainly.

use hosewright_core::life::{Record, Weibull, fit, life, read_csv};
use hosewright_tests::life_figures::{history, life_cases, mixed_history, mixed_life_cases};
use hosewright_tests::vectors::assert_all_agree;
use proptest::prelude::*;
use serde_json::json;

/// Half the 95 % point of chi-square with one degree of freedom.
const FALL: f64 = 1.920_729_410_347_062;

#[test]
fn fits_bounds_and_survival_agree_with_published_and_library_values() {
    assert_all_agree("life_cases.csv", &life_cases());
}

#[test]
fn lives_of_which_nobody_knows_when_they_ended_agree_with_two_libraries() {
    assert_all_agree("life_mixed_cases.csv", &mixed_life_cases());
}

/// The fit's covariance is the inverse of the bend of the likelihood, here taken by differences.
#[test]
fn the_information_of_intervals_is_how_the_likelihood_bends() {
    for set in ["intervals", "late", "both", "unseen"] {
        let records = mixed_history(set);
        let fit = fit(&records).unwrap();
        let at = |by_shape: f64, by_scale: f64| {
            let (shape, scale) = (fit.weibull.shape * by_shape.exp(), fit.weibull.scale * by_scale.exp());
            log_likelihood(&records, shape, scale)
        };
        let h = 1e-4;
        let shape_shape = -(at(h, 0.0) - 2.0 * at(0.0, 0.0) + at(-h, 0.0)) / (h * h);
        let scale_scale = -(at(0.0, h) - 2.0 * at(0.0, 0.0) + at(0.0, -h)) / (h * h);
        let both = -(at(h, h) - at(h, -h) - at(-h, h) + at(-h, -h)) / (4.0 * h * h);
        let determinant = shape_shape * scale_scale - both * both;
        let near = |found: f64, expected: f64| (found / expected - 1.0).abs() < 1e-3;
        assert!(near(fit.covariance.ln_shape, scale_scale / determinant), "{set}: {:?}", fit.covariance);
        assert!(near(fit.covariance.ln_scale, shape_shape / determinant), "{set}: {:?}", fit.covariance);
    }
}

/// The shock absorbers as if two in three had been entered old: reference-library values of
/// lifelines 0.30.3 (WeibullFitter and KaplanMeierFitter with `entry`), the maximum also by scipy.
#[test]
fn hoses_entered_old_are_fitted_as_the_library_does() {
    let entered_old: Vec<Record> = (0..)
        .zip(history("shock_absorber"))
        .map(|(i, record)| {
            let entered = [6000.0, 0.4 * record.time(), 0.0][i % 3];
            Record::new(record.time(), record.failed(), entered).unwrap()
        })
        .collect();
    let answer = life(&entered_old);
    let near = |found: f64, expected: f64, what: &str| {
        assert!((found / expected - 1.0).abs() < 1e-6, "{what}: {found} and not {expected}");
    };
    near(answer.shape.unwrap(), 2.940_399_81, "shape");
    near(answer.scale.unwrap(), 27_864.478_2, "scale");
    near(answer.log_likelihood.unwrap(), -123.622_005_546, "log likelihood");
    let expected = [
        (6700.0, 0.967742),
        (9120.0, 0.937500),
        (12200.0, 0.901442),
        (13150.0, 0.863882),
        (14300.0, 0.820688),
        (17520.0, 0.777494),
        (20100.0, 0.712703),
        (20900.0, 0.623615),
        (22700.0, 0.534527),
        (26510.0, 0.427622),
        (27490.0, 0.285081),
    ];
    assert_eq!(answer.survival.len(), expected.len());
    for ([time, survival], (at, part)) in answer.survival.iter().zip(expected) {
        assert!(*time == at && (survival - part).abs() < 1e-6, "{time}: {survival} and not {part}");
    }
}

#[test]
fn the_answer_has_the_keys_of_the_command_lines_contract() {
    let answer = serde_json::to_value(life(&history("tires"))).unwrap();
    for key in [
        "n",
        "failures",
        "shape",
        "scale",
        "shape_ci95",
        "scale_ci95",
        "log_likelihood",
        "b10",
        "mean",
        "survival",
    ] {
        assert!(!answer[key].is_null(), "{key}");
    }
    assert_eq!((&answer["n"], &answer["failures"]), (&json!(34), &json!(11)));
}

#[test]
fn one_failure_is_said_to_be_too_few() {
    let records = read_csv("time,failed\n900,1\n1200,0\n1300,0\n").unwrap();
    let answer = serde_json::to_value(life(&records)).unwrap();
    assert_eq!(answer["unfitted"], "too-few-failures");
    assert_eq!(answer["shape"], json!(null));
    assert_eq!(answer["shape_ci95"], json!([null, null]));
    assert_eq!(answer["survival"], json!([[900.0, 2.0 / 3.0]]));
}

/// The log likelihood, term by term.
fn log_likelihood(records: &[Record], shape: f64, scale: f64) -> f64 {
    let hazard = |time: f64| (time / scale).powf(shape);
    let one = |record: &Record| {
        let failed = shape.ln() - shape * scale.ln() + (shape - 1.0) * record.time().ln();
        if let Some(after) = record.after() {
            let grown = hazard(record.time()) - hazard(after);
            return (-(-grown).exp_m1()).ln() - hazard(after) + hazard(record.entered());
        }
        (if record.failed() { failed } else { 0.0 }) - hazard(record.time()) + hazard(record.entered())
    };
    records.iter().map(one).sum()
}

/// The greatest value of a function with one summit between two numbers, by golden section.
fn summit(mut low: f64, mut high: f64, of: impl Fn(f64) -> f64) -> f64 {
    let golden = (5_f64.sqrt() - 1.0) / 2.0;
    for _ in 0..200 {
        let (left, right) = (high - golden * (high - low), low + golden * (high - low));
        if of(left) < of(right) {
            low = left;
        } else {
            high = right;
        }
    }
    of((low + high) / 2.0)
}

/// Histories with failures and survivors, some of them entered old, in which times differ.
fn histories(entered_old: bool) -> impl Strategy<Value = Vec<Record>> {
    let one = (0.01..1.0_f64, 0.0..0.9_f64, any::<bool>(), any::<bool>());
    (prop::collection::vec(one, 8..60), 0.5..5.0_f64, 1e-2..1e5_f64).prop_map(move |(ones, shape, scale)| {
        let lives = Weibull { shape, scale };
        (0..)
            .zip(ones)
            .map(|(i, (failed_by, entered, failed, old))| {
                let time = lives.quantile(failed_by * 0.99);
                let entered = if entered_old && old { entered * time } else { 0.0 };
                // Two that certainly failed, one that was certainly watched from new.
                let entered = if i == 2 { 0.0 } else { entered };
                Record::new(time, failed || i < 2, entered).unwrap_or_else(|error| panic!("{error}"))
            })
            .collect()
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]

    #[test]
    fn no_other_shape_and_scale_are_likelier(
        records in histories(true), by_shape in -0.1..0.1_f64, by_scale in -0.1..0.1_f64,
    ) {
        let fit = fit(&records).unwrap();
        let Weibull { shape, scale } = fit.weibull;
        let here = log_likelihood(&records, shape, scale);
        let round = 1e-9 * here.abs().max(1.0);
        prop_assert!((here - fit.log_likelihood).abs() < round, "{here} and not {}", fit.log_likelihood);
        let there = log_likelihood(&records, shape * (1.0 + by_shape), scale * (1.0 + by_scale));
        prop_assert!(there <= here + round, "{there} > {here}");
    }

    #[test]
    fn at_the_bounds_the_likelihood_has_fallen_by_as_much_as_95_percent_allows(records in histories(true)) {
        let fit = fit(&records).unwrap();
        let Weibull { shape, scale } = fit.weibull;
        let fallen = |value: f64| (fit.log_likelihood - value - FALL).abs();
        let round = 1e-6;
        for bound in fit.shape_ci95.into_iter().flatten() {
            let width = 30.0 / bound + 5.0;
            let best = summit(scale.ln() - width, scale.ln() + width, |ln| log_likelihood(&records, bound, ln.exp()));
            prop_assert!(fallen(best) < round, "shape {bound}: {best} of {}", fit.log_likelihood);
        }
        for bound in fit.scale_ci95.into_iter().flatten() {
            let best = summit(shape.ln() - 3.0, shape.ln() + 3.0, |ln| log_likelihood(&records, ln.exp(), bound));
            prop_assert!(fallen(best) < round, "scale {bound}: {best} of {}", fit.log_likelihood);
        }
        let [Some(low), Some(high)] = fit.shape_ci95 else { panic!("{fit:?}") };
        prop_assert!(low < shape && shape < high);
        let [Some(low), Some(high)] = fit.scale_ci95 else { panic!("{fit:?}") };
        prop_assert!(low < scale && scale < high);
    }

    #[test]
    fn hours_or_minutes_give_the_same_life(records in histories(true), unit in 1e-3..1e3_f64) {
        let (hours, minutes) = (life(&records), {
            let scaled: Vec<Record> = records
                .iter()
                .map(|one| Record::new(one.time() * unit, one.failed(), one.entered() * unit).unwrap())
                .collect();
            life(&scaled)
        });
        let same = |a: Option<f64>, b: Option<f64>, by: f64| (b.unwrap() / (a.unwrap() * by) - 1.0).abs() < 1e-9;
        prop_assert!(same(hours.shape, minutes.shape, 1.0), "{:?} {:?}", hours.shape, minutes.shape);
        prop_assert!(same(hours.scale, minutes.scale, unit), "{:?} {:?}", hours.scale, minutes.scale);
        prop_assert!(same(hours.b10, minutes.b10, unit));
        prop_assert!(same(hours.mean, minutes.mean, unit));
        for side in [0, 1] {
            prop_assert!((hours.shape_ci95[side].unwrap() / minutes.shape_ci95[side].unwrap() - 1.0).abs() < 1e-7);
        }
    }

    #[test]
    fn survival_only_falls_and_its_plain_share_counts_without_survivors(records in histories(false)) {
        let answer = life(&records);
        prop_assert!(answer.survival.windows(2).all(|pair| pair[0][0] < pair[1][0] && pair[0][1] > pair[1][1]));
        let all_failed: Vec<Record> =
            records.iter().map(|one| Record::new(one.time(), true, 0.0).unwrap()).collect();
        for [time, survival] in life(&all_failed).survival {
            let left = all_failed.iter().filter(|one| one.time() > time).count();
            prop_assert!((survival - left as f64 / all_failed.len() as f64).abs() < 1e-12);
        }
    }
}

/// Lives at the exact quantiles of a known law, half of them taken off whole before: the fit finds the law again.
#[test]
fn a_hundred_thousand_hoses_give_their_law_back() {
    let law = Weibull { shape: 2.4, scale: 6500.0 };
    let count = 100_000_u32;
    let records: Vec<Record> = (0..count)
        .map(|i| {
            let life = law.quantile((f64::from(i) + 0.5) / f64::from(count));
            let taken_off = f64::from((i.wrapping_mul(2_654_435_761)) % 12_000) + 1.0;
            Record::new(life.min(taken_off), life <= taken_off, 0.0).unwrap()
        })
        .collect();
    let answer = life(&records);
    assert_eq!((answer.n, answer.unfitted), (100_000, None));
    assert!((answer.shape.unwrap() / law.shape - 1.0).abs() < 0.01, "{:?}", answer.shape);
    assert!((answer.scale.unwrap() / law.scale - 1.0).abs() < 0.01, "{:?}", answer.scale);
    let [Some(low), Some(high)] = answer.shape_ci95 else { panic!("{:?}", answer.shape_ci95) };
    assert!(low < law.shape && law.shape < high && high - low < 0.05, "{low} to {high}");
}
