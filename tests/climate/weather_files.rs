//! Weather files of other makers: every hour as pvlib's readers give it, on the files that packages
//! carry.

use crate::harness::{Table, Tally};
use serde_json::Value;
use std::process::Command;
use uom::si::length::meter;
use uom::si::velocity::meter_per_second;
use winterseam::climate::{Repair, WeatherFile, Year};
use winterseam::units::{celsius, fahrenheit, warmer_by};

/// Both read the same decimals. Ours goes to kelvin and back, and 273.15 moves the last bits.
const SAME_DECIMAL: f64 = 1e-10;

fn files() -> Vec<Value> {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/weather_files.py");
    let output = Command::new(python).arg(script).output().expect("Python runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let text = String::from_utf8(output.stdout).expect("text");
    text.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect()
}

fn read(file: &Value) -> WeatherFile {
    let text = file["text"].as_str().expect("a text");
    let read = if file["format"] == "epw" {
        WeatherFile::from_epw(text)
    } else {
        WeatherFile::from_tmy3(text)
    };
    read.unwrap_or_else(|why| panic!("{}: {why}", file["id"]))
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

#[test]
fn every_hour_is_that_of_pvlib() {
    let mut tally = Tally::default();
    let files = files();
    assert!(files.len() >= 5, "only {} files", files.len());
    for file in &files {
        let (ours, id) = (read(file), file["id"].as_str().expect("a name"));
        let only_capped = |r: &Repair| matches!(r, Repair::DewAboveAir { .. });
        assert!(ours.repairs.iter().all(only_capped), "{id}: {:?}", ours.repairs);
        let mut note = |what: &str, pair: (f64, f64)| {
            tally.note(id, what, pair, (pair.0 - pair.1).abs() <= SAME_DECIMAL, None);
        };
        note("latitude", (ours.latitude, number(&file["latitude"])));
        note("elevation", (ours.elevation.get::<meter>(), number(&file["elevation_m"])));
        for (at, hour) in ours.year.hours().enumerate() {
            let theirs = |what: &str| number(&file[what][at]);
            let c = |t| warmer_by(t, celsius(0.0)).value;
            note("air_c", (c(hour.air), theirs("air_c")));
            // We hold the dew point to the air and say so in the list of repairs.
            note("dew_point_c", (c(hour.dew_point), theirs("dew_point_c").min(theirs("air_c"))));
            note("wind_m_s", (hour.wind.get::<meter_per_second>(), theirs("wind_m_s")));
        }
        assert_eq!(file["air_c"].as_array().map(Vec::len), Some(Year::HOURS), "{id}");
    }
    tally.report("climate/weather-files");
}

#[test]
fn hours_below_a_limit_and_percentiles_are_those_counted_in_the_files() {
    let files = files();
    Table::read("climate/pvlib__counts").compare(|row| {
        let file = files.iter().find(|file| file["id"] == row.text("id")).expect("a file");
        let year = read(file).year;
        let below = u16::try_from(year.hours_below(fahrenheit(38.0))).expect("hours of a year");
        let f = |share: f64| warmer_by(year.percentile(share.into()), fahrenheit(0.0)).value * 1.8;
        let degree_hours = year.degree_days_below(fahrenheit(40.0)).0 * 24.0;
        vec![
            ("degree_hours_below_40_f", degree_hours),
            ("hours_below_38_f", f64::from(below)),
            ("p99_f", f(0.01)),
            ("p99_6_f", f(0.004)),
        ]
    });
}
