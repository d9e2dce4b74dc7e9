//! How warm the space below a home is.

use crate::properties::air::{Air, heat_capacity};
use crate::units::{carried, celsius, in_celsius, kelvins};
use uom::si::f64::{
    Area, Power, ThermalConductance, ThermodynamicTemperature, Velocity, VolumeRate,
};
use uom::si::power::watt;
use uom::si::thermal_conductance::watt_per_kelvin;

/// Share of the wind that passes an opening.
const PASSES: f64 = 0.3;

/// What the space below a home gains and loses heat through.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CrawlSpace {
    /// Floor and belly, to the rooms.
    pub floor: ThermalConductance,
    /// Bare or covered soil.
    pub ground: ThermalConductance,
    /// Skirting, to outdoors.
    pub skirting: ThermalConductance,
    /// Outdoor air that passes through.
    pub air: VolumeRate,
    /// Heat that ducts give off below the floor; it stops when the ducted furnace stands still.
    pub ducts: Power,
}

/// What the space lies between.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Temperatures {
    /// Rooms above.
    pub indoor: ThermodynamicTemperature,
    /// Soil below.
    pub ground: ThermodynamicTemperature,
    /// Outdoor air.
    pub outdoor: ThermodynamicTemperature,
}

/// Temperature of the air below a home. It ranks repairs and warns; it never lets a heat cable or
/// a sleeve go: only a thermometer through a cold spell may.
///
/// # Equation
/// ```text
/// T = (K_f·T_i + K_g·T_g + (K_s + ρ·c·V)·T_o + Q) ÷ (K_f + K_g + K_s + ρ·c·V)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `T` | space below the home | °C | returned |
/// | `K_f`, `K_g`, `K_s` | floor, ground, skirting | W/K | `space` |
/// | `V` | outdoor air through the space | m³/s | `space.air` |
/// | `ρ`, `c` | density and heat capacity of air | kg/m³, J/(kg·K) | `Air`, `heat_capacity` |
/// | `Q` | heat of ducts | W | `space.ducts` |
/// | `T_i`, `T_g`, `T_o` | rooms, soil, outdoors | °C | `between` |
///
/// # Source
/// [`CRAWL_BALANCE`](crate::sources::envelope::CRAWL_BALANCE)
///
/// # Valid for
/// Steady cold. With nothing around it the space is as cold as outdoors.
///
/// # Leaves out
/// Heat stored in soil, which helps for a day; cold corners near a hole, which are as cold as
/// outdoors and windy.
///
/// # Examples
/// ```
/// use winterseam::envelope::{CrawlSpace, Temperatures, crawl_temperature};
/// use winterseam::units::fahrenheit;
/// use uom::si::{f64::{Power, ThermalConductance, VolumeRate}, power::watt};
/// use uom::si::{thermal_conductance::watt_per_kelvin, volume_rate::cubic_meter_per_second};
///
/// let conducts = |w_k| ThermalConductance::new::<watt_per_kelvin>(w_k);
/// let tight = CrawlSpace {
///     floor: conducts(37.0),
///     ground: conducts(42.0),
///     skirting: conducts(170.0),
///     air: VolumeRate::new::<cubic_meter_per_second>(0.02),
///     ducts: Power::new::<watt>(0.0),
/// };
/// let between = Temperatures {
///     indoor: fahrenheit(70.0),
///     ground: fahrenheit(45.0),
///     outdoor: fahrenheit(0.0),
/// };
/// let below = crawl_temperature(&tight, between);
/// assert!(below > between.outdoor && below < fahrenheit(32.0));
/// ```
#[must_use]
pub fn crawl_temperature(space: &CrawlSpace, between: Temperatures) -> ThermodynamicTemperature {
    let air = carried(space.air, Air::of_a_room().density(), heat_capacity(), kelvins(1.0));
    let out = space.skirting + air / kelvins(1.0);
    settled(Ways { floor: space.floor, ground: space.ground, out }, between, space.ducts)
}

/// What the air below a home exchanges heat through.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ways {
    pub floor: ThermalConductance,
    pub ground: ThermalConductance,
    pub out: ThermalConductance,
}

/// Where the air below settles; at outdoors where nothing leads anywhere.
pub(super) fn settled(ways: Ways, between: Temperatures, ducts: Power) -> ThermodynamicTemperature {
    let [floor, ground, out] =
        [ways.floor, ways.ground, ways.out].map(|way| way.get::<watt_per_kelvin>());
    let all = floor + ground + out;
    if all <= 0.0 {
        return between.outdoor;
    }
    let gains = floor * in_celsius(between.indoor) + ground * in_celsius(between.ground);
    let gains = gains + out * in_celsius(between.outdoor) + ducts.get::<watt>();
    celsius(gains / all)
}

/// Outdoor air that wind drives through holes of the skirting, in on one side and out on another.
///
/// # Equation
/// ```text
/// V = 0.3 · A · v
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `V` | air through the space | m³/s | returned |
/// | `A` | open area that faces the wind | m² | `open` |
/// | `v` | wind near the ground | m/s | `wind` |
///
/// # Source
/// [`WIND_THROUGH_OPENINGS`](crate::sources::envelope::WIND_THROUGH_OPENINGS)
///
/// # Valid for
/// As much open area to leeward as to windward.
///
/// # Leaves out
/// Warm air that rises, which matters only in still air.
///
/// # Examples
/// ```
/// use winterseam::envelope::wind_through_skirting;
/// use uom::si::{area::square_meter, f64::{Area, Velocity}, velocity::meter_per_second};
///
/// let hole = Area::new::<square_meter>(0.5);
/// let flow = wind_through_skirting(hole, Velocity::new::<meter_per_second>(2.0));
/// assert!((flow.value - 0.3).abs() < 1e-12);
/// ```
#[must_use]
pub fn wind_through_skirting(open: Area, wind: Velocity) -> VolumeRate {
    open * wind * PASSES
}
