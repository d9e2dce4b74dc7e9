//! Makes the tables of messages in `core/src/tables` from the word files in `core/words`.

use anyhow::{Context as _, ensure};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

const LANGUAGES: [&str; 2] = ["en", "es"];

/// The files that the word files make, each with its text: for writing, or for checking that
/// nobody edited them by hand. Paths start at the root.
pub(crate) fn generate(root: &Path) -> anyhow::Result<Vec<(PathBuf, String)>> {
    LANGUAGES.iter().map(|tag| table(root, tag)).collect()
}

fn table(root: &Path, tag: &str) -> anyhow::Result<(PathBuf, String)> {
    let name = format!("core/words/{tag}.json");
    let text = std::fs::read_to_string(root.join(&name)).with_context(|| name.clone())?;
    let messages: BTreeMap<String, String> =
        serde_json::from_str(&text).with_context(|| name.clone())?;
    // The reader keeps the last of two equal keys and says nothing.
    let lines = text.lines().filter(|line| line.trim_start().starts_with('"')).count();
    ensure!(lines == messages.len(), "{name}: a key stands twice, or two share a line");
    Ok((PathBuf::from(format!("core/src/tables/words_{tag}.rs")), source(&name, &messages)?))
}

fn source(name: &str, messages: &BTreeMap<String, String>) -> anyhow::Result<String> {
    let mut out = format!(
        "//! Messages made from `{name}` by `cargo xtask data`; never edited by hand.\n\n\
         /// Key and message, sorted by key.\n\
         #[rustfmt::skip]\n\
         pub(crate) const MESSAGES: &[(&str, &str)] = &[\n"
    );
    for (key, message) in messages {
        writeln!(out, "    ({key:?}, {message:?}),")?;
    }
    out.push_str("];\n");
    Ok(out)
}
