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
