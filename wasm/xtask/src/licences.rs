//! Every dependency, of Rust and of the page, is under a licence that this project may pass on.

use crate::target;
use anyhow::{Context as _, Result, bail};
use cargo_metadata::MetadataCommand;
use serde_json::{Map, Value};
use spdx::{Expression, LicenseReq};

/// Licences that ask for no more than their notice.
const FREE: [&str; 14] = [
    "0BSD",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "BSL-1.0",
    "BlueOak-1.0.0",
    "CC0-1.0",
    "ISC",
    "MIT",
    "MIT-0",
    "Unicode-3.0",
    "Unicode-DFS-2016",
    "Unlicense",
    "Zlib",
];

/// Further ones for programs that only test, and that nobody is handed.
const FOR_TESTS: [&str; 1] = ["MPL-2.0"];

/// Checks them all and names every one that does not pass.
pub(crate) fn check() -> Result<()> {
    let (crates, mut bad) = crates()?;
    let (packages, more) = packages()?;
    bad.extend(more);
    if !bad.is_empty() {
        bail!("licences that are not on the list: {}", bad.join("; "));
    }
    println!("{crates} crates and {packages} npm packages are under licences of the list");
    Ok(())
}

fn crates() -> Result<(usize, Vec<String>)> {
    let metadata = MetadataCommand::new()
        .current_dir(target::root())
        .other_options(vec!["--locked".to_owned(), "--quiet".to_owned()])
        .exec()
        .context("cargo metadata")?;
    let bad = metadata.packages.iter().filter(|package| {
        !package.license.as_deref().is_some_and(|licence| allowed(licence, false))
    });
    let bad = bad.map(|package| named(&package.name, package.license.as_deref())).collect();
    Ok((metadata.packages.len(), bad))
}

fn packages() -> Result<(usize, Vec<String>)> {
    let list: Value = serde_json::from_str(&target::read("www/package-lock.json")?)?;
    let list = list["packages"].as_object().context("www/package-lock.json has no packages")?;
    let bad = list.iter().filter_map(|(path, entry)| {
        let licence = entry["license"].as_str();
        let passes = licence.is_some_and(|licence| allowed(licence, for_tests(entry.as_object())));
        (!passes).then(|| named(path.trim_start_matches("node_modules/"), licence))
    });
    Ok((list.len(), bad.collect()))
}

fn for_tests(entry: Option<&Map<String, Value>>) -> bool {
    entry.is_some_and(|entry| entry.get("dev") == Some(&Value::Bool(true)))
}

fn named(package: &str, licence: Option<&str>) -> String {
    format!("{package} ({})", licence.unwrap_or("no licence named"))
}

/// Whether an SPDX expression can be met by the list.
fn allowed(expression: &str, for_tests: bool) -> bool {
    // Old manifests write `MIT/Apache-2.0` for `MIT OR Apache-2.0`.
    Expression::parse(&expression.replace('/', " OR "))
        .is_ok_and(|parsed| parsed.evaluate(|licence| listed(licence, for_tests)))
}

fn listed(licence: &LicenseReq, for_tests: bool) -> bool {
    let name = licence.license.to_string();
    let known = |list: &[&str]| list.contains(&name.as_str());
    known(&FREE) || (for_tests && known(&FOR_TESTS))
}

#[cfg(test)]
mod tests {
    use super::allowed;

    #[test]
    fn one_of_two_is_enough_and_both_of_two_are_needed() {
        assert!(allowed("GPL-3.0-only OR MIT", false));
        assert!(!allowed("GPL-3.0-only AND MIT", false));
        assert!(allowed("MIT/Apache-2.0", false));
    }

    #[test]
    fn a_licence_for_tests_does_not_pass_elsewhere() {
        assert!(allowed("MPL-2.0", true));
        assert!(!allowed("MPL-2.0", false));
    }
}
