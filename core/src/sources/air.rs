//! Sources of what air does: leaks, wind, fans and the bag.

use super::{Obtained, Source};

/// The basic model of air leakage, and how far off it is.
pub const HANDBOOK_2021_CH16: Source = Source {
    key: "handbook-2021-ch16",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 16, eq. 48, tables 4 and 6; accuracy of empirical models",
    obtained: Obtained::Read,
};

/// The discharge coefficient of a sharp-edged opening.
pub const HANDBOOK_2021_CH16_ORIFICE: Source = Source {
    key: "handbook-2021-ch16-orifice",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 16, sharp-edged orifice, about 0.6; leakage area at 4 Pa, eq. 40 to 45",
    obtained: Obtained::Read,
};

/// The fresh air that a whole home needs.
pub const HANDBOOK_2021_CH17: Source = Source {
    key: "handbook-2021-ch17",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 17, eq. 11",
    obtained: Obtained::Read,
};

/// The quadratic law of flow through a crack.
pub const CRACK_FLOW_1987: Source = Source {
    key: "crack-flow-1987",
    cite: "Baker, Sharples and Ward: Air flow through cracks. Building Services Engineering \
           Research and Technology 8, 1987",
    place: "quadratic law, loss 1.5 and one for each bend",
    obtained: Obtained::FromMemory,
};

/// How the law of a crack passes into that of a sharp-edged opening.
pub const CRACK_EDGE: Source = Source {
    key: "crack-edge",
    cite: "Judgement: the edge loss of a sharp opening fades over five widths of depth",
    place: "1/0.6² − 1.5 rounded to 1.28 at depth zero",
    obtained: Obtained::CommonPractice,
};

/// Viscosity of dry air.
pub const STANDARD_ATMOSPHERE_1976: Source = Source {
    key: "standard-atmosphere-1976",
    cite: "U.S. Standard Atmosphere, 1976",
    place: "viscosity after Sutherland",
    obtained: Obtained::FromMemory,
};

/// Gas constant and heat capacity of dry air.
pub const DRY_AIR: Source = Source {
    key: "dry-air",
    cite: "Ideal dry air near room temperature",
    place: "287.05 J/(kg K) and 1006 J/(kg K)",
    obtained: Obtained::CommonPractice,
};

/// The bag held over a register or a fan.
pub const BAG_TEST: Source = Source {
    key: "bag-test",
    cite: "Home-repair column quoting the bag test of a national housing agency",
    place: "three times of filling, three of emptying",
    obtained: Obtained::Quoted,
};
