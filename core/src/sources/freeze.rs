//! Sources of pipes in the cold: films of air, conduction, heat cables.

use super::{Obtained, Source};

/// Natural convection around a horizontal cylinder.
pub const CHURCHILL_CHU_1975: Source = Source {
    key: "churchill-chu-1975",
    cite: "Churchill and Chu: Correlating equations for laminar and turbulent free convection from \
           a horizontal cylinder. International Journal of Heat and Mass Transfer 18, 1975",
    place: "p. 1049",
    obtained: Obtained::Quoted,
};

/// Wind across a cylinder.
pub const CHURCHILL_BERNSTEIN_1977: Source = Source {
    key: "churchill-bernstein-1977",
    cite: "Churchill and Bernstein: A correlating equation for forced convection from gases and \
           liquids to a circular cylinder in crossflow. Journal of Heat Transfer 99, 1977",
    place: "p. 300",
    obtained: Obtained::Quoted,
};

/// How natural and forced convection join on a horizontal cylinder.
pub const ASTM_C680: Source = Source {
    key: "astm-c680",
    cite: "ASTM C680: estimate of the heat gain or loss of insulated flat, cylindrical and \
           spherical systems",
    place: "mixed convection, exponent 4 for horizontal cylinders",
    obtained: Obtained::FromMemory,
};

/// Radial conduction through the layers of a pipe in series with its surface.
pub const ISO_12241: Source = Source {
    key: "iso-12241",
    cite: "ISO 12241: Thermal insulation for building equipment and industrial installations, \
           calculation rules",
    place: "clause 4.1",
    obtained: Obtained::FromMemory,
};

/// The radiation constant.
pub const CODATA_2018: Source = Source {
    key: "codata-2018-sigma",
    cite: "CODATA recommended values of the fundamental physical constants, 2018",
    place: "Stefan–Boltzmann constant",
    obtained: Obtained::FromMemory,
};

/// Heat conduction of air.
pub const US_STANDARD_ATMOSPHERE_1976: Source = Source {
    key: "us-standard-atmosphere-1976-conductivity",
    cite: "U.S. Standard Atmosphere, 1976",
    place: "equation 53",
    obtained: Obtained::FromMemory,
};

/// Foam, paint and oxidised metal shed heat almost like black bodies.
pub const DULL_SURFACE: Source = Source {
    key: "emissivity-dull-surface",
    cite: "Emissivity 0.9 of foam, plastic and painted or rusted metal",
    place: "tables of heat transfer",
    obtained: Obtained::FromMemory,
};

/// Temperature that a water pipe is held at.
pub const CABLE_HOLD: Source = Source {
    key: "cable-manual-hold",
    cite: "Instruction manual of a heat cable for water pipes",
    place: "p. 6: 40 °F (4 °C) to be held",
    obtained: Obtained::Read,
};

/// When the thermostat of a heat cable switches.
pub const CABLE_THERMOSTAT: Source = Source {
    key: "cable-thermostat",
    cite: "Built-in thermostats of heat cables: on at 38 °F, off at 45 °F",
    place: "usual set points; single cables differ by some 5 °F",
    obtained: Obtained::CommonPractice,
};

/// How a self-regulating cable gives less as it warms.
pub const CABLE_SELF_REGULATING: Source = Source {
    key: "cable-self-regulating",
    cite: "Straight line from the power on the tag at 50 °F (10 °C) to nothing at 65 °C; curves of \
           single cables are hollow",
    place: "form and end point",
    obtained: Obtained::FromMemory,
};

/// Heat for each foot of cables sold for homes.
pub const CABLE_POWER: Source = Source {
    key: "cable-power-articles",
    cite: "Inspection and repair articles about heat tape on the water pipes of homes",
    place: "3 to 12 W/ft; 5 to 12 usual, 3 low",
    obtained: Obtained::Read,
};

/// Lengths of cables sold with a plug.
pub const CABLE_LENGTH: Source = Source {
    key: "cable-length-retail",
    cite: "Plug-in heat cables as they are sold: 6 to 30 ft",
    place: "the riser of one home, from frost line to belly, stands near the lower end",
    obtained: Obtained::FromMemory,
};

/// Outside diameters of water pipes.
pub const PIPE_SIZES: Source = Source {
    key: "copper-tube-sizes",
    cite: "ASTM B88 copper tube and the plastic pipes made to the same outside diameters",
    place: "½, ¾ and 1 in: 0.625, 0.875 and 1.125 in outside",
    obtained: Obtained::FromMemory,
};

/// How foam on pipes conducts.
pub const PIPE_FOAM: Source = Source {
    key: "pipe-foam-conductivity",
    cite: "ASTM C534, C547 and C1427: elastomeric, glass-fibre and polyethylene pipe insulation",
    place: "0.23 to 0.28 Btu·in/(h·ft²·°F) near 75 °F",
    obtained: Obtained::FromMemory,
};

/// Thickness of foam on pipes of homes.
pub const PIPE_FOAM_THICKNESS: Source = Source {
    key: "pipe-foam-thickness",
    cite: "Foam tubes for water pipes as they are sold: ⅜ to ½ in, more on order",
    place: "an exposed riser may have none",
    obtained: Obtained::FromMemory,
};

/// When a cable is plugged in and out.
pub const CABLE_SEASON: Source = Source {
    key: "cable-season-margin",
    cite: "Plug in two weeks before the first frost of autumn, out two weeks after the last of spring",
    place: "margin of 14 days",
    obtained: Obtained::CommonPractice,
};

/// How far the first and last freeze spread from year to year.
pub const FREEZE_SPREAD: Source = Source {
    key: "station-freeze-quantiles",
    cite: "Freeze date quantiles of six U.S. stations, from NOAA normals and retail gardening pages",
    place: "10 % and 50 % dates of the first and last 32 °F",
    obtained: Obtained::Quoted,
};
