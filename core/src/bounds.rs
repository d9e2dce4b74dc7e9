//! Every range that an input is held to, written once: for the check, the message, the schema and
//! the form.

/// The allowed range of one input, and why.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Key of the words for the thing that is bounded.
    pub what: &'static str,
    /// Unit as it is written beside the number; empty for a count.
    pub unit: &'static str,
    /// Smallest value that passes.
    pub min: f64,
    /// Largest value that passes.
    pub max: f64,
    /// Why the range ends there.
    pub because: &'static str,
}

impl Bounds {
    /// Whether a value passes. NaN never does.
    #[must_use]
    pub fn allow(&self, value: f64) -> bool {
        self.min <= value && value <= self.max
    }
}
