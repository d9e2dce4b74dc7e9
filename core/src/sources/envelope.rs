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
