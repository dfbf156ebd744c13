//! What falls due, as a calendar that other programs take in (iCalendar, RFC 5545).

use chrono::{DateTime, NaiveDate, Utc};
use icalendar::{Calendar, Component, Event, EventLike};

/// Something due on a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Due {
    /// What is due and why, the same each time it is written: `7KQ4M-2XR9D-D age`. A calendar that
    /// takes the file in again moves the entry it has instead of adding one.
    pub key: String,
    /// The day it stands on. What is overdue is looked for today, not on the day it fell due.
    pub on: NaiveDate,
    /// Where the hose is opened.
    pub link: String,
    /// What is due, in a few words.
    pub summary: String,
    /// More about it.
    pub description: String,
}

/// The calendar of all that is due, written at that time.
pub fn write(due: &[Due], at: DateTime<Utc>) -> String {
    let mut calendar = Calendar::empty();
    calendar.append_property(("VERSION", "2.0"));
    calendar.append_property(("PRODID", "-//hosewright//due//EN"));
    calendar.append_property(("CALSCALE", "GREGORIAN"));
    for due in due {
        let mut event = Event::new();
        event
            .uid(&format!("{}@hosewright", due.key.split_whitespace().collect::<Vec<_>>().join("-")))
            .timestamp(at)
            .all_day(due.on)
            .url(&due.link)
            .summary(&due.summary);
        if !due.description.is_empty() {
            event.description(&due.description);
        }
        calendar.push(event.done());
    }
    calendar.to_string()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_due_keeps_its_identity() {
        let due = Due {
            key: "7KQ4M-2XR9D-D age".to_owned(),
            on: NaiveDate::from_ymd_opt(2032, 11, 1).unwrap(),
            link: "hosewright:7KQ4M-2XR9D-D".to_owned(),
            summary: "Change hose; stick cylinder, rod side".to_owned(),
            description: String::new(),
        };
        let at = |seconds| DateTime::from_timestamp(seconds, 0).unwrap();
        let text = write(std::slice::from_ref(&due), at(1_795_000_000));
        assert!(text.starts_with("BEGIN:VCALENDAR\r\n") && text.ends_with("END:VCALENDAR\r\n"), "{text}");
        assert!(text.contains("\r\nUID:7KQ4M-2XR9D-D-age@hosewright\r\n"), "{text}");
        assert!(text.contains("\r\nDTSTART;VALUE=DATE:20321101\r\n"), "{text}");
        assert!(text.contains("\r\nURL:hosewright:7KQ4M-2XR9D-D\r\n"), "{text}");
        assert!(text.contains("Change hose\\; stick cylinder\\, rod side"), "{text}");
        let again = write(&[due], at(1_796_000_000));
        let uid = |text: &str| text.lines().find(|line| line.starts_with("UID")).map(str::to_owned);
        assert_eq!(uid(&text), uid(&again));
        assert_eq!(
            text,
            text.replace("\r\n", "\n").replace('\n', "\r\n"),
            "every line ends as RFC 5545 has it"
        );
    }
}
