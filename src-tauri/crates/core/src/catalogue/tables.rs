//! The files of the catalogue.

macro_rules! tables {
    ($($(#[$doc:meta])* $name:ident => $file:literal,)*) => {
        /// A file of the catalogue.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Table {
            $($(#[$doc])* $name,)*
        }

        impl Table {
            /// Every table.
            pub const ALL: &[Table] = &[$(Table::$name,)*];

            /// The file's name.
            pub const fn file(self) -> &'static str {
                match self { $(Table::$name => concat!($file, ".csv"),)* }
            }

            /// The text that is built into the program.
            pub const fn embedded(self) -> &'static str {
                match self { $(Table::$name => include_str!(concat!("../../data/", $file, ".csv")),)* }
            }
        }
    };
}

tables! {
    /// What the labels in the columns `source` and `note` stand for.
    Sources => "sources",
    /// Sizes of hose types.
    Hoses => "hoses",
    /// Hose types.
    HoseTypes => "hose_types",
    /// Pressure classes of the standard that marks pressure as a class.
    PressureClasses => "pressure_classes",
    /// Threaded and plain ends.
    Ends => "ends",
    /// Flanges.
    Flanges => "flanges",
    /// Ratings of ends as hose ends.
    HoseEndRatings => "hose_end_ratings",
}
