//! Weather files of other makers, read from the text that a program passes: EPW and TMY3.
//!
//! A file that is whole but for a few hours is repaired, and the list of repairs comes with it. One
//! that cannot be trusted is refused by line and value. Nothing is repaired in silence.

mod epw;
mod hours;
mod rows;
mod tmy3;

use super::Year;
use std::fmt;
use uom::si::f64::Length;

/// A year of weather from a file.
#[derive(Debug, Clone, PartialEq)]
pub struct WeatherFile {
    /// Name of the place, as the file writes it.
    pub name: String,
    /// Degrees north.
    pub latitude: f64,
    /// Above the sea.
    pub elevation: Length,
    /// Its hours.
    pub year: Year,
    /// What was done to them, in order of the year.
    pub repairs: Vec<Repair>,
}

/// A column that is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Column {
    /// Air temperature.
    Air,
    /// Dew point.
    DewPoint,
    /// Wind.
    Wind,
}

/// What was done to a file. Hours count from 0 on 1 January.
#[derive(Debug, Clone, PartialEq)]
pub enum Repair {
    /// 29 February was left out.
    LeapDay,
    /// A value that stands far off its neighbours or that no air has was taken for missing.
    Spike {
        /// Where it stood.
        column: Column,
        /// Hour of the year.
        hour: usize,
        /// The value, °C or m/s.
        got: f64,
    },
    /// Missing hours were filled along a straight line.
    Filled {
        /// What was missing.
        column: Column,
        /// First hour.
        from: usize,
        /// How many.
        hours: usize,
    },
    /// Hours whose dew point stood above the air; it was taken for saturated.
    DewAboveAir {
        /// How many.
        hours: usize,
    },
}

/// Why a file was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum BadWeather {
    /// The head is not that of the format; the line, from 1.
    Head(usize),
    /// A line that is no hour; from 1.
    Line(usize),
    /// A column is missing, or is in another unit.
    NoColumn(&'static str),
    /// The same hour twice, at this line.
    Twice(usize),
    /// More hours on end are missing than can be filled.
    Gap {
        /// What is missing.
        column: Column,
        /// First hour.
        from: usize,
        /// How many.
        hours: usize,
    },
    /// More than one in a hundred hours has a value that no air has: another unit.
    Unit(Column),
    /// More or fewer than one record an hour.
    NotHourly,
}

impl fmt::Display for BadWeather {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Head(line) => write!(f, "head line {line}"),
            Self::Line(line) => write!(f, "no_hour line {line}"),
            Self::NoColumn(name) => write!(f, "no_column {name}"),
            Self::Twice(line) => write!(f, "twice line {line}"),
            Self::Gap { column, from, hours } => {
                write!(f, "gap {column:?} {hours} hours from hour {from}")
            }
            Self::Unit(column) => write!(f, "unit {column:?}"),
            Self::NotHourly => write!(f, "not_hourly"),
        }
    }
}

impl std::error::Error for BadWeather {}
