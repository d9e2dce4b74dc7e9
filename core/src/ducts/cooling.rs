//! How much of a cooling coil's cold its ducts bring to the rooms.

use super::delivery::Ducts;
use crate::physics::moist_air::MoistAir;
use crate::properties::air::heat_capacity;
use crate::units::in_celsius;
use uom::si::available_energy::joule_per_kilogram;
use uom::si::f64::{Power, Ratio};
use uom::si::power::watt;
use uom::si::ratio::ratio;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;

/// A coil that cools and dries air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coil {
    /// Heat that it takes out of the air, warmth and moisture together.
    pub takes: Power,
    /// Share of that which is warmth.
    pub sensible: Ratio,
}

/// Cold that ducts bring to the rooms over what the coil makes, warmth and moisture together, while
/// it runs. Leaks into the return bring in the moisture of the zone round it.
///
/// # Equation
/// ```text
/// E = (1 − l_s) · m ÷ P · (P ÷ m − l_r·(h_r − h_i) − (1 − l_r)·c·(1 − B_r)·(T_r − T_i)
///     − c·(1 − B_s)·(T_s − T_p)),
/// T_p = T_e − s·P ÷ (m·c)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `E` | cold to the rooms over cold of the coil | – | returned |
/// | `P`, `s` | heat that the coil takes, and the share that is warmth | W, – | `coil` |
/// | `h_i`, `h_r` | enthalpy in the rooms and round the return | J/kg | `indoor`, `around_return` |
/// | `T_i`, `T_r`, `T_s` | rooms, round return and supply ducts | °C | `indoor`, `zone` |
/// | `T_e`, `T_p` | air into the coil and out of it | °C | `entering` |
/// | `m` | air through the fan | kg/s | `ducts.fan`, `ducts.density` |
/// | `l`, `B`, `c` | as for [`heating`](super::heating) | | |
///
/// # Source
/// [`DELIVERY`](crate::sources::ducts::DELIVERY)
///
/// # Valid for
/// A coil that has run for a while; `takes` above zero.
///
/// # Leaves out
/// Water that dries off a warm coil again; ducts so cold that they sweat.
///
/// # Examples
/// ```
/// use uom::si::f64::{MassDensity, Power, Pressure, Ratio, ThermalConductance, VolumeRate};
/// use uom::si::{mass_density::kilogram_per_cubic_meter, power::kilowatt, pressure::pascal};
/// use uom::si::{ratio::percent, thermal_conductance::watt_per_kelvin};
/// use uom::si::volume_rate::liter_per_second;
/// use winterseam::ducts::{Coil, Ducts, LeaksAt, Side, cooling};
/// use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
/// use winterseam::units::celsius;
///
/// let air = |c, percent_rh| {
///     let humidity = RelativeHumidity::new(Ratio::new::<percent>(percent_rh)).unwrap();
///     MoistAir::new(celsius(c), humidity, Pressure::new::<pascal>(101_325.0)).unwrap()
/// };
/// let side = |lost| Side {
///     conducts: ThermalConductance::new::<watt_per_kelvin>(22.0),
///     lost: Ratio::new::<percent>(lost),
///     zone: celsius(29.0),
/// };
/// let ducts = |leaks| Ducts {
///     fan: VolumeRate::new::<liter_per_second>(470.0),
///     density: MassDensity::new::<kilogram_per_cubic_meter>(1.2),
///     supply: side(leaks),
///     supply_leaks: LeaksAt::Registers,
///     back: side(leaks / 2.0),
/// };
/// let coil = Coil { takes: Power::new::<kilowatt>(8.8), sensible: Ratio::new::<percent>(75.0) };
/// let brings = |leaks| cooling(&ducts(leaks), coil, &air(26.0, 50.0), &air(29.0, 60.0));
/// assert!(brings(12.0) < brings(3.0));
/// ```
#[must_use]
pub fn cooling(ducts: &Ducts, coil: Coil, indoor: &MoistAir, around_return: &MoistAir) -> Ratio {
    let celsius = |air: &MoistAir| in_celsius(air.dry_bulb());
    let enthalpy = |air: &MoistAir| air.enthalpy().get::<joule_per_kilogram>();
    let c = heat_capacity().get::<joule_per_kilogram_kelvin>();
    let (carries, takes) = (ducts.carries(), coil.takes.get::<watt>());
    let (mass, room) = (carries / c, celsius(indoor));
    let leaks_in = ducts.back.lost.get::<ratio>();
    let entering = ducts.entering(room);
    // What conduction alone warms the return air by; leaks are counted with their moisture.
    let leaked = leaks_in * (celsius(around_return) - room);
    let warmed = entering - room - leaked;
    let plenum = entering - coil.sensible.get::<ratio>() * takes / carries;
    let on_the_way = (1.0 - ducts.keeps_on_the_way()) * (in_celsius(ducts.supply.zone) - plenum);
    let gains = leaks_in * (enthalpy(around_return) - enthalpy(indoor)) + c * (warmed + on_the_way);
    let kept = 1.0 - ducts.supply.lost.get::<ratio>();
    Ratio::new::<ratio>(kept * (1.0 - mass * gains / takes))
}
