//! Rules of RFC 5545, each with its section.

use super::{awkward, event, today};
use crate::harness::Table;
use jiff::civil::date;
use winterseam::calendar::{Event, Repeat, file};

fn text(events: &[Event]) -> String {
    file(today(), events).expect("events")
}

/// Lines as they stand in the file, without their ends.
fn raw(text: &str) -> Vec<&str> {
    text.strip_suffix("\r\n").expect("the last line is ended").split("\r\n").collect()
}

/// Lines put together again (3.1).
fn unfolded(text: &str) -> Vec<String> {
    raw(&text.replace("\r\n ", "")).into_iter().map(str::to_owned).collect()
}

/// Name of the property of a line.
fn name(line: &str) -> &str {
    &line[..line.find([':', ';']).expect("a content line has a colon")]
}

/// Names of the properties of each component of a kind, without those of components inside it.
fn components(lines: &[String], kind: &str) -> Vec<Vec<String>> {
    let mut open: Vec<(String, Vec<String>)> = Vec::new();
    let mut found = Vec::new();
    for line in lines {
        if let Some(begun) = line.strip_prefix("BEGIN:") {
            open.push((begun.to_owned(), Vec::new()));
        } else if let Some(ended) = line.strip_prefix("END:") {
            let (begun, names) = open.pop().expect("an end has a beginning");
            assert_eq!(begun, ended, "components nest");
            if begun == kind {
                found.push(names);
            }
        } else {
            open.last_mut().expect("a property is in a component").1.push(name(line).to_owned());
        }
    }
    assert!(open.is_empty(), "every component is ended");
    found
}

/// The value of the only line that starts so.
fn value(text: &str, start: &str) -> String {
    let lines = unfolded(text);
    let values: Vec<_> = lines.iter().filter_map(|line| line.strip_prefix(start)).collect();
    assert_eq!(values.len(), 1, "{start} stands once");
    values[0].to_owned()
}

#[test]
fn lines_end_with_crlf_and_nothing_else_breaks_a_line() {
    // 3.1; controls other than tab have no place in a TEXT (3.3.11).
    for line in raw(&text(&awkward())) {
        assert!(!line.chars().any(|c| c.is_control() && c != '\t'), "{line:?}");
        assert!(!line.is_empty());
    }
}

#[test]
fn no_line_is_longer_than_75_octets() {
    // 3.1
    let text = text(&awkward());
    assert!(raw(&text).iter().all(|line| line.len() <= 75));
    assert!(raw(&text).iter().any(|line| line.starts_with(' ')), "something was folded");
}

#[test]
fn long_lines_fold_where_the_standard_folds_them() {
    Table::read("calendar/rfc5545-folding").compare(|row| {
        let times: usize = row.text("times").parse().expect("a count");
        let long = row.text("letter").repeat(times);
        let (title, detail) = match row.text("property") {
            "SUMMARY" => (long.as_str(), ""),
            _ => ("", long.as_str()),
        };
        let text = text(&[event("fold", today(), title, detail)]);
        let start = format!("{}:{}", row.text("property"), row.text("letter"));
        let lines = raw(&text);
        let at = lines.iter().position(|line| line.starts_with(&start)).expect("the property");
        let octets = |at: usize| f64::from(u32::try_from(lines[at].len()).expect("short"));
        assert!(!lines[at + 2].starts_with(' '), "two lines are enough");
        vec![("first", octets(at)), ("second", octets(at + 1))]
    });
}

#[test]
fn texts_are_escaped_and_nothing_else_is() {
    // 3.3.11: backslash, semicolon, comma, line end; never a colon.
    let text = text(&[event("escape", today(), "a,b;c\\d\ne", "10:30")]);
    let summary = unfolded(&text).into_iter().find(|line| line.starts_with("SUMMARY:"));
    assert_eq!(summary.as_deref(), Some(r"SUMMARY:a\,b\;c\\d\ne"));
    assert!(text.contains("DESCRIPTION:10:30\r\n"));
}

#[test]
fn every_component_has_what_it_must_have_once() {
    // 3.6, 3.6.1, 3.6.6; DTEND and DURATION are left out: one day.
    let lines = unfolded(&text(&awkward()));
    let once = |kind: &str, count: usize, needed: &[&str]| {
        let found = components(&lines, kind);
        assert_eq!(found.len(), count, "{kind}");
        for names in found {
            for name in needed {
                assert_eq!(names.iter().filter(|n| n == name).count(), 1, "{name} in {kind}");
            }
            assert!(!names.iter().any(|n| n == "DTEND" || n == "DURATION"));
        }
    };
    once("VCALENDAR", 1, &["VERSION", "PRODID"]);
    once("VEVENT", 5, &["UID", "DTSTAMP", "DTSTART", "SUMMARY", "TRANSP"]);
    once("VALARM", 6, &["ACTION", "TRIGGER", "DESCRIPTION"]);
}

#[test]
fn names_of_events_differ_and_stay() {
    // 3.8.4.7
    let uids = |text: String| -> Vec<String> {
        unfolded(&text).into_iter().filter(|line| line.starts_with("UID:")).collect()
    };
    let first = uids(text(&awkward()));
    let different: std::collections::BTreeSet<_> = first.iter().collect();
    assert_eq!(different.len(), first.len());
    assert_eq!(first, uids(file(date(2026, 11, 26), &awkward()).expect("events")));
}

#[test]
fn the_time_stamp_is_the_day_of_the_walk_in_utc() {
    // 3.8.7.2: UTC, hence the Z.
    let text = text(&[event("stamp", date(2027, 4, 2), "t", "d")]);
    assert_eq!(value(&text, "DTSTAMP:"), "20261125T000000Z");
    assert_eq!(value(&text, "DTSTART;VALUE=DATE:"), "20270402");
}

#[test]
fn a_repeated_reminder_never_starts_on_a_day_that_some_months_lack() {
    // 3.3.10: a date that does not exist is skipped, not moved.
    let start = |day, repeat| {
        let event = Event { repeat: Some(repeat), ..event("r", day, "t", "d") };
        value(&text(&[event]), "DTSTART;VALUE=DATE:")
    };
    assert_eq!(start(date(2026, 12, 30), Repeat::Monthly { every: 2 }), "20261228");
    assert_eq!(start(date(2026, 12, 28), Repeat::Monthly { every: 2 }), "20261228");
    assert_eq!(start(date(2028, 2, 29), Repeat::Yearly), "20280228");
    assert_eq!(start(date(2027, 10, 31), Repeat::Yearly), "20271031");
}

#[test]
fn a_calendar_without_events_is_none() {
    // 3.6: at least one component.
    assert_eq!(file(today(), &[]), None);
}
