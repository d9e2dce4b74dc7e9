//! The weather file format TMY3.

use super::rows::{Record, cells, number, whole};
use super::{BadWeather, WeatherFile, hours};
use uom::si::{f64::Length, length::meter};

/// Below this a value is marked as missing.
const MISSING: f64 = -900.0;
const DATE: &str = "Date (MM/DD/YYYY)";
const TIME: &str = "Time (HH:MM)";
const VALUES: [&str; 3] = ["Dry-bulb (C)", "Dew-point (C)", "Wspd (m/s)"];

impl WeatherFile {
    /// Reads the text of a TMY3 file: [`TYPICAL_YEARS`](crate::sources::climate::TYPICAL_YEARS).
    ///
    /// ```
    /// use winterseam::climate::{BadWeather, WeatherFile};
    ///
    /// assert_eq!(WeatherFile::from_tmy3("a letter"), Err(BadWeather::Head(1)));
    /// ```
    ///
    /// # Errors
    /// What makes the file unfit to be trusted.
    pub fn from_tmy3(text: &str) -> Result<Self, BadWeather> {
        let mut lines = text.lines().enumerate().filter(|(_, line)| !line.trim().is_empty());
        let place = cells(lines.next().map_or("", |(_, line)| line));
        let head = |at| number(&place, at, 1).map_err(|_| BadWeather::Head(1));
        let (latitude, elevation) = (head(4)?, Length::new::<meter>(head(6)?));
        let names = cells(lines.next().map_or("", |(_, line)| line));
        let find = |name| names.iter().position(|n| *n == name).ok_or(BadWeather::NoColumn(name));
        let (date, time) = (find(DATE)?, find(TIME)?);
        let columns = [find(VALUES[0])?, find(VALUES[1])?, find(VALUES[2])?];
        let records = lines
            .map(|(at, line)| record(&cells(line), [date, time], columns, at + 1))
            .collect::<Result<Vec<_>, _>>()?;
        let (year, repairs) = hours::year(&records)?;
        Ok(Self { name: place[1].to_owned(), latitude, elevation, year, repairs })
    }
}

fn record(
    cells: &[&str],
    [date, time]: [usize; 2],
    columns: [usize; 3],
    line: usize,
) -> Result<Record, BadWeather> {
    let parts = |at: usize, mark| cells.get(at).copied().unwrap_or_default().split(mark);
    let date: Vec<&str> = parts(date, '/').collect();
    let time: Vec<&str> = parts(time, ':').collect();
    if whole(&time, 1, line)? != 0 {
        return Err(BadWeather::NotHourly);
    }
    let known = |at| number(cells, at, line).map(|v| (v > MISSING).then_some(v));
    Ok(Record {
        line,
        month: usize::from(whole(&date, 0, line)?),
        day: whole(&date, 1, line)?,
        hour: usize::from(whole(&time, 0, line)?),
        values: [known(columns[0])?, known(columns[1])?, known(columns[2])?],
    })
}
