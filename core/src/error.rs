//! What is wrong with a request: every field at once, with the value, the range and the unit.

use crate::bounds::Bounds;
use std::fmt;

/// One thing that is wrong with one field.
#[derive(Debug, Clone, PartialEq)]
pub struct FieldError {
    /// Path from the root in the request's own spelling, such as `gaps[2].width_in`.
    pub path: String,
    /// What is wrong.
    pub reason: Reason,
}

/// Why a field was refused.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// The text is no JSON; the position stands in words of the reader.
    NotJson {
        /// Line of the text, from 1.
        line: usize,
        /// Column of the line, from 1.
        column: usize,
    },
    /// Deeper, larger or longer than any walk could be.
    TooLarge {
        /// Key of the word for what is counted: `levels`, `values`, `characters`, `entries`.
        of: &'static str,
        /// The limit that was passed.
        limit: usize,
    },
    /// A field that no request has; the nearest known name, if one is near.
    Unknown {
        /// The key as it was given.
        got: String,
        /// A known key that it resembles.
        near: Option<&'static str>,
    },
    /// The same field twice in one map.
    Twice,
    /// A required field is missing.
    Missing,
    /// The value is of another kind.
    WrongType {
        /// Key of the word for what is wanted: `number`, `whole`, `text`, `flag`, `list`, `map`,
        /// or `plain` for a value that JSON cannot hold.
        want: &'static str,
        /// What was given, shortened.
        got: String,
    },
    /// Not a number, or infinite.
    NotANumber,
    /// Outside its range.
    OutOfRange {
        /// The value given.
        got: f64,
        /// The range.
        allowed: &'static Bounds,
    },
    /// Not one of the allowed words.
    NotOneOf {
        /// The word given.
        got: String,
        /// The words allowed.
        allowed: &'static [&'static str],
    },
    /// A text that is too long or of another form: a date, a ZIP code, a tape reading.
    Malformed {
        /// Key of the word for the form that is wanted: `date`, `zip`, `reading`, `text`.
        want: &'static str,
        /// What was given, shortened.
        got: String,
    },
    /// A ZIP code or station that the tables do not know.
    NoSuchPlace {
        /// The code given.
        got: String,
    },
    /// Two fields that cannot both be true.
    Contradicts {
        /// The other field.
        other: &'static str,
    },
    /// The climate tables were not loaded.
    NoClimate,
}

impl FieldError {
    /// An error at a path.
    #[must_use]
    pub fn at(path: impl Into<String>, reason: Reason) -> Self {
        Self { path: path.into(), reason }
    }
}

impl Reason {
    /// Stable word for programs.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::NotJson { .. } => "not_json",
            Self::TooLarge { .. } => "too_large",
            Self::Unknown { .. } => "unknown_field",
            Self::Twice => "twice",
            Self::Missing => "missing",
            Self::WrongType { .. } => "wrong_type",
            Self::NotANumber => "not_a_number",
            Self::OutOfRange { .. } => "out_of_range",
            Self::NotOneOf { .. } => "not_one_of",
            Self::Malformed { .. } => "malformed",
            Self::NoSuchPlace { .. } => "no_such_place",
            Self::Contradicts { .. } => "contradicts",
            Self::NoClimate => "no_climate",
        }
    }
}

impl fmt::Display for FieldError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.path, self.reason.code())
    }
}

impl std::error::Error for FieldError {}
