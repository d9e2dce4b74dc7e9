//! The same requests and questions natively and in wasm; `tests/parity.mjs` compares the bits.

use crate::{step, target, tools};
use anyhow::{Result, ensure};

/// Runs the comparison on what `cargo page` built.
pub(crate) fn run() -> Result<()> {
    tools::need_node()?;
    let module = target::root().join("www/pkg/winterseam_bg.wasm");
    ensure!(module.exists(), "www/pkg has no module; `cargo page` builds it");
    let mut compare = tools::node(["--test", "tests/parity.mjs"]);
    compare.env("WINTERSEAM_ASSESS", target::example("assess")?);
    compare.env("WINTERSEAM_PROBE", target::example("probe")?);
    step::run(&mut compare)
}
