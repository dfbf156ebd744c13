//! Look-alikes that the table of ends itself shows: what happens where a female starts on a male that
//! is not its own, and which readings part the two.

use super::threads_meet::{Thread, ThreadFit, ThreadRule, fit};
use super::{
    Basis, Cone, Danger, EndRow, Family, FamilyPart, FemalePart, Lookalike, Mechanism, Provenance, Seal,
};
use std::collections::{HashMap, HashSet};

/// A pair of the same pitch with this much of its depth holds like its own.
const HOLDS_PCT: f64 = 90.0;

/// A pair that runs on for so many turns before it binds is taken for tight; below, it binds at once.
const RUNS_TURNS: f64 = 3.5;

/// Seats nearer than this are one seat to a gauge: 42 degree seats are made for 45 degree flares.
const ONE_SEAT_DEG: f64 = 7.0;

/// Tubes, bores and diameters nearer than this tell nothing by caliper, mm.
const TUBE_TELLS_MM: f64 = 0.3;
const BORE_TELLS_MM: f64 = 1.5;
const DIAMETER_TELLS_MM: f64 = 0.25;

/// Seats at least as wide as this are not named by their tube.
const NAMED_BY_TUBE_DEG: f64 = 30.0;

/// What a wrong pair does.
type Happens = (Mechanism, Danger);

/// Every pair whose threads meet and whose parts are not made for each other, those of the table left out.
pub(super) fn meetings(ends: &[EndRow], families: &[Family], table: &[Lookalike]) -> Vec<Lookalike> {
    let parts: HashMap<&str, FamilyPart> =
        families.iter().map(|family| (family.family.as_str(), family.part)).collect();
    let ends: Vec<End<'_>> = ends.iter().filter_map(|row| End::of(row, &parts)).collect();
    let known: HashSet<_> = table.iter().map(Lookalike::names).collect();
    let pairs = ends.iter().flat_map(|female| ends.iter().map(move |male| (female, male)));
    // Most threads do not meet, which two numbers tell; names are looked at of the few that do.
    pairs
        .filter_map(|(female, male)| meeting(female, male))
        .filter(|pair| !known.contains(&pair.names()))
        .collect()
}

/// A threaded end and what its family serves as.
struct End<'r> {
    row: &'r EndRow,
    thread: Thread<'r>,
    part: FamilyPart,
    seat: Seat,
}

/// What a half closes with.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Seat {
    Cone,
    Inverted,
    FaceRing,
    ShoulderRing,
    Flat,
    Thread,
    /// The table does not say.
    Unstated,
}

impl Seat {
    fn of(seal: Seal) -> Self {
        match seal {
            Seal::Cone | Seal::ORingCone => Seat::Cone,
            Seal::InvertedFlare => Seat::Inverted,
            Seal::ORingFace => Seat::FaceRing,
            Seal::ORingShoulder => Seat::ShoulderRing,
            Seal::BondedWasher | Seal::FlatGasket => Seat::Flat,
            Seal::Thread => Seat::Thread,
        }
    }
}

impl<'r> End<'r> {
    fn of(row: &'r EndRow, parts: &HashMap<&str, FamilyPart>) -> Option<Self> {
        row.thread.as_ref()?;
        let thread = Thread::of(row)?;
        let seat = row.seals.first().map_or(Seat::Unstated, |seal| Seat::of(*seal));
        Some(Self { row, thread, part: *parts.get(row.family.as_str())?, seat })
    }

    fn name(&self) -> (&str, &str) {
        (&self.row.family, &self.row.size)
    }

    /// Screws into a body instead of taking a nut.
    fn is_stud(&self) -> bool {
        matches!(self.part, FamilyPart::Port | FamilyPart::Banjo)
    }

    fn female_part(&self) -> FemalePart {
        match self.seat {
            Seat::Thread | Seat::Inverted => FemalePart::Port,
            _ if self.part == FamilyPart::Port => FemalePart::Port,
            _ => FemalePart::Nut,
        }
    }
}

fn meeting(female: &End<'_>, male: &End<'_>) -> Option<Lookalike> {
    let fit = fit(&female.thread, &male.thread)?;
    if female.name() == male.name() || is_made_for(female, male) {
        return None;
    }
    let (mechanism, danger) = happens(female, male, &fit)?;
    let separating_readings = separating(female.row, male.row);
    Some(Lookalike {
        female_family: female.row.family.clone(),
        female_size: female.row.size.clone(),
        female_part: female.female_part(),
        male_family: male.row.family.clone(),
        male_size: male.row.size.clone(),
        mechanism,
        danger,
        thread_overlap_pct: Some(fit.overlap_pct),
        separating_readings,
        starts: String::new(),
        happens: String::new(),
        separates: String::new(),
        fit: Some(fit),
        provenance: Provenance {
            source: "computed from the table of ends".to_owned(),
            basis: Basis::Derived.max(female.row.provenance.basis).max(male.row.provenance.basis),
        },
    })
}

/// Pairs that the trade puts together: the two American taper threads (ASME B1.20.1 and B1.20.3), and a
/// straight pipe swivel on the American taper male, whose chamfer it seals in (supplier's pipe and flare
/// tables). A hollow bolt goes through its eye into a port, and no nut is run onto it.
fn is_made_for(female: &End<'_>, male: &End<'_>) -> bool {
    let is_american_taper = |end: &End<'_>| matches!(end.row.family.as_str(), "NPT" | "NPTF");
    let takes_american_taper = female.row.family == "NPSM swivel" || is_american_taper(female);
    let is_bolt_on_nut = male.part == FamilyPart::Banjo && female.female_part() == FemalePart::Nut;
    (takes_american_taper && is_american_taper(male)) || is_bolt_on_nut
}

fn happens(female: &End<'_>, male: &End<'_>, fit: &ThreadFit) -> Option<Happens> {
    let is_one_pitch = female.row.pitch_mm == male.row.pitch_mm;
    match (fit.rule, fit.turns) {
        (ThreadRule::SameThread, _) => seats(female, male),
        (ThreadRule::NearThread, None) if fit.overlap_pct >= HOLDS_PCT => {
            Some(seats(female, male).unwrap_or((Mechanism::LeaksAtSeat, Danger::Leaks)))
        }
        (ThreadRule::NearThread | ThreadRule::TaperInParallel, None) => {
            Some((Mechanism::StripsAndBlowsOff, Danger::BlowsOff))
        }
        (ThreadRule::NearThread, Some(turns)) if turns >= RUNS_TURNS => {
            Some((Mechanism::StripsAndBlowsOff, Danger::BlowsOff))
        }
        (ThreadRule::TaperInParallel, _) => Some((Mechanism::WedgesAndSplits, Danger::Damages)),
        (ThreadRule::TwoTapers, _) if is_one_pitch => Some((Mechanism::WeepsAlongThread, Danger::Leaks)),
        (ThreadRule::TwoTapers, _) => Some((Mechanism::WedgesAndSplits, Danger::Damages)),
        (ThreadRule::NearThread | ThreadRule::ParallelInTaper, _) => {
            Some((Mechanism::BindsAndLeaks, Danger::Leaks))
        }
    }
}

/// What the seats do where the thread runs home; none where they close: the two are then one connection.
fn seats(female: &End<'_>, male: &End<'_>) -> Option<Happens> {
    use Seat::{Cone, Flat, ShoulderRing, Unstated};
    match (female.seat, male.seat) {
        (Cone, Cone) => cones(female.row, male.row),
        (Flat, ShoulderRing) => Some((Mechanism::RingExtrudes, Danger::Leaks)),
        (ShoulderRing, Flat) if male.is_stud() => Some((Mechanism::LeaksAtSeat, Danger::Leaks)),
        (Flat, Cone | Seat::Inverted) => Some((Mechanism::LeaksAtSeat, Danger::Leaks)),
        // A stud's seat is under its hex and a nut's in its bottom: alike is not enough.
        (of_female, of_male)
            if of_female == of_male && of_female != Unstated && female.is_stud() == male.is_stud() =>
        {
            None
        }
        _ => Some((Mechanism::NoSeal, Danger::Leaks)),
    }
}

fn cones(female: &EndRow, male: &EndRow) -> Option<Happens> {
    match (female.female_cone, male.male_cone) {
        (Some(Cone::Concave), Some(Cone::Concave)) => return Some((Mechanism::LeaksAtSeat, Danger::Leaks)),
        (Some(Cone::Convex), Some(Cone::Convex)) => return Some((Mechanism::NoSeal, Danger::Leaks)),
        _ => {}
    }
    let (Some(angle), Some(other)) = (female.seat_included_angle_deg, male.seat_included_angle_deg) else {
        return Some((Mechanism::NoSeal, Danger::Leaks));
    };
    if (angle.get() - other.get()).abs() > ONE_SEAT_DEG {
        let has_ring = female.seals.contains(&Seal::ORingCone);
        let mechanism = if has_ring { Mechanism::RingExtrudes } else { Mechanism::LeaksAtSeat };
        return Some((mechanism, Danger::Leaks));
    }
    // Light and heavy series: one thread and one cone for two tubes.
    let (Some(nose), Some(body)) = (female.tube_od_mm, male.tube_od_mm) else { return None };
    let wider = nose.get() - body.get();
    if angle.get() >= NAMED_BY_TUBE_DEG || wider.abs() <= TUBE_TELLS_MM {
        None
    } else if wider > 0.0 {
        Some((Mechanism::FewThreadsCaught, Danger::BlowsOff))
    } else {
        Some((Mechanism::RingExtrudes, Danger::BlowsOff))
    }
}

/// The readings of an end that differ between the two rows by more than they err.
fn separating(a: &EndRow, b: &EndRow) -> Vec<String> {
    let apart =
        |a: Option<f64>, b: Option<f64>, tells: f64| a.zip(b).is_some_and(|(a, b)| (a - b).abs() >= tells);
    let mm = |of: fn(&EndRow) -> Option<crate::quantity::Millimetres>, tells| {
        apart(of(a).map(|mm| mm.get()), of(b).map(|mm| mm.get()), tells)
    };
    let is_other_pitch = a.pitch_mm != b.pitch_mm;
    let is_other_taper = a.taper != b.taper;
    let is_other_seat = match (a.seat_included_angle_deg, b.seat_included_angle_deg) {
        (Some(a), Some(b)) => (a.get() - b.get()).abs() > ONE_SEAT_DEG,
        (a, b) => a != b,
    };
    // A ring that fell out of its cone leaves a cone, and washers are taken for each other.
    let has = |row: &EndRow, seat| row.seals.iter().any(|seal| Seat::of(*seal) == seat);
    let shares_seal = a.seals.iter().any(|seal| has(b, Seat::of(*seal)));
    let differs = [
        ("thread_diameter_mm", mm(|row| row.male_major_nom_mm, DIAMETER_TELLS_MM)),
        ("pitch_mm", is_other_pitch),
        ("tpi", is_other_pitch),
        ("flank_angle_deg", a.flank_angle_deg != b.flank_angle_deg),
        ("taper", is_other_taper),
        ("second_thread_diameter_mm", is_other_taper),
        ("seal", !shares_seal && !a.seals.is_empty() && !b.seals.is_empty()),
        ("seat_included_angle_deg", is_other_seat),
        ("cone", a.male_cone != b.male_cone || a.female_cone != b.female_cone),
        ("tube_od_mm", mm(|row| row.tube_od_mm, TUBE_TELLS_MM)),
        ("male_bore_mm", mm(|row| row.male_bore_mm, BORE_TELLS_MM)),
    ];
    differs.into_iter().filter(|(_, differs)| *differs).map(|(key, _)| key.to_owned()).collect()
}
