//! The calendar file: own conformance rules, because parsers accept what phones refuse, and two
//! independent parsers.

mod rfc5545;

#[cfg(feature = "peers")]
mod parsers;

use jiff::civil::date;
use winterseam::calendar::{Event, Repeat, uid};

/// The day of the walk.
fn today() -> jiff::civil::Date {
    date(2026, 11, 25)
}

fn event(key: &str, day: jiff::civil::Date, title: &str, detail: &str) -> Event {
    Event {
        uid: uid(key, day),
        date: day,
        title: title.to_owned(),
        detail: detail.to_owned(),
        repeat: None,
        alarm_days_before: 0,
        second_alarm_days_after: None,
    }
}

/// Reminders of every kind, with everything awkward that a title or a label may hold.
fn awkward() -> Vec<Event> {
    let filter = Event {
        repeat: Some(Repeat::Monthly { every: 2 }),
        alarm_days_before: 1,
        ..event("filter", date(2026, 12, 31), "Change the furnace filter", "Size: 16×20×1")
    };
    let plug_in = Event {
        repeat: Some(Repeat::Yearly),
        alarm_days_before: 3,
        second_alarm_days_after: Some(7),
        ..event("cable_on", date(2027, 9, 12), "Enchufe el cable calefactor (heat tape)", LONG)
    };
    let leap = Event {
        repeat: Some(Repeat::Yearly),
        ..event("leap", date(2028, 2, 29), "Look; listen, smell \\ feel", "one\ntwo\r\nthree\rfour")
    };
    let smuggler = event(
        "smuggler",
        date(2027, 3, 1),
        "Gap\r\nBEGIN:VALARM\r\nACTION:EMAIL",
        "label: \u{7}\u{0}🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪🚪 ünder the dôor,\tleft",
    );
    let empty = event("empty", date(2027, 1, 1), "", "");
    vec![filter, plug_in, leap, smuggler, empty]
}

const LONG: &str = "Antes de la primera helada: revise que el cable esté seco, sin grietas y sin \
    quemaduras. Si está dañado, no lo enchufe; llame a una persona calificada. Después ponga la \
    mano en el enchufe: si está caliente, desenchúfelo.";
