//! Ranges of what a person sees and measures, in the units of a request.

use super::Bounds;

/// Year of the walk.
pub const TODAY_YEAR: Bounds =
    Bounds::new("today", "", (2000.0, 2099.0), "prices and codes are those of these years");

/// Year on the data plate.
pub const YEAR_BUILT: Bounds = Bounds::new(
    "year_built",
    "",
    (1930.0, 2099.0),
    "travel trailers to live in begin in the 1930s",
);

/// Width of the whole home.
pub const HOME_WIDTH: Bounds =
    Bounds::new("home_width", "ft", (7.0, 60.0), "from a travel trailer to three wide sections");

/// Length of the home without the hitch.
pub const HOME_LENGTH: Bounds = Bounds::new(
    "home_length",
    "ft",
    (10.0, 100.0),
    "from a travel trailer to the longest section that a road takes",
);

/// Rooms meant for sleeping.
pub const BEDROOMS: Bounds =
    Bounds::new("bedrooms", "", (0.0, 12.0), "more than a home of three sections holds");

/// What the thermostat is set to in winter.
pub const SETPOINT: Bounds =
    Bounds::new("setpoint", "°F", (40.0, 90.0), "the scale of a room thermostat");

/// What the thermometer indoors shows.
pub const INDOORS: Bounds =
    Bounds::new("indoors", "°F", (-20.0, 120.0), "the scale of a room thermometer");

/// Price of one unit of any fuel.
pub const PRICE: Bounds =
    Bounds::new("price", "$", (0.01, 2000.0), "from subsidised electricity to a dear cord of wood");

/// Price of a kilowatt-hour.
pub const PRICE_KWH: Bounds =
    Bounds::new("price", "$/kWh", (0.01, 2.0), "a price in cents is a slip");

/// Price of a therm.
pub const PRICE_THERM: Bounds =
    Bounds::new("price", "$/therm", (0.05, 15.0), "a price in cents is a slip");

/// Price of a hundred cubic feet.
pub const PRICE_CCF: Bounds =
    Bounds::new("price", "$/ccf", (0.05, 15.0), "a price in cents is a slip");

/// Price of a gallon.
pub const PRICE_GALLON: Bounds =
    Bounds::new("price", "$/gal", (0.3, 40.0), "a price of a tank or of a pound is a slip");

/// Price of a cord of wood.
pub const PRICE_CORD: Bounds =
    Bounds::new("price", "$/cord", (20.0, 2000.0), "a price of a bundle is a slip");

/// Price of a bag of pellets.
pub const PRICE_BAG: Bounds =
    Bounds::new("price", "$/bag", (1.0, 50.0), "a price of a ton is a slip");

/// Time since the filter was put in.
pub const FILTER_IN_USE: Bounds = Bounds::new(
    "filter_days",
    "days",
    (0.0, 3650.0),
    "ten years is a filter that nobody remembers",
);

/// The hottest reading at a tap.
pub const TAP: Bounds = Bounds::new(
    "tap_temperature",
    "°F",
    (32.0, 230.0),
    "between ice and steam; a tank under pressure gives steam above 212",
);

/// How far a dial was turned down.
pub const MARKS: Bounds = Bounds::new(
    "marks_down",
    "",
    (-10.0, 10.0),
    "a dial has some seven marks; less than zero is up",
);

/// Water in the tank.
pub const TANK: Bounds =
    Bounds::new("tank_volume", "gal", (2.0, 120.0), "from a tank below a sink to the largest");

/// Seconds until the shower has filled a gallon.
pub const GALLON: Bounds =
    Bounds::new("shower_gallon", "s", (5.0, 240.0), "quicker than any shower, or a drip");

/// People who live there.
pub const RESIDENTS: Bounds =
    Bounds::new("residents", "", (1.0, 20.0), "more than a home of three sections holds");

/// Input of the burners in a closet.
pub const BURNER_INPUT: Bounds = Bounds::new(
    "burner_input",
    "Btu/h",
    (10_000.0, 400_000.0),
    "from the smallest tank to a furnace beside a heater without a tank",
);

/// Seconds in which a fan empties a bag.
pub const BAG: Bounds = Bounds::new(
    "bag_seconds",
    "s",
    (0.5, 600.0),
    "quicker than a watch can catch, or no flow at all",
);

/// Along the gap.
pub const GAP_LENGTH: Bounds =
    Bounds::new("gap_length", "in", (0.1, 1200.0), "from a nail hole to the longest marriage line");

/// The opening seen.
pub const GAP_WIDTH: Bounds = Bounds::new(
    "gap_width",
    "in",
    (0.01, 12.0),
    "narrower than a business card, or wider than a hand is long: a hole in the wall",
);

/// How far the width of a gap may be off.
pub const GAP_ERROR: Bounds =
    Bounds::new("gap_error", "in", (0.001, 1.0), "from a feeler gauge to a guess by eye");

/// Gaps like one another.
pub const GAP_COUNT: Bounds =
    Bounds::new("gap_count", "", (1.0, 100.0), "more outlets than a home has");

/// Flow of a blower test at 50 Pa.
pub const FLOW_50: Bounds = Bounds::new(
    "flow_50",
    "cfm",
    (50.0, 15_000.0),
    "from a home tighter than any to three blowers at once",
);

/// Flow exponent of a blower test.
pub const EXPONENT: Bounds =
    Bounds::new("leak_exponent", "", (0.5, 1.0), "from an orifice to a long, narrow crack");

/// Leakage area of a whole home.
pub const LEAKAGE: Bounds = Bounds::new(
    "home_leakage",
    "in²",
    (3.0, 1_500.0),
    "from a home tighter than any to an open door",
);

/// The way the air travels through the gap.
pub const GAP_DEPTH: Bounds =
    Bounds::new("gap_depth", "in", (0.01, 24.0), "from sheet metal to a floor with its belly");

/// Corners on the way through the gap.
pub const BENDS: Bounds =
    Bounds::new("gap_bends", "", (0.0, 8.0), "more corners than boards meet at one place");

/// Length of the heat cable.
pub const CABLE_LENGTH: Bounds = Bounds::new(
    "cable_length",
    "ft",
    (1.0, 500.0),
    "from a short stub to the longest cable on one outlet",
);

/// Heat of the cable for each foot.
pub const CABLE_POWER: Bounds = Bounds::new(
    "cable_power",
    "W/ft",
    (0.5, 30.0),
    "cables for water pipes, with room for old ones",
);

/// Day of the year; 29 February is left out.
pub const DAY: Bounds = Bounds::new("cable_day", "", (1.0, 365.0), "a year has that many");

/// Outside diameter of the pipe.
pub const PIPE_OUTSIDE: Bounds =
    Bounds::new("pipe_outside", "in", (0.2, 6.0), "from a supply tube to a sewer pipe");

/// Thickness of the insulation on the pipe.
pub const INSULATION: Bounds =
    Bounds::new("insulation", "in", (0.0, 6.0), "zero is bare; thicker fits below no home");

/// Length of skirting that is missing.
pub const SKIRTING_GAP: Bounds =
    Bounds::new("skirting_gap", "ft", (0.0, 320.0), "nothing, to all round the largest home");

/// Area of the holes in a belly.
pub const BELLY_HOLE: Bounds = Bounds::new(
    "belly_hole",
    "in²",
    (1.0, 350_000.0),
    "from a finger's hole to all of the largest floor",
);

/// Windows like one another.
pub const WINDOW_COUNT: Bounds =
    Bounds::new("window_count", "", (1.0, 40.0), "more than a home of three sections has");

/// Width or height of a window.
pub const WINDOW_SIDE: Bounds =
    Bounds::new("window_side", "in", (6.0, 120.0), "from a peephole to a wall of glass");

/// What somebody was told that a repair costs.
pub const OWN_COST: Bounds =
    Bounds::new("own_cost", "$", (0.0, 100_000.0), "more than such a home is worth to mend");

/// How long somebody was told that a repair lasts.
pub const OWN_LIFE: Bounds =
    Bounds::new("own_life", "years", (0.1, 60.0), "longer than such homes stand");

/// Width or height of a furnace filter.
pub const FILTER_SIDE: Bounds =
    Bounds::new("filter_side", "in", (6.0, 40.0), "smaller or larger fits no home furnace");

/// Height of a home above the sea.
pub const ELEVATION: Bounds = Bounds::new(
    "elevation",
    "ft",
    (-300.0, 12_000.0),
    "from the lowest valley to the highest town of the United States",
);

/// Heat that a furnace gives.
pub const OUTPUT: Bounds = Bounds::new(
    "furnace_output",
    "Btu/h",
    (5_000.0, 250_000.0),
    "from a room heater to the largest home furnace",
);

/// Rise of air through a furnace, on its label.
pub const RISE: Bounds =
    Bounds::new("label_rise", "°F", (5.0, 150.0), "no furnace warms air by less or by more");

/// Registers of a home.
pub const REGISTERS: Bounds =
    Bounds::new("registers", "", (1.0, 60.0), "more than a home of three sections has");

/// Registers that are closed.
pub const CLOSED: Bounds =
    Bounds::new("registers_closed", "", (0.0, 60.0), "more than a home of three sections has");

/// Air at a register or return while the furnace heats.
pub const DUCT_AIR: Bounds =
    Bounds::new("duct_air", "°F", (30.0, 220.0), "from a cold home to a furnace that overheats");

/// All of them, for tests of the words and of the table itself.
pub const ALL: &[&Bounds] = &[
    &TODAY_YEAR,
    &YEAR_BUILT,
    &HOME_WIDTH,
    &HOME_LENGTH,
    &BEDROOMS,
    &SETPOINT,
    &INDOORS,
    &PRICE,
    &PRICE_KWH,
    &PRICE_THERM,
    &PRICE_CCF,
    &PRICE_GALLON,
    &PRICE_CORD,
    &PRICE_BAG,
    &FILTER_IN_USE,
    &TAP,
    &MARKS,
    &TANK,
    &GALLON,
    &RESIDENTS,
    &BURNER_INPUT,
    &BAG,
    &GAP_LENGTH,
    &GAP_WIDTH,
    &GAP_ERROR,
    &GAP_COUNT,
    &FLOW_50,
    &EXPONENT,
    &LEAKAGE,
    &GAP_DEPTH,
    &BENDS,
    &CABLE_LENGTH,
    &CABLE_POWER,
    &DAY,
    &PIPE_OUTSIDE,
    &INSULATION,
    &SKIRTING_GAP,
    &BELLY_HOLE,
    &WINDOW_COUNT,
    &WINDOW_SIDE,
    &OUTPUT,
    &RISE,
    &REGISTERS,
    &CLOSED,
    &DUCT_AIR,
    &ELEVATION,
    &OWN_COST,
    &OWN_LIFE,
    &FILTER_SIDE,
];
