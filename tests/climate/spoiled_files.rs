//! Weather files with holes, slips and wrong units are refused or repaired with a list.

use std::fmt::Write as _;
use uom::si::velocity::meter_per_second;
use winterseam::climate::{BadWeather, Column, Repair, WeatherFile, Year};
use winterseam::units::{celsius, warmer_by};

const DAYS_IN: [usize; 12] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const TMY3_HEAD: &str = "1,\"Nowhere, east\",XX,-7.0,46.9,-114.1,972\n\
    Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),Dew-point (C),Wspd (m/s)\n";

/// Month and day of each day.
fn days() -> impl Iterator<Item = (usize, usize)> {
    (1..=12).flat_map(|month| (1..=DAYS_IN[month - 1]).map(move |day| (month, day)))
}

/// A year of one night and day, and what to do to each line: the hour of the year and its text.
fn tmy3(spoil: impl Fn(usize, String) -> String) -> String {
    let mut text = TMY3_HEAD.to_owned();
    let hours = days().flat_map(|day| (1..=24).map(move |hour| (day, hour)));
    for (at, ((month, day), hour)) in hours.enumerate() {
        let air = if hour < 12 { -3.5 } else { 4.0 };
        let line = format!("{month:02}/{day:02}/1999,{hour:02}:00,{air},-6.0,2.5\n");
        text += &spoil(at, line);
    }
    text
}

fn epw(head: &str, spoil: impl Fn(usize, String) -> String) -> String {
    let mut text = "LOCATION,Nowhere,XX,USA,own,1,46.9,-114.1,-7.0,972\n".to_owned();
    text += &"COMMENTS\n".repeat(6);
    text += head;
    let hours = days().flat_map(|day| (1..=24).map(move |hour| (day, hour)));
    for (at, ((month, day), hour)) in hours.enumerate() {
        let mut line = format!("1999,{month},{day},{hour},0,flags,-3.5,-6.0");
        line += &",0".repeat(13);
        let _ = writeln!(line, ",2.5,0");
        text += &spoil(at, line);
    }
    text
}

const HOURLY: &str = "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n";

fn as_it_is(_: usize, line: String) -> String {
    line
}

fn drop_hours(from: usize, count: usize) -> impl Fn(usize, String) -> String {
    move |at, line| if (from..from + count).contains(&at) { String::new() } else { line }
}

fn air(file: &WeatherFile, hour: usize) -> f64 {
    warmer_by(file.year.hour(hour).expect("an hour").air, celsius(0.0)).value
}

#[test]
fn a_whole_file_needs_no_repair() {
    let file = WeatherFile::from_tmy3(&tmy3(as_it_is)).expect("a year");
    assert_eq!((file.repairs.as_slice(), file.name.as_str()), ([].as_slice(), "Nowhere, east"));
    assert!((air(&file, 5) + 3.5).abs() < 1e-9 && (air(&file, 20) - 4.0).abs() < 1e-9);
    let file = WeatherFile::from_epw(&epw(HOURLY, as_it_is)).expect("a year");
    assert_eq!(file.repairs, []);
    assert!((file.year.hour(0).unwrap().wind.get::<meter_per_second>() - 2.5).abs() < 1e-12);
}

#[test]
fn a_few_missing_hours_are_filled_and_listed_and_many_refuse_the_file() {
    let file = WeatherFile::from_tmy3(&tmy3(drop_hours(9, 4))).expect("a year");
    let filled = |column| Repair::Filled { column, from: 9, hours: 4 };
    assert_eq!(file.repairs, [Column::Air, Column::DewPoint, Column::Wind].map(filled));
    assert!((air(&file, 9) + 2.0).abs() < 1e-9, "a straight line from −3.5 to 4 in five steps");
    let gap = BadWeather::Gap { column: Column::Air, from: 9, hours: 7 };
    assert_eq!(WeatherFile::from_tmy3(&tmy3(drop_hours(9, 7))), Err(gap));
    let around = |at, line| if (2..8758).contains(&at) { line } else { String::new() };
    let file = WeatherFile::from_tmy3(&tmy3(around)).expect("a year");
    assert_eq!(file.repairs[0], Repair::Filled { column: Column::Air, from: 8758, hours: 4 });
    assert!(WeatherFile::from_tmy3(TMY3_HEAD).is_err());
}

#[test]
fn a_mark_for_missing_is_no_temperature() {
    let marked = |at, line: String| if at == 9 { line.replace("-3.5", "99.9") } else { line };
    let file = WeatherFile::from_epw(&epw(HOURLY, marked)).expect("a year");
    assert_eq!(file.repairs, [Repair::Filled { column: Column::Air, from: 9, hours: 1 }]);
    let marked = |at, line: String| if at == 9 { line.replace("-3.5", "-9900") } else { line };
    let file = WeatherFile::from_tmy3(&tmy3(marked)).expect("a year");
    assert_eq!(file.repairs, [Repair::Filled { column: Column::Air, from: 9, hours: 1 }]);
}

#[test]
fn a_spike_is_taken_out_and_listed() {
    for slip in ["65", "35", "-45"] {
        let spiked = |at, line: String| if at == 9 { line.replace("-3.5", slip) } else { line };
        let file = WeatherFile::from_tmy3(&tmy3(spiked)).expect("a year");
        let got = slip.parse().unwrap();
        assert_eq!(file.repairs[0], Repair::Spike { column: Column::Air, hour: 9, got });
        assert!((air(&file, 9) + 3.5).abs() < 1e-9);
    }
}

#[test]
fn a_leap_day_is_left_out_and_listed() {
    let leap = |at, line: String| {
        let day = (1..=24).map(|h| format!("02/29/2000,{h:02}:00,9,-6,2.5\n"));
        if at == 59 * 24 { day.collect::<String>() + &line } else { line }
    };
    let file = WeatherFile::from_tmy3(&tmy3(leap)).expect("a year");
    assert_eq!(
        (file.repairs.as_slice(), file.year.hours().count()),
        ([Repair::LeapDay].as_slice(), Year::HOURS)
    );
}

#[test]
fn another_unit_refuses_the_file() {
    let named = tmy3(as_it_is).replace("Dry-bulb (C)", "Dry-bulb (F)");
    assert_eq!(WeatherFile::from_tmy3(&named), Err(BadWeather::NoColumn("Dry-bulb (C)")));
    let fahrenheit = |at, line: String| {
        if (4000..4400).contains(&at) { line.replace(",4,", ",91,") } else { line }
    };
    assert_eq!(WeatherFile::from_tmy3(&tmy3(fahrenheit)), Err(BadWeather::Unit(Column::Air)));
}

#[test]
fn a_dew_point_above_the_air_is_held_to_it_and_listed() {
    let damp = |at, line: String| if at == 9 { line.replace("-6.0", "1.0") } else { line };
    let file = WeatherFile::from_tmy3(&tmy3(damp)).expect("a year");
    assert_eq!(file.repairs, [Repair::DewAboveAir { hours: 1 }]);
}

#[test]
fn what_is_no_weather_file_is_refused_by_its_line() {
    assert_eq!(WeatherFile::from_epw(&tmy3(as_it_is)), Err(BadWeather::Head(1)));
    assert_eq!(WeatherFile::from_tmy3(&epw(HOURLY, as_it_is)), Err(BadWeather::Head(1)));
    assert_eq!(WeatherFile::from_epw(&epw("COMMENTS\n", as_it_is)), Err(BadWeather::Head(8)));
    let sub_hourly = "DATA PERIODS,1,4,Data,Sunday, 1/ 1,12/31\n";
    assert_eq!(WeatherFile::from_epw(&epw(sub_hourly, as_it_is)), Err(BadWeather::NotHourly));
    let torn = |at, line: String| if at == 9 { "01/01/1999,1\n".to_owned() } else { line };
    assert_eq!(WeatherFile::from_tmy3(&tmy3(torn)), Err(BadWeather::Line(12)));
    let twice = |at, line: String| if at == 9 { line.repeat(2) } else { line };
    assert_eq!(WeatherFile::from_tmy3(&tmy3(twice)), Err(BadWeather::Twice(13)));
    let no_day = |at, line: String| if at == 9 { line.replace("01/01", "02/30") } else { line };
    assert_eq!(WeatherFile::from_tmy3(&tmy3(no_day)), Err(BadWeather::Line(12)));
    assert!(WeatherFile::from_tmy3("").is_err() && WeatherFile::from_epw("").is_err());
}
