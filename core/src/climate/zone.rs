//! Climate zones of the energy code.

use std::fmt;

/// A climate zone such as `3A` or `7`.
///
/// ```
/// use winterseam::climate::Zone;
///
/// let coast = Zone::parse("2A").expect("a zone");
/// assert!(coast.is_hot_humid());
/// assert_eq!(Zone::parse("9A"), None);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Zone {
    number: u8,
    moisture: Option<Moisture>,
}

/// The letter of a zone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Moisture {
    /// A: moist.
    Humid,
    /// B: dry.
    Dry,
    /// C: on the west coast.
    Marine,
}

impl Zone {
    /// Zones 1–6 have a letter, zones 7 and 8 have none.
    #[must_use]
    pub fn new(number: u8, moisture: Option<Moisture>) -> Option<Self> {
        match (number, moisture) {
            (1..=6, Some(_)) | (7 | 8, None) => Some(Self { number, moisture }),
            _ => None,
        }
    }

    /// Reads `3A` or `7`.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let (number, letter) = text.split_at_checked(1)?;
        let moisture = match letter {
            "" => None,
            "A" => Some(Moisture::Humid),
            "B" => Some(Moisture::Dry),
            "C" => Some(Moisture::Marine),
            _ => return None,
        };
        Self::new(number.parse().ok()?, moisture)
    }

    /// From 1 (hottest) to 8.
    #[must_use]
    pub fn number(self) -> u8 {
        self.number
    }

    /// The letter; none in zones 7 and 8.
    #[must_use]
    pub fn moisture(self) -> Option<Moisture> {
        self.moisture
    }

    /// Whether the air outdoors is hot and moist for much of the year: zones 1A to 3A.
    #[must_use]
    pub fn is_hot_humid(self) -> bool {
        self.number <= 3 && self.moisture == Some(Moisture::Humid)
    }

    /// The zone that the atlas writes as four times its number plus the place of its letter.
    pub(super) fn from_code(code: u8) -> Option<Self> {
        let letter = [None, Some(Moisture::Humid), Some(Moisture::Dry), Some(Moisture::Marine)];
        Self::new(code / 4, letter[usize::from(code % 4)])
    }
}

impl fmt::Display for Zone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let letter = match self.moisture {
            None => "",
            Some(Moisture::Humid) => "A",
            Some(Moisture::Dry) => "B",
            Some(Moisture::Marine) => "C",
        };
        write!(f, "{}{letter}", self.number)
    }
}
