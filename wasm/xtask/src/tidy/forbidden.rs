//! Words that no file may contain. They stand in `wasm/xtask/words.sha256` as salted hashes only,
//! `salt$hash` a line, so that the list itself does not say them.

use super::{File, Findings};
use crate::target;
use anyhow::{Context as _, Result, ensure};
use sha2::{Digest as _, Sha256};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::hash::{BuildHasher as _, RandomState};

const LIST: &str = "wasm/xtask/words.sha256";

pub(super) fn check(files: &[File], found: &mut Findings) -> Result<()> {
    let list = target::read(LIST)?;
    let list = list
        .lines()
        .map(|line| line.split_once('$').with_context(|| format!("{LIST}: {line:?}")))
        .collect::<Result<Vec<_>>>()?;
    for (word, paths) in words(files) {
        if list.iter().any(|(salt, known)| hash(salt, &word) == *known) {
            for path in paths {
                found.broken(path, format!("contains `{word}`, which never appears here"));
            }
        }
    }
    Ok(())
}

/// Adds a word to the list.
pub(crate) fn forbid(word: &str) -> Result<()> {
    let mut parts = split(word);
    let (word, rest) = (parts.next(), parts.next());
    ensure!(word.is_some() && rest.is_none(), "one word of letters and digits at a time");
    let salt = format!("{:016x}", RandomState::new().hash_one(std::process::id()));
    let mut list = target::read(LIST).unwrap_or_default();
    let _ = writeln!(list, "{salt}${}", hash(&salt, &word.unwrap_or_default()));
    std::fs::write(target::root().join(LIST), list).context(LIST)
}

/// Every word of every file and of its path, with where it stands.
fn words(files: &[File]) -> BTreeMap<String, BTreeSet<&str>> {
    let mut words = BTreeMap::<_, BTreeSet<_>>::new();
    for file in files.iter().filter(|file| !file.ends_with("lock") && file.path != LIST) {
        for word in split(&file.text).chain(split(&file.path)) {
            words.entry(word).or_default().insert(file.path.as_str());
        }
    }
    words
}

/// Runs of letters and digits, in small letters.
fn split(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty() && word.parse::<f64>().is_err())
        .map(str::to_lowercase)
}

fn hash(salt: &str, word: &str) -> String {
    let digest = Sha256::digest(format!("{salt}{word}"));
    digest.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

#[cfg(test)]
mod tests {
    use super::{hash, split};

    #[test]
    fn words_are_found_inside_names_and_whatever_their_case() {
        assert_eq!(split("a_Word-here (2.5)").collect::<Vec<_>>(), ["a", "word", "here"]);
    }

    #[test]
    fn the_salt_changes_the_hash() {
        assert_ne!(hash("a", "word"), hash("b", "word"));
        // The published test vector of SHA-256 for `abc`.
        assert!(hash("a", "bc").starts_with("ba7816bf8f01cfea"));
    }
}
