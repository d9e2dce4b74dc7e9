//! Turns the body of an atlas into stations and ZIP areas. `xtask/src/atlas.rs` writes it.

use super::atlas::{Area, Atlas};
use super::reader::{BadAtlas, Reader};
use super::{DegreeDays, FreezeDates, FrostBasis, Normals, Station, TemperatureBasis, Zone};
use crate::units::fahrenheit;
use std::collections::BTreeMap;
use std::ops::RangeInclusive;
use uom::si::f64::{Angle, Length, TemperatureInterval, Velocity};
use uom::si::{
    angle::degree, length::foot, temperature_interval::degree_fahrenheit, velocity::mile_per_hour,
};

/// What may stand in the tables, in their own units: no place on earth lies outside.
const TEMPERATURE_F: RangeInclusive<i64> = -100..=150;
const SPREAD_F: RangeInclusive<i64> = -50..=100;
const TENTHS: RangeInclusive<i64> = 0..=1000;
const LATITUDE_TENTHS: RangeInclusive<i64> = -900..=900;
const ELEVATION_FT: RangeInclusive<i64> = -1500..=20000;
const DEGREE_DAYS: RangeInclusive<i64> = 0..=40000;
const DAY: RangeInclusive<i64> = 0..=365;

/// A station table, column by column.
struct Columns {
    usaf: Vec<i64>,
    names: Vec<String>,
    states: Vec<String>,
    latitude_tenths: Vec<i64>,
    elevation_ft: Vec<i64>,
    temperature_basis: Vec<TemperatureBasis>,
    normals: Vec<Normals>,
    hdd65: Vec<i64>,
    cdd65: Vec<i64>,
    freeze: Vec<Option<FreezeDates>>,
    cold_99: Vec<i64>,
    cold_99_6: Vec<i64>,
}

pub(super) fn atlas(bytes: &[u8]) -> Result<Atlas, BadAtlas> {
    let mut body = Reader::open(bytes)?;
    let stations = stations(&mut body)?;
    let zips = zips(&mut body, stations.len())?;
    let zip3 = zip3(&mut body, stations.len())?;
    if body.is_at_end() { Ok(Atlas { stations, zips, zip3 }) } else { Err(body.nonsense()) }
}

fn stations(body: &mut Reader<'_>) -> Result<Vec<Station>, BadAtlas> {
    let rows = body.part("stations").count()?;
    let columns = columns(body, rows)?;
    Ok((0..rows).map(|row| columns.station(row)).collect())
}

fn columns(body: &mut Reader<'_>, rows: usize) -> Result<Columns, BadAtlas> {
    Ok(Columns {
        usaf: ascending(body, rows)?,
        names: names(body, rows)?,
        states: states(body, rows)?,
        latitude_tenths: column(body.part("latitude"), rows, LATITUDE_TENTHS)?,
        elevation_ft: column(body.part("elevation"), rows, ELEVATION_FT)?,
        temperature_basis: temperature_bases(body, rows)?,
        normals: normals(body, rows)?,
        hdd65: column(body.part("degree days"), rows, DEGREE_DAYS)?,
        cdd65: column(body, rows, DEGREE_DAYS)?,
        freeze: freeze(body, rows)?,
        cold_99: column(body.part("cold"), rows, TEMPERATURE_F)?,
        cold_99_6: column(body, rows, TEMPERATURE_F)?,
    })
}

impl Columns {
    fn station(&self, row: usize) -> Station {
        Station {
            usaf: format!("{:06}", self.usaf[row]),
            name: self.names[row].clone(),
            state: self.states[row].clone(),
            latitude: Angle::new::<degree>(real(self.latitude_tenths[row]) / 10.0),
            elevation: Length::new::<foot>(real(self.elevation_ft[row])),
            normals: self.normals[row].clone(),
            temperature_basis: self.temperature_basis[row],
            hdd65: DegreeDays(real(self.hdd65[row])),
            cdd65: DegreeDays(real(self.cdd65[row])),
            freeze: self.freeze[row],
            cold_99: fahrenheit(real(self.cold_99[row])),
            cold_99_6: fahrenheit(real(self.cold_99_6[row])),
        }
    }
}

fn within(body: &Reader<'_>, value: i64, allowed: &RangeInclusive<i64>) -> Result<i64, BadAtlas> {
    if allowed.contains(&value) { Ok(value) } else { Err(body.nonsense()) }
}

fn column(
    body: &mut Reader<'_>,
    rows: usize,
    allowed: RangeInclusive<i64>,
) -> Result<Vec<i64>, BadAtlas> {
    let values = body.column(rows)?;
    values.into_iter().map(|value| within(body, value, &allowed)).collect()
}

fn months(
    body: &mut Reader<'_>,
    rows: usize,
    allowed: RangeInclusive<i64>,
) -> Result<Vec<[i64; 12]>, BadAtlas> {
    let table = body.months(rows)?;
    for value in table.iter().flatten() {
        within(body, *value, &allowed)?;
    }
    Ok(table)
}

/// Numbers of stations; they ascend, so that a station is found by halving.
fn ascending(body: &mut Reader<'_>, rows: usize) -> Result<Vec<i64>, BadAtlas> {
    let usaf = column(body, rows, 0..=999_999)?;
    if usaf.is_sorted_by(|a, b| a < b) { Ok(usaf) } else { Err(body.nonsense()) }
}

fn names(body: &mut Reader<'_>, rows: usize) -> Result<Vec<String>, BadAtlas> {
    let length = body.part("names").count()?;
    let text = str::from_utf8(body.bytes(length)?).map_err(|_| body.nonsense())?;
    let names = text.lines().map(str::to_owned).collect::<Vec<_>>();
    if names.len() == rows { Ok(names) } else { Err(body.nonsense()) }
}

fn states(body: &mut Reader<'_>, rows: usize) -> Result<Vec<String>, BadAtlas> {
    let letters = body.part("states").bytes(2 * rows)?;
    if !letters.iter().all(u8::is_ascii_uppercase) {
        return Err(body.nonsense());
    }
    Ok(letters.chunks(2).map(|pair| pair.iter().copied().map(char::from).collect()).collect())
}

fn temperature_bases(
    body: &mut Reader<'_>,
    rows: usize,
) -> Result<Vec<TemperatureBasis>, BadAtlas> {
    let codes = body.part("basis").bytes(rows)?;
    let basis = |code: &u8| match code {
        0 => Ok(TemperatureBasis::Published),
        1 => Ok(TemperatureBasis::Corrected),
        2 => Ok(TemperatureBasis::TypicalYear),
        _ => Err(body.nonsense()),
    };
    codes.iter().map(basis).collect()
}

/// The minimum is written as what it lacks to the maximum, the dew point as what it lacks to the
/// minimum: those vary less from place to place.
fn normals(body: &mut Reader<'_>, rows: usize) -> Result<Vec<Normals>, BadAtlas> {
    let max = months(body.part("maxima"), rows, TEMPERATURE_F)?;
    let swing = months(body.part("minima"), rows, SPREAD_F)?;
    let lack = months(body.part("dew points"), rows, SPREAD_F)?;
    let wind = months(body.part("wind"), rows, TENTHS)?;
    let sigma = months(body.part("sigma"), rows, TENTHS)?;
    let of = |row: usize| Normals {
        max: max[row].map(|f| fahrenheit(real(f))),
        min: std::array::from_fn(|m| fahrenheit(real(max[row][m] - swing[row][m]))),
        dew_point: std::array::from_fn(|m| {
            fahrenheit(real(max[row][m] - swing[row][m] - lack[row][m]))
        }),
        wind: wind[row].map(|tenths| Velocity::new::<mile_per_hour>(real(tenths) / 10.0)),
        day_to_day: sigma[row]
            .map(|tenths| TemperatureInterval::new::<degree_fahrenheit>(real(tenths) / 10.0)),
    };
    Ok((0..rows).map(of).collect())
}

/// Last day, first day and basis, each a column; 0 stands for none.
fn freeze(body: &mut Reader<'_>, rows: usize) -> Result<Vec<Option<FreezeDates>>, BadAtlas> {
    let last = column(body.part("freeze dates"), rows, DAY)?;
    let first = column(body, rows, DAY)?;
    let codes = body.bytes(rows)?;
    let day = |day: i64| u16::try_from(day).ok().filter(|&day| day > 0);
    let dates = |(row, code): (usize, &u8)| match (code, day(last[row]), day(first[row])) {
        (0, None, None) => Ok(None),
        (1, Some(last), Some(first)) => {
            Ok(Some(FreezeDates { last, first, basis: FrostBasis::Published }))
        }
        (2, Some(last), Some(first)) => {
            Ok(Some(FreezeDates { last, first, basis: FrostBasis::Estimated }))
        }
        _ => Err(body.nonsense()),
    };
    codes.iter().enumerate().map(dates).collect()
}

/// Which of so many codes are known: one bit each.
fn known(body: &mut Reader<'_>, codes: u32) -> Result<Vec<u32>, BadAtlas> {
    let bits = body.bytes(usize::try_from(codes / 8).map_err(|_| body.nonsense())?)?;
    Ok((0..codes).filter(|code| bits[(code / 8) as usize] >> (code % 8) & 1 == 1).collect())
}

/// Stations of places in the order of their codes. Neighbours share stations, so each is written
/// as its place in the list of stations, the one used last first.
fn nearest(body: &mut Reader<'_>, places: usize, stations: usize) -> Result<Vec<usize>, BadAtlas> {
    let mut lately = (0..stations).collect::<Vec<_>>();
    (0..places)
        .map(|_| {
            let back = body.whole()? as usize;
            let station = *lately.get(back).ok_or(body.nonsense())?;
            lately.copy_within(0..back, 1);
            lately[0] = station;
            Ok(station)
        })
        .collect()
}

fn zones(body: &mut Reader<'_>, places: usize) -> Result<Vec<Zone>, BadAtlas> {
    let codes = body.bytes(places)?;
    codes.iter().map(|&code| Zone::from_code(code).ok_or(body.nonsense())).collect()
}

fn zips(body: &mut Reader<'_>, stations: usize) -> Result<BTreeMap<u32, Area>, BadAtlas> {
    let zips = known(body.part("zip areas"), 100_000)?;
    let nearest = nearest(body, zips.len(), stations)?;
    let km = (0..zips.len()).map(|_| body.whole()).collect::<Result<Vec<_>, _>>()?;
    let zones = zones(body, zips.len())?;
    let area = |i: usize| Area { station: nearest[i], km: Some(km[i]), zone: zones[i] };
    Ok(by_number(zips.iter().enumerate().map(|(i, &zip)| (zip, area(i)))))
}

fn zip3(body: &mut Reader<'_>, stations: usize) -> Result<BTreeMap<u32, Area>, BadAtlas> {
    let starts = known(body.part("zip starts"), 1000)?;
    let nearest = nearest(body, starts.len(), stations)?;
    let zones = zones(body, starts.len())?;
    let area = |i: usize| Area { station: nearest[i], km: None, zone: zones[i] };
    Ok(by_number(starts.iter().enumerate().map(|(i, &start)| (start, area(i)))))
}

/// Collecting would bring a sort along, and they are in order.
fn by_number(areas: impl Iterator<Item = (u32, Area)>) -> BTreeMap<u32, Area> {
    let mut map = BTreeMap::new();
    map.extend(areas);
    map
}

/// Values were held to ranges of a few thousand; each is exact.
fn real(value: i64) -> f64 {
    f64::from(i32::try_from(value).unwrap_or(i32::MAX))
}

#[cfg(test)]
mod tests {
    use super::atlas;
    use crate::climate::BadAtlas;
    use crate::climate::reader::fnv1a;

    /// A body that was changed and then signed anew.
    fn signed(body: &[u8]) -> Vec<u8> {
        [b"WSATLAS\x02", &fnv1a(body).to_le_bytes()[..], body].concat()
    }

    #[test]
    fn nonsense_with_a_right_sum_never_panics() {
        let whole = include_bytes!("../../data/climate/atlas.bin");
        let body = &whole[16..];
        assert!(atlas(&signed(body)).is_ok());
        for at in (0..300).chain((300..body.len()).step_by(4001)) {
            let mut changed = body.to_vec();
            changed[at] ^= 0xff;
            let _ = atlas(&signed(&changed));
            assert!(atlas(&signed(&body[..at])).is_err(), "cut at {at}");
        }
    }

    #[test]
    fn a_count_that_nothing_follows_is_refused() {
        let many = [0xff, 0xff, 0x03];
        assert_eq!(atlas(&signed(&many)), Err(BadAtlas::Nonsense("stations")));
        assert!(atlas(&signed(&[0xff; 64])).is_err());
        assert!(atlas(&signed(&[])).is_err());
    }
}
