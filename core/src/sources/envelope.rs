//! Sources of the space below a home.

use super::{Obtained, Source};

/// Heat that meets in one place.
pub const CRAWL_BALANCE: Source = Source {
    key: "crawl-space-balance",
    cite: "A steady balance of floor, ground, skirting, air and ducts; no measured winter table of \
           skirted homes was found",
    place: "each flow is its conductance times its difference",
    obtained: Obtained::CommonPractice,
};

/// Wind through openings.
pub const WIND_THROUGH_OPENINGS: Source = Source {
    key: "handbook-wind-openings",
    cite: "ASHRAE Handbook, Fundamentals, chapter 16: flow caused by wind through openings",
    place: "effectiveness 0.25 to 0.35 for wind aslant; 0.3 is used",
    obtained: Obtained::FromMemory,
};

/// Heat through the parts of such homes by the years they were built in.
pub const SHELL_BY_YEARS: Source = Source {
    key: "shell-by-years",
    cite: "Usual insulation of manufactured homes before the federal standard of 1976, until its \
           revision of 1994, and after it",
    place: "nominal R-values, with framing and linings as one U-value for wall, roof, floor, \
            window and door; low and high are the ends of the nominal range, high also for \
            insulation that has slumped",
    obtained: Obtained::FromMemory,
};

/// Windows and doors that nobody listed, and the size of a window that nobody measured.
pub const USUAL_WINDOWS: Source = Source {
    key: "usual-windows-and-doors",
    cite: "How many windows and doors manufactured homes have",
    place: "glass 12 % of the floor (8 to 15), two doors of 20 ft², a window of 30 by 40 in",
    obtained: Obtained::CommonPractice,
};

/// Heat through whole windows with frames of aluminium.
pub const WINDOW_U_VALUES: Source = Source {
    key: "handbook-whole-windows",
    cite: "ASHRAE Handbook, Fundamentals, chapter Fenestration: U-values of whole windows",
    place: "aluminium, operable, Btu/(h·ft²·°F): single 1.0 to 1.27, with a storm window 0.6 to \
            0.9, double 0.45 to 0.65",
    obtained: Obtained::FromMemory,
};

/// The layer of air between a window and what is stretched over it.
pub const AIR_BEHIND_FILM: Source = Source {
    key: "handbook-fenestration-air-space",
    cite: "ASHRAE Handbook, Fundamentals, chapter 29, Fenestration: uncoated air space",
    place: "1.3 Btu/(h·ft²·°F); down to 0.95 by EN 673, up to 3.3 where an inner storm window \
            saves no more than a quarter",
    obtained: Obtained::Read,
};

/// What storm windows are said to save.
pub const STORM_WINDOWS: Source = Source {
    key: "doe-storm-windows",
    cite: "U.S. Department of Energy on storm windows, inside and outside",
    place: "25 to 50 % of the heat through a window",
    obtained: Obtained::Quoted,
};

/// A floor whose belly is open.
pub const OPEN_BELLY: Source = Source {
    key: "open-belly",
    cite: "Floor of a manufactured home: R-2.5 of deck and covering over the belly",
    place: "belly R-3 where it is torn (0.7 to 4.5); wind reaches past a hole: 4 times its area (1 \
            to 10), a tenth of the floor where nobody measured (2 to 30 %)",
    obtained: Obtained::CommonPractice,
};

/// Sun through glass.
pub const SUN_THROUGH_GLASS: Source = Source {
    key: "handbook-solar-heat-gain",
    cite: "ASHRAE Handbook, Fundamentals, chapter Fenestration: solar heat gain coefficients",
    place: "single 0.80, double clear 0.70, film × 0.9; three quarters of a window are glass \
            (0.65 to 0.80)",
    obtained: Obtained::FromMemory,
};

/// The skirting of a home, its vents, and the ground it encloses.
pub const SKIRTING: Source = Source {
    key: "skirting-and-ground",
    cite: "A space of 3 ft below a manufactured home, judgement",
    place: "skirting 0.9 Btu/(h·ft²·°F), with R-10 behind it 0.09; closed it lets through one air \
            change an hour, insulated half of one; ground 0.10 (0.08 to 0.12); where nobody \
            measured what is missing, 15 % of its length (5 to 40), where nobody looked 2 % (0 to 15)",
    obtained: Obtained::CommonPractice,
};

/// Open area of vents in a skirting.
pub const SKIRTING_VENTS: Source = Source {
    key: "hud-2007-skirting-vents",
    cite: "24 CFR 3285.505: Model manufactured home installation standards, crawlspace ventilation",
    place: "one square foot for each 150 ft² of floor; local rules differ from half to one and a \
            half times as much",
    obtained: Obtained::Quoted,
};

/// Wind near the ground against that at a station.
pub const WIND_NEAR_GROUND: Source = Source {
    key: "handbook-wind-profile",
    cite: "ASHRAE Handbook, Fundamentals, chapter 24: wind at a height against an airport's at 10 m",
    place: "1 m up: 0.72 on open ground, 0.43 among homes (exponents 0.14 and 0.22, layers of 270 \
            and 370 m)",
    obtained: Obtained::FromMemory,
};

/// Temperature of soil at a depth over the year.
pub const SOIL_OVER_THE_YEAR: Source = Source {
    key: "kusuda-achenbach-1965",
    cite: "Kusuda and Achenbach, 1965: Earth temperature and thermal diffusivity at selected \
           stations in the United States, ASHRAE Transactions 71",
    place: "the swing of the year shrinks and comes later with depth; soil of 0.05 m²/day (common \
            practice)",
    obtained: Obtained::FromMemory,
};

/// Heat that people and their appliances give off.
pub const INTERNAL_GAINS: Source = Source {
    key: "iecc-r405-internal-gains",
    cite: "International Energy Conservation Code, section R405: internal gains of the reference \
           home",
    place: "17 900 + 23.8 · floor in ft² + 4 104 · bedrooms, Btu a day; homes differ by a third \
            either way (judgement)",
    obtained: Obtained::FromMemory,
};

/// How much of the day's sun comes from the whole sky.
pub const DIFFUSE_SHARE: Source = Source {
    key: "page-1961-diffuse",
    cite: "Page, 1961: The estimation of monthly mean values of daily total short-wave radiation \
           on vertical and inclined surfaces from sunshine records",
    place: "diffuse share 1 − 1.13 of the clearness; a sky alike all over, ground that reflects 0.2",
    obtained: Obtained::FromMemory,
};

/// What neighbours, awnings, insect screens and curtains leave of the sun on a window.
pub const SHADE: Source = Source {
    key: "trade-window-shade",
    cite: "Shade on the windows of manufactured homes in winter",
    place: "0.7 gets through (0.5 to 0.9)",
    obtained: Obtained::CommonPractice,
};

/// How much of sun and other gains spares heating.
pub const ISO_13790: Source = Source {
    key: "iso-13790-2008",
    cite: "ISO 13790:2008: Energy performance of buildings, energy use for space heating and cooling",
    place: "clause 12.2: gain utilisation of the monthly method, a = 1 + τ ÷ 15 h; very light \
            building 80 kJ/(K·m²) of floor",
    obtained: Obtained::FromMemory,
};
