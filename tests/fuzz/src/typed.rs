//! What people type.

use hosewright_core::catalogue::Catalogue;
use hosewright_core::print as printing;
use hosewright_core::quantity::{Bar, Celsius, Degrees, Dn, LitresPerMinute, Metres, Millimetres, Reading};
use hosewright_core::stock::money::{parse, written};

/// Quantities.
pub(crate) fn quantity(bytes: &[u8]) {
    let Some(text) = crate::text(bytes) else { return };
    let _ = text.parse::<Millimetres>();
    let _ = text.parse::<Metres>();
    let _ = text.parse::<Bar>();
    let _ = text.parse::<Celsius>();
    let _ = text.parse::<Degrees>();
    let _ = text.parse::<LitresPerMinute>();
    let _ = text.parse::<Reading>();
    let _ = text.parse::<Dn>();
}

/// What stands on a cover.
pub(crate) fn print(bytes: &[u8]) {
    if let Some(text) = crate::text(bytes) {
        let _ = printing::read(Catalogue::embedded(), text);
    }
}

/// Prices: what is read is written and read again as the same.
pub(crate) fn money(bytes: &[u8]) {
    let Some(text) = crate::text(bytes) else { return };
    for digits in 0..=4 {
        if let Ok(minor) = parse(text, digits) {
            assert_eq!(parse(&written(minor, digits), digits), Ok(minor));
        }
    }
}
