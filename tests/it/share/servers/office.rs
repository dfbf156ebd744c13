//! The office's copy in a real PostgreSQL.

use super::postgres::{PASSWORD, Postgres};
use chrono::DateTime;
use hosewright_core::record::{Body, DeviceId};
use hosewright_store::Register;
use hosewright_tests::van_events;
use serde_json::{Value, json};
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use tempfile::TempDir;

/// The command line, asked to keep a database.
pub fn office(register: &Path, address: &str) -> Command {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin("hosewright"));
    command
        .args(["--json", "office", "--db"])
        .arg(register)
        .args(["--to", address])
        .env("PGPASSWORD", PASSWORD);
    command
}

/// What it answers; its error where it fails. The password stands in neither.
pub fn kept(register: &Path, address: &str) -> Result<Value, String> {
    said(&office(register, address).output().expect("runs"))
}

fn said(output: &Output) -> Result<Value, String> {
    let text = |bytes| String::from_utf8_lossy(bytes).into_owned();
    let (out, error) = (text(&output.stdout), text(&output.stderr));
    assert!(!out.contains("sesame") && !error.contains("sesame"), "{out}{error}");
    if output.status.success() { Ok(serde_json::from_str(&out).expect("JSON")) } else { Err(error) }
}

/// A register with the machines of so many vans.
struct Filled {
    folder: TempDir,
}

impl Filled {
    fn new(vans: u32) -> Self {
        let filled = Self { folder: tempfile::tempdir().expect("a folder") };
        for van in 1..=vans {
            let mut bodies = vec![van_events::site(van)];
            bodies.extend(van_events::machine(van, 0));
            filled.write(bodies);
        }
        filled
    }

    fn path(&self) -> PathBuf {
        self.folder.path().join("office.db")
    }

    fn write(&self, bodies: Vec<Body>) {
        let mut register = Register::open(self.path(), DeviceId::from_bytes([1; 16])).expect("opens");
        register.append(bodies, DateTime::UNIX_EPOCH).expect("is written");
    }
}

#[test]
#[ignore = "needs PostgreSQL: tests/vans/run installs and starts it"]
fn a_planners_own_tools_find_what_sits_where_and_what_failed() {
    let (postgres, filled) = (Postgres::start(), Filled::new(2));
    postgres.database("plan");
    let address = Postgres::address("plan", postgres.server.port);
    let first = kept(&filled.path(), &address).expect("kept");
    assert_eq!((&first["came"], &first["events"], &first["removed"]), (&json!(518), &json!(518), &json!(0)));
    let ask = |sql| postgres.ask("plan", sql);
    assert_eq!(ask("SELECT count(*), min(type), max(dn) FROM hosewright.fitted"), "40|2SN|16");
    assert_eq!(
        ask("SELECT count(*), min(cause), min(days_fitted) > 365 FROM hosewright.failures"),
        "60|ABR|t"
    );
    assert_eq!(
        ask("SELECT DISTINCT site, machine FROM hosewright.due_list WHERE machine IS NOT NULL ORDER BY 1"),
        "Quarry 1|Excavator 10000\nQuarry 2|Excavator 20000"
    );
    assert_eq!(ask("SELECT count(*), max(grade) FROM hosewright.inspection_list"), "100|pass");
    assert_eq!(ask("SELECT count(*), count(DISTINCT code) FROM hosewright.ends"), "200|100");
    // Nothing new: nothing is touched.
    let again = kept(&filled.path(), &address).expect("kept");
    assert_eq!((&again["came"], &again["written"], &again["removed"]), (&json!(0), &json!(0), &json!(0)));
    // One place renamed: the rows of that place alone.
    let mut place = van_events::machine(1, 0)
        .into_iter()
        .find_map(|body| if let Body::PlaceSet(place) = body { Some(place) } else { None })
        .expect("a place");
    place.name = "Renamed".to_owned();
    filled.write(vec![Body::PlaceSet(place)]);
    let renamed = kept(&filled.path(), &address).expect("kept");
    assert_eq!(
        (&renamed["came"], &renamed["written"], &renamed["removed"]),
        (&json!(1), &json!(1), &json!(1))
    );
    assert_eq!(ask("SELECT count(*) FROM hosewright.fitted WHERE place = 'Renamed'"), "1");
}

#[test]
#[ignore = "needs PostgreSQL: tests/vans/run installs and starts it"]
fn whatever_people_write_goes_over() {
    let (postgres, filled) = (Postgres::start(), Filled::new(1));
    let (id, long) = ("09".repeat(16), "ä\\ \u{0}\t\r\n'\"".repeat(400));
    let thing = json!({"kind": "end", "family": &long[..1200], "size": "\u{0}", "dn": 16});
    let odd = [
        json!({"kind": "site-named", "site": id, "name": long}),
        json!({"kind": "machine-set", "machine": id, "site": id, "name": long, "sort": "\\N"}),
        json!({"kind": "hours-read", "machine": id, "hours": 1e-320, "date": "+262142-12-31"}),
        json!({"kind": "hours-read", "machine": id, "hours": 1e300, "date": "-262143-01-01"}),
        json!({"kind": "hours-read", "machine": id, "hours": 1, "date": "0000-01-01"}),
        json!({"kind": "stock-changed", "store": long, "item": "\t\u{0}".repeat(400), "unit": "pieces", "difference": i64::MAX}),
        json!({"kind": "stock-changed", "store": "b", "item": thing, "unit": "pieces", "difference": i64::MIN, "bin": long}),
        json!({"kind": "noted", "about": {"site": id}, "text": "\\."}),
    ];
    filled.write(odd.into_iter().map(|body| serde_json::from_value(body).expect("a body")).collect());
    postgres.database("odd");
    let address = Postgres::address("odd", postgres.server.port);
    assert_eq!(kept(&filled.path(), &address).expect("kept")["came"], json!(267));
    assert_eq!(kept(&filled.path(), &address).expect("kept")["written"], json!(0));
    let ask = |sql| postgres.ask("odd", sql);
    assert_eq!(ask("SELECT count(*), count(read_on) FROM hosewright.hours WHERE machine LIKE '09%'"), "3|0");
    assert_eq!(ask("SELECT length(name) FROM hosewright.sites WHERE site LIKE '09%'"), "3600");
    assert_eq!(ask("SELECT sum(quantity) FROM hosewright.stock_list"), "-1");
}

#[test]
#[ignore = "needs PostgreSQL: tests/vans/run installs and starts it"]
fn a_database_is_never_taken_back_and_never_mixed() {
    let (postgres, filled, other) = (Postgres::start(), Filled::new(2), Filled::new(1));
    postgres.database("plan");
    let address = Postgres::address("plan", postgres.server.port);
    kept(&filled.path(), &address).expect("kept");
    let before = postgres.dump("plan");
    // One that lacks what the database has, and then one that wrote something else as the same device.
    let behind = kept(&other.path(), &address).expect_err("kept");
    assert!(behind.contains("that this register lacks"), "{behind}");
    other.write(vec![van_events::site(7); 300]);
    let mixed = kept(&other.path(), &address).expect_err("kept");
    assert!(mixed.contains("another register"), "{mixed}");
    assert_eq!(postgres.dump("plan"), before);
    postgres.ask("plan", "UPDATE hosewright.copied SET migration = 99");
    let newer = kept(&filled.path(), &address).expect_err("kept");
    assert!(newer.contains("newer program"), "{newer}");
    let refused = office(&filled.path(), &address).env("PGPASSWORD", "sesame?").output().expect("runs");
    let refused = said(&refused).expect_err("let in");
    assert!(refused.contains("refuses"), "{refused}");
}

#[test]
#[ignore = "needs PostgreSQL: tests/vans/run installs and starts it"]
fn the_way_to_the_database_is_encrypted_and_its_server_is_known() {
    let postgres = Postgres::start_with(|folder| {
        for name in ["own", "stranger"] {
            certificate(folder, name);
        }
        let file = |name: &str| folder.join(name).display().to_string();
        vec![
            "ssl=on".to_owned(),
            format!("ssl_cert_file={}", file("own.crt")),
            format!("ssl_key_file={}", file("own.key")),
        ]
    });
    let filled = Filled::new(1);
    postgres.database("plan");
    let address = format!("{}?sslmode=require", Postgres::address("plan", postgres.server.port));
    let address = address.replace("127.0.0.1", "localhost");
    let trusting = |name: &str| {
        let file = postgres.folder().join(format!("{name}.crt"));
        said(&office(&filled.path(), &address).env("SSL_CERT_FILE", file).output().expect("runs"))
    };
    assert_eq!(trusting("own").expect("kept")["came"], json!(259));
    let stranger = trusting("stranger").expect_err("a stranger's certificate was taken");
    assert!(stranger.to_lowercase().contains("certificate"), "{stranger}");
}

/// A certificate of `localhost` by an authority of its own.
fn certificate(folder: &Path, name: &str) {
    let made = Command::new("openssl")
        .current_dir(folder)
        .args(["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=localhost"])
        .args(["-addext", "subjectAltName=DNS:localhost", "-addext", "basicConstraints=critical,CA:FALSE"])
        .args(["-keyout", &format!("{name}.key"), "-out", &format!("{name}.crt")])
        .output()
        .expect("openssl runs");
    assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
}
