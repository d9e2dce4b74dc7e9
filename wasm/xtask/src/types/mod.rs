//! The shapes of requests and answers, made from the core: JSON Schema, and from it the types of
//! the page.

mod typescript;

use crate::data::{Made, settle};
use crate::{step, target};
use anyhow::{Context as _, Result};

const SCHEMA: &str = "core/src/wire/schema.json";
const TYPES: &str = "www/src/wire.ts";

/// Makes both files.
pub(crate) fn run(check: bool) -> Result<()> {
    let schema = schema()?;
    let types = typescript::of(&serde_json::from_str(&schema).context("the schema is no JSON")?)?;
    let made: [Made; 2] =
        [(SCHEMA.into(), schema.into_bytes()), (TYPES.into(), types.into_bytes())];
    settle(&made, check, "cargo xtask types")
}

/// What the core says of itself.
fn schema() -> Result<String> {
    let mut ask = target::cargo(["run", "--quiet", "--locked", "--package=winterseam"]);
    ask.args(["--features=schema", "--example=assess", "--", "--schema"]);
    step::output(&mut ask)
}
