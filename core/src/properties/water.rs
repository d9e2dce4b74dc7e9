//! What water is like between the mains and a hot tap.

use crate::sources::{Obtained, Source};
use uom::si::f64::VolumetricHeatCapacity;
use uom::si::volumetric_heat_capacity::joule_per_cubic_meter_kelvin;

/// Heat that warms a volume of water by a kelvin.
pub const WATER_HEAT: Source = Source {
    key: "coolprop-water-heat",
    cite: "Density times specific heat of water at one atmosphere: 4.19 MJ/(m³ K) at 14 °C, 4.13 at \
           49 °C, 4.11 at 60 °C",
    place: "at 49 °C, for all water between mains and tap",
    obtained: Obtained::Computed("CoolProp 8.0.0"),
};

/// Heat that warms a volume of water by a kelvin: [`WATER_HEAT`].
#[must_use]
pub fn heat_of_water() -> VolumetricHeatCapacity {
    VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(4.13e6)
}
