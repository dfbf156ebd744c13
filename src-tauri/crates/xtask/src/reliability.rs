//! How far what `find` says may be trusted: figures on simulated jobs with the bars beside them, and a
//! reliability diagram as a picture.

use crate::diagram;
use hosewright_tests::simulated::laws::{MODEL, OTHERS, WORST};
use hosewright_tests::simulated::scores::{Scored, Share, bins, misses, scores};
use hosewright_tests::simulated::strangers::Strange;
use hosewright_tests::simulated::trust::{Cell, ERRORS_MM, cell, strangers, walks};
use hosewright_tests::simulated::world::World;
use std::io::Result;
use std::path::Path;

/// Jobs for each law and caliper, strangers of each kind and walks: what two minutes allow.
const JOBS: usize = 250;
const STRANGERS: usize = 300;
const WALKS: usize = 250;
const SEED: u64 = 20_261_125;

/// Misses that are listed.
const LISTED: usize = 12;

/// Prints all figures and writes the diagram.
pub fn print(target: &Path) -> Result<()> {
    let world = World::new();
    let laws = || [MODEL].into_iter().chain(OTHERS);
    let cells: Vec<Cell> =
        laws().flat_map(|law| ERRORS_MM.map(|error| cell(&world, law, error, JOBS, SEED))).collect();
    calibration(&cells);
    dangers(&cells);
    of_strangers(&world);
    efforts(&world);
    blame(&cells);
    let of = |name: &str| -> Vec<Scored> {
        cells
            .iter()
            .filter(|cell| cell.law.name == name)
            .flat_map(|cell| cell.lists.iter().cloned())
            .collect()
    };
    diagram::write(target, &bins(&of(MODEL.name)), &bins(&of(WORST.name)))?;
    println!("\nwritten: {0}/reliability.svg and {0}/reliability.png", target.display());
    Ok(())
}

fn calibration(cells: &[Cell]) {
    println!(
        "{JOBS} jobs for each law and caliper, each asked with few, some and all readings; ECE over 10 bins"
    );
    println!(
        "{:<22}{:>7}{:>9}{:>8}{:>8}{:>7}{:>7}{:>7}{:>9}{:>9}{:>8}{:>9}",
        "law",
        "caliper",
        "ECE first",
        "chance",
        "all",
        "bar",
        "Brier",
        "log",
        "right 1st",
        "ends",
        "stated",
        "unknown"
    );
    for cell in cells {
        let scores = scores(&cell.lists);
        let bar = if cell.law == MODEL { 2 } else { 5 };
        println!(
            "{:<22}{:>7}{:>8.1} %{:>6.1} %{:>6.1} %{:>5} %{:>7.3}{:>7.3}{:>7.1} %{:>7.1} %{:>6.1} %{:>7.1} %",
            cell.law.name,
            cell.error,
            100.0 * scores.ece_of_first,
            100.0 * scores.ece_by_chance,
            100.0 * scores.ece_of_all,
            bar,
            scores.brier,
            scores.log_score,
            percent(cell.right_first()),
            percent(cell.right_end_first()),
            100.0 * cell.stated_first(),
            percent(cell.called_unknown()),
        );
    }
    println!("bars: right class first 97 % with all readings; rows called unknown 2 %");
}

fn percent(share: Share) -> f64 {
    100.0 * share.get()
}

fn dangers(cells: &[Cell]) {
    println!(
        "\ndangerous partners: warned of while undecided (bar 100 %), left after what parts them (bar 0)"
    );
    for cell in cells.iter().filter(|cell| cell.law == MODEL || cell.law == WORST) {
        let dangers = &cell.dangers;
        println!(
            "{:<22}{:>7}{:>8.2} % of {}{:>8.2} % of {}; {:.2} other warnings a list",
            cell.law.name,
            cell.error,
            percent(dangers.warned),
            dangers.warned.of,
            percent(dangers.left),
            dangers.left.of,
            dangers.false_alarms_each(),
        );
    }
}

fn of_strangers(world: &World) {
    println!("\nstrangers called unknown, 4 standard errors and more from every row (bar 90 %): ends, hoses");
    for (name, how) in [("drawn afresh", Strange::Afresh), ("one size beyond", Strange::OneSize)] {
        for error in ERRORS_MM {
            let [ends, hoses] = strangers(world, how, error, STRANGERS, SEED);
            let share = |lists: &[Scored]| percent(Share::of(lists, |list| list.is_called_unknown()));
            println!("{name:<22}{error:>7}{:>8.1} %{:>8.1} %", share(&ends), share(&hoses));
        }
    }
}

fn efforts(world: &World) {
    println!("\nmean effort to settle an end, guided and in the fixed order (bar: 30 % less)");
    for law in [MODEL, WORST] {
        for error in ERRORS_MM {
            let walks = walks(world, law, error, WALKS, SEED);
            let ((guided, fixed), (spent, spent_fixed)) = (walks.mean_effort(), walks.mean_spent());
            let settled = walks.settled();
            println!(
                "{:<22}{error:>7}{guided:>7.2}{fixed:>7.2}{:>7.1} % less; settled {:.0} % and {:.0} %, spent on all {spent:.2} and {spent_fixed:.2}",
                law.name,
                100.0 * walks.saved(),
                percent(settled.0),
                percent(settled.1),
            );
        }
    }
}

fn blame(cells: &[Cell]) {
    println!("\nwith all readings, what was taken for what most often, all laws and calipers together");
    let hoses = cells.iter().flat_map(|cell| &cell.full_hoses);
    let ends = cells.iter().flat_map(|cell| &cell.full_ends);
    for (name, missed) in [("ends", misses(ends)), ("hoses", misses(hoses))] {
        for (truth, leader, count) in missed.iter().take(LISTED) {
            println!("  {name}: {truth} taken for {leader}: {count}");
        }
    }
    let mut left: std::collections::BTreeMap<&str, Share> = Default::default();
    let mut missed: std::collections::BTreeMap<String, usize> = Default::default();
    for cell in cells {
        for (readings, share) in &cell.dangers.left_by_readings {
            let sum = left.entry(readings).or_default();
            *sum = Share { did: sum.did + share.did, of: sum.of + share.of };
        }
        for ((female, male), count) in &cell.dangers.missed {
            *missed.entry(format!("{female} on {male}")).or_default() += count;
        }
    }
    let mut left: Vec<_> = left.into_iter().filter(|(_, share)| share.did > 0).collect();
    left.sort_by_key(|(_, share)| std::cmp::Reverse(share.did));
    for (readings, share) in left.iter().take(LISTED) {
        println!("  still warned of after {readings}: {} of {}", share.did, share.of);
    }
    let mut missed: Vec<_> = missed.into_iter().collect();
    missed.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    for (pair, count) in missed.iter().take(LISTED) {
        println!("  not warned of: {pair}: {count}");
    }
}
