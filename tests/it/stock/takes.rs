//! Stock takes: what was counted in a bin against what was known.

use super::*;

#[test]
fn a_stock_take_tells_what_differs_before_it_is_saved() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let mut asked = json!({"store": "van 2", "bin": "C5", "items": [{"item": ferrule(), "counted": 7}],
        "pieces": [{"piece": reel, "length_mm": 19500}]});
    let told = van.get("stock.take", asked.clone());
    assert_eq!((&told["saved"], &told["rows"][0]["difference"]), (&json!(false), &json!(-3.0)));
    assert_eq!((&told["rows"][1]["known"], &told["rows"][1]["counted"]), (&json!(20000.0), &json!(19500.0)));
    assert_eq!(
        (quantity(&mut van, "F-10"), length(&mut van)),
        (json!(10), json!(20000.0)),
        "nothing is written yet"
    );
    asked["save"] = json!(true);
    assert_eq!(van.get("stock.take", asked.clone())["saved"], true);
    assert_eq!((quantity(&mut van, "F-10"), length(&mut van)), (json!(7), json!(19500.0)));
    assert_eq!(van.get("stock.take", asked)["rows"], json!([]), "and now it is known");
    let whole = van.get(
        "stock.take",
        json!({"store": "Van 2", "items": [], "pieces": [{"piece": reel, "length_mm": null}], "save": true}),
    );
    assert_eq!(whole["not_counted"].as_array().map(Vec::len), Some(2), "what was not counted stays: {whole}");
    assert_eq!((quantity(&mut van, "orfs"), length(&mut van)), (json!(10), json!(0.0)));
    let twice = json!({"store": "Van 2", "items": [{"item": ferrule(), "counted": 7}, {"item": ferrule(), "counted": 8}]});
    assert_eq!(van.ask("stock.take", twice).expect_err("twice").field, "items[1]");
}

fn counted(van: &mut Device, counted: u32) -> Value {
    let items = json!([{"item": ferrule(), "counted": counted}]);
    van.get("stock.take", json!({"store": "Van 2", "items": items, "save": true}))
}

#[test]
fn a_difference_that_comes_after_a_count_adds_to_it() {
    let (mut one, mut two) = (device(1), device(2));
    loaded(&mut one);
    two.hear(&mut one);
    counted(&mut one, 9);
    two.change(json!([{"do": "load", "store": "Van 2", "item": ferrule(), "count": 5}]));
    one.hear(&mut two);
    two.hear(&mut one);
    assert_eq!((quantity(&mut one, "F-10"), quantity(&mut two, "F-10")), (json!(14), json!(14)));
    assert_eq!(one.said(), Vec::<String>::new());
}

#[test]
fn two_counts_of_one_bin_on_two_devices_are_said_until_it_is_counted_again() {
    let (mut one, mut two) = (device(1), device(2));
    loaded(&mut one);
    two.hear(&mut one);
    // Both find eight where ten were known: as differences that makes six.
    counted(&mut one, 8);
    counted(&mut two, 8);
    one.hear(&mut two);
    two.hear(&mut one);
    for van in [&mut one, &mut two] {
        assert_eq!((quantity(van, "F-10"), van.said()), (json!(6), vec!["counted-blind".to_owned()]));
    }
    let overview = one.get("register.overview", json!({}));
    assert_eq!(overview["contradictions"].as_array().map(Vec::len), Some(1), "{overview}");
    counted(&mut two, 8);
    one.hear(&mut two);
    for van in [&mut one, &mut two] {
        assert_eq!((quantity(van, "F-10"), van.said()), (json!(8), Vec::<String>::new()));
    }
}

#[test]
fn a_count_that_finds_what_was_known_is_held_against_another_all_the_same() {
    let (mut one, mut two) = (device(1), device(2));
    loaded(&mut one);
    two.hear(&mut one);
    counted(&mut one, 7);
    counted(&mut two, 10);
    one.hear(&mut two);
    assert_eq!((quantity(&mut one, "F-10"), one.said()), (json!(7), vec!["counted-blind".to_owned()]));
}

#[test]
fn two_measurings_of_one_piece_on_two_devices_are_said() {
    let (mut one, mut two) = (device(1), device(2));
    let reel = loaded(&mut one);
    two.hear(&mut one);
    for van in [&mut one, &mut two] {
        van.change(json!([{"do": "correct-piece", "piece": reel, "to_mm": 19000}]));
    }
    one.hear(&mut two);
    assert_eq!((length(&mut one), one.said()), (json!(18000.0), vec!["counted-blind".to_owned()]));
    let told = one.get("register.overview", json!({}))["contradictions"][0]["name"].clone();
    assert_eq!(told, "EN 853 2SN DN16");
    one.change(json!([{"do": "correct-piece", "piece": reel, "to_mm": 19000}]));
    assert_eq!((length(&mut one), one.said()), (json!(19000.0), Vec::<String>::new()));
}

#[test]
fn a_count_is_not_saved_where_a_hose_was_made_since_it_was_counted() {
    let mut van = device(1);
    let reel = loaded(&mut van);
    let asked = |known: i64, known_mm: f64, save: bool| {
        json!({"store": "Van 2", "save": save, "items": [{"item": ferrule(), "counted": 9, "known": known}],
            "pieces": [{"piece": reel, "length_mm": 19500, "known_mm": known_mm}]})
    };
    let shown = van.get("stock.take", asked(10, 20000.0, false));
    assert_eq!((shown["rows"].as_array().map(Vec::len), &shown["changed"]), (Some(2), &json!([])));
    build(&mut van, &reel, false).expect("recorded");
    let saved = van.get("stock.take", asked(10, 20000.0, true));
    assert_eq!((&saved["rows"], &saved["written"]), (&json!([]), &json!([])), "{saved}");
    let changed: Vec<_> =
        saved["changed"].as_array().expect("rows").iter().map(|row| row["known"].clone()).collect();
    assert_eq!(changed, [json!(8.0), json!(18820.0)], "what is known now");
    assert_eq!(
        (quantity(&mut van, "F-10"), length(&mut van)),
        (json!(8), json!(18820.0)),
        "nothing was touched"
    );
    let again = van.get("stock.take", asked(8, 18820.0, true));
    assert_eq!((again["rows"].as_array().map(Vec::len), &again["changed"]), (Some(2), &json!([])));
    assert_eq!((quantity(&mut van, "F-10"), length(&mut van)), (json!(9), json!(19500.0)));
}
