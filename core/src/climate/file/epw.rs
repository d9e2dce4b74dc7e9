//! The weather file format EPW.

use super::rows::{Record, cells, number, whole};
use super::{BadWeather, WeatherFile, hours};
use uom::si::{f64::Length, length::meter};

/// Lines before the first hour; the last of them tells how many records an hour has.
const HEAD: usize = 8;
/// From here on a temperature in °C or a wind in m/s is marked as missing.
const NO_TEMPERATURE: f64 = 99.0;
const NO_WIND: f64 = 999.0;

impl WeatherFile {
    /// Reads the text of an EPW file: [`EPW`](crate::sources::climate::EPW).
    ///
    /// ```
    /// use winterseam::climate::{BadWeather, WeatherFile};
    ///
    /// assert_eq!(WeatherFile::from_epw("a letter"), Err(BadWeather::Head(1)));
    /// ```
    ///
    /// # Errors
    /// What makes the file unfit to be trusted.
    pub fn from_epw(text: &str) -> Result<Self, BadWeather> {
        let lines: Vec<&str> = text.lines().collect();
        let place = cells(lines.first().copied().unwrap_or_default());
        if place.first() != Some(&"LOCATION") {
            return Err(BadWeather::Head(1));
        }
        let periods = cells(lines.get(HEAD - 1).copied().unwrap_or_default());
        match periods.as_slice() {
            ["DATA PERIODS", _, "1", ..] => {}
            ["DATA PERIODS", ..] => return Err(BadWeather::NotHourly),
            _ => return Err(BadWeather::Head(HEAD)),
        }
        let numbered =
            lines.iter().enumerate().skip(HEAD).filter(|(_, line)| !line.trim().is_empty());
        let records =
            numbered.map(|(at, line)| record(line, at + 1)).collect::<Result<Vec<_>, _>>()?;
        let (year, repairs) = hours::year(&records)?;
        let head = |at| number(&place, at, 1).map_err(|_| BadWeather::Head(1));
        Ok(Self {
            name: place[1].to_owned(),
            latitude: head(6)?,
            elevation: Length::new::<meter>(head(9)?),
            year,
            repairs,
        })
    }
}

fn record(line: &str, at: usize) -> Result<Record, BadWeather> {
    let cells = cells(line);
    let known = |cell, missing: f64| number(&cells, cell, at).map(|v| (v < missing).then_some(v));
    Ok(Record {
        line: at,
        month: usize::from(whole(&cells, 1, at)?),
        day: whole(&cells, 2, at)?,
        hour: usize::from(whole(&cells, 3, at)?),
        values: [known(6, NO_TEMPERATURE)?, known(7, NO_TEMPERATURE)?, known(21, NO_WIND)?],
    })
}
