//! `cargo conform NAMES…`: the outside checks of the folders named, and how many rows were
//! compared, passed and disputed.

use crate::{python, step, target};
use anyhow::{Context as _, Result, bail, ensure};
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::process::Command;

/// Rows of one table.
#[derive(Debug, Default, Clone, Copy, PartialEq, Eq)]
struct Rows {
    compared: usize,
    passed: usize,
    disputed: usize,
}

impl Rows {
    fn add(&mut self, other: Self) {
        self.compared += other.compared;
        self.passed += other.passed;
        self.disputed += other.disputed;
    }
}

/// Runs the checks in the folders named, or all of them.
pub(crate) fn run(names: &[String]) -> Result<()> {
    let folders = folders()?;
    let names: BTreeSet<_> =
        if names.is_empty() { folders.clone() } else { names.iter().cloned().collect() };
    if let Some(name) = names.iter().find(|name| !folders.contains(*name)) {
        let known = folders.iter().map(String::as_str).collect::<Vec<_>>().join(" ");
        bail!("no folder `{name}` under tests/reference; there are: {known}");
    }
    let tests = tests_of(&names)?;
    ensure!(!tests.is_empty(), "no test looks into these folders");
    let tally = target::folder().join("conform.csv");
    let _ = fs::remove_file(&tally);
    let mut check = tests_command();
    check.arg("--exact").args(&tests).env("CONFORM_TALLY", &tally);
    let passed = step::start(&mut check)?.success();
    let tables = read(&fs::read_to_string(&tally).unwrap_or_default())?;
    print(&tables);
    ensure!(passed, "an outside check missed");
    for name in &names {
        let prefix = format!("{name}/");
        ensure!(tables.keys().any(|t| t.starts_with(&prefix)), "`{name}`: no row was compared");
    }
    Ok(())
}

/// The folders under `tests/reference`.
fn folders() -> Result<BTreeSet<String>> {
    let reference = target::root().join("tests/reference");
    let entries = fs::read_dir(&reference).context("tests/reference")?;
    Ok(entries
        .filter_map(Result::ok)
        .filter(|entry| entry.path().is_dir())
        .filter_map(|entry| entry.file_name().into_string().ok())
        .collect())
}

/// Every test below a module of one of these names. A filter would not do: `air::` also fits
/// `moist_air::`.
fn tests_of(names: &BTreeSet<String>) -> Result<Vec<String>> {
    let list = step::output(tests_command().args(["--list", "--format=terse"]))?;
    Ok(list
        .lines()
        .filter_map(|line| line.strip_suffix(": test"))
        .filter(|test| test.split_once("::").is_some_and(|(module, _)| names.contains(module)))
        .map(str::to_owned)
        .collect())
}

fn tests_command() -> Command {
    let mut command = target::cargo(["test", "--quiet", "--package=conformance"]);
    if let Some(python) = python::interpreter() {
        command.arg("--features=peers").env("WINTERSEAM_PYTHON", python);
    }
    command.arg("--");
    command
}

/// Lines of `table,compared,passed,disputed`; a table may be compared by more than one test.
fn read(tally: &str) -> Result<BTreeMap<String, Rows>> {
    let mut tables = BTreeMap::<_, Rows>::new();
    for line in tally.lines() {
        let rows = parse(line).with_context(|| format!("tally line {line:?}"))?;
        tables.entry(rows.0).or_default().add(rows.1);
    }
    Ok(tables)
}

fn parse(line: &str) -> Option<(String, Rows)> {
    let mut cells = line.rsplitn(4, ',');
    let mut number = || cells.next()?.parse().ok();
    let (disputed, passed, compared) = (number()?, number()?, number()?);
    Some((cells.next()?.to_owned(), Rows { compared, passed, disputed }))
}

fn print(tables: &BTreeMap<String, Rows>) {
    let width = tables.keys().map(String::len).max().unwrap_or(0).max("table".len());
    println!("{:<width$}{:>10}{:>10}{:>10}", "table", "compared", "passed", "disputed");
    let mut total = Rows::default();
    for (name, rows) in tables {
        println!("{name:<width$}{:>10}{:>10}{:>10}", rows.compared, rows.passed, rows.disputed);
        total.add(*rows);
    }
    println!("{:<width$}{:>10}{:>10}{:>10}", "total", total.compared, total.passed, total.disputed);
}

#[cfg(test)]
mod tests {
    use super::{Rows, read};

    #[test]
    fn rows_of_one_table_from_two_tests_are_added() {
        let tables = read("air/a,5,4,1\nair/a,2,2,0\n").unwrap();
        assert_eq!(tables["air/a"], Rows { compared: 7, passed: 6, disputed: 1 });
    }

    #[test]
    fn a_broken_tally_is_refused() {
        assert!(read("air/a,5\n").is_err());
    }
}
