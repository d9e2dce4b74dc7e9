//! Sources of the safety lines.

use super::{Obtained, Source};

/// Lines at which a reading becomes a stop.
pub const LINES: Source = Source {
    key: "trade-safety-lines",
    cite: "Judgement of people who coach residents, on top of published injury times and public \
           health guidance on cold and hot rooms",
    place: "hot taps, tanks, cold and hot rooms, heat cable seasons",
    obtained: Obtained::CommonPractice,
};

/// 120 °F for most homes.
pub const TAP_TARGET: Source = Source {
    key: "consumer-safety-commission-tap",
    cite: "Consumer safety commission advice to set water heaters to 120 °F, as quoted by a \
           paediatric handout",
    place: "time and temperature list",
    obtained: Obtained::Quoted,
};

/// Hotter storage behind a mixing valve where infection is the greater danger.
pub const HOT_STORAGE: Source = Source {
    key: "energy-department-tap-140",
    cite: "U.S. Department of Energy text on water-heater temperature, as quoted by a city notice",
    place: "suppressed immune system or chronic lung disease",
    obtained: Obtained::Quoted,
};
