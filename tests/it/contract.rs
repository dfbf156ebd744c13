//! The command line's contract: fixed keys, exit codes, errors that name the field.

use assert_cmd::Command;
use serde_json::{Value, json};

fn hosewright(arguments: &[&str], input: &str) -> (i32, Value, Value) {
    let mut command = Command::cargo_bin("hosewright").expect("the command line is built");
    let output = command.args(arguments).write_stdin(input).output().expect("it runs");
    let read = |bytes: &[u8]| serde_json::from_slice(bytes).unwrap_or(Value::Null);
    (output.status.code().expect("an exit code"), read(&output.stdout), read(&output.stderr))
}

fn keys(value: &Value) -> Vec<&str> {
    value.as_object().map(|object| object.keys().map(String::as_str).collect()).unwrap_or_default()
}

#[track_caller]
fn has(value: &Value, wanted: &[&str]) {
    for key in wanted {
        assert!(keys(value).contains(key), "`{key}` is missing in {:?}", keys(value));
    }
}

#[test]
fn find_answers_with_its_fixed_keys() {
    let readings = json!({"hose": {"id_mm": 15.9, "layers": 2}, "ends": [{"role": "A", "gender": "female", "thread_diameter_mm": "13/16 in", "tpi": 14}]});
    let (exit, answer, _) = hosewright(&["find", "-", "--json"], &readings.to_string());
    assert_eq!(exit, 0);
    has(&answer, &["hose", "ends", "unknown", "settled", "next", "catalogue", "program"]);
    has(&answer["ends"][0], &["role", "candidates", "lookalikes", "unknown"]);
    has(
        &answer["ends"][0]["candidates"][0],
        &["family", "standard", "size", "dash", "thread", "gender", "probability", "also"],
    );
    has(&answer["hose"][0], &["standard", "type", "dn", "dash", "probability", "also"]);
    has(&answer["settled"], &["hose", "A", "B"]);
    let how = answer["next"][0]["how"].as_str().expect("words");
    assert!(how.contains(' '), "the next reading says how it is taken: {how}");
}

fn question() -> Value {
    json!({
        "spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16},
                 "ends": [{"role": "A", "family": "JIC 37 flare", "size": "-10", "gender": "female", "form": "straight", "cutoff_mm": 40},
                          {"role": "B", "family": "ORFS", "size": "-10", "gender": "female", "form": "straight", "cutoff_mm": 45}],
                 "overall_length_mm": 1240},
        "service": {"working_pressure_bar": 185, "relief_bar": 195, "surge_pressure_bar": 200, "fluid": "HM",
                    "fluid_min_c": -20, "fluid_max_c": 88, "flow_l_min": 60, "line": "pressure", "bend_radius_mm": 230}
    })
}

#[test]
fn check_answers_with_its_fixed_keys() {
    let (exit, answer, _) = hosewright(&["check", "-", "--json"], &question().to_string());
    assert_eq!(exit, 0);
    has(
        &answer,
        &[
            "verdict",
            "assembly_pressure_bar",
            "weakest",
            "cut_length_mm",
            "length_tolerance_mm",
            "findings",
            "alternatives",
        ],
    );
    has(
        &answer["findings"][0],
        &["rule", "verdict", "value", "limit", "unit", "why", "cure", "source", "basis"],
    );
    assert_eq!((answer["weakest"].as_str(), answer["cut_length_mm"].as_f64()), (Some("A"), Some(1155.0)));
    assert_eq!(answer["length_tolerance_mm"], json!([-4.0, 12.0]), "DIN 20066, DN up to 25, 630 to 1250 mm");
}

#[test]
fn a_stop_ends_with_one_and_makes_no_tag_and_no_sheet() {
    let mut stopped = question();
    stopped["service"]["working_pressure_bar"] = json!(250);
    let folder = tempfile::tempdir().expect("a folder");
    let (exit, answer, _) = hosewright(&["check", "-", "--json"], &stopped.to_string());
    assert_eq!((exit, answer["verdict"].as_str()), (1, Some("stop")));
    for (command, file) in [(vec!["tag", "make", "-"], "label.png"), (vec!["make", "-"], "sheet.pdf")] {
        let out = folder.path().join(file);
        let arguments = [command, vec!["--out", out.to_str().expect("text"), "--json"]].concat();
        let (exit, answer, _) = hosewright(&arguments, &stopped.to_string());
        assert_eq!((exit, answer["verdict"].as_str(), out.exists()), (1, Some("stop"), false), "{file}");
    }
}

/// One code on two hoses: the second gets no label, and the exit code says so.
#[test]
fn another_spec_under_a_code_on_record_ends_with_one_and_leaves_no_label() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, tag, label) = (path("r.db"), path("tag.txt"), path("label.png"));
    let first = path("first.png");
    let (exit, made, _) =
        hosewright(&["tag", "make", "-", "--out", &first, "--json"], &question().to_string());
    assert_eq!(exit, 0, "{made}");
    std::fs::write(&tag, made["text"].as_str().expect("a text")).expect("writes");
    let fleet = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo/fleet.csv");
    assert_eq!(hosewright(&["register", "--db", &db, "import", fleet, "--json"], "").0, 0);
    assert_eq!(hosewright(&["tag", "adopt", &tag, "--db", &db, "--json"], "").0, 0);
    let mut other = question();
    other["spec"]["overall_length_mm"] = json!(700);
    other["code"] = made["tag"]["code"].clone();
    let arguments = ["tag", "make", "-", "--out", &label, "--db", &db, "--json"];
    let (exit, answer, _) = hosewright(&arguments, &other.to_string());
    assert_eq!(
        (exit, &answer["tag"], &answer["notices"][0]["code"]),
        (1, &Value::Null, &json!("other-spec"))
    );
    assert!(!std::path::Path::new(&label).exists(), "no label of it is left");
}

#[test]
fn wrong_input_names_the_field_and_ends_with_two() {
    let cases = [
        (vec!["find", "-"], json!({"hose": {"idd_mm": 3}}).to_string(), "hose"),
        (
            vec!["check", "-"],
            json!({"spec": {"hose": {"standard": "EN 853", "type": "9XY", "dn": 16}}}).to_string(),
            "spec.hose.type",
        ),
        (
            vec!["check", "-"],
            json!({"spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 17}}}).to_string(),
            "spec.hose.dn",
        ),
        (
            vec!["check", "-"],
            json!({"spec": {"ends": [{"role": "A", "family": "bayonet", "size": "-10"}]}}).to_string(),
            "spec.ends.A.family",
        ),
        (vec!["flow", "-"], json!({"flow_l_min": -3, "bore_mm": 12}).to_string(), "flow_l_min"),
        (vec!["find", "-"], "{".to_owned(), ""),
        (vec!["no-such-command"], String::new(), ""),
        (vec!["schema", "no-such-command"], String::new(), "name"),
    ];
    for (arguments, input, field) in cases {
        let (exit, _, error) = hosewright(&[arguments.clone(), vec!["--json"]].concat(), &input);
        assert_eq!(exit, 2, "{arguments:?} {input}");
        has(&error["error"], &["code", "field", "message"]);
        let named = error["error"]["field"].as_str().expect("text");
        assert!(named.starts_with(field), "{arguments:?}: field `{named}`, wanted `{field}`");
        assert!(!error["error"]["message"].as_str().expect("text").is_empty());
    }
}

#[test]
fn what_is_not_there_ends_with_three_or_four_and_changes_nothing() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let blank = path("blank.png");
    std::fs::write(&blank, blank_picture()).expect("written");
    assert_eq!(hosewright(&["tag", "read", &blank, "--json"], "").0, 3, "a picture without a tag");
    assert_eq!(hosewright(&["find", &path("no-such.json"), "--json"], "").0, 4, "a file that is not there");
    let db = path("none.db");
    assert_eq!(
        hosewright(&["register", "--db", &db, "due", "--json"], "").0,
        4,
        "a register that is not there"
    );
    assert!(!folder.path().join("none.db").exists(), "asking begins no register");
}

fn blank_picture() -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    image::GrayImage::from_pixel(200, 200, image::Luma([255]))
        .write_to(&mut bytes, image::ImageFormat::Png)
        .expect("a picture");
    bytes.into_inner()
}

#[test]
fn the_whole_job_goes_from_readings_to_a_tag_and_back() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, label) = (path("register.db"), path("label.png"));
    let fleet = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo/fleet.csv");
    let (exit, imported, _) = hosewright(&["register", "--db", &db, "import", fleet, "--json"], "");
    assert_eq!((exit, imported["machines"].as_u64(), imported["known"].as_u64()), (0, Some(12), Some(0)));
    let (exit, made, _) =
        hosewright(&["tag", "make", "-", "--out", &label, "--dpi", "300", "--json"], &question().to_string());
    assert_eq!(exit, 0);
    let (exit, read, _) = hosewright(&["tag", "read", &label, "--json"], "");
    assert_eq!((exit, &read["code"], &read["spec"]), (0, &made["tag"]["code"], &made["tag"]["spec"]));
    let code = read["code"].as_str().expect("a code");
    let assembly = json!({"body": {"kind": "assembly-made", "code": code, "spec": read["spec"], "proof": {"state": "not-proved", "why": "no-rig"},
                                   "pressure_bar": read["pressure_bar"], "catalogue": read["catalogue"], "program": "test"}});
    assert_eq!(hosewright(&["register", "--db", &db, "record", "-", "--json"], &assembly.to_string()).0, 0);
    let (exit, shown, _) =
        hosewright(&["register", "--db", &db, "show", &code.to_lowercase().replace('-', ""), "--json"], "");
    assert_eq!((exit, &shown["assembly"]["spec"]), (0, &read["spec"]));
    assert_eq!(hosewright(&["register", "--db", &db, "verify", "--json"], "").0, 0);
}

#[test]
fn a_list_is_taken_in_whole_or_not_at_all_and_comes_out_again() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, other) = (path("one.db"), path("two.db"));
    let fleet = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo/fleet.csv");
    assert_eq!(hosewright(&["register", "--db", &db, "import", fleet, "--json"], "").0, 0);
    for ending in ["csv", "xlsx"] {
        let list = path(&format!("list.{ending}"));
        assert_eq!(hosewright(&["register", "--db", &db, "export", &list, "--json"], "").0, 0, "{ending}");
        let copy = format!("{other}.{ending}");
        let (exit, taken, error) = hosewright(&["register", "--db", &copy, "import", &list, "--json"], "");
        assert_eq!((exit, taken["hoses"].as_u64()), (0, Some(143)), "{ending}: {error}");
        let (_, again, _) = hosewright(&["register", "--db", &copy, "import", &list, "--json"], "");
        assert_eq!(
            (again["hoses"].as_u64(), again["known"].as_u64()),
            (Some(0), Some(143)),
            "{ending} twice"
        );
    }
    let broken = path("broken.csv");
    let text = std::fs::read_to_string(fleet).expect("the fleet").replacen("EN 853", "EN 000", 1);
    std::fs::write(&broken, text).expect("written");
    let third = path("three.db");
    let (exit, _, error) = hosewright(&["register", "--db", &third, "import", &broken, "--json"], "");
    assert_eq!(exit, 2);
    assert!(error["error"]["message"].as_str().expect("text").contains("row "), "{error}");
    assert!(!std::path::Path::new(&third).exists(), "nothing was half taken in");
}

#[test]
fn every_command_has_its_schema_kept_in_the_repository() {
    let kept = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/crates/api/schemas");
    for command in hosewright_api::commands::described() {
        for (part, schema) in [("input", command.input), ("output", command.output)] {
            let file = kept.join(format!("{}.{part}.json", command.name));
            let text = std::fs::read_to_string(&file).unwrap_or_default();
            let made = serde_json::to_string_pretty(schema.as_value()).expect("JSON") + "\n";
            assert!(
                text == made,
                "{} is not as the program has it; run `cargo xtask schemas`",
                file.display()
            );
        }
    }
}

#[test]
fn the_types_of_the_screens_are_as_the_program_has_them() {
    let file = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../ui/src/backend/types.ts");
    let kept = std::fs::read_to_string(&file).unwrap_or_default();
    assert!(
        kept == hosewright_api::commands::typescript(),
        "{} is not as the program has it; run `cargo xtask types`",
        file.display()
    );
}

#[test]
fn a_spec_alone_gets_a_tag_that_says_its_service_was_not_checked() {
    let folder = tempfile::tempdir().expect("a folder");
    let out = folder.path().join("label.png");
    let spec = question()["spec"].to_string();
    let arguments = ["tag", "make", "-", "--out", out.to_str().expect("text"), "--json"];
    let (exit, made, _) = hosewright(&arguments, &spec);
    assert_eq!(
        (exit, made["verdict"].as_str(), made["service_checked"].as_bool()),
        (0, Some("caution"), Some(false))
    );
    assert_eq!(made["tag"]["pressure_bar"].as_f64(), Some(206.0), "the weakest part's rating");
    assert!(out.exists());
    let blank = spec.replace("JIC 37 flare", "Banjo metric").replace("\"-10\",\"", "\"x\",\"");
    assert_ne!(hosewright(&arguments, &blank).0, 0, "an end that is not in the tables gets none");
}

#[test]
fn a_command_that_begins_a_register_and_fails_leaves_none_behind() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, broken) = (path("new.db"), path("broken.csv"));
    std::fs::write(&broken, "site,machine\nNorth,One\n").expect("written");
    let fleet = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo/fleet.csv");
    let cases = [
        (vec!["import", &broken], 2),
        (vec!["import", "no-such.csv"], 4),
        (vec!["import", "--dry-run", fleet], 0),
        (vec!["record", "-"], 2),
        (vec!["merge", &broken], 2),
    ];
    for (command, wanted) in cases {
        let (exit, ..) =
            hosewright(&[vec!["register", "--db", &db, "--json"], command.clone()].concat(), "{");
        assert_eq!(exit, wanted, "{command:?}");
        let left: Vec<_> = std::fs::read_dir(folder.path()).expect("reads").flatten().collect();
        let names: Vec<_> = left.iter().map(std::fs::DirEntry::file_name).collect();
        assert_eq!(names, ["broken.csv"], "{command:?} left something");
    }
}

#[test]
fn a_list_without_codes_taken_in_twice_is_known_the_second_time() {
    let folder = tempfile::tempdir().expect("a folder");
    let db = folder.path().join("register.db").to_str().expect("text").to_owned();
    let fleet = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo/fleet.csv");
    let register = |arguments: &[&str]| {
        hosewright(&[&["register", "--db", db.as_str(), "--json"], arguments].concat(), "")
    };
    assert_eq!(register(&["import", fleet]).0, 0);
    for again in [vec!["import", fleet, "--dry-run"], vec!["import", fleet]] {
        let (exit, answer, error) = register(&again);
        let counts = ["hoses", "machines", "places", "known"].map(|key| answer[key].as_u64());
        assert_eq!((exit, counts), (0, [Some(0), Some(0), Some(0), Some(143)]), "{again:?}: {error}");
    }
    let (_, verified, _) = register(&["verify"]);
    assert_eq!(verified["events"].as_u64(), Some(456), "nothing was written by either");
}

/// The head and a row of a small list; the end of the row is its days.
fn small_list(rows: &[&str]) -> String {
    let head = "site,machine,place,standard,type,dn,a_family,a_size,b_family,b_size,a_form,fitted,removed";
    let row = |end: &&str| format!("North,One,1,EN 853,2SN,16,ORFS,-10,ORFS,-10,{end}");
    std::iter::once(head.to_owned()).chain(rows.iter().map(row)).collect::<Vec<_>>().join("\n")
}

#[test]
fn a_row_that_says_what_the_register_has_is_known_and_one_that_says_another_thing_is_refused() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, list) = (path("register.db"), path("list.csv"));
    let import = |rows: &[&str], how: &[&str]| {
        std::fs::write(&list, small_list(rows)).expect("written");
        hosewright(&[&["register", "--db", &db, "import", &list, "--json"], how].concat(), "")
    };
    let (was, is) = ("straight,2020-01-01,2021-01-01", "straight,2021-01-01,");
    assert_eq!(import(&[was, is], &[]).0, 0);
    let cases: &[(&[&str], u64, Option<&str>)] = &[
        (&[was, is], 2, None),
        // The list is older than the register: nothing is to be learned from it.
        (&["straight,2020-01-01,"], 1, None),
        (&["elbow90,2021-01-01,"], 0, Some("write that code in \"code of the tag\"")),
        (&["straight,2021-01-02,"], 0, Some("write that code in \"code of the tag\"")),
        (&["straight,2020-01-01,2020-06-01"], 0, Some("correct \"removed\"")),
        (&[is, is], 1, Some("row 2 sits at this place")),
    ];
    for (rows, known, why) in cases {
        let (exit, asked, error) = import(rows, &["--dry-run"]);
        let refused: Vec<_> = asked["refused"]
            .as_array()
            .expect("a list")
            .iter()
            .filter_map(|row| row["why"].as_str())
            .collect();
        assert_eq!(asked["known"].as_u64(), Some(*known), "{rows:?}: {asked} {error}");
        assert_eq!(exit, if why.is_some() { 2 } else { 0 }, "{rows:?}");
        assert_eq!(refused.len(), usize::from(why.is_some()), "{rows:?}: {refused:?}");
        assert!(refused.iter().all(|said| said.contains(why.unwrap_or_default())), "{rows:?}: {refused:?}");
        assert_eq!(import(rows, &[]).0, exit, "{rows:?}: the import ends as the dry run did");
    }
}

#[test]
fn a_dry_run_with_a_bad_row_says_that_nothing_would_be_made() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, list) = (path("register.db"), path("list.csv"));
    std::fs::write(&list, small_list(&["straight,2020-01-01,2021-01-01", "straight,yesterday,"]))
        .expect("written");
    let arguments = ["register", "--db", &db, "import", "--dry-run", &list];
    let said = unbroken(&plain(&arguments));
    assert!(said.contains("nothing of the list would be taken in until this row is mended"), "{said}");
    assert!(said.contains("The others would make 1 hose"), "{said}");
    let (exit, asked, _) = hosewright(&[&arguments[..], &["--json"]].concat(), "");
    let counts = ["sites", "machines", "places", "hoses"].map(|key| asked[key].as_u64());
    assert_eq!((exit, counts), (2, [Some(1); 4]), "{asked}");
}

#[test]
fn an_error_of_a_list_names_its_row_and_column() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, list) = (path("register.db"), path("list.csv"));
    let good = small_list(&["straight,2020-01-01,"]);
    for (from, to, column) in [
        ("EN 853", "EN 000", "standard"),
        ("2SN", "9XX", "type"),
        (",16,", ",17,", "dn"),
        ("16,ORFS", "16,bayonet", "a_family"),
        ("-10,straight", "-99,straight", "b_size"),
        ("2020-01-01", "someday", "fitted"),
    ] {
        std::fs::write(&list, good.replacen(from, to, 1)).expect("written");
        let (exit, _, error) = hosewright(&["register", "--db", &db, "import", &list, "--json"], "");
        let message = error["error"]["message"].as_str().expect("text");
        assert_eq!(exit, 2, "{column}");
        assert!(message.contains(&format!("row 2: {column}: ")), "{column}: {message}");
    }
}

#[test]
fn a_key_that_is_not_known_is_told_with_the_nearest() {
    for (command, input, near) in [
        ("find", json!({"hose": {"idd_mm": 3}}), "\"idd_mm\" is no key here; nearest is id_mm"),
        ("check", json!({"servce": {}}), "\"servce\" is no key here; nearest is service"),
        ("check", json!({"service": {"line": "retrun"}}), "\"retrun\" is not known here; nearest is return"),
    ] {
        let (exit, _, error) = hosewright(&[command, "-", "--json"], &input.to_string());
        let message = error["error"]["message"].as_str().expect("text");
        assert_eq!(exit, 2, "{message}");
        assert!(message.starts_with(near), "{message}");
    }
}

#[test]
fn a_file_that_is_not_there_is_told_in_words() {
    let folder = tempfile::tempdir().expect("a folder");
    let none = folder.path().join("none.json").to_str().expect("text").to_owned();
    let there = folder.path().to_str().expect("text");
    for (path, said) in [(none.as_str(), "no such file"), (there, "it is a folder")] {
        let (exit, _, error) = hosewright(&["find", path, "--json"], "");
        let message = error["error"]["message"].as_str().expect("text");
        assert_eq!(exit, 4, "{message}");
        assert!(message.contains(said) && !message.contains("os error"), "{message}");
    }
}

#[test]
fn what_finds_nothing_ends_with_three_and_find_always_says_what_to_read() {
    let (_folder, db) = demo_register();
    let register = |arguments: &[&'static str]| [&["register", "--db", db.as_str()], arguments].concat();
    for (arguments, field) in [
        (vec!["print", "zzzz"], "text"),
        // No code holds a U.
        (register(&["search", "zzuu"]), "words"),
        (register(&["show", "zzuu"]), "what"),
        (register(&["show", "7KQ4M-2XR9D-D"]), "code"),
    ] {
        let (exit, answer, error) = hosewright(&[&arguments[..], &["--json"]].concat(), "");
        let said = (error["error"]["code"].as_str(), error["error"]["field"].as_str());
        assert_eq!((exit, said), (3, (Some("nothing"), Some(field))), "{arguments:?}: {error}");
        assert_eq!(answer, Value::Null, "{arguments:?}");
    }
    let (exit, answer, _) = hosewright(&["find", "-", "--json"], "{}");
    assert_eq!((exit, answer["next"].as_array().is_some_and(|next| !next.is_empty())), (0, true));
}

#[test]
fn one_reading_is_answered_with_what_to_read_next_before_the_list() {
    let readings = json!({"ends": [{"role": "A", "gender": "female", "thread_diameter_mm": "13/16 in"}]});
    let mut command = Command::cargo_bin("hosewright").expect("the command line is built");
    let output = command.args(["find", "-"]).write_stdin(readings.to_string()).output().expect("it runs");
    let text = String::from_utf8(output.stdout).expect("text");
    let (_, answer, _) = hosewright(&["find", "-", "--json"], &readings.to_string());
    let candidates = answer["ends"][0]["candidates"].as_array().expect("a list");
    let chances: Vec<f64> = candidates.iter().filter_map(|each| each["probability"].as_f64()).collect();
    let whole: f64 = chances.iter().sum();
    let count = (1..).find(|&most| chances.iter().take(most).sum::<f64>() >= 0.95 * whole).expect("a number");
    assert!(count > 1 && text.contains(&format!("{count} kinds of end A")), "{count}: {text}");
    let at = |part: &str| text.find(part).unwrap_or_else(|| panic!("{part} is not in {text}"));
    assert!(at("Still open") < at("Read next:") && at("Read next:") < at("End A: NOT SETTLED"), "{text}");
}

/// No specialist believes a return line at the pressure of a cylinder.
#[test]
fn the_demo_fleet_has_believable_pressures_within_what_its_hoses_bear() {
    let list = include_bytes!("../../demo/fleet.csv");
    let table = hosewright_papers::table::read(list, "fleet.csv").expect("a table");
    let (head, rows) = table.split_first().expect("a head");
    let catalogue = hosewright_core::catalogue::Catalogue::embedded();
    let mut lines = std::collections::BTreeMap::new();
    for row in rows {
        let cell = |name: &str| row[head.iter().position(|column| column == name).expect(name)].as_str();
        let number = |name: &str| cell(name).parse::<f64>().expect(name);
        let (working, relief) = (number("working_pressure_bar"), number("relief_bar"));
        let believable = match cell("line") {
            "return" => 5.0..=20.0,
            "pilot" => 35.0..=50.0,
            _ => 100.0..=350.0,
        };
        assert!(believable.contains(&working) && believable.contains(&relief) && working < relief, "{row:?}");
        let dn = cell("dn").parse().expect("dn");
        let hose = catalogue.hose(cell("standard"), cell("type"), dn).expect("a hose");
        let ratings = [("a_family", "a_size"), ("b_family", "b_size")].map(|(family, size)| {
            catalogue.rating(cell(family), cell(size)).expect("an end").max_pressure_bar
        });
        for rating in ratings.into_iter().chain([hose.max_working_pressure_bar]) {
            assert!(rating.is_some_and(|bar| bar.get() >= relief), "{row:?}: {rating:?}");
        }
        *lines.entry(cell("line").to_owned()).or_insert(0) += 1;
    }
    assert_eq!((lines["return"], lines["pilot"]), (11, 8), "{lines:?}");
}

#[test]
fn two_hoses_of_a_list_at_one_place_at_one_time_are_refused() {
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (db, list) = (path("register.db"), path("list.csv"));
    let head = "site,machine,place,standard,type,dn,a_family,a_size,b_family,b_size,fitted,removed";
    let row = |days: &str| format!("North,One,1,EN 853,2SN,16,ORFS,-10,ORFS,-10,{days}");
    let cases = [
        (["2020-01-01,2021-01-01", "2021-01-01,"], true),
        (["2021-01-01,", "2020-01-01,2021-01-01"], true),
        (["2020-01-01,2021-01-02", "2021-01-01,"], false),
        (["2020-01-01,", "2021-01-01,"], false),
        (["2020-01-01,2021-01-01", "2020-01-01,2021-01-01"], false),
    ];
    for (days, taken) in cases {
        std::fs::write(&list, [head, &row(days[0]), &row(days[1])].join("\n")).expect("written");
        let arguments = ["register", "--db", &db, "import", "--dry-run", &list, "--json"];
        let (exit, answer, error) = hosewright(&arguments, "");
        assert_eq!(exit, if taken { 0 } else { 2 }, "{days:?}: {answer} {error}");
        assert_eq!(answer["refused"].as_array().map(Vec::len), Some(usize::from(!taken)), "{days:?}");
    }
}

#[test]
fn what_falls_due_says_where_the_list_was_cut() {
    let (_folder, db) = demo_register();
    let (_, answer, _) = hosewright(&["register", "--db", &db, "due", "--json"], "");
    let all = answer["due"].as_array().expect("a list").len();
    assert!(all > 40, "the JSON answer has all: {all}");
    let cut = plain(&["register", "--db", &db, "due"]);
    let told = format!("40 of {all}; --all shows all.");
    assert_eq!(cut.matches(&told).count(), 2, "before the rows and after them: {cut}");
    assert!(cut.lines().next().is_some_and(|first| first.contains(&told)), "{cut}");
    let whole = plain(&["register", "--db", &db, "due", "--all"]);
    assert!(!whole.contains("--all"), "{whole}");
    let codes = |text: &str| {
        answer["due"]
            .as_array()
            .expect("a list")
            .iter()
            .filter(|due| text.contains(due["code"].as_str().expect("a code")))
            .count()
    };
    assert_eq!(codes(&whole), all);
    assert!(codes(&cut) < all);
}

#[test]
fn a_hose_is_held_against_the_place_it_is_to_go_to() {
    let (_folder, db) = demo_register();
    let show =
        |words: &[&str]| hosewright(&[&["register", "--db", &db, "show"], words, &["--json"]].concat(), "");
    let code = |place: &str| {
        let (_, sheet, _) = show(&[place]);
        let stays = sheet["stays"].as_array().expect("stays").clone();
        let sits = stays.iter().find(|stay| stay["off"].is_null()).expect("a hose sits there");
        sits["code"].as_str().expect("a code").to_owned()
    };
    let (own, other) = (code("excavator 3 pilot"), code("stick rod"));
    let cases = |sheet: &serde_json::Value| {
        let findings = sheet["findings"].as_array().expect("findings").clone();
        let of_place = findings.iter().filter(|finding| finding["rule"] == "belongs");
        of_place.map(|finding| finding["case"].as_str().expect("a case").to_owned()).collect::<Vec<_>>()
    };
    let (_, sheet, _) = show(&["excavator 3 pilot", "--hose", &own]);
    assert_eq!(cases(&sheet), Vec::<String>::new());
    let (exit, sheet, _) = show(&["excavator 3 pilot", "--hose", &other]);
    assert_eq!(
        (exit, cases(&sheet)),
        (1, ["belongs-bore", "belongs-ends", "belongs-longer"].map(str::to_owned).to_vec())
    );

    for (words, wanted, field) in [
        (["excavator 3 pilot", "--hose", "7KQ4M-2XR9D-D"], 3, "code"),
        (["excavator 3 pilot", "--hose", "nonsense"], 2, "hose"),
        (["Excavator 3", "--hose", own.as_str()], 2, "hose"),
    ] {
        let (exit, _, error) = show(&words);
        assert_eq!((exit, error["error"]["field"].as_str()), (wanted, Some(field)), "{words:?}");
    }
}

#[test]
fn a_place_says_how_often_it_failed_before_and_why() {
    let (_folder, db) = demo_register();
    let show = |what: &str| hosewright(&["register", "--db", &db, "show", what, "--json"], "");
    let (exit, sheet, _) = show("stick rod");
    assert_eq!((exit, sheet["place"]["number"].as_u64()), (0, Some(14)), "by words that one place has");
    let causes: Vec<_> =
        sheet["stays"].as_array().expect("stays").iter().map(|stay| stay["cause"].as_str()).collect();
    assert_eq!(causes, [Some("ABR"), Some("BEND"), None], "as the list has them");
    let id = sheet["place"]["place"].as_str().expect("an id").to_owned();
    assert_eq!(show(&id).1["stays"], sheet["stays"], "by its id");
    let (exit, machine, _) = show("Excavator 3");
    assert_eq!((exit, machine["machine"]["name"].as_str()), (0, Some("Excavator 3")));
    let said = plain(&["register", "--db", &db, "show", &id]);
    let before = "This place failed 2 times before: abrasion (2021-09-14), bent too tight";
    assert!(said.contains(before), "{said}");
    let found = unbroken(&plain(&["register", "--db", &db, "search", "stick rod"]));
    assert!(found.contains("2 hoses failed here before"), "{found}");
    for (what, wanted, part) in [("excavator", 2, "can be any of"), ("no such thing", 3, "no such thing")] {
        let (exit, _, error) = show(what);
        assert_eq!((exit, error["error"]["field"].as_str()), (wanted, Some("what")), "{what}");
        assert!(error["error"]["message"].as_str().expect("text").contains(part), "{error}");
    }
}

#[test]
fn a_build_sheet_says_what_comes_first_and_what_it_is_for() {
    let mut asked = question();
    asked["spec"]["ends"][0]["form"] = json!("elbow45");
    asked["spec"]["ends"][0]["drop_mm"] = json!(22);
    asked["found"] = hosewright(&["find", "-", "--json"], include_str!("../../demo/burst-readings.json")).1;
    let folder = tempfile::tempdir().expect("a folder");
    let path = |name: &str| folder.path().join(name).to_str().expect("text").to_owned();
    let (question, out) = (path("question.json"), path("sheet.txt"));
    std::fs::write(&question, asked.to_string()).expect("written");
    let said = plain(&["make", &question, "--subject", "7KQ4M-2XR9D-D, place 14", "--out", &out]);
    let file = std::fs::read_to_string(&out).expect("the sheet is there");
    assert_eq!(said.trim_end(), file.trim_end(), "the file says what the terminal says");
    let start = "Build sheet  7KQ4M-2XR9D-D, place 14\n\nFirst of all\nThe instructions of the makers";
    assert!(file.starts_with(start), "{file}");
    assert!(file.contains("JIC 37 flare -10, female, 45° elbow, drop 22 mm"), "{file}");
    let tightening = file.split("\nTightening, from the tables\n").nth(1).expect("how tight");
    assert!(tightening.starts_with("The maker's figure comes first."), "{tightening}");
    assert!(unbroken(tightening).contains("under its own condition alone"), "{tightening}");
    for part in ["\nTightening end A\n", "\nTightening end B\n", "published)"] {
        assert!(tightening.contains(part), "{part}: {tightening}");
    }
}

/// The commands of the demo and those beside them, as a person reads them.
#[test]
fn no_plain_line_is_wider_than_a_terminal() {
    let folder = tempfile::tempdir().expect("a folder");
    let demo = |name: &str| format!("{}/../demo/{name}", env!("CARGO_MANIFEST_DIR"));
    std::fs::write(folder.path().join("readings.json"), include_str!("../../demo/burst-readings.json"))
        .expect("written");
    let mut asked: Value =
        serde_json::from_str(include_str!("../../demo/replacement.json")).expect("the demo's question");
    asked["found"] = hosewright(&["find", &demo("burst-readings.json"), "--json"], "").1;
    let leave = |name: &str, document: &Value| {
        std::fs::write(folder.path().join(name), document.to_string()).expect("written");
    };
    leave("question.json", &asked);
    asked["service"]["working_pressure_bar"] = json!(400);
    leave("stopped.json", &asked);
    leave(
        "flow.json",
        &json!({"flow_l_min": 60, "bore_mm": 15.9, "length_m": 2, "fluid": {"iso_vg": 46, "viscosity_index": 95}, "temp_c": 50}),
    );
    leave(
        "route.json",
        &json!({"a": {"position_mm": [0, 0, 0], "direction": [0, 0, 1]},
        "b": {"position_mm": [300, 0, 0], "direction": [0, 0, 1]}, "free_length_mm": 900, "hose_od_mm": 25, "min_bend_radius_mm": 200}),
    );
    leave(
        "field.json",
        &json!({"spec": {"hose": {"standard": "EN 853", "type": "2SN", "dn": 16}, "overall_length_mm": 900},
        "facing": "u", "closed": {"gap_mm": 300}, "open": {"gap_mm": 350}}),
    );
    std::fs::write(folder.path().join("history.csv"), "time,failed\n100,1\n200,1\n300,0\n").expect("written");
    std::fs::write(
        folder.path().join("broken.csv"),
        include_str!("../../demo/fleet.csv").replace("EN 853", "EN 000"),
    )
    .expect("written");
    let (fleet, settings) = (demo("fleet.csv"), demo("settings.json"));
    let register = ["register", "--db", "register.db"];
    let cases: Vec<(Vec<&str>, i32)> = vec![
        ([&register[..], &["import", &fleet]].concat(), 0),
        ([&register[..], &["import", &fleet, "--dry-run"]].concat(), 0),
        ([&register[..], &["import", "broken.csv"]].concat(), 2),
        ([&register[..], &["due", "--all"]].concat(), 0),
        ([&register[..], &["search", "excavator"]].concat(), 0),
        ([&register[..], &["show", "stick rod"]].concat(), 0),
        ([&register[..], &["show", "Excavator 3"]].concat(), 0),
        ([&register[..], &["show", "excavator"]].concat(), 2),
        ([&register[..], &["verify"]].concat(), 0),
        (vec!["find", "readings.json"], 0),
        (vec!["print", "..N 853 2S. DN 1."], 0),
        (vec!["print", "SAE"], 0),
        (vec!["print", "zzzz"], 3),
        ([&register[..], &["search", "zzuu"]].concat(), 3),
        (vec!["check", "question.json"], 0),
        (vec!["check", "stopped.json"], 1),
        (
            vec![
                "make",
                "question.json",
                "--settings",
                &settings,
                "--subject",
                "7KQ4M-2XR9D-D, Excavator 3, 14, Stick cylinder, rod side",
            ],
            0,
        ),
        (vec!["make", "question.json"], 0),
        (vec!["make", "stopped.json"], 1),
        (vec!["tag", "make", "question.json", "--out", "label.png", "--dpi", "300"], 0),
        (vec!["tag", "make", "stopped.json", "--out", "no.png"], 1),
        (vec!["tag", "read", "label.png"], 0),
        (vec!["flow", "flow.json"], 0),
        (vec!["route", "route.json"], 1),
        (vec!["route", "field.json"], 1),
        (vec!["life", "history.csv"], 0),
        (vec!["no-such-command"], 2),
        (vec!["--help"], 0),
    ];
    for (arguments, wanted) in cases {
        let mut command = Command::cargo_bin("hosewright").expect("the command line is built");
        let output = command.current_dir(folder.path()).args(&arguments).output().expect("it runs");
        let text = [output.stdout, output.stderr].concat();
        let text = String::from_utf8(text).expect("text");
        assert_eq!(output.status.code(), Some(wanted), "{arguments:?}: {text}");
        assert!(!text.trim().is_empty(), "{arguments:?} says nothing");
        for line in text.lines() {
            assert!(line.chars().count() <= 80, "{arguments:?}: {} characters: {line}", line.chars().count());
        }
    }
}

/// A register of the demo fleet, in a folder that goes with it.
fn demo_register() -> (tempfile::TempDir, String) {
    let folder = tempfile::tempdir().expect("a folder");
    let db = folder.path().join("register.db").to_str().expect("text").to_owned();
    let fleet = concat!(env!("CARGO_MANIFEST_DIR"), "/../demo/fleet.csv");
    assert_eq!(hosewright(&["register", "--db", &db, "import", fleet, "--json"], "").0, 0);
    (folder, db)
}

/// What a command says to a person.
fn plain(arguments: &[&str]) -> String {
    let mut command = Command::cargo_bin("hosewright").expect("the command line is built");
    let output = command.args(arguments).output().expect("it runs");
    String::from_utf8(output.stdout).expect("text")
}

/// A text without its breaks of lines.
fn unbroken(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn the_van_is_loaded_asked_and_priced_on_the_command_line() {
    let folder = tempfile::tempdir().expect("a folder");
    let db = folder.path().join("van.db").display().to_string();
    let demo = |file: &str| format!("{}/../demo/{file}", env!("CARGO_MANIFEST_DIR"));
    let stock = |arguments: &[&str]| {
        let mut all = vec!["stock", "--db", &db, "--json"];
        all.extend(arguments);
        hosewright(&all, "")
    };
    assert_eq!(stock(&["list"]).0, 4, "there is no register yet");
    let (exit, settings, _) = hosewright(&["settings", "--db", &db, "--json", &demo("van.json")], "");
    assert_eq!((exit, &settings["store"], &settings["kerf_mm"]), (0, &json!("Van 2"), &json!(3.0)));
    assert_eq!(stock(&["load", &demo("stock.json")]).0, 0);
    assert_eq!(stock(&["load", &demo("prices.json")]).0, 0);
    let (exit, need, _) = stock(&["need", &demo("replacement.json"), "--settings", &demo("settings.json")]);
    assert_eq!((exit, need["lines"].as_array().map(Vec::len)), (0, Some(4)));
    assert!(need["lines"].as_array().expect("lines").iter().all(|line| line["state"] == "there"), "{need}");
    let (exit, _, error) = stock(&["scrap", "JIC 37"]);
    assert_eq!((exit, &error["error"]["field"]), (2, &json!("what")), "more than one thing is named so");
    let (exit, quote, _) = hosewright(&["quote", &demo("batch.json"), "--db", &db, "--json"], "");
    // By hand: 4.754 m at 14.90, three ends at 11.60 and at 18.45, six ferrules at 2.35, a ring at 0.40; 115 min at 78.00.
    assert_eq!(
        (exit, &quote["sum"]["minor"], &quote["total"]["text"]),
        (0, &json!(32498), &json!("386.73 EUR"))
    );
}

/// Stocks, a fleet, labels again and in a batch, tags read against the register: each in JSON and plainly.
#[test]
fn labels_and_fleets_are_worked_from_the_command_line() {
    let folder = tempfile::tempdir().expect("a folder");
    let at = |name: &str| folder.path().join(name).display().to_string();
    let (db, label, other) = (at("fleet.db"), at("label.png"), at("other.png"));
    let demo = |name: &str| format!("{}/../demo/{name}", env!("CARGO_MANIFEST_DIR"));
    let done = |arguments: &[&str]| {
        let (exit, answer, error) = hosewright(arguments, "");
        assert_eq!(exit, 0, "{arguments:?}: {error}");
        answer
    };
    done(&["register", "--db", &db, "import", &demo("fleet.csv"), "--json"]);
    let stocks = done(&["tag", "stocks", "--db", &db, "--keep", &demo("stocks.json"), "--json"]);
    assert_eq!(stocks["stocks"].as_array().map(Vec::len), Some(6));
    let fleet = done(&["fleet", "--db", &db, "begin", "Northern vans", "--json"]);
    has(&fleet, &["device", "own", "partners", "kept"]);

    let hits = done(&["register", "--db", &db, "search", "stick rod", "--json"]);
    let code = hits["hits"][0]["code"].as_str().expect("a hose");
    let stock = ["--db", db.as_str(), "--stock", "Flag 100 x 50", "--json"];
    let again = done(&[&["tag", "again", code, "--out", &label][..], &stock].concat());
    has(&again, &["tag", "text", "reprint", "catalogue", "program"]);
    let plan = done(&[&["tag", "batch", "--machine", "Excavator 3"][..], &stock].concat());
    has(&plan, &["labels", "made", "reprints", "pages"]);
    assert_eq!((&plan["reprints"], plan["made"].as_u64() > Some(1)), (&json!(1), true));
    done(&[&["tag", "batch", "--due", "2026-11-25", "--out", &at("labels.pdf")][..], &stock].concat());
    assert!(std::fs::read(at("labels.pdf")).expect("a PDF").starts_with(b"%PDF"));

    let read = done(&["tag", "read", &label, "--db", &db, "--json"]);
    has(&read, &["code", "spec", "seal", "judged"]);
    assert_eq!((&read["code"], &read["judged"]["standing"]), (&json!(code), &json!("own")));
    let typed = done(&["tag", "open", code, "--db", &db, "--json"]);
    assert_eq!(typed["judged"]["standing"], "code-alone");
    let scans = done(&["tag", "scans", "--db", &db, "--json"]);
    assert_eq!(scans["scans"].as_array().map(Vec::len), Some(2));

    // A tag that was altered stops, and one that nobody here has seen is taken in.
    let text = read["text"].as_str().expect("a text").to_owned();
    let altered = at("altered.txt");
    std::fs::write(&altered, text.replace("1240", "1340")).expect("written");
    let (exit, answer, _) = hosewright(&["tag", "open", &altered, "--db", &db, "--json"], "");
    assert_eq!((exit, &answer["judged"]["verdict"]), (1, &json!("stop")));
    done(&["tag", "make", &demo("replacement.json"), "--out", &other, "--json"]);
    let taken = done(&["tag", "adopt", &other, "--db", &db, "--json"]);
    has(&taken, &["code", "written", "assembly"]);
    let (exit, _, error) = hosewright(&["tag", "adopt", &other, "--db", &db, "--json"], "");
    assert_eq!((exit, &error["error"]["code"]), (2, &json!("input")), "known already");

    let (key, second) = (at("key.txt"), at("second.db"));
    let handed = done(&["fleet", "--db", &db, "hand-on", "--out", &key, "--json"]);
    assert!(!handed["caution"].as_str().expect("words").is_empty());
    let (exit, _, _) = hosewright(&["fleet", "--db", &db, "hand-on", "--out", &key, "--json"], "");
    assert_eq!(exit, 4, "a key is not written over a file that others may have open");
    done(&["register", "--db", &second, "import", &demo("fleet.csv"), "--json"]);
    // Both marks are compared before anything is kept.
    let seen = done(&["fleet", "--db", &second, "join", &key, "--json"]);
    has(&seen, &["name", "mark", "from"]);
    assert_eq!(done(&["fleet", "--db", &second, "show", "--json"])["own"], Value::Null);
    let from = seen["from"].as_str().expect("a mark");
    let joined = done(&["fleet", "--db", &second, "join", &key, "--from", from, "--json"]);
    assert_eq!(joined["own"]["mark"], fleet["own"]["mark"]);
    let mark = joined["own"]["mark"].as_str().expect("a mark");
    assert_eq!(done(&["fleet", "--db", &second, "leave", mark, "--json"])["own"], Value::Null);

    let narrow = ["--width-mm", "12", "--height-mm", "12", "--form", "wrap"];
    let replacement = demo("replacement.json");
    let asked = [&["tag", "make", &replacement, "--out", &other][..], &narrow, &["--json"]].concat();
    let (exit, _, error) = hosewright(&asked, "");
    assert_eq!((exit, &error["error"]["field"]), (2, &json!("stock")));
}
