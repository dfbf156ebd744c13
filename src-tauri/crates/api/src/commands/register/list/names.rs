//! What the columns of a list are called in messages.

use hosewright_core::hose_list::Column;
use hosewright_core::sheet::Sheet;
use hosewright_words::Words;

/// The name of each column: as the list heads it or, where it has none, what people call it.
pub(super) struct Names(pub(super) Vec<String>);

impl Names {
    /// Those of a list.
    pub(super) fn of(sheet: &Sheet<'_, Column>, words: &Words) -> Self {
        let name = |column: &Column| {
            let heading = sheet.heading(*column).unwrap_or_default();
            let heading = heading.split_whitespace().collect::<Vec<_>>().join(" ");
            if heading.is_empty() { plain(*column, words) } else { heading }
        };
        Self(Column::ALL.iter().map(name).collect())
    }

    /// The name of that column.
    pub(super) fn of_column(&self, column: Column) -> &str {
        let at = Column::ALL.iter().position(|one| *one == column);
        at.and_then(|at| self.0.get(at)).map_or(column.name(), String::as_str)
    }
}

fn plain(column: Column, words: &Words) -> String {
    words.say(&format!("list-column-{}", column.name().replace('_', "-")), &[])
}
