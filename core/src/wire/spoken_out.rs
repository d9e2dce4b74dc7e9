//! The words of choices that only questions and answers hold.

use crate::ducts::bag::{Bound, Direction};
use crate::home::spoken;
use crate::repairs::Who;
use crate::report::Every;
use crate::safety::Kind;
use crate::sources::Confidence;

spoken! {
    Direction { "filling" = Filling, "emptying" = Emptying }
    Bound { "exact" = Exact, "at_most" = AtMost, "at_least" = AtLeast }
}

/// A choice that has a word in answers.
pub(super) trait Word {
    /// The word of this choice.
    fn word(self) -> &'static str;
}

impl Word for Confidence {
    fn word(self) -> &'static str {
        match self {
            Self::Billed => "billed",
            Self::Measured => "measured",
            Self::Seen => "seen",
            Self::Guessed => "guessed",
        }
    }
}

impl Word for Kind {
    fn word(self) -> &'static str {
        match self {
            Self::Out => "out",
            Self::Off => "off",
            Self::Today => "today",
            Self::Soon => "soon",
        }
    }
}

impl Word for Who {
    fn word(self) -> &'static str {
        match self {
            Self::Resident => "resident",
            Self::AbleAdult => "able_adult",
            Self::Qualified => "qualified",
        }
    }
}

impl Word for Every {
    fn word(self) -> &'static str {
        match self {
            Self::Month => "month",
            Self::Year => "year",
        }
    }
}
