//! Sources of what moist air is like.

use super::{Obtained, Source};

/// Saturation pressure, humidity ratio, enthalpy, volume; pressure by altitude.
pub const HANDBOOK_CH1: Source = Source {
    key: "handbook-ch1",
    cite: "ASHRAE Handbook: Fundamentals",
    place: "ch. 1, saturation pressure over ice and over water, perfect-gas relations, standard \
            atmosphere",
    obtained: Obtained::FromMemory,
};
