//! Where things lie, and how `cargo` is called.

use crate::step;
use anyhow::{Context as _, Result};
use std::path::{Path, PathBuf};
use std::process::Command;

/// The root of the workspace. `cargo run` says where this package lies now; where it was built may
/// be another checkout that shares the target folder.
pub(crate) fn root() -> PathBuf {
    let built = || env!("CARGO_MANIFEST_DIR").into();
    let here = PathBuf::from(std::env::var_os("CARGO_MANIFEST_DIR").unwrap_or_else(built));
    here.ancestors().nth(2).unwrap_or(&here).to_path_buf()
}

/// Where cargo puts what it builds.
pub(crate) fn folder() -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => root().join(folder),
        None => root().join("target"),
    }
}

/// A file under the root, read as text.
pub(crate) fn read(path: &str) -> Result<String> {
    std::fs::read_to_string(root().join(path)).with_context(|| path.to_owned())
}

/// `cargo` at the root, the same that runs this program. What the outer `cargo` said to this
/// program is not passed on.
pub(crate) fn cargo<'a>(words: impl IntoIterator<Item = &'a str>) -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(root()).args(words);
    for (key, _) in std::env::vars_os() {
        let inherited = key.to_string_lossy();
        if inherited.starts_with("CARGO_PKG_") || inherited.starts_with("CARGO_MANIFEST_") {
            command.env_remove(&key);
        }
    }
    command
}

/// A release example of the core; the same program that a person would run.
pub(crate) fn example(name: &str) -> Result<PathBuf> {
    let build =
        ["build", "--release", "--quiet", "--locked", "--package=winterseam", "--example", name];
    step::run(&mut cargo(build))?;
    let program = format!("{name}{}", std::env::consts::EXE_SUFFIX);
    Ok(folder().join("release/examples").join(program))
}
