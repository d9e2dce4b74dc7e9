//! From what came in to a typed home.

mod agree;
mod fields;
mod typed;

pub use fields::REQUEST;

use super::check::{check, date};
use super::tree::Tree;
use crate::error::{FieldError, Reason};
use crate::home::Home;

/// The home that a request describes.
///
/// ```
/// use winterseam::wire::{Tree, home};
///
/// let request = Tree::from_json(r#"{"today": "2026-11-25", "home": {"width_ft": 14}}"#)?;
/// assert!(home(&request)?.building.width.is_some());
///
/// let wrong = Tree::from_json(r#"{"today": "2026-11-25", "home": {"width_ft": 140}}"#)?;
/// assert_eq!(home(&wrong).unwrap_err()[0].path, "home.width_ft");
/// # Ok::<(), Vec<winterseam::error::FieldError>>(())
/// ```
///
/// # Errors
///
/// Everything that is wrong with the request, all at once.
pub fn home(request: &Tree) -> Result<Home, Vec<FieldError>> {
    let mut problems = check(request, &REQUEST);
    problems.extend(agree::contradictions(request));
    match request.get("today").text().and_then(date) {
        Some(today) if problems.is_empty() => Ok(typed::home(request, today)),
        None if problems.is_empty() => Err(vec![FieldError::at("today", Reason::Missing)]),
        _ => Err(problems),
    }
}
