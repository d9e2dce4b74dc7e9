//! Sources of fuels.

use super::{Obtained, Source};

/// Heat in a unit of fuel.
pub const HEAT_CONTENTS: Source = Source {
    key: "energy-information-administration-heat-contents",
    cite: "U.S. Energy Information Administration, Energy explained: units and calculators",
    place: "natural gas 1,037 Btu/ft³, propane 91,452, fuel oil 138,500, kerosene 135,000 Btu/gal; \
            wood 20,000,000 Btu a cord, pellets 16,500,000 a ton",
    obtained: Obtained::Read,
};

/// Usual efficiency of heating equipment in such homes.
pub const EFFICIENCIES: Source = Source {
    key: "trade-heating-efficiencies",
    cite: "Efficiencies of furnaces and heat pumps that energy coaches reckon with",
    place: "resistance 1.00, heat pump season 2.2, gas and propane 0.78, oil and kerosene 0.76, \
            wood stove 0.65, pellet stove 0.78",
    obtained: Obtained::CommonPractice,
};
