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

/// Flow through a leak of known area.
pub const LEAKAGE_AREA: Source = Source {
    key: "handbook-2021-ch16-leakage",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 16, leakage area at 4 Pa, eq. 40 to 45; typical exponent 0.65",
    obtained: Obtained::Read,
};

/// Temperature of a surface between two resistances, and the humidity at it.
pub const ISO_13788: Source = Source {
    key: "iso-13788-2012",
    cite: "ISO 13788:2012, Hygrothermal performance of building components and building elements: \
           internal surface temperature to avoid critical surface humidity and interstitial \
           condensation",
    place: "temperature factor and the 80 % of its surface check; vapour indoors over outdoors by \
            class (annex A); the three outcomes of a year's balance",
    obtained: Obtained::FromMemory,
};

/// Resistances of the air films at a surface.
pub const ISO_6946: Source = Source {
    key: "iso-6946",
    cite: "ISO 6946, Building components and building elements: thermal resistance and thermal \
           transmittance",
    place: "surface resistances 0.13 and 0.04 m² K/W; ISO 13788 takes 0.25 behind furniture",
    obtained: Obtained::FromMemory,
};

/// How damp homes are in winter.
pub const WINTER_HUMIDITY: Source = Source {
    key: "trade-winter-humidity",
    cite: "What people of the trade find in heated homes: 30 to 50 % in a mild winter, 15 to 40 % \
           in hard frost",
    place: "agrees with classes 1 to 3 of ISO 13788 at 0 and at −10 °C",
    obtained: Obtained::CommonPractice,
};

/// How much colder than the air a roof is under a clear sky.
pub const CLEAR_SKY: Source = Source {
    key: "trade-clear-sky",
    cite: "Thin metal roofs under a clear night sky",
    place: "several kelvins below the air",
    obtained: Obtained::FromMemory,
};

/// What lies above the ceiling of homes of this kind.
pub const ROOF_LAYERS: Source = Source {
    key: "trade-roof-layers",
    cite: "How roofs of manufactured homes are built",
    place: "some R-11 of insulation on the ceiling; a thin metal or shingle roof, R-0.3, above a \
            low cavity",
    obtained: Obtained::CommonPractice,
};
