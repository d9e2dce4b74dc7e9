//! Every range that an input is held to, written once: for the check, the message, the schema and
//! the form.
//!
//! A range ends where a slip of the tape or of the finger is more likely than the value. The
//! models hold in a narrower range and say so themselves.

pub mod question;
pub mod walk;

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
    /// A range from its first to its second number.
    #[must_use]
    const fn new(
        what: &'static str,
        unit: &'static str,
        (min, max): (f64, f64),
        because: &'static str,
    ) -> Self {
        Self { what, unit, min, max, because }
    }

    /// Whether a value passes. NaN never does.
    #[must_use]
    pub fn allow(&self, value: f64) -> bool {
        self.min <= value && value <= self.max
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_range_holds_its_ends_and_never_what_is_no_number() {
        let range = walk::GAP_WIDTH;
        assert!(range.allow(range.min) && range.allow(range.max));
        assert!(!range.allow(f64::NAN) && !range.allow(f64::INFINITY) && !range.allow(-0.5));
    }

    #[test]
    fn every_range_is_the_right_way_round_and_says_why_it_ends() {
        for range in walk::ALL.iter().chain(question::ALL) {
            assert!(range.min < range.max, "{}", range.what);
            assert!(range.min.is_finite() && range.max.is_finite(), "{}", range.what);
            assert!(!range.because.is_empty(), "{}", range.what);
        }
    }
}
