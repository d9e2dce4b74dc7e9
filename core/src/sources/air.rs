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

/// How flow, leakage area and exponent of a whole home hang together.
pub const HANDBOOK_2021_CH16_LEAKAGE: Source = Source {
    key: "handbook-2021-ch16-leakage",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 16, eq. 40 to 46",
    obtained: Obtained::Read,
};

/// The enhanced model of air leakage.
pub const HANDBOOK_2021_CH16_ENHANCED: Source = Source {
    key: "handbook-2021-ch16-enhanced",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 16, eq. 47, 49 and 50, tables 7 to 9",
    obtained: Obtained::Read,
};

/// The full model of air leakage, part by part.
pub const LEAK_SPREAD_1998: Source = Source {
    key: "leak-spread-1998",
    cite: "Walker and Wilson: Field validation of algebraic equations for stack and wind driven air \
           infiltration calculations. HVAC&R Research 4(2), 1998",
    place: "stack, flue and wind factors without a crawl space, as a public urban-climate model \
            carries them; bias and scatter in the abstract, read; shelter of a flue from memory",
    obtained: Obtained::Quoted,
};

/// The same over a crawl space.
pub const LEAK_SPREAD_1998_CRAWL_SPACE: Source = Source {
    key: "leak-spread-1998-crawl-space",
    cite: LEAK_SPREAD_1998.cite,
    place: "wind factor over a crawl space; within 3 per cent of the handbook's table",
    obtained: Obtained::FromMemory,
};

/// How leaks and fans add up, in one chapter.
pub const HANDBOOK_2021_CH16_FANS: Source = Source {
    key: "handbook-2021-ch16-fans",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 16, eq. 51",
    obtained: Obtained::Read,
};

/// How leaks and fans add up, in the other.
pub const HANDBOOK_2021_CH17_FANS: Source = Source {
    key: "handbook-2021-ch17-fans",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 17, eq. 14",
    obtained: Obtained::Read,
};

/// Leakage on the day that heating or cooling is sized for.
pub const HANDBOOK_2021_CH17_DESIGN_DAY: Source = Source {
    key: "handbook-2021-ch17-design-day",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 17, eq. 8 to 10, table 5; the order of the terms by a second document and the table",
    obtained: Obtained::Read,
};

/// Leakage for each square metre of envelope, from tight to very leaky.
pub const HANDBOOK_2021_CH17_UNIT_LEAKAGE: Source = Source {
    key: "handbook-2021-ch17-unit-leakage",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 17, tables 3 and 4; the classes by year are judgement",
    obtained: Obtained::Read,
};

/// How a test with a blower is brought to standard air.
pub const FAN_TEST_STANDARD: Source = Source {
    key: "astm-e779",
    cite: "ASTM E779: Determining air leakage rate by fan pressurization",
    place: "density of the flow; density and viscosity of the coefficient",
    obtained: Obtained::FromMemory,
};

/// What leaks count for against the need of fresh air.
pub const INFILTRATION_CREDIT: Source = Source {
    key: "infiltration-credit-2013",
    cite: "Standard work specification of a national laboratory on the infiltration credit of \
           ASHRAE 62.2-2013",
    place: "0.052 times weather factor, storeys and flow at 50 Pa; subtracted in full",
    obtained: Obtained::Read,
};

/// Openings that bring air to a burner.
pub const COMBUSTION_OPENINGS: Source = Source {
    key: "fuel-gas-code-openings",
    cite: "Mechanical and fuel gas codes as a public code site and appliance manuals print them",
    place: "air from outdoors and from indoors; free area for each opening",
    obtained: Obtained::Quoted,
};

/// Room that a burner needs where its air comes from indoors.
pub const COMBUSTION_VOLUME: Source = Source {
    key: "furnace-manual-known-air-changes",
    cite: "Installation manual of a condensing furnace",
    place: "table of volumes by known air changes; 21 and 15 computed from it",
    obtained: Obtained::Read,
};

/// Air that a burner takes.
pub const COMBUSTION_DEMAND: Source = Source {
    key: "handbook-2021-ch17-combustion",
    cite: "ASHRAE Handbook: Fundamentals, 2021 (SI)",
    place: "ch. 17, combustion air: 0.4 L/(s kW), twice that with natural draft",
    obtained: Obtained::Read,
};

/// Pull at which a flue with natural draft begins to spill.
pub const FLUE_SPILLS: Source = Source {
    key: "trade-flue-spill",
    cite: "Limits that contractors kept to before spillage itself was tested; editions differ",
    place: "2 Pa for a lone water heater with natural draft, 3 Pa beside a furnace",
    obtained: Obtained::FromMemory,
};

/// Input of a water heater whose label nobody read.
pub const USUAL_BURNER_INPUT: Source = Source {
    key: "trade-tank-input",
    cite: "Labels of gas water heaters of 30 to 50 gallons, as sold in the United States",
    place: "input: 30,000 to 50,000 Btu/h, mostly 40,000",
    obtained: Obtained::FromMemory,
};

/// Leakage areas of single parts of a home.
pub const COMPONENTS: Source = Source {
    key: "handbook-2001-ch26-components",
    cite: "ASHRAE Handbook: Fundamentals, 1997 to 2005, effective air leakage areas",
    place: "rows of parts that this housing has; withdrawn since, a part varies tenfold",
    obtained: Obtained::FromMemory,
};

/// The same, where a national laboratory prints the same figures.
pub const COMPONENTS_QUOTED: Source = Source {
    key: "multizone-residential-leakage",
    cite: "National laboratory: miscellaneous residential leakage data for multizone models",
    place: "doors, frames, joints, vents; typical and tight",
    obtained: Obtained::Quoted,
};

/// Air changes measured in manufactured homes.
pub const FIELD_1990: Source = Source {
    key: "ek-1990-double-wides",
    cite: "Ek and others, 1990: 93 double-wides of the Pacific Northwest, in ASHRAE Handbook: \
           Fundamentals, 2021, ch. 16",
    place: "mean 0.50 air changes an hour, 0.26 to 1.09",
    obtained: Obtained::Quoted,
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

/// Leaks and a fan together, by several hands.
pub const JOINED_FLOWS: Source = Source {
    key: "joined-flows",
    cite: "L. Palmiter, T. Bond, 1991, for half the fan; ASHRAE Standard 62.2 from 2016 on, for the \
           sub-additive rule",
    place: "superposition of natural infiltration and unbalanced fans",
    obtained: Obtained::FromMemory,
};
