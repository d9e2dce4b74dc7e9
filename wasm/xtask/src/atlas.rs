//! Makes `core/data/climate/atlas.bin` from the tables beside it. `core/src/climate/decode.rs`
//! reads it.
//!
//! The file is laid out for `deflate`: column after column, numbers as small steps from what the
//! neighbours suggest, in groups of seven bits.

use anyhow::{Context as _, Result, ensure};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

const MARK: &[u8] = b"WSATLAS";
const VERSION: u8 = 2;
const MONTHS: [&str; 12] =
    ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];

/// The bytes that the tables make.
pub(crate) fn build(root: &Path) -> Result<Vec<u8>> {
    let read = |name| Table::read(&folder(root).join(name));
    let stations = read("stations.csv")?;
    let mut body = vec![];
    write_stations(&mut body, &stations)?;
    let order = stations.texts("usaf")?;
    let zips = read("zips.csv")?;
    write_codes(&mut body, &zips.numbers("zip")?, 100_000)?;
    write_nearest(&mut body, &zips, &order)?;
    zips.numbers("distance_km")?.iter().try_for_each(|&km| write_whole(&mut body, km))?;
    write_zones(&mut body, &zips)?;
    let zip3 = read("zip3.csv")?;
    write_codes(&mut body, &zip3.numbers("zip3")?, 1000)?;
    write_nearest(&mut body, &zip3, &order)?;
    write_zones(&mut body, &zip3)?;
    Ok([MARK, &[VERSION], &fnv1a(&body).to_le_bytes(), &body].concat())
}

fn folder(root: &Path) -> PathBuf {
    root.join("core/data/climate")
}

fn write_stations(body: &mut Vec<u8>, table: &Table) -> Result<()> {
    write_whole(body, i64::try_from(table.rows.len())?)?;
    write_column(body, &table.numbers("usaf")?)?;
    let names = table.texts("name")?.join("\n");
    write_whole(body, i64::try_from(names.len())?)?;
    body.extend(names.bytes());
    body.extend(table.texts("state")?.concat().bytes());
    write_column(body, &table.tenths("latitude")?)?;
    write_column(body, &table.numbers("elevation")?)?;
    write_words(body, &table.texts("temp_basis")?, &["N", "TA", "T"])?;
    write_normals(body, table)?;
    write_column(body, &table.numbers("hdd65")?)?;
    write_column(body, &table.numbers("cdd65")?)?;
    write_column(body, &table.numbers("last_freeze")?)?;
    write_column(body, &table.numbers("first_freeze")?)?;
    write_words(body, &table.texts("frost_basis")?, &["none", "NOAA", "est"])?;
    write_column(body, &table.numbers("cold_99")?)?;
    write_column(body, &table.numbers("cold_99_6")?)
}

/// Maxima, what the minima lack to them, what the dew points lack to those, wind, deviation.
fn write_normals(body: &mut Vec<u8>, table: &Table) -> Result<()> {
    let [max, min, dew] =
        [table.months("max", 1)?, table.months("min", 1)?, table.months("dew", 1)?];
    for matrix in [
        max.clone(),
        less(&max, &min),
        less(&min, &dew),
        table.months("wind", 10)?,
        table.months("sigma", 10)?,
    ] {
        write_months(body, &matrix)?;
    }
    Ok(())
}

fn less(a: &[Vec<i64>], b: &[Vec<i64>]) -> Vec<Vec<i64>> {
    let rows = |(a, b): (&Vec<i64>, &Vec<i64>)| a.iter().zip(b).map(|(a, b)| a - b).collect();
    a.iter().zip(b).map(rows).collect()
}

/// A whole number in groups of seven bits, the lowest first.
fn write_whole(body: &mut Vec<u8>, value: i64) -> Result<()> {
    let mut left = u32::try_from(value)?;
    while left >= 0x80 {
        body.push(left.to_le_bytes()[0] | 0x80);
        left >>= 7;
    }
    body.push(left.to_le_bytes()[0]);
    Ok(())
}

/// 0, −1, 1, −2 … as 0, 1, 2, 3 …
fn write_signed(body: &mut Vec<u8>, value: i64) -> Result<()> {
    write_whole(body, (value << 1) ^ (value >> 63))
}

/// Each number as the step from the one before.
fn write_column(body: &mut Vec<u8>, values: &[i64]) -> Result<()> {
    let mut last = 0;
    for value in values {
        write_signed(body, value - last)?;
        last = *value;
    }
    Ok(())
}

/// Month after month, each number as its step from what the month before and the row before
/// suggest.
fn write_months(body: &mut Vec<u8>, rows: &[Vec<i64>]) -> Result<()> {
    for month in 0..MONTHS.len() {
        let before = |row: &Vec<i64>| if month == 0 { 0 } else { row[month - 1] };
        let steps = rows.iter().map(|row| row[month] - before(row)).collect::<Vec<_>>();
        write_column(body, &steps)?;
    }
    Ok(())
}

fn write_words(body: &mut Vec<u8>, cells: &[&str], words: &[&str]) -> Result<()> {
    for cell in cells {
        let code = words.iter().position(|word| word == cell);
        body.push(u8::try_from(code.with_context(|| format!("not one of {words:?}: {cell}"))?)?);
    }
    Ok(())
}

/// Which codes are in the table: one bit each.
fn write_codes(body: &mut Vec<u8>, codes: &[i64], all: usize) -> Result<()> {
    ensure!(codes.is_sorted_by(|a, b| a < b), "codes must ascend");
    let mut bits = vec![0_u8; all / 8];
    for code in codes {
        let code = usize::try_from(*code)?;
        *bits.get_mut(code / 8).context("a code out of range")? |= 1 << (code % 8);
    }
    body.extend(bits);
    Ok(())
}

/// The station of each row as its place in the list of stations, the one used last first.
fn write_nearest(body: &mut Vec<u8>, table: &Table, order: &[&str]) -> Result<()> {
    let mut lately = order.to_vec();
    for station in table.texts("station")? {
        let back = lately.iter().position(|known| *known == station);
        let back = back.with_context(|| format!("no such station: {station}"))?;
        lately[..=back].rotate_right(1);
        write_whole(body, i64::try_from(back)?)?;
    }
    Ok(())
}

/// Four times the number plus the place of the letter.
fn write_zones(body: &mut Vec<u8>, table: &Table) -> Result<()> {
    for zone in table.texts("zone")? {
        let (number, letter) = zone.split_at_checked(1).context("an empty zone")?;
        let letter = ["", "A", "B", "C"].iter().position(|known| *known == letter);
        let letter = u8::try_from(letter.with_context(|| format!("no such zone: {zone}"))?)?;
        body.push(number.parse::<u8>()? * 4 + letter);
    }
    Ok(())
}

/// The 64-bit FNV-1a sum.
fn fnv1a(bytes: &[u8]) -> u64 {
    bytes.iter().fold(0xcbf2_9ce4_8422_2325, |sum, &byte| {
        (sum ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}

/// A table with the names of its columns.
struct Table {
    columns: BTreeMap<String, usize>,
    rows: Vec<Vec<String>>,
}

impl Table {
    fn read(path: &Path) -> Result<Self> {
        let text = std::fs::read_to_string(path).with_context(|| path.display().to_string())?;
        let cells = |line: &str| line.split(',').map(str::to_owned).collect::<Vec<_>>();
        let mut lines = text.lines().filter(|line| !line.starts_with('#'));
        let head = cells(lines.next().context("a table without names")?);
        let rows = lines.map(cells).collect::<Vec<_>>();
        ensure!(rows.iter().all(|row| row.len() == head.len()), "{}: uneven", path.display());
        Ok(Self {
            columns: head.into_iter().enumerate().map(|(i, name)| (name, i)).collect(),
            rows,
        })
    }

    fn texts(&self, column: &str) -> Result<Vec<&str>> {
        let at = *self.columns.get(column).with_context(|| format!("no column {column}"))?;
        Ok(self.rows.iter().map(|row| row[at].as_str()).collect())
    }

    /// Whole numbers; an empty cell is 0.
    fn numbers(&self, column: &str) -> Result<Vec<i64>> {
        self.scaled(column, 1)
    }

    /// Numbers to the nearest tenth, in tenths.
    fn tenths(&self, column: &str) -> Result<Vec<i64>> {
        let tenths = |cell: &&str| -> Result<i64> {
            let value: f64 = cell.parse().with_context(|| format!("{column}: {cell}"))?;
            #[expect(clippy::cast_possible_truncation, reason = "degrees")]
            let tenths = (value * 10.0).round() as i64;
            Ok(tenths)
        };
        self.texts(column)?.iter().map(tenths).collect()
    }

    /// Twelve columns as rows of twelve, in so many parts of the unit.
    fn months(&self, what: &str, parts: i64) -> Result<Vec<Vec<i64>>> {
        let columns = MONTHS
            .iter()
            .map(|month| self.scaled(&format!("{what}_{month}"), parts))
            .collect::<Result<Vec<_>>>()?;
        Ok((0..self.rows.len()).map(|row| columns.iter().map(|c| c[row]).collect()).collect())
    }

    /// Numbers in so many parts of the unit: 1, or 10 for one decimal.
    fn scaled(&self, column: &str, parts: i64) -> Result<Vec<i64>> {
        let one = |cell: &&str| match (*cell, cell.split_once('.')) {
            ("", _) => Ok(0),
            (_, Some((whole, tenth))) if parts == 10 && tenth.len() == 1 => {
                Ok(whole.parse::<i64>()? * 10 + tenth.parse::<i64>()?)
            }
            (whole, None) => Ok(whole.parse::<i64>()? * parts),
            _ => anyhow::bail!("{column}: {cell}"),
        };
        self.texts(column)?.iter().map(one).collect()
    }
}
