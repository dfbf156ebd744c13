//! How the register goes about questions: by an index, never through all of a big table.

use super::fleet::{self, begin, machine, site, write};
use hosewright_core::care::DueFor;
use hosewright_store::DueAsk;
use rusqlite::Connection;

/// The steps that read a whole table or sort, of those that are big.
fn whole(plan: &[String]) -> Vec<&String> {
    plan.iter()
        .filter(|step| step.starts_with("SCAN") && !step.contains("INDEX") && !step.contains("VIRTUAL TABLE"))
        .collect()
}

#[test]
fn a_page_of_what_falls_due_is_read_in_order_from_an_index() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let page = DueAsk { limit: Some(50), ..DueAsk::default() };
    for ask in [
        page.clone(),
        DueAsk { what: vec![DueFor::Service], ..page.clone() },
        DueAsk { site: Some(site(1)), ..page.clone() },
        DueAsk { machine: Some(machine(1)), ..page.clone() },
        DueAsk { until: Some(fleet::day("2026-11-25")), ..page },
    ] {
        let plan = kept.register.due_plan(fleet::day("2026-11-25"), &ask).expect("a plan");
        assert!(whole(&plan).is_empty(), "{ask:?} reads a whole table: {plan:?}");
        assert!(!plan.iter().any(|step| step.contains("TEMP B-TREE")), "{ask:?} sorts all first: {plan:?}");
    }
}

#[test]
fn a_search_goes_by_the_index_of_words() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let plan = kept.register.search_plan().expect("a plan");
    let tables = whole(&plan).into_iter().filter(|step| *step != "SCAN w").collect::<Vec<_>>();
    assert!(tables.is_empty(), "{plan:?}");
    assert!(plan.iter().any(|step| step.contains("VIRTUAL TABLE INDEX")), "{plan:?}");
}

/// The questions that open a hose and a place, as they stand beside their modules.
#[test]
fn a_hose_and_a_place_are_found_by_their_keys() {
    let mut kept = begin(1);
    write(&mut kept, fleet::fleet());
    let db = Connection::open(kept.path()).expect("opens");
    let question = |name: &str| {
        let path = format!("{}/../src-tauri/crates/store/src/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read_to_string(path).expect("the question is there")
    };
    for (name, condition) in [
        ("query/written.sql", ""),
        ("query/stay.sql", "WHERE s.code = ?1"),
        ("query/stay.sql", "WHERE s.place = ?1"),
        ("query/place.sql", ""),
        ("query/hose_inspections.sql", ""),
        ("derive/facts.sql", "WHERE h.code = ?1"),
        ("derive/stands.sql", ""),
        ("derive/readings.sql", ""),
    ] {
        let sql = format!("EXPLAIN QUERY PLAN {} {condition}", question(name));
        let mut statement = db.prepare(&sql).expect("prepares");
        let values = vec!["[]"; statement.parameter_count()];
        let plan: Vec<String> = statement
            .query_map(rusqlite::params_from_iter(values), |row| row.get("detail"))
            .expect("a plan")
            .collect::<Result<_, _>>()
            .expect("a plan");
        let big =
            ["event", "track", "link", "assembly", "stint", "hose", "due", "place", "inspection", "hours"];
        let scanned = whole(&plan).into_iter().filter(|step| {
            let table = step.split_whitespace().nth(1).unwrap_or_default();
            big.contains(&table) || ["e", "t", "l", "a", "s", "h", "d", "p", "i"].contains(&table)
        });
        assert_eq!(scanned.collect::<Vec<_>>(), Vec::<&String>::new(), "{name}: {plan:?}");
    }
}
