//! Tags: their text, their labels on paper, and reading both back, by our reader and by others.

use hosewright_core::fleet::FleetKey;
use hosewright_core::quantity::{Bar, Degrees, Dn, Millimetres};
use hosewright_core::spec::{
    Adapter, Between, Cover, Duty, EndSpec, Gender, HoseRef, Line, Role, Side, Spec,
};
use hosewright_core::tag::{
    self, Assembled, LabelForm, LabelHolds, LabelMaterial, LabelStock, Proof, TagCode, TagContent, TagError,
};
use hosewright_papers::sheet::{Body, Paper, Section, Sheet, Step};
use hosewright_papers::{Fact, Ink, Label, LabelError, Op, Wanted, table, to_pdf};
use hosewright_words::{Language, Words};
use proptest::prelude::*;
use rstest::rstest;
use std::io::Cursor;
use std::path::Path;
use std::process::Command;

/// Names as people and catalogues have them, and names nobody should have.
fn name() -> impl Strategy<Value = String> {
    prop_oneof![
        Just("JIC 37 flare".to_owned()),
        Just("AC BC CC DC".to_owned()),
        Just("female".to_owned()),
        Just("drop 5 mm, cut-off".to_owned()),
        "[ -~]{0,12}",
        any::<String>(),
    ]
}

fn number() -> impl Strategy<Value = f64> {
    prop_oneof![
        (-10_000_i32..10_000).prop_map(|tenths| f64::from(tenths) / 10.0),
        (0_u32..100_000).prop_map(|sixteenths| f64::from(sixteenths) * 25.4 / 16.0),
        (1_u32..20_000).prop_map(|psi| f64::from(psi) * Bar::PER_PSI),
        prop::num::f64::NORMAL | prop::num::f64::ZERO,
    ]
}

fn maybe<T: std::fmt::Debug + Clone>(some: impl Strategy<Value = T>) -> impl Strategy<Value = Option<T>> {
    prop::option::of(some)
}

fn end() -> impl Strategy<Value = EndSpec> {
    let gender = prop_oneof![Just(Gender::Male), Just(Gender::Female)];
    let role = prop_oneof![Just(Role::A), Just(Role::B)];
    (role, name(), name(), maybe(gender), maybe(name()), maybe(number()), maybe(number()), maybe(number()))
        .prop_map(|(role, family, size, gender, form, drop, cutoff, rating)| EndSpec {
            role,
            family,
            size,
            gender,
            form,
            drop_mm: drop.map(Millimetres),
            cutoff_mm: cutoff.map(Millimetres),
            rating_bar: rating.map(Bar),
        })
}

fn spec() -> impl Strategy<Value = Spec> {
    let named = (name(), name(), 1_u16..10_000).prop_filter_map("a size", |(standard, kind, tenths)| {
        Some(HoseRef::named(standard, kind, Dn::new(f64::from(tenths) / 10.0)?))
    });
    let hose = (named, maybe(number()), maybe(number())).prop_map(|(hose, bend, vacuum)| HoseRef {
        min_bend_radius_mm: bend.map(Millimetres),
        vacuum_kpa_abs: vacuum,
        ..hose
    });
    let half = || maybe(prop_oneof![Just(Gender::Male), Just(Gender::Female)]);
    let side =
        move || (name(), name(), half()).prop_map(|(family, size, gender)| Side { family, size, gender });
    let role = prop_oneof![Just(Role::A), Just(Role::B)];
    let between = (role, side(), side()).prop_map(|(role, hose_side, machine_side)| Between {
        role,
        hose_side,
        machine_side,
    });
    let adapter = (name(), maybe(number()), maybe(between)).prop_map(|(name, rating, between)| Adapter {
        name,
        rating_bar: rating.map(Bar),
        between,
    });
    let cover = prop_oneof![
        Just(Cover::Plain),
        Just(Cover::NonConductive),
        Just(Cover::FlameResistant),
        Just(Cover::Antistatic)
    ];
    (
        maybe(hose),
        prop::collection::vec(end(), 0..4),
        prop::collection::vec(adapter, 0..3),
        maybe(number()),
        maybe(number()),
        maybe(cover),
    )
        .prop_map(|(hose, ends, adapters, length, turn, cover)| Spec {
            hose,
            ends,
            adapters,
            overall_length_mm: length.map(Millimetres),
            turn_deg: turn.map(Degrees),
            cover,
        })
}

fn content() -> impl Strategy<Value = TagContent> {
    let line = prop_oneof![
        Just(Line::Pressure),
        Just(Line::Return),
        Just(Line::Suction),
        Just(Line::CaseDrain),
        Just(Line::Pilot),
        Just(Line::Cylinder)
    ];
    let duty = prop_oneof![Just(Duty::NonConductive), Just(Duty::FlameResistant), Just(Duty::Antistatic)];
    let assembled =
        (1900_i32..2200, 1_u32..=12, 0_u32..=28).prop_filter_map("a date", |(year, month, day)| {
            if day == 0 {
                Assembled::in_month(year, month)
            } else {
                format!("{year}-{month:02}-{day:02}").parse().ok()
            }
        });
    let proof = prop_oneof![
        number().prop_map(|bar| Proof::Proved { pressure_bar: Bar(bar) }),
        Just(Proof::NotProved),
        Just(Proof::NoRig)
    ];
    (
        any::<[u8; 7]>().prop_map(TagCode::from_random),
        spec(),
        maybe(number()),
        maybe(line),
        maybe(name()),
        prop::collection::vec(duty, 0..4),
        maybe(assembled),
        proof,
        name(),
        maybe(any::<[u8; 32]>()),
    )
        .prop_map(|(code, spec, pressure, line, fluid, duties, assembled, proof, catalogue, key)| {
            let mut tag = TagContent {
                code,
                spec,
                pressure_bar: pressure.map(Bar),
                line,
                fluid,
                duties,
                assembled,
                proof,
                catalogue,
                seal: None,
            };
            if let Some(key) = key {
                tag::seal(&mut tag, &FleetKey::from_bytes(key));
            }
            tag
        })
}

/// A tag as a van makes it.
pub fn ordinary() -> TagContent {
    let end = |role, form: &str, drop, cutoff| EndSpec {
        role,
        family: "JIC 37 flare".to_owned(),
        size: "-10".to_owned(),
        gender: Some(Gender::Female),
        form: Some(form.to_owned()),
        drop_mm: drop,
        cutoff_mm: Some(Millimetres(cutoff)),
        rating_bar: None,
    };
    TagContent {
        code: TagCode::from_random([1, 200, 3, 44, 5, 6, 7]),
        spec: Spec {
            hose: Some(HoseRef::named("EN 853", "2SN", sure("16".parse()))),
            ends: vec![
                end(Role::A, "straight", None, 32.5),
                end(Role::B, "elbow90", Some(Millimetres(55.0)), 41.0),
            ],
            adapters: vec![],
            overall_length_mm: Some(Millimetres(1240.0)),
            turn_deg: Some(Degrees(90.0)),
            cover: None,
        },
        pressure_bar: Some(Bar(250.0)),
        line: None,
        fluid: Some("HM".to_owned()),
        duties: vec![],
        assembled: Assembled::in_month(2026, 11),
        proof: Proof::Proved { pressure_bar: Bar(500.0) },
        catalogue: "5f0c1d2e".to_owned(),
        seal: None,
    }
}

/// What the test itself relies on.
#[track_caller]
pub fn sure<T, E: std::fmt::Debug>(result: Result<T, E>) -> T {
    result.unwrap_or_else(|error| panic!("{error:?}"))
}

pub fn words() -> Words {
    Words::of(Language::English)
}

fn size(width_mm: f64, height_mm: f64, dpi: f64) -> LabelStock {
    let name = format!("{width_mm} x {height_mm}");
    LabelStock { name, width_mm, height_mm, dpi, material: LabelMaterial::Polyester, form: LabelForm::Flag }
}

fn label(tag: &TagContent, stock: &LabelStock) -> Result<Label, LabelError> {
    hosewright_papers::label(Wanted { tag, stock, cover_od_mm: None, reprint: false }, &words())
}

/// Runs a program that the tests need and gives its output. One that is missing fails the test:
/// `tests/run` installs it.
#[track_caller]
fn run(program: &str, arguments: &[&str], file: &Path) -> Vec<u8> {
    let output = Command::new(program).args(arguments).arg(file).arg("-").output();
    let output = output.unwrap_or_else(|error| panic!("{program} is needed and did not start: {error}"));
    assert!(output.status.success(), "{program}: {}", String::from_utf8_lossy(&output.stderr));
    output.stdout
}

/// What an independent reader finds in a picture.
#[track_caller]
pub fn by_another_reader(png: &[u8]) -> String {
    let file = sure(tempfile::Builder::new().suffix(".png").tempfile());
    sure(std::fs::write(file.path(), png));
    let output = Command::new("zbarimg").args(["--quiet", "--raw", "--nodbus"]).arg(file.path()).output();
    let output = output.unwrap_or_else(|error| panic!("zbarimg is needed and did not start: {error}"));
    sure(String::from_utf8(output.stdout)).trim_end_matches('\n').to_owned()
}

pub fn by_sight(png: &[u8]) -> Vec<String> {
    let found = sure(hosewright_sight::read(png));
    found.into_iter().map(|found| found.text).collect()
}

#[track_caller]
fn made(tag: &TagContent, of: LabelStock) -> Label {
    sure(label(tag, &of))
}

/// What stands on a label in words, line by line.
pub fn printed(label: &Label) -> String {
    let texts = label.drawing.ops.iter().filter_map(|op| match op {
        Op::Text { text, .. } => Some(text.as_str()),
        _ => None,
    });
    texts.collect::<Vec<_>>().join(" ")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]

    #[test]
    fn whatever_was_written_is_read_back_the_same(tag in content()) {
        let text = tag::write(&tag);
        let read = tag::read(&text);
        prop_assert_eq!(read.as_ref(), Ok(&tag), "{}", text);
        let copied = format!("\r\n{}\r\n\r\n", text.replace('\n', "\r\n"));
        prop_assert_eq!(read, tag::read(&copied), "as a phone copies it");
    }

    #[test]
    fn a_tag_is_the_same_as_json(tag in content()) {
        let json = serde_json::to_string(&tag).expect("json");
        let read: TagContent = serde_json::from_str(&json).map_err(|e| TestCaseError::fail(e.to_string()))?;
        prop_assert_eq!(read, tag);
    }

    #[test]
    fn one_wrong_character_is_always_caught(tag in content(), at in any::<prop::sample::Index>(), wrong in any::<char>()) {
        let text = tag::write(&tag);
        let mut letters: Vec<char> = text.chars().collect();
        let at = at.index(letters.len());
        prop_assume!(letters[at] != wrong);
        letters[at] = wrong;
        let altered: String = letters.into_iter().collect();
        // Space round the whole is no part of the text; the text itself begins and ends with letters.
        prop_assert!(tag::read(&altered).is_err(), "{:?}", altered);
    }

    #[test]
    fn no_text_is_too_strange_to_refuse(text in any::<String>()) {
        prop_assert!(tag::read(&text).is_err());
        let like_one = format!("HOSE TAG 1 7G1A0-PC08E-P\n{text}\nSUM 0000000");
        prop_assert!(tag::read(&like_one).is_err());
    }

    #[test]
    fn a_table_comes_back_as_it_was_written(
        rows in prop::collection::vec(prop::collection::vec("[ -~äöüß\n\t]{0,8}", 2..5), 1..6)
    ) {
        // Two columns at least, so that the separator shows.
        let read = table::read(&table::to_csv(&rows), "t.csv").map_err(|e| TestCaseError::fail(e.to_string()))?;
        prop_assert_eq!(read, rows);
    }

    #[test]
    fn no_file_is_too_strange_to_refuse(bytes in any::<Vec<u8>>(), start in prop::sample::select(vec![
        b"".to_vec(), b"PK\x03\x04".to_vec(), b"\x89PNG\r\n\x1a\n".to_vec(), b"\xff\xd8\xff".to_vec(),
    ])) {
        let file = [start, bytes].concat();
        let _ = table::read(&file, "strange");
        prop_assert!(hosewright_sight::read(&file).map_or(true, |found| found.is_empty()));
    }
}

/// As the grammar's first version wrote it, psi converted: hoses that carry it are still on machines.
#[test]
fn a_tag_of_version_1_is_read_and_written_anew_by_the_present_one() {
    let old = "HOSE TAG 1 0AAKG-EWXTN-P\nHOSE EN 853 2SN DN16\nA JIC 37 flare -10, female, elbow45, drop 22 mm, cut-off 41 mm\nB ORFS -10, female, elbow90, drop 38 mm, cut-off 44 mm\nLENGTH 1240 mm\nTURN 90 deg\nMAX 206 bar (2990 psi)\nLINE cylinder\nFLUID HM\nMADE 2026-11-25\nNOT PROVED\nCATALOGUE 2e53152d0f88\nSUM 10YR763";
    let tag = sure(tag::read(old));
    assert_eq!((tag.pressure_bar, tag.spec.ends.len()), (Some(Bar(206.0)), 2));
    let new = tag::write(&tag);
    assert!(new.starts_with("HOSE TAG 3 0AAKG-EWXTN-P\n") && new.contains("MAX 206 bar (3000 psi)"), "{new}");
    assert_eq!(tag::read(&new), Ok(tag));
    let mixed = old.replace("HOSE TAG 1", "HOSE TAG 2");
    assert!(tag::read(&mixed).is_err(), "each version has its own writing");
}

#[test]
fn every_character_of_a_tag_is_guarded() {
    let text = tag::write(&ordinary());
    let mut tried = 0;
    for (at, right) in text.char_indices() {
        for wrong in ('\u{20}'..='\u{7e}').chain(['\n', '\t', 'ä', '\u{a0}']).filter(|wrong| *wrong != right)
        {
            let mut altered = text.clone();
            altered.replace_range(at..at + right.len_utf8(), &wrong.to_string());
            assert!(tag::read(&altered).is_err(), "{right:?} at {at} as {wrong:?} was not caught");
            tried += 1;
        }
        assert!(tag::read(&text[..at]).is_err(), "cut at {at}");
    }
    assert_eq!(tried, text.len() * 98);
}

#[test]
fn a_damaged_tag_names_its_line() {
    let text = tag::write(&ordinary());
    for (right, wrong, line) in [
        ("HOSE EN 853 2SN DN16", "HOSE EN 853 2S", 2),
        ("A JIC 37 flare -10, ", "A, ", 3),
        ("LENGTH 1240 mm", "LENGTH ---- mm", 5),
        ("MADE 2026-11", "MADE ", 9),
    ] {
        let error = tag::read(&text.replace(right, wrong)).expect_err(wrong);
        assert!(error.to_string().starts_with(&format!("line {line}, ")), "{wrong}: {error}");
    }
    let half: String = text.lines().take(6).map(|line| format!("{line}\n")).collect();
    assert_eq!(tag::read(&half), Err(TagError::CutShort { line: 6 }));
}

/// A label at the printers' usual dots is read by our reader and by another one.
#[rstest]
#[case(size(60.0, 40.0, 203.0), LabelHolds::FullText)]
#[case(size(60.0, 40.0, 300.0), LabelHolds::FullText)]
#[case(size(60.0, 40.0, 600.0), LabelHolds::FullText)]
#[case(size(40.0, 60.0, 203.0), LabelHolds::FullText)]
#[case(size(100.0, 50.0, 300.0), LabelHolds::FullText)]
#[case(size(50.0, 25.0, 203.0), LabelHolds::CodeAlone)]
#[case(size(50.0, 25.0, 300.0), LabelHolds::CodeAlone)]
#[case(size(50.0, 25.0, 600.0), LabelHolds::CodeAlone)]
fn a_label_is_read_back(#[case] of: LabelStock, #[case] form: LabelHolds) {
    let tag = ordinary();
    let label = made(&tag, of.clone());
    let png = label.to_png().expect("a picture");
    let expected = match form {
        LabelHolds::FullText => tag::write(&tag),
        LabelHolds::CodeAlone | LabelHolds::CodeOnly => tag.code.to_string(),
    };
    assert_eq!((label.holds, &label.text), (form, &expected), "{of:?}");
    assert_eq!(by_sight(&png), std::slice::from_ref(&expected), "{of:?} by our reader");
    assert_eq!(by_another_reader(&png), expected, "{of:?} by another reader");

    let picture = image::load_from_memory(&png).expect("a picture").into_luma8();
    let dots = |mm: f64| (mm * of.dpi / 25.4).round() as u32;
    assert_eq!(picture.dimensions(), (dots(of.width_mm), dots(of.height_mm)), "a pixel for each dot");
    assert!(picture.pixels().all(|pixel| matches!(pixel.0, [0 | 255])), "black and white alone");
    let said = printed(&label);
    for fact in
        ["EN 853 2SN DN16", "250 bar (3630 psi) max", "1240 mm", "A JIC 37 flare -10", "2026-11", "proved"]
    {
        assert!(said.contains(fact), "{of:?}: {fact} is not in: {said}");
    }
    // The QR code has the version of the tables where it has the whole text.
    let in_code = |fact: &Fact| *fact == Fact::Catalogue && form == LabelHolds::FullText;
    let left = |fact: &Fact| *fact == Fact::Caution || in_code(fact);
    assert!(label.left_off.iter().all(left), "{of:?}: {:?}", label.left_off);
}

/// Modules are whole dots of a size that is read, their quiet zone is free and nothing leaves the
/// label. Sizes and quiet zone: ISO/IEC 18004; smallest module: QF-22 of tests/vectors/qr_facts.csv.
#[test]
fn a_labels_code_stands_on_whole_dots_with_its_quiet_zone() {
    for (width, height) in [(60.0, 40.0), (40.0, 60.0), (50.0, 25.0), (100.0, 50.0), (57.3, 33.3)] {
        for dpi in [203.0, 300.0, 600.0] {
            let label = made(&ordinary(), size(width, height, dpi));
            let Some(Op::Modules { x, y, module, side, .. }) = label.drawing.ops.first() else {
                panic!("no code on {width} x {height}")
            };
            let whole = |mm: f64| ((mm * dpi / 25.4) - (mm * dpi / 25.4).round()).abs() < 1e-6;
            assert!(
                whole(*x) && whole(*y) && whole(*module),
                "{width} x {height} at {dpi}: {x} {y} {module}"
            );
            assert!(*module >= 0.4, "{module} mm");
            assert_eq!(*side, 17 + 4 * label.version as usize);
            let (quiet, end) = (4.0 * module - 1e-9, module * *side as f64);
            let free = *x >= quiet && *y >= quiet && x + end + quiet <= width && y + end + quiet <= height;
            assert!(free, "{width} x {height} at {dpi}: no quiet zone at the edge");
            let picture = image::load_from_memory(&label.to_png().expect("png")).expect("png").into_luma8();
            let dots = |mm: f64| (mm * dpi / 25.4).round() as u32;
            let (left, top) = (dots(x - 4.0 * module), dots(y - 4.0 * module));
            let whole_side = dots((*side as f64 + 8.0) * module);
            for across in 0..whole_side {
                for deep in 0..dots(4.0 * module) {
                    for (column, row) in [
                        (across, deep),
                        (across, whole_side - 1 - deep),
                        (deep, across),
                        (whole_side - 1 - deep, across),
                    ] {
                        let pixel = picture.get_pixel(left + column, top + row);
                        assert_eq!(pixel.0, [255], "{width} x {height} at {dpi}: ink in the quiet zone");
                    }
                }
            }
        }
    }
}

/// The QR code is the smallest that holds its text, by the capacity table of ISO/IEC 18004.
#[test]
fn a_labels_code_is_the_smallest_by_the_published_capacities() {
    const BYTES: usize = 5;
    const LETTERS: usize = 6;
    let table = Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors/qr_facts.csv");
    let rows: Vec<csv::StringRecord> = csv::Reader::from_path(table)
        .expect("the vectors")
        .records()
        .collect::<Result<_, _>>()
        .expect("rows");
    let capacity = |version: i16, level: char, column: usize| {
        let row = rows.iter().find(|row| row[0] == format!("CAP-{version}-{level}"));
        row.map(|row| row[column].parse::<usize>().expect("a number"))
    };
    let mut checked = 0;
    for of in
        [size(60.0, 40.0, 203.0), size(100.0, 50.0, 300.0), size(80.0, 80.0, 300.0), size(50.0, 25.0, 203.0)]
    {
        let label = made(&ordinary(), of);
        let (length, level) = (label.text.len(), label.level);
        let smallest = |column| {
            (1..=40).find(|version| capacity(*version, level, column).is_some_and(|holds| length <= holds))
        };
        let (in_bytes, in_letters) = (smallest(BYTES).expect("a code"), smallest(LETTERS).expect("a code"));
        match label.holds {
            // Pieces of capitals and figures in a text save bits; no text takes fewer than if it had no other.
            LabelHolds::FullText => {
                assert!((in_letters..=in_bytes).contains(&label.version), "V{}{level}", label.version)
            }
            _ => assert_eq!(label.version, in_letters, "V{}{level}", label.version),
        }
        checked += 1;
    }
    assert_eq!(checked, 4);
}

#[test]
fn letters_of_other_languages_are_read_back() {
    let mut tag = ordinary();
    tag.spec.adapters = vec![Adapter {
        name: "Winkelstück – ¼ in, größer, señal".to_owned(),
        between: None,
        rating_bar: Some(Bar(400.0)),
    }];
    let label = made(&tag, size(70.0, 50.0, 300.0));
    let png = label.to_png().expect("png");
    assert_eq!(by_sight(&png), [tag::write(&tag)]);
    assert_eq!(by_another_reader(&png), tag::write(&tag));
    assert_eq!(tag::read(&by_sight(&png)[0]), Ok(tag));
}

#[test]
fn what_must_be_seen_without_a_phone_is_never_left_off() {
    let mut tag = ordinary();
    tag.proof = Proof::NoRig;
    tag.duties = vec![Duty::NonConductive];
    let mut sizes = 0;
    for width in (20..=100).step_by(5) {
        for height in (15..=100).step_by(5) {
            let of = size(f64::from(width), f64::from(height), 203.0);
            let Ok(label) = label(&tag, &of) else { continue };
            sizes += 1;
            let said = printed(&label);
            let without: &[&str] = &["NOT PROVED: no rig", "NON-CONDUCTIVE"];
            let whole: &[&str] = &["EN 853 2SN DN16", "250 bar"];
            let whole = if label.holds == LabelHolds::CodeOnly { &[] } else { whole };
            for fact in without.iter().chain(whole) {
                assert!(said.contains(fact), "{width} x {height}: {fact} is not in: {said}");
            }
            let [first, second, check] = tag.code.groups();
            assert!(said.contains(&first) && said.contains(&format!("{second}-{check}")), "{said}");
            if label.holds == LabelHolds::CodeAlone {
                assert!(label.left_off.iter().all(|fact| *fact == Fact::Caution), "{:?}", label.left_off);
            }
        }
    }
    assert!(sizes > 100, "{sizes} labels were made");
}

#[test]
fn a_label_without_room_says_what_would_do() {
    let error = label(&ordinary(), &size(16.0, 12.0, 203.0)).expect_err("no room");
    let LabelError::TooSmall { needed_height_mm: Some(height), .. } = error else { panic!("{error}") };
    made(&ordinary(), size(16.0, height, 203.0));
    assert!(label(&ordinary(), &size(16.0, height - 1.0, 203.0)).is_err(), "{height} is the least");
    for of in
        [size(f64::NAN, 40.0, 203.0), size(60.0, 0.0, 203.0), size(60.0, 40.0, 1e9), size(1e9, 40.0, 203.0)]
    {
        assert!(matches!(label(&ordinary(), &of), Err(LabelError::Stock(_))), "{of:?}");
    }
}

#[test]
fn several_labels_in_one_picture_are_all_read() {
    let codes = [[1; 7], [2; 7], [3; 7]].map(TagCode::from_random);
    let mut sheet = image::GrayImage::from_pixel(900, 1100, image::Luma([200]));
    for (index, code) in codes.iter().enumerate() {
        let tag = TagContent { code: *code, ..ordinary() };
        let png = made(&tag, size(60.0, 40.0, 203.0)).to_png().expect("png");
        let picture = image::load_from_memory(&png).expect("png").into_luma8();
        image::imageops::overlay(&mut sheet, &picture, 60 + 150 * index as i64, 20 + 350 * index as i64);
    }
    let mut png = Cursor::new(Vec::new());
    sheet.write_to(&mut png, image::ImageFormat::Png).expect("png");
    let found = hosewright_sight::read(png.get_ref()).expect("a picture");
    let mut read: Vec<_> =
        found.iter().filter_map(|found| tag::read(&found.text).ok()).map(|tag| tag.code).collect();
    read.sort();
    let mut expected = codes;
    expected.sort();
    assert_eq!(read, expected);
    for found in &found {
        let index =
            codes.iter().position(|code| found.text.contains(&code.to_string())).expect("one of them");
        let (left, top) = (60.0 + 150.0 * index as f32, 20.0 + 350.0 * index as f32);
        for (x, y) in found.corners {
            let inside = (left..left + 320.0).contains(&x) && (top..top + 320.0).contains(&y);
            assert!(inside, "label {index}: corner {x} {y}");
        }
    }
}

#[test]
fn a_blurred_noisy_photograph_of_a_label_is_read() {
    let label = made(&ordinary(), size(60.0, 40.0, 203.0));
    let picture = image::load_from_memory(&label.to_png().expect("png")).expect("png").into_luma8();
    let (width, height) = picture.dimensions();
    let larger = image::imageops::resize(
        &picture,
        width * 3 / 2,
        height * 3 / 2,
        image::imageops::FilterType::Triangle,
    );
    let mut photo = image::imageops::blur(&larger, 1.5);
    let mut noise = 12345_u32;
    for pixel in photo.pixels_mut() {
        noise = noise.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        let dim = f32::from(pixel.0[0]) * 0.6 + 40.0 + (noise >> 24) as f32 / 8.0;
        pixel.0[0] = dim.clamp(0.0, 255.0) as u8;
    }
    let mut jpeg = Cursor::new(Vec::new());
    photo.write_to(&mut jpeg, image::ImageFormat::Jpeg).expect("jpeg");
    assert_eq!(by_sight(jpeg.get_ref()), [label.text]);
}

#[test]
fn a_picture_that_would_fill_the_memory_is_refused() {
    // A PNG header of 60 000 x 60 000 pixels and nothing behind it.
    let mut png = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR\0\0\xea\x60\0\0\xea\x60\x08\0\0\0\0".to_vec();
    png.extend([0; 16]);
    assert!(hosewright_sight::read(&png).is_err());
    let error = hosewright_sight::read(b"GIF89a").expect_err("no PNG or JPEG");
    assert!(error.to_string().contains("PNG or JPEG"), "{error}");
}

#[test]
fn a_label_as_pdf_can_be_searched_and_scanned() {
    let label = made(&ordinary(), size(60.0, 40.0, 300.0));
    let file = tempfile::Builder::new().suffix(".pdf").tempfile().expect("a file");
    std::fs::write(file.path(), label.to_pdf().expect("pdf")).expect("written");
    let text = String::from_utf8(run("pdftotext", &["-layout"], file.path())).expect("text");
    for fact in ["EN 853 2SN DN16", "250 bar (3630 psi) max", "made 2026-11", "90° elbow"] {
        assert!(text.contains(fact), "{fact} is not in: {text}");
    }
    let shown = Command::new("pdftoppm").args(["-r", "300", "-png"]).arg(file.path()).output();
    let shown = shown.unwrap_or_else(|error| panic!("pdftoppm is needed and did not start: {error}"));
    let picture = image::load_from_memory(&shown.stdout).expect("a picture");
    // 60 x 40 mm at 300 dots per inch; the page is rounded up to whole pixels.
    assert!((708..=710).contains(&picture.width()) && (472..=474).contains(&picture.height()));
    assert_eq!(by_sight(&shown.stdout), [label.text]);
}

#[test]
fn a_label_as_svg_is_of_its_size_and_says_its_facts() {
    let mut tag = ordinary();
    tag.spec.ends[0].family = "A<B & \"C\"".to_owned();
    let svg = made(&tag, size(60.0, 40.0, 300.0)).to_svg();
    assert!(
        svg.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"60mm\" height=\"40mm\""),
        "{svg}"
    );
    assert!(svg.contains(">EN 853 2SN DN16</text>") && svg.contains("A A&lt;B &amp; \"C\""), "{svg}");
}

#[test]
fn a_build_sheet_prints_on_either_paper() {
    let steps = (1..=60).map(|at| Step {
        text: format!("Step {at}."),
        cautions: if at == 7 { vec!["Never feel for a leak by hand.".to_owned()] } else { vec![] },
    });
    let sheet = Sheet {
        title: "Build sheet".to_owned(),
        subject: "7G1A0-PC08E-P".to_owned(),
        sections: vec![Section { heading: "Steps".to_owned(), body: Body::Steps(steps.collect()) }],
        footer: "catalogue 5f0c1d2e".to_owned(),
    };
    for (paper, width, height) in [(Paper::A4, 210.0, 297.0), (Paper::Letter, 215.9, 279.4)] {
        let pages = sheet.pages(paper, &words());
        let file = tempfile::Builder::new().suffix(".pdf").tempfile().expect("a file");
        std::fs::write(file.path(), to_pdf(&pages, &sheet.title).expect("pdf")).expect("written");
        let text = String::from_utf8(run("pdftotext", &["-layout"], file.path())).expect("text");
        for at in 1..=60 {
            assert!(text.contains(&format!("Step {at}.")), "{paper:?}: step {at} is not in: {text}");
        }
        assert!(text.contains("Caution: Never feel for a leak by hand."), "{text}");
        assert!(pages.len() > 1 && text.contains(&format!("1 of {}", pages.len())), "{text}");
        let png = pages[0].to_png(72.0, Ink::Smooth).expect("png");
        let picture = image::load_from_memory(&png).expect("a picture");
        let pixels = |mm: f64| (mm * 72.0_f64 / 25.4).round() as u32;
        assert_eq!((picture.width(), picture.height()), (pixels(width), pixels(height)), "{paper:?}");
    }
}
