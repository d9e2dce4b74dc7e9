//! The fixed day-to-day weather that every synthetic year runs through.

/// Day-to-day weather of one year, in standard deviations of each month: no chance at run time, and
/// the same spells everywhere.
///
/// ```
/// use winterseam::climate::Sequence;
///
/// let january = &Sequence::FIXED.warmth()[..31];
/// let mean = january.iter().sum::<f64>() / 31.0;
/// assert!(mean.abs() < 0.001);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Sequence {
    warmth: [f64; 365],
    range: [f64; 365],
}

impl Sequence {
    /// The sequence of [`SEQUENCE`](crate::sources::climate::SEQUENCE), read while compiling.
    pub const FIXED: &'static Self = &Self::read(include_bytes!("../../data/climate/sequence.csv"));

    /// How much warmer each day is than its season.
    #[must_use]
    pub fn warmth(&self) -> &[f64; 365] {
        &self.warmth
    }

    /// How much wider each day's swing is than its season's.
    #[must_use]
    pub fn range(&self) -> &[f64; 365] {
        &self.range
    }

    /// Reads lines of `day,temperature,range`. Lines that begin with anything but a digit are
    /// skipped. A fault in the table is an error of the compiler.
    const fn read(text: &[u8]) -> Self {
        let (mut warmth, mut range) = ([0.0; 365], [0.0; 365]);
        let (mut at, mut day) = (0, 0);
        while at < text.len() {
            if text[at].is_ascii_digit() {
                at = past(text, at, b',');
                warmth[day] = thousandths(text, at);
                at = past(text, at, b',');
                range[day] = thousandths(text, at);
                day += 1;
            }
            at = past(text, at, b'\n');
        }
        assert!(day == 365, "one line a day");
        Self { warmth, range }
    }
}

/// The place behind the next such byte.
const fn past(text: &[u8], mut at: usize, byte: u8) -> usize {
    while text[at] != byte {
        at += 1;
    }
    at + 1
}

/// The number that stands there, written with three decimals.
const fn thousandths(text: &[u8], mut at: usize) -> f64 {
    let negative = text[at] == b'-';
    let mut digits = 0.0;
    let mut decimals = 0;
    let mut after_point = false;
    while text[at] != b',' && text[at] != b'\n' {
        if text[at].is_ascii_digit() {
            digits = digits * 10.0 + (text[at] - b'0') as f64;
            decimals += after_point as u8;
        }
        after_point |= text[at] == b'.';
        at += 1;
    }
    assert!(decimals == 3, "three decimals");
    (if negative { -digits } else { digits }) / 1000.0
}
