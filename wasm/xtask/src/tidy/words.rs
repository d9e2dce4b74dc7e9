//! Every language says the same things: word files in one folder have the same keys.

use super::{File, Findings};
use anyhow::{Context as _, Result};
use serde_json::{Map, Value};
use std::collections::BTreeSet;

const FOLDERS: [&str; 2] = ["core/words/", "www/src/labels/"];

pub(super) fn check(files: &[File], found: &mut Findings) -> Result<()> {
    for folder in FOLDERS {
        let mut languages = Vec::new();
        for file in files.iter().filter(|file| file.is_below(folder) && file.ends_with(".json")) {
            languages.push((&file.path, keys(&file.text).with_context(|| file.path.clone())?));
        }
        let all: BTreeSet<_> = languages.iter().flat_map(|(_, keys)| keys.clone()).collect();
        for (path, keys) in languages {
            for key in all.difference(&keys) {
                found.broken(path, format!("no `{key}`, which another language has"));
            }
        }
    }
    Ok(())
}

/// All keys; those of a nested list with dots between.
fn keys(text: &str) -> Result<BTreeSet<String>> {
    let mut found = BTreeSet::new();
    collect(&serde_json::from_str(text)?, "", &mut found);
    Ok(found)
}

fn collect(list: &Map<String, Value>, prefix: &str, found: &mut BTreeSet<String>) {
    for (key, value) in list {
        let key = format!("{prefix}{key}");
        match value {
            Value::Object(inner) => collect(inner, &format!("{key}."), found),
            _ => {
                found.insert(key);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{File, Findings, check};

    fn broken(english: &str, spanish: &str) -> Vec<String> {
        let file = |tag, text: &str| File {
            path: format!("core/words/{tag}.json"),
            text: text.to_owned(),
        };
        let mut found = Findings::default();
        check(&[file("en", english), file("es", spanish)], &mut found).unwrap();
        found.broken
    }

    #[test]
    fn a_key_that_one_language_lacks_is_named() {
        assert!(broken(r#"{"a":"x","b":"y"}"#, r#"{"a":"z","b":"w"}"#).is_empty());
        let found = broken(r#"{"a":"x","b":{"c":"y"}}"#, r#"{"a":"z"}"#);
        assert_eq!(found, ["core/words/es.json: no `b.c`, which another language has"]);
    }
}
