//! The file read by icalendar and by vobject, its repetitions by python-dateutil.

use super::{awkward, today};
use crate::harness::Tally;
use serde_json::{Value, json};
use std::io::Write as _;
use std::process::{Command, Stdio};
use winterseam::calendar::{Event, Repeat, file};

/// What the script says of each event, by both parsers.
fn read(text: &str) -> Vec<Value> {
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/icalendar_files.py");
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let mut child = Command::new(python)
        .arg(script)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("Python");
    child.stdin.take().expect("a pipe").write_all(text.as_bytes()).expect("written");
    let output = child.wait_with_output().expect("an end");
    assert!(output.status.success(), "a parser refuses the file");
    let lines = String::from_utf8(output.stdout).expect("UTF-8");
    lines.lines().map(|line| serde_json::from_str(line).expect("a line of JSON")).collect()
}

/// Line ends as one kind, other controls gone: all that the standard lets through.
fn as_sent(text: &str) -> String {
    let text = text.replace("\r\n", "\n").replace('\r', "\n");
    text.chars().filter(|c| !c.is_control() || matches!(c, '\n' | '\t')).collect()
}

/// The first six days of an event, counted here by month and year.
fn days(event: &Event) -> Vec<String> {
    let Some(repeat) = event.repeat else { return vec![event.date.to_string()] };
    let months = match repeat {
        Repeat::Monthly { every } => i32::from(every.max(1)),
        Repeat::Yearly => 12,
    };
    let start = repeat.start(event.date);
    let later = |n: i32| start.saturating_add(jiff::Span::new().months(n * months)).to_string();
    (0..6).map(later).collect()
}

/// Hours from the start of the day to each alarm.
fn alarms(event: &Event) -> Vec<i32> {
    let first = 9 - 24 * i32::from(event.alarm_days_before);
    let second = event.second_alarm_days_after.map(|days| 9 + 24 * i32::from(days));
    std::iter::once(first).chain(second).collect()
}

#[test]
fn two_parsers_read_every_event_as_it_was_meant() {
    let events = awkward();
    let seen = read(&file(today(), &events).expect("events"));
    assert_eq!(seen.len(), 2 * events.len(), "each event by each parser");
    let mut tally = Tally::default();
    for seen in &seen {
        let uid = seen["uid"].as_str().expect("a name");
        let event = events.iter().find(|event| event.uid == uid).expect("one of ours");
        let meant = [
            ("title", json!(as_sent(&event.title))),
            ("detail", json!(as_sent(&event.detail))),
            ("days", json!(days(event))),
            ("alarm_hours", json!(alarms(event))),
            ("stamp", json!("2026-11-25T00:00:00+00:00")),
            ("transparent", json!(true)),
        ];
        for (column, ours) in meant {
            let parser = &seen["parser"];
            assert_eq!(seen[column], ours, "{parser} {uid} {column}");
            tally.note(uid, column, (1.0, 1.0), true, None);
        }
    }
    tally.report("calendar/parsers");
}
