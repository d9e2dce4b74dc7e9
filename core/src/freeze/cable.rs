//! The year of a heat cable: what it uses, what the pipe needed, and when the pipe was in danger.

use super::loss_curve::LossCurve;
use super::switch::{Switch, usual_season};
use crate::climate::{FreezeDates, Year};
use crate::home::{CableControl, Season};
use crate::physics::pipe::Pipe;
use crate::units::in_celsius;
use uom::si::energy::watt_hour;
use uom::si::f64::{
    Energy, Length, LinearPowerDensity, ThermalConductivity, ThermodynamicTemperature, Time,
};
use uom::si::length::meter;
use uom::si::linear_power_density::watt_per_meter;
use uom::si::time::hour;

/// Temperature that the pipe is held at, 40 °F.
pub(super) const HOLD_C: f64 = 4.44;
/// A self-regulating cable gives what its tag says here, 50 °F.
const TAG_C: f64 = 10.0;
/// A self-regulating cable gives nothing from here on.
const SPENT_C: f64 = 65.0;
/// Emissivity of pipe and foam.
const DULL: f64 = 0.9;

/// A heat cable and the pipe it lies on.
#[derive(Debug, Clone, PartialEq)]
pub struct CableOnPipe {
    /// Heat for each length, as its tag says.
    pub power: LinearPowerDensity,
    /// Length of cable and pipe.
    pub length: Length,
    /// What switches it.
    pub control: CableControl,
    /// Days of plugging in and out, with [`CableControl::Seasonal`]; `None` is not told.
    pub season: Option<Season>,
    /// Outside diameter of the pipe.
    pub pipe_outside: Length,
    /// Thickness of the insulation on it; zero is bare.
    pub insulation: Length,
    /// Conductivity of the insulation.
    pub conductivity: ThermalConductivity,
}

/// What a heat cable did in a year.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CableYear {
    /// Electricity that it used.
    pub electricity: Energy,
    /// Heat that holds the pipe at 40 °F all year, whatever the control.
    pub needed: Energy,
    /// Time with power.
    pub on: Time,
    /// Time below freezing without power, or with less than the pipe loses at 0 °C.
    pub freeze_risk: Time,
}

/// The year of a heat cable over the hours of outdoor air.
///
/// A thermostat closes at 3.33 °C and opens at 7.22 °C. In between it stays as it was; the first
/// hour follows the last, so the year closes on itself, and one that never meets either stays open.
/// A seasonal cable has power from the first to the last day of its season, which may pass New
/// Year; `usual` stands in where the days are not told, and `None` there is never plugged in.
/// An hour is at risk when it is colder than 0 °C and the cable has no power, or less than the pipe
/// loses at 0 °C.
///
/// # Equation
/// ```text
/// E = Σ w(T) · L · 1 h over the hours with power, N = Σ q(4.44 °C, T) · L · 1 h over all hours;
/// self-regulating w(T) = w · (65 °C − T) ÷ 55 K, not below zero; else w
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `E` | electricity | Wh | `CableYear::electricity` |
/// | `N` | heat needed | Wh | `CableYear::needed` |
/// | `w` | heat for each length, as the tag says | W/m | `cable.power` |
/// | `L` | length | m | `cable.length` |
/// | `T` | outdoor air of the hour | °C | `air` |
/// | `q` | loss of the pipe held at a temperature, [`heat_loss`](crate::physics::pipe::heat_loss) | W/m | `LossCurve` |
///
/// # Source
/// [`CABLE_HOLD`](crate::sources::freeze::CABLE_HOLD),
/// [`CABLE_THERMOSTAT`](crate::sources::freeze::CABLE_THERMOSTAT),
/// [`CABLE_SELF_REGULATING`](crate::sources::freeze::CABLE_SELF_REGULATING),
/// [`DULL_SURFACE`](crate::sources::freeze::DULL_SURFACE)
///
/// # Valid for
/// A free pipe in still outdoor air, from the first hour of 1 January on.
///
/// # Leaves out
/// Wind, which multiplies the loss of a bare pipe; skirting, ground and belly, which warm it; the
/// wall of the pipe and the water that flows. Heat needed and risk are too low in wind, too high
/// behind tight skirting.
///
/// # Examples
/// ```
/// use winterseam::freeze::{CableOnPipe, over_hours};
/// use winterseam::home::CableControl;
/// use winterseam::units::celsius;
/// use uom::si::{energy::kilowatt_hour, length::{foot, inch}};
/// use uom::si::{linear_power_density::watt_per_meter, thermal_conductivity::watt_per_meter_kelvin};
/// use uom::si::f64::{Length, LinearPowerDensity, ThermalConductivity};
///
/// let cable = CableOnPipe {
///     power: LinearPowerDensity::new::<watt_per_meter>(6.0 / 0.3048),
///     length: Length::new::<foot>(20.0),
///     control: CableControl::AlwaysOn,
///     season: None,
///     pipe_outside: Length::new::<inch>(0.875),
///     insulation: Length::new::<inch>(0.5),
///     conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.036),
/// };
/// let year = over_hours(&cable, &vec![celsius(10.0); 8760], None);
/// assert!((year.electricity.get::<kilowatt_hour>() - 1051.2).abs() < 1e-6);
/// ```
#[must_use]
pub fn over_hours(
    cable: &CableOnPipe,
    air: &[ThermodynamicTemperature],
    usual: Option<Season>,
) -> CableYear {
    let air_c: Vec<f64> = air.iter().map(|&t| in_celsius(t)).collect();
    over_air_c(cable, &air_c, usual)
}

/// [`over_hours`] on the hours of a place's year; the usual season is two weeks wider than the
/// median freeze dates on either side.
#[must_use]
pub fn cable_year(cable: &CableOnPipe, year: &Year, frost: Option<FreezeDates>) -> CableYear {
    over_air_c(cable, year.air_c(), frost.map(|dates| usual_season(dates.first, dates.last)))
}

/// [`over_hours`] on degrees Celsius.
pub(crate) fn over_air_c(cable: &CableOnPipe, air_c: &[f64], usual: Option<Season>) -> CableYear {
    let coldest = air_c.iter().copied().fold(0.0, f64::min);
    let pipe = pipe(cable);
    let lost_held = LossCurve::new(&pipe, HOLD_C, coldest);
    let lost_freezing = LossCurve::new(&pipe, 0.0, coldest);
    let mut switch = Switch::of(cable, air_c, usual);
    let w = cable.power.get::<watt_per_meter>();
    let mut sums = Sums::default();
    for (index, &air) in air_c.iter().enumerate() {
        let on = switch.turn(index, air);
        let given = if on { given(cable.control, w, air) } else { 0.0 };
        sums.given += given;
        sums.needed += lost_held.at(air);
        sums.on += u32::from(given > 0.0);
        sums.risk += u32::from(air < 0.0 && (!on || given < lost_freezing.at(air)));
    }
    sums.over(cable.length)
}

#[derive(Default)]
struct Sums {
    /// Wh/m.
    given: f64,
    /// Wh/m.
    needed: f64,
    on: u32,
    risk: u32,
}

impl Sums {
    fn over(&self, length: Length) -> CableYear {
        let length = length.get::<meter>();
        CableYear {
            electricity: Energy::new::<watt_hour>(self.given * length),
            needed: Energy::new::<watt_hour>(self.needed * length),
            on: Time::new::<hour>(f64::from(self.on)),
            freeze_risk: Time::new::<hour>(f64::from(self.risk)),
        }
    }
}

fn pipe(cable: &CableOnPipe) -> Pipe {
    Pipe {
        insulation: cable.insulation,
        insulation_conductivity: cable.conductivity,
        ..Pipe::thin(cable.pipe_outside, DULL.into())
    }
}

/// W/m that a cable with power gives.
fn given(control: CableControl, w: f64, air: f64) -> f64 {
    match control {
        CableControl::SelfRegulating => w * ((SPENT_C - air) / (SPENT_C - TAG_C)).max(0.0),
        CableControl::AlwaysOn | CableControl::Thermostat | CableControl::Seasonal => w,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{celsius, linear_power_density::watt_per_foot};
    use uom::si::energy::kilowatt_hour;
    use uom::si::length::{foot, inch};
    use uom::si::thermal_conductivity::watt_per_meter_kelvin;

    fn cable(control: CableControl) -> CableOnPipe {
        CableOnPipe {
            power: LinearPowerDensity::new::<watt_per_foot>(6.0),
            length: Length::new::<foot>(20.0),
            control,
            season: None,
            pipe_outside: Length::new::<inch>(0.875),
            insulation: Length::new::<inch>(0.5),
            conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.036),
        }
    }

    /// A year of days that all swing between two temperatures.
    fn days(night: f64, noon: f64) -> Vec<f64> {
        (0..8760).map(|h| if h % 24 < 12 { night } else { noon }).collect()
    }

    fn hours(time: Time) -> f64 {
        time.get::<hour>()
    }

    #[test]
    fn a_cable_that_nobody_unplugs_uses_its_tag_all_year() {
        let year = over_air_c(&cable(CableControl::AlwaysOn), &days(-5.0, 30.0), None);
        assert!((year.electricity.get::<kilowatt_hour>() - 1051.2).abs() < 1e-9);
        assert!((hours(year.on) - 8760.0).abs() < 1e-9);
    }

    #[test]
    fn a_self_regulating_cable_gives_its_tag_at_fifty_fahrenheit_and_nothing_when_hot() {
        let cable = cable(CableControl::SelfRegulating);
        let used = |air: f64| over_air_c(&cable, &[air], None).electricity.get::<watt_hour>();
        assert!((used(10.0) - 120.0).abs() < 1e-9);
        assert!((used(37.5) - 60.0).abs() < 1e-9);
        assert!(used(70.0).abs() < 1e-9);
    }

    #[test]
    fn what_the_pipe_needs_does_not_depend_on_the_control() {
        let air = days(-10.0, 2.0);
        let needed = |c| over_air_c(&cable(c), &air, None).needed;
        let always = needed(CableControl::AlwaysOn);
        for control in
            [CableControl::Thermostat, CableControl::SelfRegulating, CableControl::Seasonal]
        {
            assert!(needed(control) == always);
        }
    }

    #[test]
    fn a_frost_without_power_is_a_risk_and_so_is_a_weak_cable() {
        let air = days(-20.0, 5.0);
        let risk = |c: &CableOnPipe| hours(over_air_c(c, &air, None).freeze_risk);
        assert!(risk(&cable(CableControl::AlwaysOn)).abs() < 1e-9);
        assert!((risk(&cable(CableControl::Seasonal)) - 4380.0).abs() < 1e-9);
        let weak = LinearPowerDensity::new::<watt_per_foot>(0.5);
        let weak = CableOnPipe { power: weak, ..cable(CableControl::AlwaysOn) };
        assert!((risk(&weak) - 4380.0).abs() < 1e-9);
    }

    #[test]
    fn a_cable_without_length_uses_nothing_and_a_bare_pipe_counts() {
        let bare = CableOnPipe {
            length: Length::new::<foot>(0.0),
            insulation: Length::new::<inch>(0.0),
            ..cable(CableControl::Thermostat)
        };
        let year = over_air_c(&bare, &days(-20.0, 5.0), None);
        assert!(year.electricity.value.abs() < 1e-9 && year.needed.value.abs() < 1e-9);
    }

    #[test]
    fn no_hours_make_an_empty_year() {
        let year = over_hours(&cable(CableControl::Thermostat), &[], None);
        assert!(year.electricity.value.abs() < 1e-9 && year.on.value.abs() < 1e-9);
        let mild = over_hours(&cable(CableControl::Thermostat), &[celsius(5.0)], None);
        assert!(mild.on.value.abs() < 1e-9, "never seen cold, never closed");
    }
}
