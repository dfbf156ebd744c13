//! What a column of a hose list can be.

use crate::sheet::{self, Holds, Unit};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use ts_rs::TS;

/// Name, words and cells of each column, in the order they are written. Any order is read.
macro_rules! columns {
    ($($(#[$doc:meta])* $column:ident = $name:literal, $holds:ident, [$($words:literal),*];)*) => {
        /// What a column of a hose list is.
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema, TS,
        )]
        #[ts(rename = "ListColumn")]
        pub enum Column {
            $($(#[$doc])* #[serde(rename = $name)] $column,)*
        }

        impl Column {
            /// All of them, in the order they are written.
            pub const ALL: &'static [Self] = &[$(Self::$column),*];

            /// Its name in the contract, in messages and in the first row of a list that is written.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$column => $name,)* }
            }
        }

        impl sheet::Column for Column {
            const ALL: &'static [Self] = Column::ALL;
            const BARE_LENGTH: Option<Unit> = None;

            fn missing(present: &[Self]) -> Vec<Self> {
                missing(present)
            }

            fn name(self) -> &'static str {
                self.name()
            }

            fn words(self) -> &'static [&'static str] {
                match self { $(Self::$column => &[$($words),*],)* }
            }

            fn holds(self) -> Holds {
                match self { $(Self::$column => Holds::$holds,)* }
            }
        }
    };
}

columns! {
    /// Where the machine works.
    Site = "site", Text, ["site", "location", "yard", "plant", "standort", "werk", "baustelle", "ort", "obra", "sitio",
        "planta", "ubicación", "ubicacion"];
    /// What people call the machine.
    Machine = "machine", Text, ["machine", "machine name", "equipment", "asset", "maschine", "gerät", "máquina", "maquina",
        "equipo"];
    /// What the machine is.
    Kind = "kind", Text, ["kind", "machine kind", "machine type", "kind of machine", "maschinenart", "maschinentyp", "art",
        "tipo de máquina", "tipo de maquina", "clase"];
    /// Its hours now.
    MachineHours = "machine_hours", Number, ["machine hours", "hour meter", "operating hours", "betriebsstunden",
        "maschinenstunden", "horas de máquina", "horas de maquina", "horómetro"];
    /// Number of the place.
    Place = "place", Text, ["place", "place no", "place number", "pos", "position", "position no", "platz", "stelle",
        "posición", "posicion", "lugar"];
    /// What people call the place.
    PlaceName = "place_name", Text, ["place name", "description", "designation", "function", "bezeichnung", "benennung",
        "beschreibung", "descripción", "descripcion", "función"];
    /// The line it is on.
    Line = "line", Text, ["line", "kind of line", "leitung", "leitungsart", "línea", "linea"];
    /// Relief setting of the place.
    Relief = "relief_bar", Pressure, ["relief", "relief pressure", "relief setting", "relief valve", "druckbegrenzung",
        "dbv", "presión de alivio", "alivio"];
    /// Working pressure of the place.
    Working = "working_pressure_bar", Pressure, ["working pressure", "operating pressure", "pressure", "betriebsdruck",
        "arbeitsdruck", "druck", "presión de trabajo", "presión", "presion"];
    /// The fluid.
    Fluid = "fluid", Text, ["fluid", "oil", "medium", "öl", "flüssigkeit", "fluido", "aceite"];
    /// Code of the tag.
    Code = "code", Text, ["code", "tag", "tag code", "kennung", "etikett", "código", "codigo", "etiqueta"];
    /// What the hose is, as its print says it: standard, type and size together.
    Hose = "hose", Text, ["hose", "hose print", "hose description", "marking", "schlauch", "aufdruck", "kennzeichnung",
        "manguera", "marcado"];
    /// The hose's standard.
    Standard = "standard", Text, ["standard", "norm", "norma"];
    /// Its type.
    Type = "type", Text, ["type", "hose type", "typ", "schlauchtyp", "tipo", "tipo de manguera"];
    /// Its size.
    Dn = "dn", Text, ["dn", "size", "hose size", "dash", "dash size", "nominal size", "nennweite", "nw",
        "diámetro nominal", "diametro nominal"];
    /// Duty of its cover.
    Cover = "cover", Text, ["cover", "außenschicht", "decke", "cubierta"];
    /// Family of end A; with its size in the same cell where that has no column.
    AFamily = "a_family", Text, ["a family", "end a", "fitting a", "connection a", "anschluss a", "armatur a", "extremo a",
        "conexión a", "racor a"];
    /// Its size.
    ASize = "a_size", Text, ["a size", "size a", "end a size", "thread a", "fitting a size", "größe a", "gewinde a",
        "tamaño a", "rosca a"];
    /// Male or female.
    AGender = "a_gender", Text, ["a gender", "gender a", "end a gender", "geschlecht a", "género a"];
    /// Straight or how it is bent.
    AForm = "a_form", Text, ["a form", "form a", "end a form", "bend a", "bogen a", "forma a"];
    /// Family of end B; with its size in the same cell where that has no column.
    BFamily = "b_family", Text, ["b family", "end b", "fitting b", "connection b", "anschluss b", "armatur b", "extremo b",
        "conexión b", "racor b"];
    /// Its size.
    BSize = "b_size", Text, ["b size", "size b", "end b size", "thread b", "fitting b size", "größe b", "gewinde b",
        "tamaño b", "rosca b"];
    /// Male or female.
    BGender = "b_gender", Text, ["b gender", "gender b", "end b gender", "geschlecht b", "género b"];
    /// Straight or how it is bent.
    BForm = "b_form", Text, ["b form", "form b", "end b form", "bend b", "bogen b", "forma b"];
    /// Overall length.
    Length = "length_mm", Length, ["length", "overall length", "total length", "länge", "gesamtlänge", "longitud",
        "longitud total", "largo"];
    /// Turn from A to B.
    Turn = "turn_deg", Text, ["turn", "angle", "orientation", "verdrehwinkel", "winkel", "giro", "ángulo"];
    /// When the hose was made.
    HoseMade = "hose_made", Day, ["hose made", "hose date", "manufactured", "date of manufacture", "manufacturing date",
        "herstelldatum", "herstellung", "fecha de fabricación", "fabricado"];
    /// When it was assembled.
    Assembled = "assembled", Day, ["assembled", "assembly date", "date assembled", "konfektioniert", "ensamblado",
        "fecha de ensamblaje"];
    /// When it was fitted.
    Fitted = "fitted", Day, ["fitted", "installed", "install date", "installation date", "date fitted", "date installed",
        "eingebaut", "einbaudatum", "einbau", "instalado", "montado", "fecha de montaje", "fecha de instalación"];
    /// The machine's hours on that day.
    FittedHours = "fitted_hours", Number, ["fitted hours", "hours fitted", "hours when fitted", "installed hours",
        "stunden bei einbau", "einbaustunden", "horas al montar"];
    /// When it came off.
    Removed = "removed", Day, ["removed", "taken off", "removal date", "date removed", "ausgebaut", "ausbaudatum", "ausbau",
        "retirado", "desmontado", "fecha de retiro"];
    /// The machine's hours on that day.
    RemovedHours = "removed_hours", Number, ["removed hours", "hours removed", "hours when removed", "stunden bei ausbau",
        "ausbaustunden", "horas al retirar"];
    /// Why it failed.
    Cause = "cause", Text, ["cause", "failure cause", "cause of failure", "reason", "ursache", "ausfallursache", "causa"];
    /// Words.
    Note = "note", Text, ["note", "notes", "remark", "remarks", "comment", "comments", "bemerkung", "bemerkungen", "notiz",
        "nota", "notas", "observaciones"];
}

/// What no row can be without: a place has a number or a name; a hose is one text, or standard, type and size; an end's
/// family may have its size behind it.
fn missing(present: &[Column]) -> Vec<Column> {
    let has = |column: Column| present.contains(&column);
    let mut needed = vec![Column::Site, Column::Machine];
    if !has(Column::PlaceName) {
        needed.push(Column::Place);
    }
    if !has(Column::Hose) {
        needed.extend([Column::Standard, Column::Type, Column::Dn]);
    }
    needed.extend([Column::AFamily, Column::BFamily, Column::Fitted]);
    needed.retain(|column| !has(*column));
    needed
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sheet::headings;
    use chrono::NaiveDate;
    use rstest::rstest;

    fn meant(heading: &str) -> Option<&'static str> {
        let cells = vec![vec![heading.to_owned()], vec!["1".to_owned()]];
        let found = headings::<Column>(&cells, Some(1), None, NaiveDate::MIN);
        found.columns[0].is.map(Column::name)
    }

    #[test]
    fn every_column_is_known_by_the_name_it_is_written_under() {
        for column in Column::ALL {
            assert_eq!(meant(column.name()), Some(column.name()));
        }
    }

    #[rstest]
    #[case("Standort", Some("site"))]
    #[case("M\u{e1}quina", Some("machine"))]
    #[case("Place no.", Some("place"))]
    #[case("Working pressure [psi]", Some("working_pressure_bar"))]
    #[case("Gesamtl\u{e4}nge (mm)", Some("length_mm"))]
    #[case("Fecha de montaje", Some("fitted"))]
    #[case("Date installed", Some("fitted"))]
    #[case("Hours fitted", Some("fitted_hours"))]
    #[case("End A size", Some("a_size"))]
    #[case("Hose", Some("hose"))]
    #[case("Price", None)]
    fn headings_are_known_in_three_languages(#[case] heading: &str, #[case] is: Option<&str>) {
        assert_eq!(meant(heading), is);
    }
}
