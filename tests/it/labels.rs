//! Labels on the user's stocks: what a camera reads of them, flat and round a hose; what would do where a stock does not;
//! reprints and batches.

use super::settings::answer;
use super::supplier::{begin, question};
use super::tag::{by_another_reader, by_sight, ordinary, printed, sure, words};
use hosewright_api::Api;
use hosewright_api::commands::Reply;
use hosewright_core::quantity::Millimetres;
use hosewright_core::tag::{
    self, LabelDirection, LabelForm, LabelHolds, LabelMaterial, LabelStock, Proof, TagContent, seen,
};
use hosewright_papers::{Fact, Label, LabelError, Op, Wanted, label};
use rstest::rstest;
use serde_json::{Value, json};
use std::f64::consts::PI;
use std::path::Path;
use std::process::Command;

/// The demo's stocks, of every form and of printers of 203, 300 and 600 dots an inch.
fn demo_stocks() -> Vec<LabelStock> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../demo/stocks.json");
    sure(serde_json::from_str(&sure(std::fs::read_to_string(file))))
}

fn stock(form: LabelForm, width_mm: f64, height_mm: f64, dpi: f64) -> LabelStock {
    let name = format!("{width_mm} x {height_mm}");
    LabelStock { name, width_mm, height_mm, dpi, material: LabelMaterial::Vinyl, form }
}

fn on(tag: &TagContent, stock: &LabelStock, od: f64) -> Result<Label, LabelError> {
    label(Wanted { tag, stock, cover_od_mm: Some(Millimetres(od)), reprint: false }, &words())
}

/// Diameters over the cover from the thinnest hose of the tables to a thick one.
const DIAMETERS: [f64; 6] = [11.0, 15.0, 20.0, 26.3, 38.0, 60.0];

fn code_of(label: &Label) -> (f64, f64, f64) {
    match label.drawing.ops.iter().find(|op| matches!(op, Op::Modules { .. })) {
        Some(Op::Modules { x, y, module, side, .. }) => (*x, *y, module * *side as f64),
        _ => panic!("no code"),
    }
}

/// Each stock of the demo at each printer and on hoses of every thickness: what is printed is read by an independent
/// reader (zbar) and ours, and what can not be printed is refused with what would do.
#[test]
fn a_label_on_every_stock_of_the_demo_is_read_by_an_independent_reader() {
    let (mut made, mut refused) = (0, 0);
    let mut held = Vec::new();
    for stock in demo_stocks() {
        for dpi in [203.0, 300.0, 600.0] {
            let stock = LabelStock { dpi, ..stock.clone() };
            for od in if stock.form == LabelForm::Wrap { &DIAMETERS[..] } else { &DIAMETERS[..1] } {
                match on(&ordinary(), &stock, *od) {
                    Ok(label) => {
                        let png = sure(label.to_png());
                        assert_eq!(by_another_reader(&png), label.text, "{} at {dpi} on {od}", stock.name);
                        assert_eq!(
                            by_sight(&png),
                            std::slice::from_ref(&label.text),
                            "{} at {dpi} on {od}",
                            stock.name
                        );
                        held.push(label.holds);
                        made += 1;
                    }
                    Err(LabelError::Curved { .. }) => refused += 1,
                    Err(other) => panic!("{} at {dpi} on {od}: {other}", stock.name),
                }
            }
        }
    }
    for holds in [LabelHolds::FullText, LabelHolds::CodeAlone, LabelHolds::CodeOnly] {
        assert!(held.contains(&holds), "{holds:?} is among them: {held:?}");
    }
    assert!(made >= 40 && refused >= 1, "{made} made, {refused} refused");
}

/// What a pinhole camera sees of a label round a hose, 150 mm from its cover, turned a little, a little blurred.
fn photographed(label: &Label, od: f64, turned: f64) -> Vec<u8> {
    const PIXELS_MM: f64 = 16.0;
    let picture = sure(image::load_from_memory(&sure(label.to_png()))).into_luma8();
    let (x, y, side) = code_of(label);
    let (radius, camera) = (od / 2.0, 150.0);
    let (middle_x, middle_y) = (x + side / 2.0, y + side / 2.0);
    let half = side * 0.9;
    let pixels = (2.0 * half * PIXELS_MM) as u32;
    let at = |across: f64, down: f64| {
        let (column, row) = (across * label.stock.dpi / 25.4, down * label.stock.dpi / 25.4);
        if column < 0.0
            || row < 0.0
            || column >= f64::from(picture.width())
            || row >= f64::from(picture.height())
        {
            return 255;
        }
        picture.get_pixel(column as u32, row as u32).0[0]
    };
    let photo = image::GrayImage::from_fn(pixels, pixels, |column, row| {
        let (u, v) = (f64::from(column) / PIXELS_MM - half, f64::from(row) / PIXELS_MM - half);
        let (u, v) = (u * turned.cos() - v * turned.sin(), u * turned.sin() + v * turned.cos());
        // The ray from the camera through (u, v) on the plane that touches the hose, to the cylinder along x.
        let (u, v) = (u / camera, v / camera);
        let (a, b, c) = (v * v + 1.0, -2.0 * (radius + camera), (radius + camera).powi(2) - radius * radius);
        let root = b * b - 4.0 * a * c;
        if root < 0.0 {
            return image::Luma([120]);
        }
        let far = (-b - root.sqrt()) / (2.0 * a);
        let around = (v * far).atan2(radius + camera - far) * radius;
        image::Luma([(f64::from(at(middle_x + u * far, middle_y + around)) * 0.7 + 40.0) as u8])
    });
    let mut png = std::io::Cursor::new(Vec::new());
    sure(image::imageops::blur(&photo, 1.2).write_to(&mut png, image::ImageFormat::Png));
    png.into_inner()
}

/// The code of a label that is stuck round a hose is no wider than a camera sees, and is read off it.
#[test]
fn a_code_round_a_hose_is_no_wider_than_a_camera_sees_and_is_read_off_it() {
    let mut read = 0;
    for dpi in [300.0, 600.0] {
        for od in DIAMETERS {
            let Ok(label) = on(&ordinary(), &stock(LabelForm::Wrap, 60.0, 50.0, dpi), od) else { continue };
            let curve = seen(Millimetres(od)).expect("a diameter");
            let (_, _, side) = code_of(&label);
            assert!(side <= curve.seen_mm(label.version).get() + 1e-9, "{od}: {side}");
            assert!((side - label.code_mm()).abs() < 1e-9);
            assert_ne!(label.level, 'L', "what corrects little is not bent");
            for turned in [0.0, 0.4, PI / 2.0] {
                let photo = photographed(&label, od, turned);
                assert_eq!(by_another_reader(&photo), label.text, "{od} mm at {dpi}, turned {turned}");
                read += 1;
            }
        }
    }
    assert!(read >= 27, "{read} were read");
}

/// Without the limit the code would be as large as the label, and nobody would read it.
#[test]
fn a_code_as_large_as_its_label_is_not_read_round_a_thin_hose() {
    let flat = sure(on(&ordinary(), &stock(LabelForm::Flag, 60.0, 50.0, 300.0), 15.0));
    assert_eq!(by_another_reader(&photographed(&flat, 15.0, 0.0)), "");
    assert_eq!(
        by_another_reader(&photographed(&flat, 900.0, 0.0)),
        flat.text,
        "it is the bend that hides it"
    );
}

#[test]
fn a_hose_too_thin_or_of_no_known_diameter_is_refused_with_what_would_do() {
    let wrap = stock(LabelForm::Wrap, 50.0, 25.0, 203.0);
    let thin = on(&ordinary(), &wrap, 11.0).expect_err("too thin");
    let LabelError::Curved { seen_mm, .. } = thin else { panic!("{thin}") };
    assert!((5.0..8.0).contains(&seen_mm) && thin.to_string().contains("flag or a plate"), "{thin}");
    assert!(on(&ordinary(), &LabelStock { form: LabelForm::Flag, ..wrap.clone() }, 11.0).is_ok());
    let unknown =
        label(Wanted { tag: &ordinary(), stock: &wrap, cover_od_mm: None, reprint: false }, &words());
    assert_eq!(unknown, Err(LabelError::NoDiameter));
    assert_eq!(on(&ordinary(), &wrap, f64::NAN), Err(LabelError::NoDiameter));
    let small = stock(LabelForm::Wrap, 12.0, 12.0, 600.0);
    assert!(matches!(on(&ordinary(), &small, 26.0), Err(LabelError::TooSmall { .. })));
}

/// Words run along the hose unless the label would cover itself so; what covers itself is printed on the end that lies outside.
#[rstest]
#[case(60.0, 50.0, 26.3, LabelDirection::Along, 0.0)]
#[case(25.0, 75.0, 26.3, LabelDirection::Along, 0.0)]
#[case(25.0, 75.0, 20.0, LabelDirection::Around, 0.0)]
#[case(90.0, 75.0, 20.0, LabelDirection::Along, 75.0 - PI * 20.0)]
fn a_wrap_lies_so_that_nothing_printed_is_covered(
    #[case] width: f64,
    #[case] height: f64,
    #[case] od: f64,
    #[case] direction: LabelDirection,
    #[case] covered: f64,
) {
    let label = sure(on(&ordinary(), &stock(LabelForm::Wrap, width, height, 600.0), od));
    let (curve, lies) = label.round.expect("it goes round");
    assert_eq!(lies, direction);
    assert!((curve.around_mm.get() - PI * od).abs() < 1e-9);
    let top = label.drawing.ops.iter().map(|op| match op {
        Op::Modules { y, .. } | Op::Rect { y, .. } => *y,
        // Capitals are 0.73 em high.
        Op::Text { y, size, .. } => y - 0.73 * size,
        Op::Line { points, .. } => points[0].1,
    });
    let top = top.fold(f64::INFINITY, f64::min);
    assert!(top >= covered - 0.1, "{top} of {covered}");
}

/// The code is printed large enough to type on every label that is made, and what warns is on it.
#[test]
fn the_code_can_be_typed_and_what_warns_stands_on_every_label() {
    let mut tag = ordinary();
    tag.proof = Proof::NoRig;
    let mut only = 0;
    for stock in demo_stocks() {
        for od in DIAMETERS {
            let Ok(label) = label(
                Wanted { tag: &tag, stock: &stock, cover_od_mm: Some(Millimetres(od)), reprint: true },
                &words(),
            ) else {
                continue;
            };
            let said = printed(&label);
            assert!(
                said.contains("NOT PROVED: no rig") && said.contains("REPRINT"),
                "{}: {said}",
                stock.name
            );
            let groups = tag.code.groups();
            let smallest = label.drawing.ops.iter().filter_map(|op| match op {
                Op::Text { size, text, .. }
                    if groups.iter().any(|group| text.contains(group.as_str()) && group.len() > 1) =>
                {
                    Some(*size)
                }
                _ => None,
            });
            // Letters of 3.2 mm em are 2.3 mm high.
            assert!(smallest.fold(f64::INFINITY, f64::min) >= 3.2, "{}", stock.name);
            if label.holds == LabelHolds::CodeOnly {
                only += 1;
                let warns = [Fact::NotProved, Fact::Duty, Fact::Reprint];
                assert!(!label.left_off.iter().any(|fact| warns.contains(fact)), "{:?}", label.left_off);
                assert!(label.left_off.contains(&Fact::End), "{:?}", label.left_off);
            } else {
                assert!(said.contains("EN 853 2SN DN16") && said.contains("250 bar"), "{said}");
            }
            let full = label.holds == LabelHolds::FullText;
            assert!(
                full || label.holds == LabelHolds::CodeOnly || said.contains("tables 5f0c1d2e"),
                "{said}"
            );
        }
    }
    assert!(only > 0, "some stock has room for the code alone");
}

#[track_caller]
fn ask(api: &mut Api, name: &str, input: Value) -> Value {
    answer(api, name, input).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn file(api: &mut Api, name: &str, input: Value) -> Vec<u8> {
    match api.call(name, input, &[]) {
        Ok(Reply::File(file)) => file.bytes,
        other => panic!("{name}: {other:?}"),
    }
}

fn kept(stock: &LabelStock) -> Value {
    serde_json::to_value(stock).expect("writes")
}

/// Hoses at the places of one machine, taken in from a list; the last has failed its proof.
fn fleet(api: &mut Api) -> (Value, Vec<Value>) {
    let list = "site,machine,place,standard,type,dn,a_family,a_size,b_family,b_size,length_mm,fitted,assembled\n\
                North,Loader 7,1,EN 853,2SN,16,JIC 37 flare,-10,ORFS,-10,1240,2015-03-01,2015-03-01\n\
                North,Loader 7,2,EN 853,2SN,12,JIC 37 flare,-8,JIC 37 flare,-8,900,2026-03-01,2026-03-01\n\
                North,Loader 7,3,EN 853,1SN,6,JIC 37 flare,-4,JIC 37 flare,-4,500,2026-03-01,2026-03-01\n";
    let asked = json!({"name": "list.csv", "dry_run": false});
    api.call("register.import", asked, list.as_bytes()).expect("taken in");
    let machine = ask(api, "register.overview", json!({}))["machines"][0]["machine"].clone();
    let machine = machine
        .get("machine")
        .cloned()
        .or_else(|| machine.pointer("/record/machine").cloned())
        .unwrap_or(machine);
    let sheet = ask(api, "register.machine", json!({"machine": machine}));
    let codes =
        sheet["places"].as_array().expect("places").iter().map(|place| place["hoses"][0]["code"].clone());
    (machine, codes.collect())
}

#[test]
fn a_batch_is_one_pdf_whose_every_label_is_read_and_a_second_one_says_reprint() {
    let (_folder, mut api) = begin();
    ask(&mut api, "fleet.begin", json!({"name": "Northern vans"}));
    let (machine, codes) = fleet(&mut api);
    let flag = stock(LabelForm::Flag, 60.0, 40.0, 300.0);
    let asked = json!({"of": {"machine": machine}, "stock": kept(&flag), "paper": "a4"});
    let plan = ask(&mut api, "tag.batch", asked.clone());
    assert_eq!((&plan["made"], &plan["pages"], &plan["reprints"]), (&json!(3), &json!(1), &json!(0)));
    assert_eq!(plan, ask(&mut api, "tag.batch", asked.clone()), "asking prints nothing");

    let pdf = file(&mut api, "tag.batch.paper", asked.clone());
    let mut read: Vec<String> = pages(&pdf, 300).iter().flat_map(|page| read_all(page)).collect();
    assert_eq!(read.len(), 3, "{read:?}");
    read.sort();
    let mut wanted: Vec<String> = codes
        .iter()
        .map(|code| {
            ask(&mut api, "tag.of", json!({"code": code}))["text"].as_str().expect("a text").to_owned()
        })
        .collect();
    wanted.sort();
    assert_eq!(read, wanted, "the tags say what the record says, under the codes they have, and are sealed");
    assert!(read.iter().all(|text| text.contains("\nSEAL ")));

    let again = ask(&mut api, "tag.batch", asked.clone());
    assert_eq!((&again["reprints"], &again["labels"][0]["reprint"]), (&json!(3), &json!(true)));
    let pdf = file(&mut api, "tag.batch.paper", asked);
    let said = text_of(&pdf);
    assert_eq!(said.matches("REPRINT").count(), 3, "{said}");
    for (paper, page_count) in [("letter", 1), ("one-each", 3)] {
        let pdf = file(
            &mut api,
            "tag.batch.paper",
            json!({"of": {"codes": codes}, "stock": kept(&flag), "paper": paper}),
        );
        assert_eq!(pages(&pdf, 100).len(), page_count, "{paper}");
    }
    let history = ask(&mut api, "register.show", json!({"code": codes[0]}))["history"].to_string();
    assert_eq!(history.matches("\"labelled\"").count(), 4, "each print is on record");
}

#[test]
fn a_batch_says_of_which_hose_no_label_can_be_made_and_why() {
    let (_folder, mut api) = begin();
    let (machine, codes) = fleet(&mut api);
    let withdrawn = json!({"kind": "tag-withdrawn", "code": codes[1], "reason": "Tag lost"});
    ask(&mut api, "register.record", json!({"events": [{"body": withdrawn}]}));
    let wrap = stock(LabelForm::Wrap, 50.0, 25.0, 203.0);
    let asked = json!({"of": {"machine": machine}, "stock": kept(&wrap), "paper": "one-each"});
    let plan = ask(&mut api, "tag.batch", asked);
    let why = |at: usize| plan["labels"][at]["refused"].as_str().unwrap_or_default().to_owned();
    assert_eq!((plan["made"].as_u64(), why(0)), (Some(1), String::new()));
    assert!(why(1).contains("Tag lost"), "{}", why(1));
    assert!(why(2).contains("a camera sees"), "DN 6 is too thin at 203 dots an inch: {}", why(2));
    assert_eq!(plan["labels"][0]["od_from"], "reckoned", "nobody measured over its cover");

    let due =
        ask(&mut api, "tag.batch", json!({"of": {"due": "2026-09-21"}, "stock": kept(&wrap), "paper": "a4"}));
    let due: Vec<&Value> =
        due["labels"].as_array().expect("labels").iter().map(|label| &label["code"]).collect();
    assert_eq!(due, [&codes[0]], "what is due, each hose once");
    let none =
        answer(&mut api, "tag.batch", json!({"of": {"codes": []}, "stock": kept(&wrap), "paper": "a4"}));
    assert!(none.is_err());
    let all_refused = json!({"of": {"codes": [codes[1]]}, "stock": kept(&wrap), "paper": "a4"});
    assert!(
        api.call("tag.batch.paper", all_refused, &[])
            .expect_err("nothing to print")
            .message
            .contains("Tag lost")
    );
}

#[test]
fn a_stock_that_does_not_do_names_those_of_the_user_that_would() {
    let (_folder, mut api) = begin();
    ask(
        &mut api,
        "settings.write",
        json!({"label_stocks": demo_stocks().iter().map(kept).collect::<Vec<_>>()}),
    );
    let tag = ask(&mut api, "tag.make", json!({"question": question()}))["tag"].clone();
    let small = kept(&stock(LabelForm::Plate, 15.0, 12.0, 203.0));
    let asked = json!({"tag": tag, "stock": small, "as": "svg"});
    let preview = ask(&mut api, "tag.preview", asked.clone());
    let refused = &preview["refused"];
    assert_eq!((&preview["label"], &refused["case"]), (&Value::Null, &json!("too-small")));
    let names: Vec<String> = demo_stocks().into_iter().map(|stock| stock.name).collect();
    assert_eq!(refused["would_do"], json!(names), "the hose's diameter is in the tables");
    assert!(refused["instead"].as_str().expect("words").contains(&names[0]));
    let error = api.call("tag.label", asked, &[]).expect_err("no label");
    assert!(error.message.contains(&names[0]), "{error}");

    let drawn = ask(
        &mut api,
        "tag.preview",
        json!({"tag": tag, "stock": kept(&demo_stocks()[2]), "as": "svg"}),
    )["label"]
        .clone();
    let curve = &drawn["curve"];
    assert_eq!((&curve["od_from"], &curve["direction"]), (&json!("reckoned"), &json!("along")));
    let od = curve["cover_od_mm"].as_f64().expect("a diameter");
    assert!((od - 0.86 * 26.3).abs() < 1e-9, "EN 853 2SN DN16 is 26.3 mm at most: {od}");
    let doubt = curve["doubt"].as_str().expect("what nobody measured is said");
    assert!(doubt.contains("Nobody measured") && doubt.contains("0.86"), "{doubt}");
    let given = ask(
        &mut api,
        "tag.preview",
        json!({"tag": tag, "stock": kept(&demo_stocks()[2]), "cover_od_mm": 40, "as": "svg"}),
    )["label"]
        .clone();
    assert_eq!((&given["curve"]["od_from"], &given["curve"]["doubt"]), (&json!("given"), &Value::Null));
    assert!(given["code_mm"].as_f64() > drawn["code_mm"].as_f64(), "a thicker hose shows more");
}

/// The pages of a PDF as pictures.
fn pages(pdf: &[u8], dpi: u32) -> Vec<Vec<u8>> {
    let folder = sure(tempfile::tempdir());
    let file = folder.path().join("labels.pdf");
    sure(std::fs::write(&file, pdf));
    let shown = Command::new("pdftoppm")
        .args(["-r", &dpi.to_string(), "-png"])
        .arg(&file)
        .arg(folder.path().join("page"))
        .output();
    let shown = shown.unwrap_or_else(|error| panic!("pdftoppm is needed and did not start: {error}"));
    assert!(shown.status.success(), "{}", String::from_utf8_lossy(&shown.stderr));
    let mut pictures: Vec<_> = sure(std::fs::read_dir(folder.path()))
        .map(|entry| sure(entry).path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "png"))
        .collect();
    pictures.sort();
    pictures.iter().map(|path| sure(std::fs::read(path))).collect()
}

fn text_of(pdf: &[u8]) -> String {
    let file = sure(tempfile::Builder::new().suffix(".pdf").tempfile());
    sure(std::fs::write(file.path(), pdf));
    let text = Command::new("pdftotext").arg(file.path()).arg("-").output();
    String::from_utf8(
        text.unwrap_or_else(|error| panic!("pdftotext is needed and did not start: {error}")).stdout,
    )
    .expect("text")
}

/// Every tag that an independent reader finds on a page.
fn read_all(png: &[u8]) -> Vec<String> {
    let text = by_another_reader(png);
    let mut tags: Vec<String> = Vec::new();
    for line in text.lines() {
        match tags.last_mut() {
            Some(tag) if !line.starts_with("HOSE TAG ") => *tag += &format!("\n{line}"),
            _ => tags.push(line.to_owned()),
        }
    }
    assert!(tags.iter().all(|text| tag::read(text).is_ok()), "{tags:?}");
    tags
}
