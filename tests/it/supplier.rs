//! The crimp tables of the user's own suppliers: a messy sheet is read row by row, all or none, and what it says fills
//! a build sheet under the supplier's name. Every table here is invented.

use super::settings::{answer, api};
use chrono::NaiveDate;
use hosewright_api::commands::Reply;
use hosewright_api::{Api, ApiError, Code};
use hosewright_core::catalogue::Catalogue;
use hosewright_core::sheet::{Column as _, How, headings};
use hosewright_core::supplier::{Column, read};
use hosewright_papers::table::to_xlsx;
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};
use tempfile::TempDir;

pub fn begin() -> (TempDir, Api) {
    let folder = tempfile::tempdir().expect("a folder");
    let mut api = api();
    api.open(&folder.path().join("register.db")).expect("the register opens");
    (folder, api)
}

/// An invented table as a supplier might send it: a title, units in headings, fractions, decimal commas.
const MESSY: &str = "\
Invented Fittings Ltd (invented): crimp table;;;;;;;;;;;
;;;;;;;;;;;
Standard;Hose type;Hose size;End family;End size;Serie;Ferrule;Insertion depth [mm];Skive (mm);Die set;Crimp \u{d8} [mm];\u{b1}
EN 853;2SN;-10;ORFS;-10;S1;F-10;34,0;none;28;28,5;0,1
EN 853;2SN;DN 16;JIC 37 flare;-10;S1;F-10;34;12;28;28.5 mm;+0.1/-0.1
EN 853;2SN;5/8\";;;S2;F2-10;1 3/8 in;no;28;1.122 in;0.1
EN 853;2SN;16;ORFS;-10;S1;F-10;34;none;28;28.5;0.1
EN 853;2SN;16;ORFS;-10;S1;F-10;34;none;28;28.9;0.1
EN 853;2SX;16;;;S1;F-10;34;none;28;28.5;0.1
EN 853;2SN;17;;;S1;F-10;34;none;28;28.5;0.1
EN 853;2SN;2026-05-08;;;S1;F-10;34;none;28;28.5;0.1
EN 853;2SN;16;;;S3;F-10;34;none;28;about 28;0.1
EN 853;2SN;16;;;S4;F-10;34;none;28;28.5;+0.2/-0.1
EN 853;2SN;16;;;S5;F-10;;;28;;
;2SN;16;;;S6;F-10;34;none;28;28.5;0.1
EN 853;2SN;16;;;S7;F-10;34;none;28;1.122;0.1
";

fn import(api: &mut Api, asked: Value, file: &[u8]) -> Result<Value, ApiError> {
    match api.call("supplier.import", asked, file)? {
        Reply::Document(answer) => Ok(answer),
        Reply::File(file) => panic!("a file came: {}", file.name),
    }
}

fn asked(dry_run: bool, leave_out: &[usize]) -> Value {
    json!({"name": "invented.csv", "dry_run": dry_run, "fixed": {"supplier": "Invented Fittings (invented)"}, "leave_out": leave_out})
}

#[test]
fn headings_are_found_beneath_a_title_and_matched_with_their_units() {
    let reply =
        api().call("supplier.match", json!({"name": "invented.csv"}), MESSY.as_bytes()).expect("a table");
    let Reply::Document(found) = reply else { panic!("a file came") };
    assert_eq!((&found["header_row"], &found["rows"]), (&json!(3), &json!(13)));
    let columns: Vec<_> =
        found["columns"].as_array().expect("columns").iter().map(|column| column["is"].clone()).collect();
    assert_eq!(
        columns,
        [
            "standard",
            "type",
            "dn",
            "family",
            "size",
            "series",
            "ferrule",
            "insertion",
            "skive",
            "die-set",
            "crimp-diameter",
            "crimp-tolerance"
        ]
    );
    assert_eq!(found["columns"][10]["unit"], "mm");
    assert_eq!(found["columns"][10]["examples"][0], "28,5");
    assert_eq!(found["missing"], json!(["supplier"]), "no column says whose it is");
}

#[rstest]
#[case("Pressma\u{df} (mm)", Some("crimp-diameter"))]
#[case("Toleranz", Some("crimp-tolerance"))]
#[case("Crimp diameter tolerance [in]", Some("crimp-tolerance"))]
#[case("Einstecktiefe", Some("insertion"))]
#[case("Mordaza", Some("die-set"))]
#[case("Di\u{e1}metro de prensado", Some("crimp-diameter"))]
#[case("Size", Some("dn"))]
#[case("Fitting size", Some("size"))]
#[case("Cut-off", Some("cutoff"))]
#[case("Price", None)]
fn headings_are_known_in_three_languages(#[case] heading: &str, #[case] is: Option<&str>) {
    let cells = vec![vec![heading.to_owned()], vec!["1".to_owned()]];
    let found = headings::<Column>(&cells, Some(1), None, NaiveDate::MIN);
    assert_eq!(found.columns[0].is.map(Column::name), is);
}

#[test]
fn every_row_of_a_messy_sheet_is_taken_or_listed_with_its_reason() {
    let (_folder, mut api) = begin();
    let tried = import(&mut api, asked(true, &[]), MESSY.as_bytes()).expect("a dry run lists");
    assert_eq!((&tried["rows"], &tried["taken"], &tried["new"]), (&json!(13), &json!(3), &json!(3)));
    assert_eq!(tried["repeated"], json!([{"row": 7, "of": 4}]));
    let refused: Vec<_> = tried["refused"].as_array().expect("a list").iter().collect();
    let why = |row: u64| {
        let found = refused.iter().find(|refused| refused["row"] == row);
        let found = found.unwrap_or_else(|| panic!("row {row} is not listed: {refused:?}"));
        (
            found["column"].as_str().unwrap_or("-").to_owned(),
            found["why"].as_str().expect("a reason").to_owned(),
        )
    };
    for (row, column, part) in [
        (8, "-", "row 4 says otherwise"),
        (9, "type", "nearest"),
        (10, "dn", "no size of EN 853 2SN"),
        (11, "dn", "a date"),
        (12, "crimp-diameter", "no length"),
        (13, "crimp-tolerance", "not the same either way"),
        (14, "crimp-diameter", "no figure for the bench"),
        (15, "standard", "blank"),
        (16, "crimp-diameter", "another unit"),
    ] {
        let (of, said) = why(row);
        let said = if part == "nearest" { said.replace("right would be", "nearest") } else { said };
        assert!(of == column && said.contains(part), "row {row}: {of}: {said}");
    }
    assert_eq!(refused.len(), 9, "13 rows: 3 taken, 1 repeated, 9 refused");
    let error = import(&mut api, asked(false, &[]), MESSY.as_bytes()).expect_err("all or nothing");
    assert_eq!(error.code, Code::Input);
    assert!(error.message.contains("row 8") && error.message.contains("4 more"), "{error}");
    let none = answer(&mut api, "supplier.list", json!({})).expect("a list");
    assert_eq!(none["rows"], json!([]), "a failed command changes nothing");
}

#[test]
fn rows_that_a_person_leaves_out_are_no_reason_to_refuse_the_rest() {
    let (_folder, mut api) = begin();
    let out = [8, 9, 10, 11, 12, 13, 14, 15, 16];
    let taken = import(&mut api, asked(false, &out), MESSY.as_bytes()).expect("the rest is sound");
    assert_eq!((&taken["taken"], &taken["left_out"]), (&json!(3), &json!(out)));
    let list = answer(&mut api, "supplier.list", json!({})).expect("a list");
    assert_eq!(list["suppliers"], json!([{"supplier": "Invented Fittings (invented)", "rows": 3}]));
    let rows: Vec<&Value> = list["rows"].as_array().expect("rows").iter().map(|kept| &kept["row"]).collect();
    let any = rows.iter().find(|row| row["family"].is_null()).expect("the row of any end");
    // 1 3/8 in is 34.925 mm, 1.122 in is 28.4988 mm, by the inch of 25.4 mm.
    assert_eq!(any["insertion_mm"], 34.925);
    assert!((any["crimp_diameter_mm"].as_f64().expect("a figure") - 28.4988).abs() < 1e-9);
    let jic = rows.iter().find(|row| row["family"] == "JIC 37 flare").expect("the row");
    assert_eq!(jic["skive"], json!({"outer": {"length_mm": 12.0}}));
    assert_eq!((&jic["dn"], &jic["crimp_tolerance_mm"]), (&json!(16), &json!(0.1)));
    assert_eq!(jic["from"], "invented.csv, row 5");
    let again = import(&mut api, asked(false, &out), MESSY.as_bytes()).expect("twice is nothing new");
    assert_eq!((&again["new"], &again["same"]), (&json!(0), &json!(3)));
}

#[test]
fn a_workbook_with_merged_cells_and_a_column_the_person_matches() {
    let mut workbook: Vec<Vec<String>> = vec![["A", "B", "C", "D"].map(str::to_owned).to_vec()];
    workbook.push(["EN 853", "2SN", "16", "28.5"].map(str::to_owned).to_vec());
    let file = to_xlsx("table", &workbook).expect("a workbook");
    let (_folder, mut api) = begin();
    let unmatched = json!({"name": "b.xlsx", "fixed": {"supplier": "B (invented)"}});
    let error = import(&mut api, unmatched, &file).expect_err("nobody knows what A is");
    assert!(error.message.contains("standard, type, dn"), "{error}");
    let matched = json!({"name": "b.xlsx", "header_row": 1, "fixed": {"supplier": "B (invented)"}, "columns": [
        {"column": 0, "is": "standard"}, {"column": 1, "is": "type"}, {"column": 2, "is": "dn"},
        {"column": 3, "is": "crimp-diameter", "unit": "mm"}]});
    assert_eq!(import(&mut api, matched, &file).expect("matched")["taken"], 1);
    let twice = json!({"name": "b.xlsx", "fixed": {"supplier": "B"}, "columns": [
        {"column": 0, "is": "standard"}, {"column": 1, "is": "standard"}]});
    assert!(
        import(&mut api, twice, &file).expect_err("one column is one thing").message.contains("two columns")
    );
}

fn row(supplier: &str, change: &[(&str, Value)]) -> Value {
    let mut row = json!({"supplier": supplier, "standard": "EN 853", "type": "2SN", "dn": 16, "series": "S1",
        "family": "ORFS", "size": "-10", "ferrule": "F-10", "insertion_mm": 34, "skive": "none", "lubricant": "oil",
        "die_set": "28", "crimp_diameter_mm": 28.5, "crimp_tolerance_mm": 0.1, "cutoff_mm": 31.5, "from": "by hand"});
    for (key, value) in change {
        row[*key] = value.clone();
    }
    row
}

pub fn question() -> Value {
    json!({
        "spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
                 "ends": [{"role": "A", "family": "ORFS", "size": "-10", "gender": "female", "form": "straight"},
                          {"role": "B", "family": "ORFS", "size": "-10", "gender": "female", "form": "straight"}],
                 "overall_length_mm": 1240},
        "service": {"working_pressure_bar": 185, "relief_bar": 195, "surge_pressure_bar": 200, "fluid": "HM",
                    "fluid_min_c": -20, "fluid_max_c": 88, "ambient_max_c": 40, "flow_l_min": 60, "line": "pressure",
                    "bend_radius_mm": 230}
    })
}

#[test]
fn one_suppliers_row_fills_the_sheet_under_its_name_and_two_are_never_mixed() {
    let (_folder, mut api) = begin();
    let make = json!({"question": question()});
    let open = answer(&mut api, "make", make.clone()).expect("it may be made");
    assert_eq!((&open["filled"], &open["settings"][0]["crimp_diameter_mm"]), (&json!([]), &Value::Null));
    answer(&mut api, "supplier.keep", json!({"row": row("North (invented)", &[])})).expect("kept");
    let filled = answer(&mut api, "make", make.clone()).expect("it may be made");
    assert_eq!(filled["settings"][1]["crimp_diameter_mm"], 28.5);
    assert_eq!(filled["settings"][0]["source"], "North (invented) (by hand)", "it says whose they are");
    assert_eq!(
        filled["filled"][0],
        json!({"role": "A", "supplier": "North (invented)", "from": "by hand", "cutoff": true})
    );
    assert_eq!(filled["cut"]["cut_length_mm"], 1177.0, "1240 less 31.5 twice");
    let own = json!({"question": question(), "settings": [{"role": "A", "die_set": "mine"}]});
    let mine = answer(&mut api, "make", own).expect("it may be made");
    assert_eq!(mine["settings"][0]["crimp_diameter_mm"], Value::Null, "figures of two sources are not mixed");
    assert_eq!(mine["filled"].as_array().map(Vec::len), Some(1));
    answer(
        &mut api,
        "supplier.keep",
        json!({"row": row("South (invented)", &[("crimp_diameter_mm", json!(28.1))])}),
    )
    .expect("kept");
    let two = answer(&mut api, "make", make.clone()).expect("it may be made");
    assert_eq!((&two["filled"], &two["settings"][0]["crimp_diameter_mm"]), (&json!([]), &Value::Null));
    let chosen = json!({"question": question(), "supplier": "South (invented)"});
    let chosen = answer(&mut api, "make", chosen).expect("it may be made");
    assert_eq!(chosen["settings"][0]["crimp_diameter_mm"], 28.1, "a person chooses");
    let look = answer(&mut api, "supplier.lookup", json!({"spec": question()["spec"]})).expect("a look");
    let whose: Vec<_> = look["ends"][0]["rows"]
        .as_array()
        .expect("rows")
        .iter()
        .map(|kept| kept["row"]["supplier"].clone())
        .collect();
    assert_eq!(whose, ["North (invented)", "South (invented)"], "side by side");
    assert_eq!(
        answer(&mut api, "supplier.remove", json!({"supplier": "South (invented)"})).expect("gone")["removed"],
        1
    );
    assert_eq!(answer(&mut api, "make", make).expect("made")["filled"].as_array().map(Vec::len), Some(2));
}

#[test]
fn a_row_for_just_that_end_stands_over_one_for_any() {
    let (_folder, mut api) = begin();
    let any = row(
        "North (invented)",
        &[("family", Value::Null), ("size", Value::Null), ("crimp_diameter_mm", json!(28.9))],
    );
    for row in [any, row("North (invented)", &[])] {
        answer(&mut api, "supplier.keep", json!({"row": row})).expect("kept");
    }
    let made = answer(&mut api, "make", json!({"question": question()})).expect("it may be made");
    assert_eq!(made["settings"][0]["crimp_diameter_mm"], 28.5);
}

#[rstest]
#[case::no_such_hose(&[("type", json!("2SX"))], "row.type")]
#[case::size_alone(&[("family", Value::Null)], "row.family")]
#[case::inches_for_mm(&[("crimp_diameter_mm", json!(1.1))], "row.crimp_diameter_mm")]
#[case::no_supplier(&[("supplier", json!(" "))], "row.supplier")]
fn a_row_by_hand_that_can_not_be_is_refused_and_named(#[case] change: &[(&str, Value)], #[case] field: &str) {
    let (_folder, mut api) = begin();
    let error = answer(&mut api, "supplier.keep", json!({"row": row("North (invented)", change)}))
        .expect_err("it can not be");
    assert_eq!(error.field, field, "{error}");
}

#[test]
fn a_row_by_hand_takes_the_place_of_the_one_before_and_stays_off_the_bundle() {
    let (_folder, mut api) = begin();
    let first =
        answer(&mut api, "supplier.keep", json!({"row": row("North (invented)", &[])})).expect("kept");
    let second = answer(
        &mut api,
        "supplier.keep",
        json!({"row": row("North (invented)", &[("die_set", json!("30"))])}),
    );
    assert_eq!(first["id"], second.expect("kept")["id"], "the same hose, end and series");
    let Reply::File(bundle) = api.call("register.bundle", json!({}), &[]).expect("a bundle") else {
        panic!("no file")
    };
    assert!(!String::from_utf8_lossy(&bundle.bytes).contains("North"), "a supplier's table is not passed on");
    assert!(answer(&mut api, "supplier.remove", json!({})).is_err());
    assert_eq!(
        answer(&mut api, "supplier.remove", json!({"id": 999})).expect_err("none").code,
        Code::Nothing
    );
}

proptest! {
    #[test]
    fn no_sheet_makes_it_panic_and_every_row_is_accounted_for(
        cells in prop::collection::vec(prop::collection::vec("[ -~\u{b1}\u{d8}\u{e4}]{0,12}", 0..8), 0..12),
    ) {
        let mut sheet = vec![["supplier", "standard", "type", "dn", "crimp", "tol", "skive", "insertion"].map(str::to_owned).to_vec()];
        sheet.extend(cells);
        let how = How { header_row: Some(1), ..How::default() };
        let filled = sheet.iter().skip(1).filter(|row| row.iter().any(|cell| !cell.trim().is_empty())).count();
        if let Ok(read) = read(Catalogue::embedded(), &sheet, "any", &how, NaiveDate::MIN) {
            prop_assert_eq!(read.rows.len() + read.repeated.len() + read.refused.len() + read.left_out.len(), filled);
        }
    }
}

#[test]
fn a_heading_that_names_something_else_of_a_crimp_is_not_the_diameter_to_crimp_to() {
    let is = |heading: &str| {
        let cells =
            vec![vec!["Standard".to_owned(), heading.to_owned()], vec!["EN 853".into(), "28.5".into()]];
        headings::<Column>(&cells, Some(1), None, NaiveDate::MIN).columns[1].is
    };
    for heading in ["Crimp", "Crimp OD [mm]", "Crimp diameter", "Prensado"] {
        assert_eq!(is(heading), Some(Column::CrimpDiameter), "{heading}");
    }
    for heading in ["Crimp length", "Crimp OD min", "Crimp diameter max", "Pre crimp diameter"] {
        assert_eq!(is(heading), None, "{heading}");
    }
    assert_eq!(is("Crimp die"), Some(Column::DieSet));
}

#[test]
fn a_bare_number_beneath_dash_is_the_dash_and_one_beneath_dn_the_nominal_diameter() {
    let dn = |heading: &str| {
        let cells = [
            ["Supplier", "Standard", "Type", heading, "Crimp"],
            ["S (invented)", "EN 853", "2SN", "10", "28.5"],
        ];
        let cells: Vec<Vec<String>> = cells.iter().map(|row| row.map(str::to_owned).to_vec()).collect();
        read(Catalogue::embedded(), &cells, "s", &How::default(), NaiveDate::MIN).expect("a sheet").rows[0]
            .1
            .dn
            .get()
    };
    // -10 is 10/16 in, DN 16 (ISO 4397).
    assert_eq!((dn("Dash"), dn("DN")), (16.0, 10.0));
}

#[test]
fn a_bare_length_without_a_unit_in_a_sheet_of_inches_is_asked_for() {
    let cells = [
        ["Supplier", "Standard", "Type", "DN", "Crimp OD (in)", "Cut off"],
        ["S (invented)", "EN 853", "2SN", "16", "1.122", "1.10"],
    ];
    let cells: Vec<Vec<String>> = cells.iter().map(|row| row.map(str::to_owned).to_vec()).collect();
    let sheet = read(Catalogue::embedded(), &cells, "s", &How::default(), NaiveDate::MIN).expect("a sheet");
    assert_eq!((sheet.rows.len(), sheet.refused[0].column), (0, Some(Column::Cutoff)));
    assert!(sheet.refused[0].why.contains("no unit"), "{:?}", sheet.refused);
}
