//! Whose skin it is.

use super::damage::{DamageLaw, Exposure, Injury};
use crate::home::spoken;
use crate::sources::Source;
use crate::sources::hot_water::{CHILD_SKIN, DEGREES, OLDER_SKIN, SKIN_LAYERS};
use std::sync::OnceLock;
use uom::si::{f64::Length, f64::Ratio, length::micrometer, ratio::ratio};

/// Who is in the water, as far as it changes the time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Person {
    /// Skin of usual thickness.
    Adult,
    /// First injury of very thin skin: chosen to protect, not a measured dose.
    Child,
    /// Skin a fifth thinner, first injury: an estimate that protects.
    OlderAdult,
    /// The older adult's time; but whoever cannot feel or pull away is protected by no time.
    CannotFeelOrMove,
}

spoken! {
    Person {
        "adult" = Adult,
        "child" = Child,
        "older_adult" = OlderAdult,
        "cannot_feel_or_move" = CannotFeelOrMove,
    }
}

impl Person {
    /// Everyone.
    pub const ALL: [Self; 4] = [Self::Adult, Self::Child, Self::OlderAdult, Self::CannotFeelOrMove];

    /// What counts as a serious burn, and how deep it is looked for.
    #[must_use]
    pub fn injury(self) -> Injury {
        let (depth_um, threshold) = match self {
            Self::Adult => (80.0, 1.0),
            Self::Child => (30.0, 0.53),
            Self::OlderAdult | Self::CannotFeelOrMove => (64.0, 0.53),
        };
        Injury {
            basal_depth: Length::new::<micrometer>(depth_um),
            law: DamageLaw::henriques(),
            threshold: Ratio::new::<ratio>(threshold),
        }
    }

    /// The warming of this person's skin, worked out once for all waters.
    #[must_use]
    pub fn exposure(self) -> &'static Exposure {
        static SKINS: [OnceLock<Exposure>; 3] = [const { OnceLock::new() }; 3];
        let skin = match self {
            Self::Adult => &SKINS[0],
            Self::Child => &SKINS[1],
            Self::OlderAdult | Self::CannotFeelOrMove => &SKINS[2],
        };
        skin.get_or_init(|| self.injury().exposure())
    }

    /// Whether this person feels the heat and pulls away, so that a longer time helps.
    #[must_use]
    pub fn can_pull_away(self) -> bool {
        self != Self::CannotFeelOrMove
    }

    /// What the depth and the threshold rest on.
    pub(super) fn sources(self) -> [&'static Source; 2] {
        match self {
            Self::Adult => [&SKIN_LAYERS, &DEGREES],
            Self::Child => [&SKIN_LAYERS, &CHILD_SKIN],
            Self::OlderAdult | Self::CannotFeelOrMove => [&SKIN_LAYERS, &OLDER_SKIN],
        }
    }
}
