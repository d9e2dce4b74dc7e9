//! hook
use anyhow::Result;
pub(crate) fn run(check: bool) -> Result<()> {
    crate::data::settle(&[], check, "cargo xtask types")
}
