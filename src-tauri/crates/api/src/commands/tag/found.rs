//! What is said of a tag, in words.

use chrono::NaiveDate;
use hosewright_core::check::Verdict;
use hosewright_core::tag::TagFindingCode;
use hosewright_store::PlaceAt;
use hosewright_words::Words;
use schemars::JsonSchema;
use serde::Serialize;
use ts_rs::TS;

/// Something that is said of a tag.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema, TS)]
pub struct TagFinding {
    /// What.
    pub code: TagFindingCode,
    /// How grave it is.
    pub verdict: Verdict,
    /// What was found.
    pub why: String,
    /// What to do.
    pub cure: String,
}

/// What words about a tag may name.
#[derive(Debug, Default)]
pub(super) struct Place {
    /// Where the hose sits.
    pub(super) at: Option<PlaceAt>,
    /// Why its tag was withdrawn.
    pub(super) reason: Option<String>,
    /// When it came off its last machine.
    pub(super) off: Option<NaiveDate>,
    /// Why it failed there.
    pub(super) cause: Option<String>,
    /// What is wrong with the text.
    pub(super) problem: Option<String>,
    /// It is a code alone: there is no spec on it to go by.
    pub(super) alone: bool,
}

/// A finding in words.
pub(super) fn worded(words: &Words, code: TagFindingCode, about: &Place) -> TagFinding {
    let id = format!("tag-found-{}", crate::key(&code));
    let at = about.at.as_ref().map(place_words).unwrap_or_default();
    let [reason, problem, cause] =
        [&about.reason, &about.problem, &about.cause].map(|text| text.clone().unwrap_or_default());
    let day = about.off.map_or_else(|| words.say("tag-day-not-known", &[]), |day| day.to_string());
    let values: [(&str, &dyn hosewright_words::Say); 5] =
        [("at", &at), ("reason", &reason), ("problem", &problem), ("day", &day), ("cause", &cause)];
    let unknown_alone = about.alone && code == TagFindingCode::NotKnown;
    TagFinding {
        code,
        verdict: code.verdict(),
        why: words.say(&id, &values),
        cure: words.say(&format!("{id}-{}", if unknown_alone { "alone-cure" } else { "cure" }), &values),
    }
}

/// Site, machine, number and name of a place, as far as they are known.
fn place_words(at: &PlaceAt) -> String {
    let number = at.number.map(|number| number.to_string());
    let parts = [at.site_name.clone(), at.machine_name.clone(), number, at.place_name.clone()];
    parts.into_iter().flatten().collect::<Vec<_>>().join(", ")
}
