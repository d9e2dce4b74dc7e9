//! Reads tables of outside values and compares every row with what the core says.
//!
//! A table is a CSV file under `reference/<folder>/`. Lines that start with `#` say what it is:
//!
//! ```text
//! # source: who published it, where in it
//! # obtained: read | quoted | computed by NAME VERSION | from memory | common practice
//! # tolerance: <column> <number> absolute|relative|factor; <reason>
//! # disputed: <id> <column>; <why our value is kept>
//! ```
//!
//! The first column is `id`. Each column with a tolerance is compared in each row that fills it.
//! A disputed row stays in the table and fails the test once it agrees.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::io::Write as _;
use std::path::{Path, PathBuf};

/// One row of a table.
pub(crate) struct Row {
    table: String,
    cells: BTreeMap<String, String>,
}

impl Row {
    /// A cell as it stands in the file; empty when it is not filled.
    pub(crate) fn text(&self, column: &str) -> &str {
        self.cells.get(column).unwrap_or_else(|| panic!("{}: no column `{column}`", self.table))
    }

    /// A cell as a number.
    pub(crate) fn number(&self, column: &str) -> f64 {
        let cell = self.text(column);
        cell.parse().unwrap_or_else(|_| panic!("{}: `{column}` is {cell:?}", self.table))
    }

    /// Whether the cell is filled.
    pub(crate) fn has(&self, column: &str) -> bool {
        !self.text(column).is_empty()
    }
}

/// How near ours must be to theirs.
#[derive(Clone, Copy)]
enum Tolerance {
    Absolute(f64),
    Relative(f64),
    /// The larger over the smaller.
    Factor(f64),
}

impl Tolerance {
    fn parse(words: &str) -> Option<(String, Self)> {
        let (rule, reason) = words.split_once(';')?;
        assert!(!reason.trim().is_empty(), "a tolerance needs its reason: {words}");
        let mut words = rule.split_whitespace();
        let (column, size, kind) = (words.next()?, words.next()?.parse().ok()?, words.next()?);
        let tolerance = match kind {
            "absolute" => Self::Absolute(size),
            "relative" => Self::Relative(size),
            "factor" => Self::Factor(size),
            _ => return None,
        };
        Some((column.to_owned(), tolerance))
    }

    fn holds(self, ours: f64, theirs: f64) -> bool {
        match self {
            Self::Absolute(by) => (ours - theirs).abs() <= by,
            Self::Relative(by) => (ours - theirs).abs() <= by * theirs.abs(),
            Self::Factor(by) => ours / theirs <= by && theirs / ours <= by,
        }
    }
}

/// A table of outside values.
pub(crate) struct Table {
    name: String,
    rows: Vec<Row>,
    tolerances: BTreeMap<String, Tolerance>,
    disputed: BTreeMap<(String, String), String>,
}

impl Table {
    /// Reads `reference/<name>.csv`; the name starts with the folder: `air/handbook-2021-ch16`.
    pub(crate) fn read(name: &str) -> Self {
        let path = reference().join(format!("{name}.csv"));
        let text = std::fs::read_to_string(&path)
            .unwrap_or_else(|why| panic!("{}: {why}", path.display()));
        Self::parse(name, &text)
    }

    /// Reads a table from text.
    pub(crate) fn parse(name: &str, text: &str) -> Self {
        let notes = |key: &str| -> Vec<&str> {
            let head = format!("# {key}:");
            text.lines().filter_map(|l| l.strip_prefix(&head)).map(str::trim).collect()
        };
        for key in ["source", "obtained", "tolerance"] {
            assert!(!notes(key).is_empty(), "{name}: no `# {key}:` line");
        }
        let mut lines = text.lines().filter(|l| !l.starts_with('#') && !l.trim().is_empty());
        let head = cells(lines.next().unwrap_or_else(|| panic!("{name}: no column names")));
        assert_eq!(head[0], "id", "{name}: the first column is `id`");
        let rows = lines.map(|line| row(name, &head, line)).collect::<Vec<_>>();
        assert!(!rows.is_empty(), "{name}: no rows");
        Self {
            name: name.to_owned(),
            rows,
            tolerances: notes("tolerance")
                .into_iter()
                .map(|t| Tolerance::parse(t).unwrap_or_else(|| panic!("{name}: tolerance {t:?}")))
                .collect(),
            disputed: notes("disputed").into_iter().map(|d| dispute(name, d)).collect(),
        }
    }

    /// The rows, for checks that compare in their own way.
    pub(crate) fn rows(&self) -> &[Row] {
        &self.rows
    }

    /// Compares each column that `ours` gives with the same column of every row; reports all rows
    /// that miss, and every dispute that has ended.
    pub(crate) fn compare(&self, ours: impl Fn(&Row) -> Vec<(&'static str, f64)>) {
        let mut tally = Tally::default();
        let mut seen = BTreeMap::new();
        for row in &self.rows {
            for (column, value) in ours(row) {
                if row.has(column) {
                    *seen.entry(column.to_owned()).or_insert(0) += 1;
                    self.cell(row, column, value, &mut tally);
                }
            }
        }
        for column in self.tolerances.keys() {
            assert!(seen.contains_key(column), "{}: `{column}` was never compared", self.name);
        }
        tally.report(&self.name);
    }

    fn cell(&self, row: &Row, column: &str, ours: f64, tally: &mut Tally) {
        let theirs = row.number(column);
        let tolerance = self
            .tolerances
            .get(column)
            .unwrap_or_else(|| panic!("{}: no tolerance for `{column}`", self.name));
        let dispute = self.disputed.get(&(row.text("id").to_owned(), column.to_owned()));
        tally.note(
            row.text("id"),
            column,
            (ours, theirs),
            tolerance.holds(ours, theirs),
            dispute.map(String::as_str),
        );
    }
}

/// Counts comparisons and collects the misses; for checks that have no table.
#[derive(Default)]
pub(crate) struct Tally {
    passed: usize,
    disputed: usize,
    bad: String,
}

impl Tally {
    /// Notes one comparison.
    pub(crate) fn note(
        &mut self,
        id: &str,
        column: &str,
        (ours, theirs): (f64, f64),
        agrees: bool,
        dispute: Option<&str>,
    ) {
        match (agrees, dispute) {
            (true, None) => self.passed += 1,
            (false, Some(_)) => self.disputed += 1,
            (false, None) => {
                let _ = write!(self.bad, "\n  {id} {column}: theirs {theirs}, ours {ours}");
            }
            (true, Some(why)) => {
                let _ = write!(self.bad, "\n  {id} {column}: agrees now, drop the dispute ({why})");
            }
        }
    }

    /// Fails when anything missed or nothing was compared; else adds to the file that
    /// `cargo conform` sums up.
    pub(crate) fn report(self, name: &str) {
        assert!(self.bad.is_empty(), "{name}:{}", self.bad);
        assert!(self.passed + self.disputed > 0, "{name}: nothing was compared");
        if let Some(path) = std::env::var_os("CONFORM_TALLY") {
            let mut file =
                std::fs::OpenOptions::new().append(true).create(true).open(path).expect("tally");
            let compared = self.passed + self.disputed;
            let line = format!("{name},{compared},{},{}\n", self.passed, self.disputed);
            // In one piece, as other tests write to the same file.
            file.write_all(line.as_bytes()).expect("tally");
        }
    }
}

/// Where the tables lie.
pub(crate) fn reference() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("reference")
}

/// What a living peer prints, line by line: the script of this name under `peers`.
#[cfg(feature = "peers")]
pub(crate) fn peer(script: &str) -> Vec<String> {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("peers").join(script);
    let answer = std::process::Command::new(python).arg(script).output().expect("Python starts");
    assert!(answer.status.success(), "{}", String::from_utf8_lossy(&answer.stderr));
    String::from_utf8(answer.stdout).expect("text").lines().map(str::to_owned).collect()
}

/// The numbers of a peer's line, as many as are wanted.
#[cfg(feature = "peers")]
pub(crate) fn numbers<const N: usize>(line: &str) -> [f64; N] {
    let cells = line.split(',').map(|cell| cell.parse().expect("a number"));
    cells.collect::<Vec<_>>().try_into().expect("as many cells")
}

fn cells(line: &str) -> Vec<String> {
    line.split(',').map(|cell| cell.trim().to_owned()).collect()
}

fn row(name: &str, head: &[String], line: &str) -> Row {
    let values = cells(line);
    assert_eq!(values.len(), head.len(), "{name}: {line:?} has another number of cells");
    Row { table: name.to_owned(), cells: head.iter().cloned().zip(values).collect() }
}

fn dispute(name: &str, words: &str) -> ((String, String), String) {
    let parts = words.split_once(';').and_then(|(place, why)| {
        let (id, column) = place.trim().split_once(' ')?;
        Some(((id.to_owned(), column.trim().to_owned()), why.trim().to_owned()))
    });
    parts.filter(|p| !p.1.is_empty()).unwrap_or_else(|| panic!("{name}: disputed {words:?}"))
}

#[cfg(test)]
mod tests {
    use super::{Table, Tally};

    const HEAD: &str = "# source: s\n# obtained: read\n# tolerance: y 0.5 absolute; half a digit\n";

    fn table(rest: &str) -> Table {
        Table::parse("t", &format!("{HEAD}{rest}"))
    }

    #[test]
    #[should_panic(expected = "no rows")]
    fn an_empty_table_is_refused() {
        table("id,y\n");
    }

    #[test]
    #[should_panic(expected = "no `# source:` line")]
    fn a_table_without_a_source_is_refused() {
        Table::parse("t", "id,y\na,1\n");
    }

    #[test]
    #[should_panic(expected = "b y: theirs 2, ours 9")]
    fn every_row_is_compared() {
        table("id,y\na,9\nb,2\n").compare(|_| vec![("y", 9.0)]);
    }

    #[test]
    #[should_panic(expected = "agrees now, drop the dispute")]
    fn a_dispute_that_ended_fails() {
        table("# disputed: a y; misprint\nid,y\na,9\n").compare(|_| vec![("y", 9.0)]);
    }

    #[test]
    #[should_panic(expected = "nothing was compared")]
    fn nothing_compared_is_a_failure() {
        Tally::default().report("t");
    }
}
