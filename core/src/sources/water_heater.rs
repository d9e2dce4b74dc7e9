//! Sources of tanks, of the water that they heat, and of their dials.

use super::{Obtained, Source};

/// Cold water by the day of the year.
pub const MAINS: Source = Source {
    key: "burch-christensen-2007",
    cite: "Burch J, Christensen C, Towards development of an algorithm for mains water \
           temperature, American Solar Energy Society, 2007",
    place: "the equation with its guards, as carried in several public source codes",
    obtained: Obtained::Quoted,
};

/// The daily test behind an energy factor.
pub const FACTOR_TEST: Source = Source {
    key: "federal-water-heater-test",
    cite: "10 CFR 430, subpart B, appendix E: uniform test method for water heaters, of 1998 and of \
           today",
    place: "1998: 64.3 gal a day, 135 °F set, 58 °F in, 67.5 °F about. Today: 10, 38, 55 or 84 gal, \
            125 °F set",
    obtained: Obtained::FromMemory,
};

/// From a factor and a recovery efficiency to what a tank loses.
pub const FACTOR_ALGEBRA: Source = Source {
    key: "water-heater-analysis-model",
    cite: "The energy balance of the federal test solved for the loss: the form of the water heater \
           analysis model of the rulemaking, without dividing twice by the recovery efficiency",
    place: "input-referred loss; loss while cooling",
    obtained: Obtained::FromMemory,
};

/// Factors of the heaters that stand in such homes.
pub const USUAL_FACTORS: Source = Source {
    key: "trade-water-heater-factors",
    cite: "Energy factors and recovery efficiencies of water heaters that are found in \
           manufactured homes, from old to good; installed tanks may lose twice their rating",
    place: "gas 0.50 to 0.62 with 0.76; electric 0.86 to 0.95 with 0.98; heat pump 1.8 to 3.3",
    obtained: Obtained::FromMemory,
};

/// Hot water that people use.
pub const WATER_USE: Source = Source {
    key: "field-medians-hot-water",
    cite: "Medians of field studies of hot water use in homes: 15 to 20 gal a person and day, \
           widely spread",
    place: "by order of magnitude",
    obtained: Obtained::FromMemory,
};

/// Where a tank stands, as far as its warmth goes.
pub const CLOSET_WARMTH: Source = Source {
    key: "trade-closet-warmth",
    cite: "How far the closets of water heaters in manufactured homes follow the outdoors",
    place: "inside door 0 to 0.5 of the way, outside door 0.4 to 1",
    obtained: Obtained::CommonPractice,
};

/// How a tank behaves when its thermostat is turned.
pub const DIALS: Source = Source {
    key: "heater-manuals-dials",
    cite: "Manuals of three gas water heaters: temperatures at the marks of the dial",
    place: "10 °F a mark from HOT to C, 5 to 10 °F above, 10 to 30 °F below; the tap may differ by \
            30 °F from the mark",
    obtained: Obtained::Read,
};

/// How to turn a dial without numbers.
pub const TURNING_DOWN: Source = Source {
    key: "energy-department-turn-down",
    cite: "U.S. Department of Energy steps for turning a water heater down, as quoted by advice \
           pages",
    place: "mark the old place, a mark at a time (5 to 15 °F reckoned), both thermostats of an \
            electric tank alike, measure again",
    obtained: Obtained::Quoted,
};

/// A jacket round a tank.
pub const JACKET: Source = Source {
    key: "utility-tank-jacket",
    cite: "Advice of an electric utility on water heater jackets: a quarter to nearly half of the \
           standby heat; sold as R-10",
    place: "tank jackets",
    obtained: Obtained::Quoted,
};

/// The pipe next to a tank.
pub const NEAR_PIPE: Source = Source {
    key: "trade-near-pipe",
    cite: "Advice to insulate the first feet of pipe at a tank. How much of it stays hot between \
           draws is judged: half a foot by conduction in copper alone, up to three feet where the \
           water in it turns over",
    place: "0.6, 1.5 and 3 ft; sleeves of half-inch foam on three-quarter-inch pipe",
    obtained: Obtained::CommonPractice,
};

/// Shower heads.
pub const SHOWER: Source = Source {
    key: "federal-shower-flow",
    cite: "Federal limit of 2.5 gal a minute for shower heads since 1994; listed savers have 1.8 or \
           less; a shower lasts some eight minutes",
    place: "flow at 80 psi",
    obtained: Obtained::FromMemory,
};
