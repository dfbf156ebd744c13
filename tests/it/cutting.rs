//! Which piece is cut from which reel or offcut: what a user can count on, whatever the batch.
#![allow(clippy::expect_used, reason = "what a test can not do without fails it")]

use hosewright_core::cutting::{Batch, CutPlan, CuttingError, Stock, StockSort, cut};
use hosewright_core::quantity::Millimetres;
use proptest::prelude::*;

fn batch(pieces: &[f64], reels: &[f64], offcuts: &[f64]) -> Batch {
    let stock = |sort| move |length: &f64| Stock { sort, length_mm: Millimetres(*length) };
    Batch {
        pieces_mm: pieces.iter().copied().map(Millimetres).collect(),
        stock: reels
            .iter()
            .map(stock(StockSort::Reel))
            .chain(offcuts.iter().map(stock(StockSort::Offcut)))
            .collect(),
        kerf_mm: Millimetres(3.0),
        useful_mm: Millimetres(300.0),
    }
}

fn planned(batch: &Batch) -> CutPlan {
    cut(batch).expect("a batch that can be")
}

#[test]
fn an_offcut_is_used_before_new_hose() {
    let plan = planned(&batch(&[1000.0], &[20000.0], &[1400.0]));
    assert_eq!((plan.reel_mm.get(), plan.cuts[0].stock, plan.cuts[0].left_mm.get()), (0.0, 1, 397.0));
    assert!(plan.proved && plan.cuts[0].kept, "{plan:?}");
}

#[test]
fn the_offcut_that_leaves_a_useful_rest_is_taken_before_one_that_leaves_scrap() {
    let plan = planned(&batch(&[1000.0], &[], &[1200.0, 1350.0]));
    assert_eq!((plan.cuts[0].stock, plan.scrap_mm.get()), (1, 0.0), "{plan:?}");
}

#[test]
fn the_saw_takes_its_kerf_at_each_cut_and_none_behind_a_piece_that_comes_out_even() {
    let two = |length| planned(&batch(&[500.0, 500.0], &[], &[length]));
    assert!(two(1003.0).unmade.is_empty());
    assert_eq!(two(1002.0).unmade.len(), 1);
    let reel = planned(&batch(&[500.0, 500.0], &[1003.0], &[]));
    assert_eq!(reel.reel_mm.get(), 1003.0);
    let longer = planned(&batch(&[500.0, 500.0], &[2000.0], &[]));
    assert_eq!((longer.reel_mm.get(), longer.cuts[0].left_mm.get()), (1006.0, 994.0));
}

#[test]
fn pieces_are_paired_so_that_two_offcuts_come_out_even() {
    // Longest first into the tightest offcut would put 700 with 300 and leave 600 without room.
    let plan = planned(&batch(&[700.0, 600.0, 400.0, 300.0], &[5000.0], &[1003.0, 1003.0]));
    assert_eq!((plan.reel_mm.get(), plan.scrap_mm.get(), plan.proved), (0.0, 0.0, true), "{plan:?}");
}

#[test]
fn what_no_stock_can_give_is_said_and_the_rest_is_cut() {
    let plan = planned(&batch(&[3000.0, 800.0], &[1000.0], &[]));
    assert_eq!((plan.unmade, plan.cuts.len()), (vec![0], 1));
    // What is left unmade takes no new hose.
    assert!(plan.least_reel_mm <= plan.reel_mm, "{:?} of {:?}", plan.least_reel_mm, plan.reel_mm);
    let none = planned(&batch(&[5000.0], &[3000.0], &[]));
    assert_eq!((none.unmade, none.least_reel_mm.get()), (vec![0], 0.0));
}

#[test]
fn a_length_that_can_not_be_is_named() {
    let mut wrong = batch(&[1000.0, -1.0], &[], &[]);
    let error = cut(&wrong).expect_err("no such piece");
    assert_eq!(error.field(), "pieces_mm[1]");
    wrong.pieces_mm = vec![Millimetres(10.0); Batch::MOST + 1];
    assert!(matches!(cut(&wrong), Err(CuttingError::TooMany { field: "pieces_mm", .. })));
}

/// The plan's own figures, from its cuts alone.
fn counted_again(batch: &Batch, plan: &CutPlan) -> Result<(f64, f64), TestCaseError> {
    let mut seen: Vec<usize> =
        plan.cuts.iter().flat_map(|cut| cut.pieces.clone()).chain(plan.unmade.clone()).collect();
    seen.sort_unstable();
    prop_assert_eq!(seen, (0..batch.pieces_mm.len()).collect::<Vec<_>>(), "each piece once");
    let (mut reel, mut scrap) = (0.0, 0.0);
    for cut in &plan.cuts {
        let stock = batch.stock[cut.stock];
        let used: f64 =
            cut.pieces.iter().map(|piece| batch.pieces_mm[*piece].get() + batch.kerf_mm.get()).sum();
        let left = (stock.length_mm.get() - used).max(0.0);
        prop_assert!(used <= stock.length_mm.get() + batch.kerf_mm.get() + 1e-6, "{cut:?} of {stock:?}");
        prop_assert!((cut.left_mm.get() - left).abs() < 1e-6, "{cut:?} leaves {left}");
        match stock.sort {
            StockSort::Reel => reel += stock.length_mm.get() - left,
            StockSort::Offcut if left < batch.useful_mm.get() => scrap += left,
            StockSort::Offcut => {}
        }
        let kept = stock.sort == StockSort::Reel || left >= batch.useful_mm.get();
        prop_assert_eq!(cut.kept, kept);
    }
    Ok((reel, scrap))
}

/// The least of every way to cut a few pieces: unmade, reel, scrap; each piece goes to each stock in turn.
fn least_of_all(batch: &Batch, at: usize, of: &mut Vec<Option<usize>>) -> Option<[f64; 3]> {
    if at < batch.pieces_mm.len() {
        let choices = std::iter::once(None).chain((0..batch.stock.len()).map(Some));
        let tried = choices.filter_map(|choice| {
            of.push(choice);
            let least = least_of_all(batch, at + 1, of);
            of.pop();
            least
        });
        return tried.min_by(|a, b| a.partial_cmp(b).expect("finite"));
    }
    let kerf = batch.kerf_mm.get();
    let length = |stock: Option<usize>| {
        let of_stock = of.iter().zip(&batch.pieces_mm).filter(|(own, _)| **own == stock);
        of_stock.map(|(_, piece)| piece.get() + kerf).sum::<f64>()
    };
    let mut cost = [length(None), 0.0, 0.0];
    for (at, stock) in batch.stock.iter().enumerate() {
        let (used, whole) = (length(Some(at)), stock.length_mm.get());
        if used > whole + kerf {
            return None;
        }
        let left = (whole - used).max(0.0);
        match stock.sort {
            StockSort::Reel => cost[1] += whole - left,
            StockSort::Offcut if used > 0.0 && left < batch.useful_mm.get() => cost[2] += left,
            StockSort::Offcut => {}
        }
    }
    Some(cost)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn a_plan_can_be_cut_and_its_figures_are_those_of_its_cuts(
        pieces in prop::collection::vec(200_u32..3000, 0..25),
        reels in prop::collection::vec(1000_u32..20000, 0..3),
        offcuts in prop::collection::vec(200_u32..3000, 0..25),
        kerf in 0_u32..5,
    ) {
        let lengths = |all: &[u32]| all.iter().map(|mm| f64::from(*mm)).collect::<Vec<_>>();
        let batch = Batch {
            kerf_mm: Millimetres(f64::from(kerf)),
            ..batch(&lengths(&pieces), &lengths(&reels), &lengths(&offcuts))
        };
        let plan = planned(&batch);
        let (reel, scrap) = counted_again(&batch, &plan)?;
        prop_assert!((plan.reel_mm.get() - reel).abs() < 1e-6 && (plan.scrap_mm.get() - scrap).abs() < 1e-6);
        prop_assert!(plan.least_reel_mm.get() <= plan.reel_mm.get());
        prop_assert_eq!(&planned(&batch), &plan, "the same batch, the same plan");
    }

    #[test]
    fn a_small_batch_is_cut_as_well_as_any_of_all_ways(
        pieces in prop::collection::vec(20_u32..150, 1..6),
        reel in 0_u32..300,
        offcuts in prop::collection::vec(20_u32..300, 0..4),
    ) {
        let ten = |all: &[u32]| all.iter().map(|cm| f64::from(*cm) * 10.0).collect::<Vec<_>>();
        let batch = batch(&ten(&pieces), &ten(&[reel]), &ten(&offcuts));
        let plan = planned(&batch);
        prop_assert!(plan.proved);
        let kerf = batch.kerf_mm.get();
        let unmade: f64 = plan.unmade.iter().map(|piece| batch.pieces_mm[*piece].get() + kerf).sum();
        let least = least_of_all(&batch, 0, &mut Vec::new()).expect("leaving all unmade is a way");
        let found = [unmade, plan.reel_mm.get(), plan.scrap_mm.get()];
        for (found, least) in found.iter().zip(least) {
            prop_assert!((found - least).abs() < 1e-6, "{found} where {least} is possible: {plan:?}");
        }
    }
}
