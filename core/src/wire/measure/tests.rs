//! What people write beside a tape, and what they do not.

use super::measure;

fn value(text: &str, unit: &str) -> Option<f64> {
    measure(text, unit).ok().map(|measured| measured.value)
}

#[test]
fn a_tape_is_read_in_every_way_that_people_write_it() {
    let cases = [
        ("3/8", 0.375),
        ("⅜", 0.375),
        ("3⁄8", 0.375),
        ("1 1/4", 1.25),
        ("1-1/4", 1.25),
        ("1 - 1/4", 1.25),
        ("1¼", 1.25),
        ("1 ¼\"", 1.25),
        ("1 1/4\"", 1.25),
        ("1 1/4 in.", 1.25),
        ("1 1/4 pulgadas", 1.25),
        ("0.375", 0.375),
        (".375", 0.375),
        ("0,375", 0.375),
        ("12,5", 12.5),
        ("36", 36.0),
        (" 36 ", 36.0),
        ("3 ft 2 in", 38.0),
        ("3' 2\"", 38.0),
        ("3'2\"", 38.0),
        ("3’ 2½”", 38.5),
        ("5' 2", 62.0),
        ("3 pies", 36.0),
        ("10 cm", 10.0 / 2.54),
        ("9 mm", 9.0 / 25.4),
        ("2.54cm", 1.0),
    ];
    for (text, inches) in cases {
        assert_eq!(value(text, "in"), Some(inches), "{text}");
    }
}

#[test]
fn every_asked_unit_reads_its_own_and_its_neighbours() {
    let cases = [
        ("14", "ft", 14.0),
        ("14 ft 6 in", "ft", 14.5),
        ("120", "f", 120.0),
        ("120F", "f", 120.0),
        ("120 °F", "f", 120.0),
        ("120°", "f", 120.0),
        ("48C", "f", 118.4),
        ("48 °C", "f", 118.4),
        ("48 ° C", "f", 118.4),
        ("48 degrees C", "f", 118.4),
        ("-5", "f", -5.0),
        ("−40 °C", "f", -40.0),
        ("12 s", "s", 12.0),
        ("2 min", "s", 120.0),
        ("2 min 30 s", "s", 150.0),
        ("90", "days", 90.0),
        ("6 weeks", "days", 42.0),
        ("3 meses", "days", 90.0),
        ("$2.60", "usd", 2.6),
        ("$ 2,60", "usd", 2.6),
        ("2.60 dólares", "usd", 2.6),
        ("7 W/ft", "w_per_ft", 7.0),
        ("10 W/m", "w_per_ft", 3.048),
    ];
    for (text, unit, expected) in cases {
        assert_eq!(value(text, unit), Some(expected), "{text} as {unit}");
    }
}

#[test]
fn what_could_mean_two_things_or_nothing_is_refused() {
    let cases = [
        ("", "in"),
        ("wide", "in"),
        ("1,250", "usd"),
        ("1,250.50", "usd"),
        ("1.2.3", "in"),
        ("3/0", "in"),
        ("1 5/4", "in"),
        ("1 2", "in"),
        ("5 in 2", "in"),
        ("2 in 3 ft", "in"),
        ("3 ft 2 ft", "in"),
        ("-3", "in"),
        ("1e3", "in"),
        ("NaN", "in"),
        ("inf", "in"),
        ("48 °C", "in"),
        ("3 in", "f"),
        ("$3", "in"),
        ("2.60/gal", "usd"),
        ("-5 $", "usd"),
        ("99999999999", "in"),
        ("٣", "in"),
    ];
    for (text, unit) in cases {
        assert_eq!(value(text, unit), None, "{text} as {unit}");
    }
}

#[test]
fn an_unknown_unit_is_told_from_a_bad_reading() {
    assert_eq!(measure("3", "furlong").unwrap_err().path, "unit");
    assert_eq!(measure("three", "in").unwrap_err().path, "text");
}
