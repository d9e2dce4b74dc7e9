//! Sources of prices, lives and habits of the trade.

use super::{Obtained, Source};

/// Retail prices of materials, 2023–25.
pub const RETAIL_PRICES: Source = Source {
    key: "retail-prices-2025",
    cite: "Retail prices of materials in the United States, 2023 to 2025, by order of magnitude",
    place: "materials and alarms",
    obtained: Obtained::FromMemory,
};

/// Fees of tradespeople.
pub const TRADE_FEES: Source = Source {
    key: "trade-fees-2025",
    cite: "Usual fees of electricians and plumbers in the United States for a short visit",
    place: "by order of magnitude",
    obtained: Obtained::CommonPractice,
};

/// How long repairs last.
pub const REPAIR_LIVES: Source = Source {
    key: "state-technical-manuals-lives",
    cite: "Measure lives as state technical reference manuals give them",
    place: "air sealing, weatherstrip, pipe heating cable, filter",
    obtained: Obtained::FromMemory,
};

/// What somebody was told a repair costs, or how long it lasts.
pub const TOLD_COSTS: Source = Source {
    key: "own-costs",
    cite: "A price or a life that the people who asked were told",
    place: "their own request",
    obtained: Obtained::Read,
};

/// How much a seal leaves open.
pub const SEALED_PAIRS: Source = Source {
    key: "handbook-2001-ch26-pairs",
    cite: "ASHRAE Handbook—Fundamentals, 2001, chapter 26, effective air leakage areas",
    place: "rows of the same component with and without weatherstrip, caulk or gasket",
    obtained: Obtained::FromMemory,
};

/// How gaps of this housing are built: what the air travels through.
pub const GAP_DEPTHS: Source = Source {
    key: "trade-gap-depths",
    cite: "How doors, joints and floors of manufactured homes are built",
    place: "thickness of door, casing, deck and joint",
    obtained: Obtained::CommonPractice,
};

/// How large such homes are where nobody measured.
pub const USUAL_SIZES: Source = Source {
    key: "trade-usual-sizes",
    cite: "Usual outside sizes of manufactured homes by sections, and the height of their rooms",
    place: "14 by 66 (12 by 56 to 16 by 76), 27 by 56 (24 by 44 to 28 by 66) and 40 by 60 ft (36 by \
            48 to 42 by 70); 7.5 ft",
    obtained: Obtained::CommonPractice,
};

/// When a furnace filter is changed.
pub const FILTER_CHANGE: Source = Source {
    key: "trade-filter-change",
    cite: "Advice of heating dealers and public agencies on furnace filters",
    place: "look monthly in season; change when dirty, at three months at the latest",
    obtained: Obtained::CommonPractice,
};

/// Order of work in a home.
pub const ORDER_OF_WORK: Source = Source {
    key: "trade-order-of-work",
    cite: "Order of work as trainers of home energy coaches teach it",
    place: "life safety, moisture, heat and pipes, airflow, big holes, controls, small seals",
    obtained: Obtained::CommonPractice,
};

/// What is possible where nobody measured.
pub const DRAWN_RANGES: Source = Source {
    key: "trade-drawn-ranges",
    cite: "What people of the trade expect where nobody measured: tape ± 1/16 in, furnace and heat \
           pump efficiency by fuel, usual heat cables, shelter and thermostat of such homes",
    place: "low, usual and high",
    obtained: Obtained::CommonPractice,
};
