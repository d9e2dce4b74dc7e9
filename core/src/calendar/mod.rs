//! Reminders as an iCalendar file (RFC 5545).
//!
//! Events last all day and float: the same date wherever the phone is. They never mark a day as
//! busy. An alarm rings at nine in the morning. Titles are read by whoever holds the phone, so
//! the caller puts nothing about a person or an illness in them.

mod line;

use jiff::civil::Date;
use line::{Lines, escaped};

/// The hour of the day at which an alarm rings.
const ALARM_HOUR: u32 = 9;

/// The last day that every month has. RFC 5545 3.3.10 skips dates that do not exist, so a rule
/// on the 31st would ring in seven months of twelve.
const LAST_DAY_OF_ALL_MONTHS: i8 = 28;

/// One reminder.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Event {
    /// Name that stays the same from file to file, so that a second import replaces the first;
    /// see [`uid`].
    pub uid: String,
    /// The day; a repeated one starts on [`Repeat::start`].
    pub date: Date,
    /// What the calendar shows.
    pub title: String,
    /// What is read after a tap on it.
    pub detail: String,
    /// How it comes again.
    pub repeat: Option<Repeat>,
    /// Days from the alarm to the day itself; 0 rings on the day.
    pub alarm_days_before: u16,
    /// A second alarm, this many days after the day itself.
    pub second_alarm_days_after: Option<u16>,
}

/// How a reminder comes again, for ever.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Repeat {
    /// Every so many months; 0 counts as 1.
    Monthly {
        /// Months from one to the next.
        every: u8,
    },
    /// Every year.
    Yearly,
}

impl Repeat {
    /// The first day of the repetition: the same day, or the 28th where a later day would be
    /// missing in some months, or in years that are not leap years.
    ///
    /// ```
    /// use jiff::civil::date;
    /// use winterseam::calendar::Repeat;
    ///
    /// assert_eq!(Repeat::Monthly { every: 2 }.start(date(2026, 8, 31)), date(2026, 8, 28));
    /// assert_eq!(Repeat::Yearly.start(date(2026, 8, 31)), date(2026, 8, 31));
    /// assert_eq!(Repeat::Yearly.start(date(2028, 2, 29)), date(2028, 2, 28));
    /// ```
    #[must_use]
    pub fn start(self, date: Date) -> Date {
        let missing_somewhere = match self {
            Self::Monthly { .. } => date.day() > LAST_DAY_OF_ALL_MONTHS,
            Self::Yearly => (date.month(), date.day()) == (2, 29),
        };
        let moved = date.with().day(LAST_DAY_OF_ALL_MONTHS).build();
        if missing_somewhere { moved.unwrap_or(date) } else { date }
    }

    /// The value of the RRULE property. Interval 1 is the default and not written.
    #[must_use]
    pub fn rule(self) -> String {
        match self {
            Self::Monthly { every: 0 | 1 } => "FREQ=MONTHLY".to_owned(),
            Self::Monthly { every } => format!("FREQ=MONTHLY;INTERVAL={every}"),
            Self::Yearly => "FREQ=YEARLY".to_owned(),
        }
    }
}

/// The name of an event: the same for the same reminder and day. It ends in a domain that nobody
/// can own (RFC 2606), because no server stands behind it.
///
/// ```
/// use jiff::civil::date;
///
/// let uid = winterseam::calendar::uid("cable_on", date(2026, 9, 12));
/// assert_eq!(uid, "cable_on-2026-09-12@winterseam.invalid");
/// ```
#[must_use]
pub fn uid(key: &str, date: Date) -> String {
    format!("{key}-{date}@winterseam.invalid")
}

/// The text of a calendar file; `None` without an event, because a calendar without one is none
/// (RFC 5545 3.6).
///
/// The crate knows no clock: the time stamp of every event is the start of `today`, the day of
/// the walk, in UTC. The same walk gives the same file.
///
/// ```
/// use jiff::civil::date;
/// use winterseam::calendar::{Event, Repeat, file, uid};
///
/// let day = date(2026, 12, 1);
/// let filter = Event {
///     uid: uid("filter", day),
///     date: day,
///     title: "Change the furnace filter".to_owned(),
///     detail: "Size is on the edge of the old one.".to_owned(),
///     repeat: Some(Repeat::Monthly { every: 2 }),
///     alarm_days_before: 1,
///     second_alarm_days_after: None,
/// };
/// let text = file(date(2026, 11, 25), &[filter]).unwrap();
/// assert!(text.contains("\r\nRRULE:FREQ=MONTHLY;INTERVAL=2\r\n"));
/// ```
#[must_use]
pub fn file(today: Date, events: &[Event]) -> Option<String> {
    if events.is_empty() {
        return None;
    }
    let mut lines = Lines::default();
    lines.add("BEGIN:VCALENDAR");
    lines.add("VERSION:2.0");
    lines.add("PRODID:-//Winterseam//Reminders//EN");
    let stamp = format!("{}T000000Z", digits(today));
    for event in events {
        add_event(&mut lines, &stamp, event);
    }
    lines.add("END:VCALENDAR");
    Some(lines.text())
}

fn add_event(lines: &mut Lines, stamp: &str, event: &Event) {
    let start = event.repeat.map_or(event.date, |repeat| repeat.start(event.date));
    lines.add("BEGIN:VEVENT");
    lines.add(&format!("UID:{}", escaped(&event.uid)));
    lines.add(&format!("DTSTAMP:{stamp}"));
    lines.add(&format!("DTSTART;VALUE=DATE:{}", digits(start)));
    lines.add(&format!("SUMMARY:{}", escaped(&event.title)));
    lines.add(&format!("DESCRIPTION:{}", escaped(&event.detail)));
    if let Some(repeat) = event.repeat {
        lines.add(&format!("RRULE:{}", repeat.rule()));
    }
    lines.add("TRANSP:TRANSPARENT");
    add_alarm(lines, &before(event.alarm_days_before), &event.title);
    if let Some(days) = event.second_alarm_days_after {
        add_alarm(lines, &after(days), &event.title);
    }
    lines.add("END:VEVENT");
}

fn add_alarm(lines: &mut Lines, trigger: &str, title: &str) {
    lines.add("BEGIN:VALARM");
    lines.add("ACTION:DISPLAY");
    lines.add(&format!("TRIGGER:{trigger}"));
    lines.add(&format!("DESCRIPTION:{}", escaped(title)));
    lines.add("END:VALARM");
}

/// From the start of the day to the alarm hour some days before it.
fn before(days: u16) -> String {
    match u32::from(days) {
        0 => after(0),
        1 => format!("-PT{}H", 24 - ALARM_HOUR),
        days => format!("-P{}DT{}H", days - 1, 24 - ALARM_HOUR),
    }
}

/// From the start of the day to the alarm hour some days after it.
fn after(days: u16) -> String {
    if days == 0 { format!("PT{ALARM_HOUR}H") } else { format!("P{days}DT{ALARM_HOUR}H") }
}

/// A date as RFC 5545 writes it.
fn digits(date: Date) -> String {
    format!("{:04}{:02}{:02}", date.year(), date.month(), date.day())
}
