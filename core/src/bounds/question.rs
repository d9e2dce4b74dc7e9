//! Ranges of the questions that a model answers on its own, in SI units.

use super::Bounds;

/// Water on skin.
pub const BURN_WATER: Bounds = Bounds::new(
    "water_temperature",
    "°C",
    (0.0, 110.0),
    "from ice to the steam of a tank under pressure",
);

/// Mean air temperature of a year.
pub const ANNUAL_MEAN: Bounds =
    Bounds::new("annual_mean", "°C", (-40.0, 45.0), "colder or warmer than any place lived in");

/// Warmest less coldest monthly mean.
pub const MONTHLY_SWING: Bounds =
    Bounds::new("monthly_swing", "K", (0.0, 80.0), "zero is the tropics; no place swings more");

/// Along the gap.
pub const GAP_LENGTH: Bounds = Bounds::new(
    "gap_length",
    "m",
    (0.0001, 100.0),
    "from a pinhole to every crack of a home in one row",
);

/// The opening seen.
pub const GAP_WIDTH: Bounds =
    Bounds::new("gap_width", "m", (0.0001, 0.5), "from a hair crack to an open window");

/// The way the air travels.
pub const GAP_DEPTH: Bounds =
    Bounds::new("gap_depth", "m", (0.0, 2.0), "zero is a thin plate; longer is a duct");

/// Corners on that way.
pub const BENDS: Bounds = Bounds::new("gap_bends", "", (0.0, 50.0), "more is a filter");

/// Pressure across a gap.
pub const PRESSURE: Bounds = Bounds::new(
    "pressure",
    "Pa",
    (1e-06, 5000.0),
    "from the faintest draught to far beyond a door test",
);

/// Temperature of air.
pub const AIR: Bounds = Bounds::new(
    "air_temperature",
    "°C",
    (-80.0, 80.0),
    "colder or hotter than any air at the ground",
);

/// Pressure of the air.
pub const AIR_PRESSURE: Bounds = Bounds::new(
    "air_pressure",
    "Pa",
    (30_000.0, 120_000.0),
    "from the highest peak to below the sea",
);

/// Leakage area at 4 Pa.
pub const LEAKAGE_AREA: Bounds =
    Bounds::new("leakage_area", "m²", (0.0, 10.0), "zero is tight; more is no wall");

/// Wind speed.
pub const WIND: Bounds = Bounds::new(
    "wind_speed",
    "m/s",
    (0.0, 60.0),
    "stronger than any hour of wind that a home stands through",
);

/// Shelter class of the handbook.
pub const SHELTER_CLASS: Bounds =
    Bounds::new("shelter_class", "", (1.0, 5.0), "the handbook has five");

/// Exponent of the leak law.
pub const EXPONENT: Bounds =
    Bounds::new("leak_exponent", "", (0.5, 1.0), "from an orifice to a long, narrow crack");

/// Storeys.
pub const STOREYS: Bounds = Bounds::new("storeys", "", (1.0, 3.0), "the handbook has three");

/// Relative humidity as a share.
pub const RELATIVE_HUMIDITY: Bounds =
    Bounds::new("relative_humidity", "", (0.0, 1.0), "from dry to saturated");

/// Air that moisture is asked of.
pub const DRY_BULB: Bounds = Bounds::new(
    "air_temperature",
    "°C",
    (-100.0, 200.0),
    "the range of the handbook's saturation formula",
);

/// Above the level at which the pressures indoors and outdoors are the same.
pub const ABOVE_NEUTRAL: Bounds = Bounds::new(
    "height_above_neutral",
    "m",
    (0.0, 30.0),
    "below that level air comes in; higher is no home",
);

/// R-value of a layer.
pub const INSULANCE: Bounds =
    Bounds::new("insulance", "m²·K/W", (0.0, 50.0), "zero is bare; more is no wall");

/// Height above the sea.
pub const ALTITUDE: Bounds = Bounds::new(
    "altitude",
    "m",
    (-100.0, 4000.0),
    "from the lowest valley to above the highest town of the United States",
);

/// Dollars spent once.
pub const COST: Bounds =
    Bounds::new("cost", "$", (0.0, 10_000_000.0), "more than a home costs, many times over");

/// Dollars saved a year; negative is a loss.
pub const SAVING: Bounds =
    Bounds::new("saving", "$/year", (-1_000_000.0, 1_000_000.0), "more than any bill");

/// Years a repair lasts.
pub const LIFE: Bounds = Bounds::new(
    "life",
    "years",
    (1.0, 100.0),
    "a year is the shortest that counts; nothing here outlasts a century",
);

/// Real discount rate as a share.
pub const DISCOUNT: Bounds =
    Bounds::new("discount_rate", "", (-0.5, 1.0), "a rate in per cent is a slip");

/// Heat of the cable for each metre.
pub const CABLE_POWER: Bounds =
    Bounds::new("cable_power", "W/m", (0.1, 200.0), "less is no heat cable; more melts the pipe");

/// Length of the cable.
pub const CABLE_LENGTH: Bounds =
    Bounds::new("cable_length", "m", (0.1, 300.0), "a stub, to longer than any outlet feeds");

/// Outer diameter of a pipe.
pub const DIAMETER: Bounds =
    Bounds::new("pipe_outside", "m", (0.001, 1.0), "from a capillary to a culvert");

/// Inner diameter of a pipe.
pub const INNER_DIAMETER: Bounds =
    Bounds::new("pipe_inside", "m", (0.0005, 1.0), "from a capillary to a culvert");

/// Emissivity of a surface.
pub const EMISSIVITY: Bounds =
    Bounds::new("emissivity", "", (0.0, 1.0), "from a perfect mirror to a black body");

/// Temperature of a pipe.
pub const PIPE_TEMPERATURE: Bounds =
    Bounds::new("pipe_temperature", "°C", (-80.0, 150.0), "beyond any water pipe");

/// Film of a surface.
pub const FILM: Bounds =
    Bounds::new("film", "W/(m²·K)", (0.1, 1000.0), "from a mirror in a vacuum to a torrent");

/// Water that stands in a pipe.
pub const STANDING_WATER: Bounds =
    Bounds::new("standing_water", "°C", (0.0, 100.0), "liquid water");

/// Thickness of insulation.
pub const INSULATION: Bounds = Bounds::new("pipe_insulation", "m", (0.0, 1.0), "zero is bare");

/// Conductivity of insulation.
pub const CONDUCTIVITY: Bounds =
    Bounds::new("conductivity", "W/(m·K)", (0.001, 500.0), "from vacuum to copper");

/// Between panes, or pane and film.
pub const WINDOW_GAP: Bounds =
    Bounds::new("window_gap", "m", (0.001, 0.5), "from touching panes to a deep window seat");

/// Thickness of a pane.
pub const GLASS: Bounds =
    Bounds::new("glass", "m", (0.0005, 0.05), "from a microscope slide to a bank counter");

/// Day of the year; 29 February is left out.
pub const DAY: Bounds = Bounds::new("day_of_year", "", (1.0, 365.0), "a year has that many");

/// Floor area.
pub const FLOOR: Bounds =
    Bounds::new("floor_area", "m²", (1.0, 2000.0), "from a closet to the largest house");

/// Rooms meant for sleeping.
pub const BEDROOMS: Bounds =
    Bounds::new("bedrooms", "", (0.0, 50.0), "more than the rule was made for");

/// Seconds that a bag takes.
pub const BAG: Bounds = Bounds::new(
    "bag_time",
    "s",
    (0.1, 3600.0),
    "quicker than a watch can catch, or no flow at all",
);

/// Air through a furnace.
pub const FAN: Bounds =
    Bounds::new("fan_flow", "m³/s", (0.001, 5.0), "a furnace needs air; more is a hall's");

/// Heat that a furnace gives.
pub const CAPACITY: Bounds = Bounds::new(
    "furnace_capacity",
    "W",
    (1.0, 200_000.0),
    "a furnace gives heat; more is no home's",
);

/// Density of air.
pub const AIR_DENSITY: Bounds = Bounds::new(
    "air_density",
    "kg/m³",
    (0.5, 1.6),
    "from hot air on high ground to the coldest at the sea",
);

/// Heat through the walls of ducts for each degree.
pub const DUCT_WALLS: Bounds =
    Bounds::new("duct_walls", "W/K", (0.0, 1000.0), "zero is perfect; more are no ducts of a home");

/// Share of a fan's air that ducts leak.
pub const DUCT_LEAK: Bounds =
    Bounds::new("duct_leak", "", (0.0, 0.6), "zero is tight; more is a duct that has come off");

/// All of them, for tests of the words and of the table itself.
pub const ALL: &[&Bounds] = &[
    &BURN_WATER,
    &ANNUAL_MEAN,
    &MONTHLY_SWING,
    &GAP_LENGTH,
    &GAP_WIDTH,
    &GAP_DEPTH,
    &BENDS,
    &PRESSURE,
    &AIR,
    &AIR_PRESSURE,
    &LEAKAGE_AREA,
    &WIND,
    &SHELTER_CLASS,
    &EXPONENT,
    &STOREYS,
    &RELATIVE_HUMIDITY,
    &DRY_BULB,
    &ABOVE_NEUTRAL,
    &INSULANCE,
    &ALTITUDE,
    &COST,
    &SAVING,
    &LIFE,
    &DISCOUNT,
    &CABLE_POWER,
    &CABLE_LENGTH,
    &DIAMETER,
    &INNER_DIAMETER,
    &EMISSIVITY,
    &PIPE_TEMPERATURE,
    &FILM,
    &STANDING_WATER,
    &INSULATION,
    &CONDUCTIVITY,
    &WINDOW_GAP,
    &GLASS,
    &DAY,
    &FLOOR,
    &BEDROOMS,
    &BAG,
    &FAN,
    &CAPACITY,
    &AIR_DENSITY,
    &DUCT_WALLS,
    &DUCT_LEAK,
];
