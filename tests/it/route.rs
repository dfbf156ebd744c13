//! Where the ports are -> how tight the hose bends.

mod field;

use hosewright_core::check::Verdict;
use hosewright_core::route::{Layout, Reason, RouteError, Routed, route};
use hosewright_tests::random_layouts::outcome;
use hosewright_tests::route_figures::{route_cases, stable_misses};
use hosewright_tests::vectors::rows;
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};
use std::f64::consts::PI;

#[track_caller]
fn layout(question: Value) -> Layout {
    serde_json::from_value(question).expect("the question can be read")
}

#[track_caller]
fn routed(question: Value) -> Routed {
    route(&layout(question)).expect("the hose has a shape")
}

fn port(position: [f64; 3], direction: [f64; 3]) -> Value {
    json!({"position_mm": position, "direction": direction})
}

/// Two parallel ports side by side, 200 mm apart.
fn u_bend(free_length_mm: f64) -> Value {
    json!({"a": port([0.0; 3], [1.0, 0.0, 0.0]), "b": port([0.0, 200.0, 0.0], [1.0, 0.0, 0.0]),
           "free_length_mm": free_length_mm, "hose_od_mm": 20, "min_bend_radius_mm": 75})
}

/// Closed forms (circular arcs, Jacobi elliptic functions, helices; Love, Treatise on the Mathematical Theory of
/// Elasticity; Timoshenko and Gere, Theory of Elastic Stability) and a general-purpose library's boundary value
/// solver; each row names its own and its tolerance, mostly 1e-6, where 1 % in radius and 0.5 % in energy would do.
#[test]
fn shapes_agree_with_the_elastica_table() {
    let compared = route_cases();
    let wrong: Vec<String> = compared
        .iter()
        .filter(|one| !one.agrees())
        .map(|one| format!("{} {}: {} and not {}", one.case, one.quantity, one.found, one.expected))
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    // EC-1, the modulus of a planar figure of eight, is no shape that a hose can lie in.
    for row in rows("elastica_cases.csv").iter().filter(|row| row.id() != "EC-1") {
        assert!(compared.iter().any(|one| one.case == row.id()), "{} was not compared", row.id());
    }
}

/// What the residual says, worked out from nothing but the points: circles through three neighbours
/// give the bending moment m, and where the rod is in balance m + r x n is the same everywhere for some force n.
/// Gives the greatest unbalanced moment over the greatest moment.
fn unbalanced(points: &[[f64; 3]]) -> f64 {
    let sub = |a: [f64; 3], b: [f64; 3]| [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
    let cross = |a: [f64; 3], b: [f64; 3]| {
        [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
    };
    let size = |a: [f64; 3]| (a[0] * a[0] + a[1] * a[1] + a[2] * a[2]).sqrt();
    let scale = size(sub(points[points.len() / 2], points[0])).max(1.0);
    let mut rows: Vec<([f64; 6], f64)> = Vec::new();
    let mut greatest = 0.0_f64;
    for three in points.windows(3) {
        let (before, after) = (sub(three[1], three[0]), sub(three[2], three[1]));
        let turn = cross(before, after);
        let around = size(before) * size(after) * size(sub(three[2], three[0]));
        let moment = turn.map(|part| 2.0 * part / around * scale);
        greatest = greatest.max(size(moment));
        let [x, y, z] = three[1].map(|part| part / scale);
        // r x n = (y nz - z ny, z nx - x nz, x ny - y nx)
        rows.push(([0.0, -z, y, -1.0, 0.0, 0.0], -moment[0]));
        rows.push(([z, 0.0, -x, 0.0, -1.0, 0.0], -moment[1]));
        rows.push(([-y, x, 0.0, 0.0, 0.0, -1.0], -moment[2]));
    }
    let fit = least_squares(&rows);
    let off = rows.iter().map(|(row, right)| row.iter().zip(fit).map(|(a, x)| a * x).sum::<f64>() - right);
    off.map(f64::abs).fold(0.0, f64::max) / greatest
}

/// Normal equations with a trace of damping, by Gauss-Jordan elimination.
fn least_squares(rows: &[([f64; 6], f64)]) -> [f64; 6] {
    let mut system = [[0.0; 7]; 6];
    for (row, right) in rows {
        for i in 0..6 {
            for j in 0..6 {
                system[i][j] += row[i] * row[j];
            }
            system[i][6] += row[i] * right;
        }
    }
    for (i, row) in system.iter_mut().enumerate() {
        row[i] += 1e-9;
    }
    for i in 0..6 {
        let pivot = system[i];
        for (j, row) in system.iter_mut().enumerate() {
            if j != i {
                let factor = row[i] / pivot[i];
                row.iter_mut().zip(pivot).for_each(|(part, own)| *part -= factor * own);
            }
        }
    }
    std::array::from_fn(|i| system[i][6] / system[i][i])
}

fn distance(a: [f64; 3], b: [f64; 3]) -> f64 {
    a.iter().zip(b).map(|(a, b)| (a - b).powi(2)).sum::<f64>().sqrt()
}

fn unit_vector() -> impl Strategy<Value = [f64; 3]> {
    [-1.0..1.0, -1.0..1.0, -1.0..1.0_f64].prop_filter_map("not too short", |v| {
        let size = distance(v, [0.0; 3]);
        (0.1..1.0).contains(&size).then(|| v.map(|part| part / size))
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn any_layout_gives_a_shape_in_balance_or_says_that_there_is_none(
        from in unit_vector(), to in unit_vector(), way in unit_vector(),
        gap in 0.0..500.0_f64, length in 50.0..1500.0_f64,
    ) {
        let end = way.map(|part| part * gap);
        let question = json!({"a": port([0.0; 3], from), "b": port(end, to), "free_length_mm": length});
        match route(&layout(question)) {
            Err(error) => prop_assert!(
                matches!(error, RouteError::NoShape { .. }) && length <= gap * (1.0 + 1e-9),
                "{error}: {length} mm over {gap} mm"
            ),
            Ok(routed) => {
                prop_assert!(length >= gap * (1.0 - 1e-9), "{length} mm can not reach over {gap} mm");
                let bend = &routed.poses[0];
                prop_assert!(bend.residual < 1e-3, "residual {}", bend.residual);
                let last = *bend.points_mm.last().expect("there are points");
                prop_assert!(distance(last, end) < 1e-4 * length, "the end is missed by {} mm", distance(last, end));
                // Circles through three points are good to a few parts in a thousand, where the hose is not so taut
                // that they stand unevenly.
                if length > 1.05 * gap {
                    let off = unbalanced(&bend.points_mm);
                    prop_assert!(off < 0.03, "moments are off by {off}");
                }
            }
        }
    }

    #[test]
    fn turning_the_whole_or_swapping_the_ends_changes_no_radius(
        from in unit_vector(), to in unit_vector(), way in unit_vector(), slack in 1.05..2.0_f64,
    ) {
        let end = way.map(|part| part * 300.0);
        let turned = |v: [f64; 3]| [0.6 * v[0] - 0.8 * v[2], v[1], 0.8 * v[0] + 0.6 * v[2]];
        let ask = |a: Value, b: Value| routed(json!({"a": a, "b": b, "free_length_mm": 300.0 * slack}));
        let plain = ask(port([0.0; 3], from), port(end, to));
        let energy = |routed: &Routed| routed.poses[0].bend_energy_per_mm;
        for (how, other) in [
            ("swapped", ask(port(end, to), port([0.0; 3], from))),
            ("turned", ask(port([0.0; 3], turned(from)), port(turned(end), turned(to)))),
        ] {
            let ratio = energy(&other) / energy(&plain);
            prop_assert!((ratio - 1.0).abs() < 1e-5, "{how}: energy {ratio} times");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn some_length_keeps_the_limit_in_any_layout(
        from in unit_vector(), to in unit_vector(), way in unit_vector(),
        gap in 0.0..500.0_f64, limit in 30.0..200.0_f64,
    ) {
        let end = way.map(|part| part * gap);
        let sought = routed(json!({"a": port([0.0; 3], from), "b": port(end, to),
                                   "hose_od_mm": 20, "min_bend_radius_mm": limit}));
        let inside = sought.min_inside_radius_mm.map_or(f64::INFINITY, |inside| inside.get());
        prop_assert!(inside >= limit * (1.0 - 1e-9), "{inside} is below {limit}");
        prop_assert_ne!(sought.verdict, Verdict::Stop);
    }
}

/// A plain congruential generator, so that every run sees the same layouts.
struct Draw(u64);

impl Draw {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn unit(&mut self) -> [f64; 3] {
        loop {
            let v = [0; 3].map(|_| 2.0 * self.next() - 1.0);
            let size = distance(v, [0.0; 3]);
            if (0.1..1.0).contains(&size) {
                return v.map(|part| part / size);
            }
        }
    }
}

/// The bars: 1 % of the radius, 0.5 % of the energy, for every row that a hose can lie in.
#[test]
fn stable_shapes_keep_the_bars_of_radius_and_energy() {
    let misses = stable_misses();
    assert!(misses.len() >= 40, "only {} rows are stable", misses.len());
    for (id, radius, energy) in misses {
        assert!(radius < 0.01 && energy < 0.005, "{id}: radius off by {radius:.1e}, energy by {energy:.1e}");
    }
}

/// The first of the ten thousand that `cargo xtask layouts` tries.
#[test]
fn random_layouts_get_a_true_shape_or_are_told_that_there_is_none() {
    let found = outcome(200, 1744);
    assert_eq!(found.wrong, Vec::<usize>::new(), "{found:?}");
    assert_eq!(found.shapes + found.too_short, 200);
    assert!(found.shapes > 150 && found.too_short > 5, "{found:?}");
}

#[test]
fn nearly_every_layout_that_can_have_a_shape_gets_one() {
    let mut draw = Draw(2026);
    let (mut converged, mut worst) = (0, 0.0_f64);
    let count = 300;
    for _ in 0..count {
        let gap = 100.0 + 400.0 * draw.next();
        let end = draw.unit().map(|part| part * gap);
        // From 0.1 % of slack to four times the gap.
        let slack = (0.001_f64.ln() + draw.next() * 3000.0_f64.ln()).exp();
        let question = json!({"a": port([0.0; 3], draw.unit()), "b": port(end, draw.unit()),
                              "free_length_mm": gap * (1.0 + slack)});
        if let Ok(routed) = route(&layout(question)) {
            let residual = routed.poses[0].residual;
            worst = worst.max(residual);
            converged += usize::from(residual < 1e-4);
        }
    }
    let part = f64::from(u32::try_from(converged).expect("small")) / f64::from(count);
    println!("{converged} of {count} random layouts converged; worst residual {worst:.1e}");
    assert!(part >= 0.99, "only {part} converged; worst residual {worst:.1e}");
}

#[test]
fn a_hose_that_does_not_reach_is_an_error_that_names_the_pose_and_both_lengths() {
    let question = json!({"a": {"position_mm": [0, 0, 0], "direction": [1, 0, 0], "rigid_mm": 40},
        "b": port([390.0, 0.0, 0.0], [-1.0, 0.0, 0.0]),
        "poses": [{"b": port([450.0, 0.0, 0.0], [-1.0, 0.0, 0.0])}], "free_length_mm": 400, "length_change_pct": [-4, 2]});
    let error = route(&layout(question)).expect_err("410 mm can not be bridged by 400 mm");
    assert_eq!(error, RouteError::NoShape { pose: 1, length_mm: 384.0, gap_mm: 410.0 });
    assert_eq!(error.field(), "free_length_mm");
}

#[test]
fn a_straight_hose_has_no_radius_and_no_energy() {
    let question = json!({"a": port([0.0; 3], [0.0, 0.0, 2.0]), "b": port([0.0, 0.0, 500.0], [0.0, 0.0, -1.0]),
                          "free_length_mm": 500, "hose_od_mm": 20, "min_bend_radius_mm": 100});
    let routed = routed(question);
    assert_eq!(routed.min_radius_mm, None);
    assert_eq!(routed.poses[0].bend_energy_per_mm, 0.0);
    assert_eq!(routed.verdict, Verdict::Pass);
    assert_eq!(
        serde_json::to_value(&routed).expect("it can be written")["min_inside_radius_mm"],
        Value::Null
    );
}

#[rstest]
#[case::wide_enough(75.0, Verdict::Pass, vec![])]
#[case::within_the_margin(85.0, Verdict::Caution, vec![Reason::NearLimit])]
#[case::too_tight(91.0, Verdict::Stop, vec![Reason::BelowLimit])]
fn the_inside_radius_is_held_against_the_limit(
    #[case] limit: f64,
    #[case] verdict: Verdict,
    #[case] reasons: Vec<Reason>,
) {
    let mut question = u_bend(100.0 * PI);
    question["min_bend_radius_mm"] = json!(limit);
    let routed = routed(question);
    let inside = routed.min_inside_radius_mm.expect("it bends").get();
    assert!((inside - 90.0).abs() < 1e-4, "a semicircle of 100 mm less half of 20 mm, but {inside}");
    assert_eq!((routed.verdict, routed.reasons), (verdict, reasons));
    assert!(routed.estimate, "it says that it is an estimate");
}

#[rstest]
#[case::limit("min_bend_radius_mm", Reason::NoLimit)]
#[case::diameter("hose_od_mm", Reason::NoDiameter)]
fn what_is_not_known_is_never_a_pass(#[case] missing: &str, #[case] reason: Reason) {
    let mut question = u_bend(100.0 * PI);
    question[missing] = Value::Null;
    let routed = routed(question);
    assert_eq!((routed.verdict, routed.reasons), (Verdict::Caution, vec![reason]));
}

#[test]
fn the_length_change_under_pressure_counts_at_its_worst() {
    let mut question = u_bend(100.0 * PI);
    question["length_change_pct"] = json!([-5, 2]);
    let bend = routed(question).poses.remove(0);
    // Elastica table, UB-095: the same ports with 0.95 of the length.
    assert!((bend.min_radius_mm.expect("it bends").get() / 76.800_187_69 - 1.0).abs() < 1e-6);
    assert_eq!(bend.length_change_pct, -5.0);
}

#[test]
fn two_shapes_of_nearly_the_same_energy_are_told() {
    // Elastica table, 3D-S1: an S-bend with slack leaves its plane to either side.
    let question = json!({"a": port([0.0; 3], [1.0, 0.0, 0.0]), "b": port([360.0, 90.0, 90.0], [-1.0, 0.0, 0.0]),
                          "free_length_mm": 420});
    let bend = routed(question).poses.remove(0);
    assert!(bend.near_rival);
    let rival = bend.rival_energy_per_mm.expect("its energy is given");
    assert!(
        (rival / 0.008_216_988_866 - 1.0).abs() < 1e-6,
        "the mirror shape has the same energy, not {rival}"
    );
    assert!(!routed(u_bend(100.0 * PI)).poses[0].near_rival, "a semicircle has none");
}

#[rstest]
#[case::still(json!([0, 0]))]
#[case::under_pressure(json!([-4, 2]))]
fn the_shortest_length_is_the_first_that_keeps_the_limit(#[case] change: Value) {
    let mut question = u_bend(0.0);
    question["free_length_mm"] = Value::Null;
    question["length_change_pct"] = change.clone();
    let sought = routed(question);
    let shortest = sought.shortest_free_length_mm.expect("it was sought").get();
    let inside = |length: f64| {
        let mut question = u_bend(length);
        question["length_change_pct"] = change.clone();
        route(&layout(question))
            .ok()
            .and_then(|routed| routed.min_inside_radius_mm)
            .map_or(0.0, |inside| inside.get())
    };
    assert!((inside(shortest) - 75.0).abs() < 1e-3, "{shortest} mm gives {}", inside(shortest));
    for part in 1..40 {
        let shorter = shortest * (1.0 - 0.01 * f64::from(part));
        assert!(inside(shorter) < 75.0, "{shorter} mm would have done too");
    }
    assert_ne!(sought.verdict, Verdict::Stop);
}

#[test]
fn the_shortest_length_holds_in_every_pose() {
    let ports = |apart: f64| json!({"b": port([0.0, apart, 0.0], [1.0, 0.0, 0.0])});
    let question = json!({"a": port([0.0; 3], [1.0, 0.0, 0.0]), "hose_od_mm": 20, "min_bend_radius_mm": 60,
                          "poses": [ports(180.0), ports(200.0), ports(240.0), ports(220.0)]});
    let routed = routed(question);
    assert_eq!(routed.poses.len(), 4);
    let inside: Vec<f64> =
        routed.poses.iter().map(|bend| bend.min_inside_radius_mm.expect("it bends").get()).collect();
    assert!(inside.iter().all(|inside| *inside > 60.0 - 1e-6), "{inside:?}");
    assert!(inside.iter().any(|inside| *inside < 60.0 + 1e-3), "in one pose it is just kept: {inside:?}");
}

/// A helix turns its Frenet frame against an untwisted one by its torsion times its length
/// (differential geometry; tau = c / (r^2 + c^2)). Ports whose marks follow that frame twist the hose by as much.
#[test]
fn ports_that_turn_twist_the_hose_by_as_much() {
    let (radius, rise) = (100.0_f64, 100.0_f64);
    let half = std::f64::consts::FRAC_1_SQRT_2;
    let length = PI * (radius * radius + rise * rise).sqrt();
    let marked = |position: [f64; 3], direction: [f64; 3], up: [f64; 3]| json!({"position_mm": position, "direction": direction, "up": up});
    let question = json!({
        "a": marked([0.0; 3], [0.0, 0.0, 1.0], [1.0, 0.0, 0.0]),
        "b": marked([0.0, 0.0, length], [0.0, 0.0, -1.0], [1.0, 0.0, 0.0]),
        "poses": [{
            // The helix (r cos u, r sin u, c u) over half a turn; its binormals are the marks.
            "a": marked([radius, 0.0, 0.0], [0.0, half, half], [0.0, -half, half]),
            "b": marked([-radius, 0.0, rise * PI], [0.0, half, -half], [0.0, half, half]),
        }],
        "free_length_mm": length,
    });
    let routed = routed(question);
    let expected = (rise / (radius * radius + rise * rise) * length).to_degrees();
    let twist = routed.poses[1].twist_deg.get();
    assert!((twist - expected).abs() < 1e-4, "{twist} degrees, not {expected}");
    assert_eq!(routed.poses[0].twist_deg.get(), 0.0, "fitted without twist");
    assert!(routed.reasons.contains(&Reason::Twist));
    assert_eq!([routed.twist_range_deg[0].get(), routed.twist_range_deg[1].get()], [0.0, twist]);
}

#[test]
fn ports_that_stay_in_one_plane_do_not_twist_the_hose() {
    let at = |angle: f64| {
        let (sin, cos) = angle.sin_cos();
        json!({"b": port([150.0 * cos, 200.0 + 150.0 * sin, 0.0], [cos, sin, 0.0])})
    };
    let question = json!({"a": port([0.0; 3], [1.0, 0.0, 0.0]), "free_length_mm": 520,
                          "poses": [at(0.0), at(0.3), at(0.6), at(0.9)]});
    for bend in routed(question).poses {
        assert!(bend.twist_deg.get().abs() < 1e-6, "{} degrees", bend.twist_deg.get());
    }
}

#[rstest]
#[case::no_port(json!({"a": port([0.0; 3], [1.0, 0.0, 0.0])}), "b")]
#[case::no_direction(json!({"b": port([9.0; 3], [0.0; 3])}), "b.direction")]
#[case::up_along(json!({"a": {"position_mm": [0, 0, 0], "direction": [1, 0, 0], "up": [2, 0, 0]}}), "a.up")]
#[case::up_not_first(json!({"poses": [{"b": {"position_mm": [0, 190, 0], "direction": [1, 0, 0], "up": [0, 0, 1]}}]}), "poses[0].b.up")]
#[case::about_face(json!({"poses": [{"b": port([0.0, 200.0, 0.0], [-1.0, 0.0, 0.0])}]}), "poses[0].b.direction")]
#[case::no_length(json!({"free_length_mm": 0}), "free_length_mm")]
#[case::negative_rigid(json!({"a": {"position_mm": [0, 0, 0], "direction": [1, 0, 0], "rigid_mm": -1}}), "a.rigid_mm")]
#[case::changes_swapped(json!({"length_change_pct": [2, -4]}), "length_change_pct")]
#[case::nothing_to_seek(json!({"free_length_mm": null, "min_bend_radius_mm": null}), "min_bend_radius_mm")]
#[case::nothing_to_seek_with(json!({"free_length_mm": null, "hose_od_mm": null}), "hose_od_mm")]
fn a_wrong_field_is_named(#[case] change: Value, #[case] field: &str) {
    let mut question = u_bend(320.0);
    if field == "b" {
        question["b"] = Value::Null;
    }
    for (key, value) in change.as_object().expect("an object") {
        question[key] = value.clone();
    }
    let error = route(&layout(question)).expect_err("this can not be answered");
    assert_eq!(error.field(), field, "{error}");
    assert!(error.to_string().contains("give"), "it says what would be right: {error}");
}

#[test]
fn an_unknown_key_is_named() {
    let error = serde_json::from_value::<Layout>(json!({"free_length": 300})).expect_err("no such key");
    assert!(error.to_string().contains("free_length"), "{error}");
}

#[test]
fn lengths_may_be_written_as_the_trade_does() {
    let mut question = u_bend(100.0 * PI);
    question["hose_od_mm"] = json!("13/16 in");
    question["b"]["position_mm"] = json!(["0", "200 mm", 0]);
    let inside = routed(question).min_inside_radius_mm.expect("it bends").get();
    assert!((inside - (100.0 - 25.4 * 13.0 / 32.0)).abs() < 1e-4, "{inside}");
}
