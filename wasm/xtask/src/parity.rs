//! The module in Node: `tests/parity.mjs` compares the bits with the native programs, and the other
//! scripts beside it knock at the door.

use crate::{step, target, tools};
use anyhow::{Context as _, Result, ensure};

/// Runs the scripts on what `cargo page` built.
pub(crate) fn run() -> Result<()> {
    tools::need_node()?;
    let module = target::root().join("www/pkg/winterseam_bg.wasm");
    ensure!(module.exists(), "www/pkg has no module; `cargo page` builds it");
    let mut compare = tools::node(["--test"]);
    compare.args(scripts()?);
    compare.env("WINTERSEAM_ASSESS", target::example("assess")?);
    compare.env("WINTERSEAM_PROBE", target::example("probe")?);
    step::run(&mut compare)
}

/// The scripts that lie directly in `tests`.
fn scripts() -> Result<Vec<std::path::PathBuf>> {
    let entries = std::fs::read_dir(target::root().join("tests")).context("tests")?;
    let paths = entries.filter_map(|entry| Some(entry.ok()?.path()));
    let mut scripts: Vec<_> =
        paths.filter(|path| path.extension().is_some_and(|end| end == "mjs")).collect();
    scripts.sort();
    Ok(scripts)
}
