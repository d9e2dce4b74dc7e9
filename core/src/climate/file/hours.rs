//! From records to the hours of a year, with a list of what was repaired.

use super::rows::Record;
use super::{BadWeather, Column, Repair};
use crate::climate::Year;

/// Most hours on end that are filled.
const LONGEST_FILL: usize = 6;
/// A value this far from both neighbours, on the same side, is a slip: K.
const SPIKE_K: f64 = 20.0;
/// Share of hours out of range from which on the unit is wrong and not the hour.
const WRONG_UNIT: usize = Year::HOURS / 100;

const COLUMNS: [Column; 3] = [Column::Air, Column::DewPoint, Column::Wind];

/// What air has been, in °C and m/s.
fn possible(column: Column) -> std::ops::RangeInclusive<f64> {
    match column {
        Column::Air => -70.0..=57.0,
        Column::DewPoint => -90.0..=36.0,
        Column::Wind => 0.0..=60.0,
    }
}

/// The year of all records and what was done to it.
pub(super) fn year(records: &[Record]) -> Result<(Year, Vec<Repair>), BadWeather> {
    let mut repairs = Vec::new();
    let placed = place(records, &mut repairs)?;
    let mut columns = Vec::with_capacity(COLUMNS.len());
    for (at, column) in COLUMNS.into_iter().enumerate() {
        let values = placed.iter().map(|record| record.and_then(|record| record.values[at]));
        columns.push(repaired(column, values.collect(), &mut repairs)?);
    }
    let [air, mut dew, wind]: [Vec<f64>; 3] = columns.try_into().unwrap_or_default();
    let mut above = 0;
    for (dew, air) in dew.iter_mut().zip(&air) {
        above += usize::from(*dew > *air);
        *dew = dew.min(*air);
    }
    if above > 0 {
        repairs.push(Repair::DewAboveAir { hours: above });
    }
    let year = Year { air_c: air.into(), dew_point_c: dew.into(), wind_m_s: wind.into() };
    Ok((year, repairs))
}

/// Each record at its hour; no hour twice.
fn place<'a>(
    records: &'a [Record],
    repairs: &mut Vec<Repair>,
) -> Result<Vec<Option<&'a Record>>, BadWeather> {
    let mut hours = vec![None; Year::HOURS];
    if records.iter().any(Record::is_leap_day) {
        repairs.push(Repair::LeapDay);
    }
    for record in records.iter().filter(|record| !record.is_leap_day()) {
        let at = record.place().ok_or(BadWeather::Line(record.line))?;
        if hours[at].replace(record).is_some() {
            return Err(BadWeather::Twice(record.line));
        }
    }
    Ok(hours)
}

/// One column without spikes and without holes.
fn repaired(
    column: Column,
    mut values: Vec<Option<f64>>,
    repairs: &mut Vec<Repair>,
) -> Result<Vec<f64>, BadWeather> {
    let range = possible(column);
    let outside = values.iter().flatten().filter(|value| !range.contains(value)).count();
    if outside > WRONG_UNIT {
        return Err(BadWeather::Unit(column));
    }
    for hour in spikes(column, &values) {
        let got = values[hour].take().unwrap_or_default();
        repairs.push(Repair::Spike { column, hour, got });
    }
    filled(column, &values, repairs)
}

/// Hours whose value no air has, or that stands alone.
fn spikes(column: Column, values: &[Option<f64>]) -> Vec<usize> {
    let range = possible(column);
    let alone = |hour: usize| {
        let near = |by: usize| values[(hour + by) % values.len()];
        let (Some(before), Some(here), Some(after)) = (near(values.len() - 1), near(0), near(1))
        else {
            return false;
        };
        let (up, down) = (here - before, here - after);
        column != Column::Wind && up.abs().min(down.abs()) > SPIKE_K && up * down > 0.0
    };
    let odd = |hour: &usize| values[*hour].is_some_and(|v| !range.contains(&v)) || alone(*hour);
    (0..values.len()).filter(odd).collect()
}

/// Straight lines across holes, round the end of the year.
fn filled(
    column: Column,
    values: &[Option<f64>],
    repairs: &mut Vec<Repair>,
) -> Result<Vec<f64>, BadWeather> {
    let all = values.len();
    let Some(first) = values.iter().position(Option::is_some) else {
        return Err(BadWeather::Gap { column, from: 0, hours: all });
    };
    let mut whole: Vec<f64> = values.iter().map(|value| value.unwrap_or_default()).collect();
    let mut hour = first;
    while hour < first + all {
        let hole = (1..=all).take_while(|by| values[(hour + by) % all].is_none()).count();
        let (from, last) = ((hour + 1) % all, (hour + hole + 1) % all);
        if hole > LONGEST_FILL {
            return Err(BadWeather::Gap { column, from, hours: hole });
        }
        if hole > 0 {
            repairs.push(Repair::Filled { column, from, hours: hole });
        }
        let step = (whole[last] - whole[hour % all]) / count(hole + 1);
        for by in 1..=hole {
            whole[(hour + by) % all] = whole[hour % all] + step * count(by);
        }
        hour += hole + 1;
    }
    Ok(whole)
}

#[expect(clippy::cast_precision_loss, reason = "a few hours")]
fn count(hours: usize) -> f64 {
    hours as f64
}
