//! The columns of a hose list, in the order they are written. Any order is read.

/// Name of a column as it stands in the first row.
macro_rules! columns {
    ($($name:ident = $text:literal,)*) => {
        $(pub(super) const $name: &str = $text;)*
        /// All columns.
        pub(super) const ALL: &[&str] = &[$($text),*];
    };
}

columns! {
    SITE = "site",
    MACHINE = "machine",
    KIND = "kind",
    MACHINE_HOURS = "machine_hours",
    PLACE = "place",
    PLACE_NAME = "place_name",
    LINE = "line",
    RELIEF = "relief_bar",
    WORKING = "working_pressure_bar",
    FLUID = "fluid",
    CODE = "code",
    STANDARD = "standard",
    TYPE = "type",
    DN = "dn",
    COVER = "cover",
    A_FAMILY = "a_family",
    A_SIZE = "a_size",
    A_GENDER = "a_gender",
    A_FORM = "a_form",
    B_FAMILY = "b_family",
    B_SIZE = "b_size",
    B_GENDER = "b_gender",
    B_FORM = "b_form",
    LENGTH = "length_mm",
    TURN = "turn_deg",
    HOSE_MADE = "hose_made",
    ASSEMBLED = "assembled",
    FITTED = "fitted",
    FITTED_HOURS = "fitted_hours",
    REMOVED = "removed",
    REMOVED_HOURS = "removed_hours",
    CAUSE = "cause",
    NOTE = "note",
}
