//! The part still in service where some were found failed and nobody knows since when.
//!
//! Where every age at failure is known this is Kaplan and Meier's estimate; [`super::kaplan_meier()`] gives that at once and
//! with bounds.

use super::Record;

/// A place on the axis of ages: rank 0 stands just before an age, 1 at it, 2 just after it.
type Mark = (f64, u8);

/// Rounds after which the estimate is taken as it is.
const ROUNDS: usize = 20_000;
/// The estimate stands where no part moves by more.
const SETTLED: f64 = 1e-11;

/// The estimate of greatest likelihood without any law of lives (B. W. Turnbull, J. R. Statist. Soc. B 38, 1976, with the
/// support of H. Frydman, J. R. Statist. Soc. B 56, 1994, where watching began late): for each age by which some part has
/// failed, the part still in service just after it. Where exactly in the span before that age it failed nobody knows.
pub fn turnbull(records: &[Record]) -> Vec<[f64; 2]> {
    let watched: Vec<&Record> = records.iter().filter(|record| record.time() > record.entered()).collect();
    let spans = support(&watched);
    let seen: Vec<Seen> = watched.iter().map(|record| Seen::of(record, &spans)).collect();
    let parts = settle(&seen, spans.len());
    let mut left = 1.0;
    spans
        .iter()
        .zip(parts)
        .filter(|(span, part)| span.1.0.is_finite() && *part > 1e-9)
        .map(|(span, part)| {
            left -= part;
            [span.1.0, f64::max(left, 0.0)]
        })
        .collect()
}

/// Where a hose failed: from the first mark to the second.
fn failing(record: &Record) -> (Mark, Mark) {
    match (record.failed(), record.after()) {
        (true, Some(after)) => ((after, 2), (record.time(), 1)),
        (true, None) => ((record.time(), 0), (record.time(), 1)),
        (false, _) => ((record.time(), 2), (f64::INFINITY, 1)),
    }
}

/// The spans that can hold any part: from a beginning to the next end, none between.
fn support(watched: &[&Record]) -> Vec<(Mark, Mark)> {
    let mut marks: Vec<(Mark, bool)> = Vec::new();
    for record in watched {
        let (begin, end) = failing(record);
        marks.extend([(begin, true), (end, false)]);
        if record.entered() > 0.0 {
            marks.push(((record.entered(), 1), false));
        }
    }
    marks.sort_by(|a, b| a.0.0.total_cmp(&b.0.0).then(a.0.1.cmp(&b.0.1)).then(b.1.cmp(&a.1)));
    let pairs = marks.windows(2).filter_map(|pair| match pair {
        [(begin, true), (end, false)] => Some((*begin, *end)),
        _ => None,
    });
    pairs.collect()
}

/// What one hose says of the spans, by their numbers.
struct Seen {
    /// It failed in one of these.
    first: usize,
    past: usize,
    /// It would not be known had it failed in one before this.
    known_from: usize,
}

impl Seen {
    fn of(record: &Record, spans: &[(Mark, Mark)]) -> Self {
        let (begin, end) = failing(record);
        Self {
            first: spans.partition_point(|span| span.0 < begin),
            past: spans.partition_point(|span| span.1 <= end),
            known_from: match record.entered() {
                entered if entered > 0.0 => spans.partition_point(|span| span.0 < (entered, 2)),
                _ => 0,
            },
        }
    }
}

/// The parts of all spans by self-consistency: each hose is shared among the spans it may have failed in, and each late
/// beginning stands for those that failed before it and are not known.
fn settle(seen: &[Seen], spans: usize) -> Vec<f64> {
    let mut parts = vec![1.0 / spans.max(1) as f64; spans];
    for _ in 0..ROUNDS {
        let sums: Vec<f64> = std::iter::once(0.0)
            .chain(parts.iter().scan(0.0, |sum, part| {
                *sum += part;
                Some(*sum)
            }))
            .collect();
        let sum =
            |from: usize, to: usize| sums.get(to).zip(sums.get(from)).map_or(0.0, |(to, from)| to - from);
        // Differences of the weights from span to span.
        let mut steps = vec![0.0; spans + 1];
        let mut all = 0.0;
        let mut share = |from: usize, to: usize, weight: f64| {
            if let Some(step) = steps.get_mut(from) {
                *step += weight;
            }
            if let Some(step) = steps.get_mut(to) {
                *step -= weight;
            }
        };
        for one in seen {
            let inside = sum(one.first, one.past);
            if inside > 0.0 {
                share(one.first, one.past, 1.0 / inside);
            }
            let known = sum(one.known_from, spans);
            if known > 0.0 {
                all += 1.0 / known;
                share(0, one.known_from, 1.0 / known);
            }
        }
        let (mut weight, mut moved) = (0.0, 0.0_f64);
        for (part, step) in parts.iter_mut().zip(&steps) {
            weight += step;
            let next = *part * weight / all;
            moved = moved.max((next - *part).abs());
            *part = next;
        }
        if moved < SETTLED {
            break;
        }
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::life::kaplan_meier;

    fn near(found: &[[f64; 2]], expected: &[[f64; 2]], within: f64) {
        assert_eq!(found.len(), expected.len(), "{found:?} and not {expected:?}");
        for (found, expected) in found.iter().zip(expected) {
            assert!(
                found[0] == expected[0] && (found[1] - expected[1]).abs() < within,
                "{found:?} {expected:?}"
            );
        }
    }

    #[test]
    fn where_every_age_is_known_it_is_kaplan_and_meiers() {
        let records: Vec<Record> = [
            (3.0, true, 0.0),
            (5.0, false, 0.0),
            (5.0, true, 1.0),
            (6.0, true, 4.0),
            (7.0, false, 6.5),
            (8.0, true, 0.0),
            (8.0, true, 2.0),
            (9.0, false, 0.0),
        ]
        .iter()
        .map(|&(time, failed, entered)| Record::new(time, failed, entered).unwrap())
        .collect();
        near(&turnbull(&records), &kaplan_meier(&records), 1e-6);
    }

    #[test]
    fn overlapping_intervals_share_what_lies_in_both() {
        // Both may have failed between 2 and 3, and nothing is likelier than that they did.
        let both = [Record::between(1.0, 3.0, 0.0).unwrap(), Record::between(2.0, 5.0, 0.0).unwrap()];
        near(&turnbull(&both), &[[3.0, 0.0]], 1e-6);
    }
}
