//! Sources of what pipes, their insulation and the water in them are made of.

use super::{Obtained, Source};

/// Diameters of copper tube.
pub const COPPER_TUBE: Source = Source {
    key: "astm-b88",
    cite: "ASTM B88: Seamless copper water tube",
    place: "outside diameters and walls of types L and M",
    obtained: Obtained::FromMemory,
};

/// Diameters of PEX tube.
pub const PEX_TUBE: Source = Source {
    key: "pex-dimension-chart",
    cite: "Dimension chart of PEX tube to ASTM F876, SDR 9, in a county's public records",
    place: "outside and inside diameters; other charts differ by up to 4 % in volume",
    obtained: Obtained::Read,
};

/// Diameters of CPVC tube.
pub const CPVC_TUBE: Source = Source {
    key: "astm-d2846",
    cite: "ASTM D2846: CPVC hot and cold water systems, copper tube sizes, SDR 11",
    place: "outside diameters and walls",
    obtained: Obtained::FromMemory,
};

/// Diameters of steel pipe.
pub const STEEL_PIPE: Source = Source {
    key: "asme-b36-10",
    cite: "ASME B36.10: Welded and seamless wrought steel pipe, schedule 40",
    place: "outside and inside diameters of nominal sizes",
    obtained: Obtained::FromMemory,
};

/// How the walls of pipes conduct and store heat, and how much they radiate.
pub const PIPE_WALLS: Source = Source {
    key: "pipe-wall-properties",
    cite: "Conductivity, density, heat capacity and emissivity of copper, steel and plastic pipe",
    place: "tables of heat transfer; PEX 0.38 to 0.46 and CPVC 0.137 to 0.18 W/(m·K) are printed",
    obtained: Obtained::FromMemory,
};

/// How insulation of extruded polystyrene conducts.
pub const POLYSTYRENE_INSULATION: Source = Source {
    key: "xps-pipe-insulation",
    cite: "Handbook of a maker of pipe insulation of extruded polystyrene",
    place: "p. 40: 0.200 at 75 °F, 0.214 Btu·in/(h·ft²·°F) at 100 °F",
    obtained: Obtained::Read,
};

/// What is left of insulation that is wet or pressed flat.
pub const WET_INSULATION: Source = Source {
    key: "wet-insulation",
    cite: "Wet or flattened insulation conducts several times as much as dry",
    place: "0.1 W/(m·K) or more; at worst as if bare",
    obtained: Obtained::CommonPractice,
};

/// How long standing water takes to cool to freezing.
pub const HANDBOOK_FREEZING: Source = Source {
    key: "ashrae-2009-fundamentals-ch23",
    cite: "ASHRAE Handbook, Fundamentals (2009), chapter 23: Insulation for mechanical systems",
    place: "equation 1",
    obtained: Obtained::Quoted,
};

/// How long a pipe takes to freeze.
pub const ISO_12241_FREEZING: Source = Source {
    key: "iso-12241-freezing",
    cite: "ISO 12241: Thermal insulation for building equipment and industrial installations, \
           calculation rules",
    place: "clause 6.2: time of freezing by the heat lost at 0 °C",
    obtained: Obtained::FromMemory,
};

/// What water and ice are like near freezing.
pub const WATER_AND_ICE: Source = Source {
    key: "water-and-ice",
    cite: "Water near 0 °C: 4.2 MJ/(m³·K), 333.55 MJ/m³ of fusion; ice: 2.22 W/(m·K)",
    place: "tables of properties",
    obtained: Obtained::FromMemory,
};

/// How little ice stops the flow.
pub const DENDRITIC_ICE: Source = Source {
    key: "carey-1982-blockage",
    cite: "Carey: Blockage of water pipes by dendritic ice. U.S. Army Cold Regions Research and \
           Engineering Laboratory, 1982",
    place: "abstract: needles of ice can stop the flow far earlier than rings of ice would",
    obtained: Obtained::Read,
};

/// How far standing water cools below freezing before ice forms.
pub const SUPERCOOLING: Source = Source {
    key: "gilpin-1977-supercooling",
    cite: "Gilpin: The effects of dendritic ice formation in water pipes. International Journal of \
           Heat and Mass Transfer 20, 1977",
    place: "ice starts between −4 and −6 °C in quiet pipes",
    obtained: Obtained::FromMemory,
};

/// How warm the far end of a dripping pipe is kept.
pub const DRIP: Source = Source {
    key: "drip-outlet",
    cite: "A drip that leaves the cold stretch at 34 °F",
    place: "2 °F above freezing",
    obtained: Obtained::CommonPractice,
};

/// How much more a cable gives than the pipe loses.
pub const CABLE_MARGIN: Source = Source {
    key: "cable-margin",
    cite: "Margin on the heat of a pipe cable",
    place: "10 to 25 %; 25 % is used",
    obtained: Obtained::CommonPractice,
};

/// How hot a plastic pipe may get below a heat cable.
pub const PLASTIC_LIMIT: Source = Source {
    key: "heat-cable-outline",
    cite: "Outline of investigation for residential pipe heating cable, 4th edition (2006), \
           catalogue entry",
    place: "50 °C (122 °F) for plastic pipe",
    obtained: Obtained::Read,
};
