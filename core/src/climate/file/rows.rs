//! Lines of a weather file as hours with what was recorded in them.

use super::BadWeather;
use crate::climate::curve::DAYS_IN;

/// One hour that a file records; `None` is a value that the file marks as missing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Record {
    /// Line of the file, from 1.
    pub(super) line: usize,
    /// From 1.
    pub(super) month: usize,
    /// From 1.
    pub(super) day: u16,
    /// The hour that ends then, 1 to 24.
    pub(super) hour: usize,
    /// Air, dew point and wind; °C and m/s.
    pub(super) values: [Option<f64>; 3],
}

impl Record {
    pub(super) fn is_leap_day(&self) -> bool {
        (self.month, self.day) == (2, 29)
    }

    /// Hour of the year, from 0; `None` where the calendar has no such hour.
    pub(super) fn place(&self) -> Option<usize> {
        let month = self.month.checked_sub(1)?;
        let sound = (1..=24).contains(&self.hour) && (1..=*DAYS_IN.get(month)?).contains(&self.day);
        let before: u16 = DAYS_IN[..month].iter().sum();
        sound.then(|| usize::from(before + self.day - 1) * 24 + self.hour - 1)
    }
}

/// Cells between commas; those in quotation marks may hold commas themselves.
pub(super) fn cells(line: &str) -> Vec<&str> {
    let mut quoted = false;
    line.trim_end()
        .split(|c| {
            quoted ^= c == '"';
            c == ',' && !quoted
        })
        .map(|cell| cell.trim().trim_matches('"'))
        .collect()
}

/// A number of a line that must be there.
pub(super) fn number(cells: &[&str], at: usize, line: usize) -> Result<f64, BadWeather> {
    let value = cells.get(at).and_then(|cell| cell.parse::<f64>().ok());
    value.filter(|value| value.is_finite()).ok_or(BadWeather::Line(line))
}

/// A small whole number of a line that must be there.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "checked")]
pub(super) fn whole(cells: &[&str], at: usize, line: usize) -> Result<u16, BadWeather> {
    let value = number(cells, at, line)?;
    let sound = value.fract() == 0.0 && (0.0..=9999.0).contains(&value);
    if sound { Ok(value as u16) } else { Err(BadWeather::Line(line)) }
}

#[cfg(test)]
mod tests {
    use super::cells;

    #[test]
    fn a_comma_in_quotation_marks_parts_nothing() {
        assert_eq!(cells("1,\"a, b\" ,NC\r\n"), ["1", "a, b", "NC"]);
    }
}
