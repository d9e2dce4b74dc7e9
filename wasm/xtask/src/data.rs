//! Files that are made from data and checked in: each maker hands back paths and contents, which
//! are written, or compared with what lies there.

use crate::{atlas, target, words};
use anyhow::{Context as _, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};

/// A file that is made: its path from the root, and what is in it.
pub(crate) type Made = (PathBuf, Vec<u8>);

/// Makes tables, words and climate.
pub(crate) fn run(check: bool) -> Result<()> {
    let root = target::root();
    let words = words::generate(&root)?;
    let mut made: Vec<Made> =
        words.into_iter().map(|(path, text)| (path, text.into_bytes())).collect();
    made.push(("core/data/climate/atlas.bin".into(), atlas::build(&root)?));
    settle(&made, check, "cargo xtask data")
}

/// Writes the files, or names each that differs from what lies there.
pub(crate) fn settle(files: &[Made], check: bool, job: &str) -> Result<()> {
    let stale = files.iter().filter(|(path, content)| !lies_there(path, content));
    if check {
        let stale = stale.map(|(path, _)| path.display().to_string()).collect::<Vec<_>>();
        if !stale.is_empty() {
            bail!("{} not as made; run `{job}`", stale.join(", "));
        }
        println!("{} files are as made", files.len());
        return Ok(());
    }
    for (path, content) in stale {
        fs::write(target::root().join(path), content)
            .with_context(|| path.display().to_string())?;
        println!("{} written", path.display());
    }
    Ok(())
}

fn lies_there(path: &Path, content: &[u8]) -> bool {
    fs::read(target::root().join(path)).is_ok_and(|old| old == content)
}
