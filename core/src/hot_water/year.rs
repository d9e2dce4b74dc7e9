//! The year of a water heater.

use super::draws::Draws;
use super::heater::Heater;
use crate::physics::film::Surroundings;
use crate::physics::pipe::{Pipe, heat_loss};
use crate::properties::water::heat_of_water;
use crate::units::warmer_by;
use uom::si::f64::{
    Energy, Length, Power, Ratio, ThermalConductivity, ThermodynamicTemperature, Time,
};
use uom::si::length::inch;
use uom::si::ratio::ratio;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::time::{day, hour};

/// What a water heater is asked for, and where it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Service {
    /// Water in the tank.
    pub water: ThermodynamicTemperature,
    /// Water that comes in, over the year.
    pub mains: ThermodynamicTemperature,
    /// Where the tank stands, over the year.
    pub place: ThermodynamicTemperature,
    /// Water used in a day.
    pub draws: Draws,
    /// Pipe at the tank that stays hot between draws.
    pub near_pipe: Length,
    /// It wears a sleeve.
    pub sleeve: bool,
}

/// A year of hot water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HotWaterYear {
    /// Bought for the water that is used.
    pub used: Energy,
    /// Bought to keep the tank hot.
    pub kept: Energy,
    /// Bought to keep the pipe at the tank hot.
    pub piped: Energy,
    /// Heat that tank and pipe give to the place where they stand.
    pub given_off: Power,
}

/// The year of a water heater.
///
/// # Equation
/// ```text
/// used = 365·(Q/R)·(1 − U·ΔT/P)
/// kept = 8760 h·U·ΔT, piped = 8760 h·l/R
/// Q    = c·[V_mix·(T_mix − T_c) + V·(T_w − T_c)]
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | Q | heat in the water of a day | J | |
/// | R, P | recovery efficiency, burner or element | –, W | `heater.recovery`, `heater.input` |
/// | U | bought for standing by: never divided by R again | W/K | `heater.bought_loss` |
/// | ΔT | tank above its place | K | |
/// | c | heat of water | J/(m³ K) | [`heat_of_water`] |
/// | `V_mix`, V | used mixed, used as hot as it comes | m³ | `service.draws` |
/// | `T_mix`, `T_w`, `T_c` | mixed, in the tank, coming in | K | |
/// | l | loss of the pipe at the tank | W | `near_pipe_loss` |
///
/// # Source
/// [`FACTOR_ALGEBRA`](crate::sources::water_heater::FACTOR_ALGEBRA),
/// [`NEAR_PIPE`](crate::sources::water_heater::NEAR_PIPE)
///
/// # Valid for
/// Means of a year: the law is linear in each temperature.
///
/// # Leaves out
/// Water left in the pipes after each draw; recovery of a heat pump that falls in a cold closet.
///
/// # Examples
/// ```
/// use uom::si::f64::{Length, Volume};
/// use uom::si::{energy::joule, length::foot, volume::gallon};
/// use winterseam::home::HeaterKind;
/// use winterseam::hot_water::{draws::Draws, heater::Heater, year::{Service, year}};
/// use winterseam::units::fahrenheit;
///
/// let gallons = |v| Volume::new::<gallon>(v);
/// let gas = Heater::new(HeaterKind::DraftHood, 0.59.into(), gallons(40.0));
/// let service = |water| Service {
///     water: fahrenheit(water),
///     mains: fahrenheit(58.0),
///     place: fahrenheit(67.5),
///     draws: Draws { mixed: gallons(46.0), plain: gallons(0.0) },
///     near_pipe: Length::new::<foot>(1.5),
///     sleeve: true,
/// };
/// let bought = |water| {
///     let year = year(&gas, &service(water));
///     (year.used + year.kept).get::<joule>()
/// };
/// assert!(bought(120.0) < 0.9 * bought(140.0));
/// ```
#[must_use]
pub fn year(heater: &Heater, service: &Service) -> HotWaterYear {
    let apart = warmer_by(service.water, service.place);
    let a_year = Time::new::<hour>(8_760.0);
    let mixed =
        service.draws.mixed * warmer_by(Draws::mixed_to().min(service.water), service.mains);
    let plain = service.draws.plain * warmer_by(service.water, service.mains);
    // Water that is warmer in the mains than at the tap takes nothing, and gives nothing back.
    let of_a_day: Energy = ((mixed + plain) * heat_of_water()).max(Energy::default());
    let days = Ratio::new::<ratio>((a_year / Time::new::<day>(1.0)).get::<ratio>());
    let standby = heater.standby(apart);
    let busy: Ratio = standby / heater.input;
    let pipe =
        if heater.bought_loss.value > 0.0 { near_pipe_loss(service) } else { Power::default() };
    HotWaterYear {
        used: of_a_day / heater.recovery * days * (Ratio::new::<ratio>(1.0) - busy),
        kept: standby * a_year,
        piped: pipe / heater.recovery * a_year,
        given_off: heater.tank.heat_given_off(service.water, service.place) * heater.stays + pipe,
    }
}

/// Heat that the hot pipe next to a tank loses: three-quarter-inch copper, bare or in half-inch foam; [`NEAR_PIPE`](crate::sources::water_heater::NEAR_PIPE),
/// [`PIPE_FOAM`](crate::sources::freeze::PIPE_FOAM).
fn near_pipe_loss(service: &Service) -> Power {
    let foam = if service.sleeve { 0.5 } else { 0.0 };
    let dull = if service.sleeve { 0.9 } else { 0.6 };
    let pipe = Pipe {
        insulation: Length::new::<inch>(foam),
        insulation_conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.036),
        ..Pipe::thin(Length::new::<inch>(0.875), dull.into())
    };
    let loss = heat_loss(&pipe, service.water, Surroundings::still(service.place));
    loss.per_length * service.near_pipe
}
