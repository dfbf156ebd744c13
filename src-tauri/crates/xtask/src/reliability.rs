//! How far what `find` says may be trusted: figures on simulated jobs with the bars beside them, and a
//! reliability diagram as a picture.

use crate::diagram;
use hosewright_tests::simulated::laws::{Law, MODEL, OTHERS, WORST};
use hosewright_tests::simulated::scores::{Scored, Share, bins, misses, scores};
use hosewright_tests::simulated::strangers::Strange;
use hosewright_tests::simulated::trust::{Cell, ERRORS_MM, cell, strangers, walks};
use hosewright_tests::simulated::world::World;
use std::io::Result;
use std::path::Path;

/// Jobs for each law and caliper, strangers of each kind and walks: what two minutes allow.
const JOBS: usize = 250;
const JOBS_OF_OWN: usize = 600;
const STRANGERS: usize = 200;
const WALKS: usize = 200;
const SEED: u64 = 20_261_125;

/// Misses that are listed.
const LISTED: usize = 12;

/// Prints all figures and writes the diagram.
pub fn print(target: &Path) -> Result<()> {
    let world = World::new();
    let laws = || [MODEL].into_iter().chain(OTHERS);
    let cells: Vec<Cell> = laws()
        .flat_map(|law| {
            let jobs = if law == MODEL { JOBS_OF_OWN } else { JOBS };
            // Each caliper with jobs of its own, so that all three together are one large sample.
            [0, 1, 2].map(|at| cell(&world, law, ERRORS_MM[at], jobs, SEED + at as u64))
        })
        .collect();
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
        "{JOBS} jobs for each law and caliper ({JOBS_OF_OWN} by the model's own), each asked with few, some \
         and all readings\nECE over 10 bins: of the leading class, what chance alone gives, of all classes"
    );
    println!(
        "{:<22}{:>7}{:>9}{:>9}{:>9}{:>6}{:>8}{:>7}",
        "law", "caliper", "first", "chance", "all", "bar", "Brier", "log"
    );
    for of_law in cells.chunk_by(|a, b| a.law == b.law) {
        for cell in of_law {
            calibrated(of_law[0].law, &cell.error.to_string(), &cell.lists);
        }
        let all: Vec<Scored> = of_law.iter().flat_map(|cell| cell.lists.iter().cloned()).collect();
        calibrated(of_law[0].law, "all", &all);
    }
    println!(
        "\nwith all readings, a whole print among them (bars: right class first 97 %, called unknown 2 %)"
    );
    println!(
        "{:<22}{:>7}{:>14}{:>14}{:>14}{:>14}{:>16}",
        "law", "caliper", "right first", "hose ends", "both halves", "stated first", "called unknown"
    );
    for cell in cells {
        println!(
            "{:<22}{:>7}{:>12.1} %{:>12.1} %{:>12.1} %{:>12.1} %{:>14.1} %",
            cell.law.name,
            cell.error,
            percent(cell.right_first()),
            percent(cell.right_end_first()),
            percent(cell.right_pair_first()),
            100.0 * cell.stated_first(),
            percent(cell.called_unknown()),
        );
    }
    println!("\nby the model's own laws: what was stated of the leading class, and how often it was true");
    type Of = fn(&Cell) -> &Vec<Scored>;
    let parts: [(&str, Of); 4] = [
        ("hoses, some readings", |cell| &cell.some_hoses),
        ("ends, some readings", |cell| &cell.some_ends),
        ("hoses, all readings", |cell| &cell.full_hoses),
        ("ends, all readings", |cell| &cell.full_ends),
    ];
    for (name, of) in parts {
        let lists: Vec<Scored> =
            cells.iter().filter(|cell| cell.law == MODEL).flat_map(|cell| of(cell).iter().cloned()).collect();
        let bins: Vec<String> = bins(&lists)
            .iter()
            .map(|bin| format!("{:.0}>{:.0}", 100.0 * bin.stated, 100.0 * bin.observed))
            .collect();
        println!("  {name:<22}ECE {:.1} %  {}", 100.0 * scores(&lists).ece_of_first, bins.join(" "));
    }
}

fn calibrated(law: Law, caliper: &str, lists: &[Scored]) {
    let scores = scores(lists);
    println!(
        "{:<22}{caliper:>7}{:>7.1} %{:>7.1} %{:>7.2} %{:>4} %{:>8.3}{:>7.3}",
        law.name,
        100.0 * scores.ece_of_first,
        100.0 * scores.ece_by_chance,
        100.0 * scores.ece_of_all,
        if law == MODEL { 2 } else { 5 },
        scores.brier,
        scores.log_score,
    );
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
            if error == ERRORS_MM[1] {
                for (_, leader, count) in misses(&ends).iter().chain(&misses(&hoses)).take(LISTED) {
                    println!("    taken for {leader}: {count}");
                }
            }
        }
    }
}

fn efforts(world: &World) {
    println!("\nmean effort to settle an end, guided and in the fixed order (bar: 30 % less)");
    for law in [MODEL, WORST] {
        for error in ERRORS_MM {
            let walks = walks(world, law, error, WALKS, SEED);
            let ((guided, fixed), (spent, spent_fixed)) = (walks.mean_effort(), walks.mean_spent());
            let (settled, threatened) = (walks.settled(), walks.threatened());
            println!(
                "{:<22}{error:>7}{guided:>7.2}{fixed:>7.2}{:>7.1} % less; settled {:.0} % and {:.0} %, open for a partner alone {:.0} % and {:.0} %, spent on all {spent:.2} and {spent_fixed:.2}",
                law.name,
                100.0 * walks.saved(),
                percent(settled.0),
                percent(settled.1),
                percent(threatened.0),
                percent(threatened.1),
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
