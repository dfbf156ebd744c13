//! Rules, signs and stakes in words.

use hosewright_core::care::{Rule, RuleAt, Whose};
use hosewright_core::record::{PolicyOf, Scope};
use hosewright_words::Words;

/// Says why a rule is the one that holds, and whose it is.
pub(super) fn word(words: &Words, rule: &mut Rule) {
    rule.why = match (rule.whose, &rule.scope) {
        (Whose::Yours, Some(scope)) => {
            rule.source = words.say("care-yours", &[]);
            words.say("care-why-yours", &[("where", &holds(words, scope, rule.of))])
        }
        _ => words.say("care-why-guide", &[("id", &rule.id.clone().unwrap_or_default())]),
    };
}

/// The same for all that holds at a spot.
pub(super) fn word_all(words: &Words, at: &mut RuleAt) {
    let held = at.years.iter_mut().chain(&mut at.hours).chain(&mut at.guide).chain(&mut at.over);
    held.for_each(|held| word(words, &mut held.rule));
}

/// Where a policy holds, and for which hoses.
pub(super) fn holds(words: &Words, scope: &Scope, of: PolicyOf) -> String {
    let scope = match scope {
        Scope::Fleet => "care-scope-fleet",
        Scope::Site(_) => "care-scope-site",
        Scope::Machine(_) => "care-scope-machine",
        Scope::Place(_) => "care-scope-place",
    };
    let line = of.line.map(|line| words.say(&format!("lives-line-{}", line.name()), &[]));
    let demand = of.demand.map(|demand| words.say(&format!("care-demand-{}", demand.name()), &[]));
    [Some(words.say(scope, &[])), line, demand].into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// What was seen; a sign that the tables do not have as a cause of failure, or as it is written.
pub(super) fn sign(words: &Words, code: &str) -> String {
    let ids = [format!("sign-{code}"), format!("cause-{code}")];
    ids.iter().find(|id| words.has(id)).map_or_else(|| code.to_owned(), |id| words.say(id, &[]))
}
