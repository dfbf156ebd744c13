//! Parts that are in no table: at least so many standard errors from every row in one dimension.

use super::features::{Feature, NOT, Shows, Use};
use super::instruments::Instrument;
use super::random::Random;
use super::world::{Part, World};

/// How far from every row a stranger is.
pub const AWAY: f64 = 4.0;

/// How a stranger comes about.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Strange {
    /// Every size and shape drawn for itself.
    Afresh,
    /// A part of the tables but for one size, which lies beyond its limits by 4 to 8 standard errors.
    OneSize,
}

/// A stranger among the ends.
pub fn end(world: &World, how: Strange, error: f64, random: &mut Random) -> Vec<Feature> {
    until_strange(world, &world.halves, error, || match how {
        Strange::OneSize => {
            one_size(&world.halves, &["thread_diameter_mm", "tube_od_mm", "bolt_long_mm"], error, random)
        }
        Strange::Afresh => thread(world, random),
    })
}

/// A stranger among the hoses.
pub fn hose(world: &World, how: Strange, error: f64, random: &mut Random) -> Vec<Feature> {
    until_strange(world, &world.hoses, error, || match how {
        Strange::OneSize => one_size(&world.hoses, &["id_mm", "cover_od_mm"], error, random),
        Strange::Afresh => {
            let bore = random.between(4.0, 100.0);
            let braid = bore + random.between(2.0, 15.0);
            vec![
                ("id_mm", exactly(bore)),
                ("reinforcement_od_mm", exactly(braid)),
                ("cover_od_mm", exactly(braid + random.between(1.5, 6.0))),
                ("reinforcement", Shows::OneOf(1 << random.below(6))),
                ("layers", Shows::OneOf(1 << random.below(6))),
                ("cover", Shows::OneOf(1 << random.below(2))),
            ]
        }
    })
}

fn exactly(size: f64) -> Shows {
    Shows::Band { min: size, max: size, use_: NOT }
}

fn until_strange(
    world: &World,
    parts: &[Part],
    error: f64,
    mut draw: impl FnMut() -> Vec<Feature>,
) -> Vec<Feature> {
    loop {
        let features = draw();
        if parts.iter().all(|part| distance(world, &features, part, error) >= AWAY) {
            return features;
        }
    }
}

/// A thread with anything behind it.
fn thread(world: &World, random: &mut Random) -> Vec<Feature> {
    let mut leaf = |key: &str| match world.instruments.of_key(key) {
        Instrument::Gauge { leaves, .. } => Shows::Leaf(leaves[random.below(leaves.len())]),
        _ => Shows::Unstated,
    };
    let (pitch, flank, seat) = (leaf("pitch_mm"), leaf("flank_angle_deg"), leaf("seat_included_angle_deg"));
    // Male, nut, stud, socket, in the order of the kinds: every second is female.
    let kind = random.below(4);
    vec![
        ("kind", Shows::OneOf(1 << kind)),
        ("gender", Shows::OneOf(1 << (kind % 2))),
        ("thread_diameter_mm", exactly(random.between(8.0, 60.0))),
        ("pitch_mm", pitch),
        ("taper", Shows::OneOf(1)),
        ("second_thread_diameter_mm", Shows::Slope(0.0)),
        ("flank_angle_deg", flank),
        ("seal", Shows::OneOf(1 << random.below(8))),
        ("seat_included_angle_deg", seat),
        ("cone", Shows::OneOf(1 << random.below(3))),
    ]
}

/// A part of which the first of these sizes that it has lies beyond its limits.
fn one_size(parts: &[Part], keys: &[&str], error: f64, random: &mut Random) -> Vec<Feature> {
    loop {
        let mut features = parts[random.below(parts.len())].features.clone();
        let sized = features
            .iter_mut()
            .find(|(key, shows)| keys.contains(key) && matches!(shows, Shows::Band { .. }));
        if let Some((_, shows)) = sized
            && let Shows::Band { min, max, use_ } = *shows
        {
            let (below, above) = spreads(use_, error);
            let by = random.between(AWAY, 2.0 * AWAY);
            let size = if random.chance(0.5) { min - by * below } else { max + by * above };
            if size > 1.0 {
                *shows = exactly(size);
                return features;
            }
        }
    }
}

/// One standard error below and above the limits: the caliper's and, on the worn side, use's.
pub fn spreads(use_: Use, error: f64) -> (f64, f64) {
    // The mean square of an exponential is twice its mean squared.
    let square = |sign: f64| -> f64 {
        use_.iter().filter(|term| term.0 == sign).map(|(_, share, mean)| 2.0 * share * mean * mean).sum()
    };
    (error.hypot(square(-1.0).sqrt()), error.hypot(square(1.0).sqrt()))
}

/// How many standard errors a part is from a row in the dimension where it is farthest; what either
/// does not state counts nothing, nor do choices by eye.
fn distance(world: &World, strange: &[Feature], row: &Part, error: f64) -> f64 {
    let of = |key: &str, shows: Shows| {
        let known =
            row.features.iter().find(|(known, _)| *known == key).map_or(Shows::Absent, |(_, shows)| *shows);
        match (shows, known) {
            (Shows::Band { .. }, Shows::Absent) => f64::INFINITY,
            (Shows::Band { min: size, .. }, Shows::Band { min, max, use_ }) => {
                let (below, above) = spreads(use_, error);
                ((min - size) / below).max((size - max) / above)
            }
            (Shows::Band { min: size, .. }, Shows::AtMost(max)) => {
                ((size - max) / error).max((max - size) / error.hypot(super::features::ONE_LIMIT))
            }
            (Shows::Band { min: size, .. }, Shows::AtLeast(min)) => {
                ((min - size) / error).max((size - min) / error.hypot(super::features::ONE_LIMIT))
            }
            (Shows::Leaf(leaf), Shows::Leaf(known)) => match world.instruments.of_key(key) {
                Instrument::Gauge { width, .. } => (leaf - known).abs() / width.at(known),
                _ => 0.0,
            },
            _ => 0.0,
        }
    };
    strange.iter().map(|&(key, shows)| of(key, shows)).fold(0.0, f64::max)
}
