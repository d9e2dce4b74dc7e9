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
        /// Key of the words for one entry.
        each: &'static str,
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
    /// Key of the words for it.
    pub what: &'static str,
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
        Self { key, what: what(key, &shape), shape, required: false, doc }
    }

    /// A field that must be there.
    #[must_use]
    pub(super) const fn needed(key: &'static str, shape: Shape, doc: &'static str) -> Self {
        Self { key, what: what(key, &shape), shape, required: true, doc }
    }

    /// The field with other words than its key or its range has.
    #[must_use]
    pub(super) const fn called(self, what: &'static str) -> Self {
        Self { what, ..self }
    }
}

/// The words of a number are those of its range, of anything else those of its key.
const fn what(key: &'static str, shape: &Shape) -> &'static str {
    match shape {
        Shape::Number(bounds) | Shape::Whole(bounds) => bounds.what,
        _ => key,
    }
}

impl Shape {
    /// Key of the words for the value at a path such as `gaps[2].width_in`.
    #[must_use]
    pub fn what(&self, path: &str) -> Option<&'static str> {
        let mut here = self;
        let mut what = None;
        for step in path.split('.') {
            let (key, entry) = step.split_once('[').map_or((step, false), |(key, _)| (key, true));
            let Shape::Map(fields) = here else { return None };
            let field = fields.iter().find(|field| field.key == key)?;
            (here, what) = match field.shape {
                Shape::List { of, each, .. } if entry => (of, Some(each)),
                _ => (&field.shape, Some(field.what)),
            };
        }
        what
    }
}
