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
    /// Types whose pressures changed under one mark.
    Editions => "editions",
    /// Pressure classes of the standard that marks pressure as a class.
    PressureClasses => "pressure_classes",
    /// Threaded and plain ends.
    Ends => "ends",
    /// Flanges.
    Flanges => "flanges",
    /// Ratings of ends as hose ends.
    HoseEndRatings => "hose_end_ratings",
    /// What each half of a family looks like.
    Families => "families",
    /// Tightening values.
    Torques => "assembly_torques",
    /// Pairs of ends that start on each other and must not.
    Lookalikes => "lookalikes",
    /// Types of two standards that can be exchanged.
    Interchange => "interchange",
    /// Causes of failure.
    FailureCauses => "failure_causes",
    /// What is seen at inspections.
    InspectionSigns => "inspection_signs",
    /// What a failure puts at risk.
    Stakes => "stakes",
    /// Cautions by step.
    Cautions => "cautions",
    /// Facts of crimping.
    CrimpFacts => "crimp_facts",
    /// How hoses are marked.
    MarkingRules => "marking_rules",
    /// Classes of fluid.
    FluidClasses => "fluid_classes",
    /// Fluid against tube material.
    Fluids => "fluids",
    /// Fluids and lines that are refused.
    OutOfScope => "out_of_scope",
    /// Tolerances of overall length.
    LengthTolerances => "length_tolerances",
    /// Tolerances of the turn between elbows.
    TurnTolerances => "turn_tolerances",
    /// Squareness of the cut.
    CutTolerances => "cut_tolerances",
    /// Speeds of oil.
    OilSpeeds => "oil_speeds",
    /// Ages.
    Ages => "ages",
    /// Rules with one value.
    Limits => "limits",
    /// How readings go wrong.
    ReadingTerms => "reading_terms",
    /// What readings cost.
    Efforts => "efforts",
    /// Sizes of hose and end that go together.
    SizeSteps => "size_steps",
    /// Where families of ends are met.
    Origins => "origins",
    /// Names people use for families of ends.
    FamilyAliases => "family_aliases",
    /// Names people use for hose standards and types.
    HoseAliases => "hose_aliases",
    /// Sizes that are one size under two numbers.
    DnAliases => "dn_aliases",
    /// Names people use for fluids.
    FluidAliases => "fluid_aliases",
}
