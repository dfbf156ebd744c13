//! A reading that does not go with the rest, in words.

use hosewright_core::find::Stray;
use hosewright_words::Words;

/// What was read, what would go with it, and what to do.
pub(super) fn said(stray: &Stray, words: &Words) -> String {
    let unit = if stray.reading.ends_with("_deg") { "deg" } else { "mm" };
    let reading = words.say(&format!("find-key-{}", stray.reading.replace('_', "-")), &[]);
    let read = words.quantity(stray.read, unit);
    let Some((least, most)) = stray.least.zip(stray.most) else {
        return words.say("stray-absent", &[("reading", &reading), ("read", &read), ("named", &stray.named)]);
    };
    let (from, to) = (words.quantity(least, unit), words.quantity(most, unit));
    let limits = if least == most {
        words.say("stray-limit", &[("limit", &from)])
    } else {
        words.say("stray-limits", &[("least", &from), ("most", &to)])
    };
    words
        .say("stray", &[("reading", &reading), ("read", &read), ("named", &stray.named), ("limits", &limits)])
}
