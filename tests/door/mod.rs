//! The door: what comes in is understood or refused by name, and never breaks anything.

mod chance;
mod json;
#[cfg(feature = "peers")]
mod json_schema_live;
mod messages;
mod questions;
mod random;
mod refusals;
mod schema;

use winterseam::error::FieldError;
use winterseam::home::Home;
use winterseam::wire::{Tree, home};

/// Reads and checks a request.
fn walk_in(text: &str) -> Result<Home, Vec<FieldError>> {
    home(&Tree::from_json(text)?)
}

/// What is wrong with a request, as `path code`, in the order in which it is told.
fn wrong(text: &str) -> Vec<String> {
    let problems = walk_in(text).err().unwrap_or_default();
    problems.iter().map(|error| format!("{} {}", error.path, error.reason.code())).collect()
}

/// A request in which one object stands in one place.
fn with(place: &str, object: &str) -> String {
    format!(r#"{{"today": "2026-11-25", "{place}": {object}}}"#)
}
