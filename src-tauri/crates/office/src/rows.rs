//! The rows of the tables: those that are no longer as the register has them are replaced, the others are not touched.

use crate::OfficeError;
use hosewright_store::{Cell, FlatTable, Moment};
use postgres::Transaction;
use std::io::Write;

/// As much text as is given to the database at once.
const AT_ONCE: usize = 1 << 16;

/// What was changed.
#[derive(Default)]
pub(crate) struct Replaced {
    pub written: u64,
    pub removed: u64,
}

/// Makes every table that of the register.
pub(crate) fn replace(tx: &mut Transaction<'_>, moment: &Moment<'_>) -> Result<Replaced, OfficeError> {
    let mut replaced = Replaced::default();
    for table in FlatTable::ALL {
        let name = table.name();
        let columns = moment.columns(table)?.join(", ");
        tx.batch_execute(&format!("CREATE TEMP TABLE incoming (LIKE hosewright.{name}) ON COMMIT DROP"))?;
        send(tx, moment, table, &columns)?;
        tx.batch_execute("ANALYZE incoming")?;
        // Rows are held against each other whole, so that one rule does for tables with a key and without.
        replaced.removed += tx.execute(
            &format!(
                "DELETE FROM hosewright.{name} AS row_had WHERE NOT EXISTS
                 (SELECT FROM incoming AS row_came WHERE row_came::text = row_had::text)"
            ),
            &[],
        )?;
        replaced.written += tx.execute(
            &format!(
                "INSERT INTO hosewright.{name} SELECT * FROM incoming AS row_came WHERE NOT EXISTS
                 (SELECT FROM hosewright.{name} AS row_had WHERE row_had::text = row_came::text)"
            ),
            &[],
        )?;
        tx.batch_execute("DROP TABLE incoming")?;
    }
    Ok(replaced)
}

/// Sends the register's rows of a table.
fn send(
    tx: &mut Transaction<'_>,
    moment: &Moment<'_>,
    table: FlatTable,
    columns: &str,
) -> Result<(), OfficeError> {
    let mut to = tx.copy_in(&format!("COPY incoming ({columns}) FROM STDIN"))?;
    let mut text = String::new();
    moment.each(table, |cells| {
        line(cells, &mut text);
        if text.len() > AT_ONCE {
            to.write_all(text.as_bytes())?;
            text.clear();
        }
        Ok::<_, OfficeError>(())
    })?;
    to.write_all(text.as_bytes())?;
    to.finish()?;
    Ok(())
}

/// Writes a row as COPY reads it (PostgreSQL, "COPY", text format).
pub(crate) fn line(cells: &[Cell<'_>], text: &mut String) {
    for (column, cell) in cells.iter().enumerate() {
        if column > 0 {
            text.push('\t');
        }
        match cell {
            None => text.push_str("\\N"),
            Some(value) => escaped(value, text),
        }
    }
    text.push('\n');
}

fn escaped(value: &str, text: &mut String) {
    for letter in value.chars() {
        match letter {
            '\\' => text.push_str("\\\\"),
            '\t' => text.push_str("\\t"),
            '\n' => text.push_str("\\n"),
            '\r' => text.push_str("\\r"),
            other => text.push(other),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_would_end_a_cell_or_a_row_is_escaped() {
        let mut text = String::new();
        line(&[Some("a\tb\\N\r\n".into()), None, Some("".into())], &mut text);
        assert_eq!(text, "a\\tb\\\\N\\r\\n\t\\N\t\n");
    }
}
