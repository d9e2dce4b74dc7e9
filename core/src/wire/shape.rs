//! What a request may hold, as data: one description for the check, the schema, the types and the
//! form.

use crate::bounds::Bounds;

/// The kind of one value.
#[derive(Debug, Clone, Copy)]
pub enum Shape {
    /// A map with these fields and no other.
    Map(&'static [Field]),
    /// A list.
    List {
        /// Kind of each entry.
        of: &'static Shape,
        /// Most entries.
        max: usize,
    },
    /// A number in a range.
    Number(&'static Bounds),
    /// A whole number in a range.
    Whole(&'static Bounds),
    /// Yes or no.
    Flag,
    /// One of these words.
    Word(&'static [&'static str]),
    /// A text.
    Text {
        /// Most characters.
        max: usize,
    },
    /// A day, as `2026-11-25`.
    Date,
    /// A ZIP code of five digits.
    Zip,
}

/// One field of a map.
#[derive(Debug, Clone, Copy)]
pub struct Field {
    /// Name in the request.
    pub key: &'static str,
    /// Kind of its value.
    pub shape: Shape,
    /// Whether it may not be left out.
    pub required: bool,
    /// What it is, for people who write requests.
    pub doc: &'static str,
}

impl Field {
    /// A field that may be left out: not seen.
    #[must_use]
    pub(super) const fn seen(key: &'static str, shape: Shape, doc: &'static str) -> Self {
        Self { key, shape, required: false, doc }
    }

    /// A field that must be there.
    #[must_use]
    pub(super) const fn needed(key: &'static str, shape: Shape, doc: &'static str) -> Self {
        Self { key, shape, required: true, doc }
    }
}
