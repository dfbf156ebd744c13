//! What the print and the readings of a hose say differently, in words.

use crate::sheet::key;
use hosewright_core::find::{Contradicted, Contradiction, Stated};
use hosewright_words::{Say, Words};

/// Both sides, and what to do.
pub(super) fn contradicted(found: &Contradiction, words: &Words) -> String {
    let side = |stated: Option<Stated>| -> Box<dyn Say> {
        match (found.code, stated) {
            (_, None) => Box::new(String::new()),
            (Contradicted::Layers, Some(Stated::Number(count))) => Box::new(count),
            (Contradicted::Pressure, Some(Stated::Number(bar))) => Box::new(words.quantity(bar, "bar")),
            (_, Some(Stated::Number(mm))) => Box::new(words.quantity(mm, "mm")),
            (_, Some(Stated::Reinforcement(kind))) => {
                Box::new(words.say(&format!("seen-{}", key(&kind)), &[]))
            }
            (_, Some(Stated::Cover(cover))) => Box::new(words.say(&format!("seen-{}", key(&cover)), &[])),
        }
    };
    let (printed, measured) = (side(found.printed), side(found.measured));
    words.say(
        &format!("contradicted-{}", key(&found.code)),
        &[("named", &found.named), ("printed", printed.as_ref()), ("measured", measured.as_ref())],
    )
}
