//! How long standing water takes to freeze, the handbook's way: one lump of water, one film.

use super::water;
use crate::math;
use crate::physics::pipe::{Pipe, heat_loss_with_film};
use crate::units::{celsius, in_celsius};
use uom::si::f64::{HeatTransfer, ThermodynamicTemperature, Time};
use uom::si::linear_power_density::watt_per_meter;
use uom::si::time::second;

/// How long standing water takes to freeze.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreezeTimes {
    /// From the start to 0 °C.
    pub to_zero: Time,
    /// From 0 °C until all of it is ice.
    pub further_to_solid: Time,
}

/// How long standing water takes to freeze where the film of the pipe is given, or left out with
/// `None`. `None` where the air does not freeze water.
///
/// # Equation
/// ```text
/// t₀ = c · A · R · ln[(T_w − T_a) ÷ (0 °C − T_a)], t₁ = L · A · R ÷ (0 °C − T_a)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `t₀` | time to 0 °C | s | `FreezeTimes::to_zero` |
/// | `t₁` | further time until all is ice | s | `FreezeTimes::further_to_solid` |
/// | `c` | heat capacity of water, 4.2 MJ/(m³·K) | J/(m³·K) | `water` |
/// | `L` | heat of fusion, 333.55 MJ/m³ | J/m³ | `water` |
/// | `A` | section that the water fills | m² | `pipe.inside` |
/// | `R` | wall, insulation and film, [`heat_loss_with_film`] | m·K/W | `resistance` |
/// | `T_w`, `T_a` | water at the start, air | °C | `water`, `air` |
///
/// # Source
/// [`HANDBOOK_FREEZING`](crate::sources::pipes::HANDBOOK_FREEZING),
/// [`ISO_12241_FREEZING`](crate::sources::pipes::ISO_12241_FREEZING),
/// [`WATER_AND_ICE`](crate::sources::pipes::WATER_AND_ICE)
///
/// # Valid for
/// Standing water that starts at 0 °C or warmer.
///
/// # Leaves out
/// Heat of the wall, which helps a little; ice that grows inward and resists; water that cools
/// below 0 °C before it freezes. A pipe is blocked long before all is ice: see
/// [`freeze_stages`](super::freeze_stages).
///
/// # Examples
/// ```
/// use winterseam::freeze::{PipeKind, PipeSize, freeze_times};
/// use winterseam::units::fahrenheit;
/// use uom::si::{f64::HeatTransfer, heat_transfer::watt_per_square_meter_kelvin, time::hour};
///
/// let bare = PipeKind::CopperL.bare(PipeSize::ThreeQuarters);
/// let film = HeatTransfer::new::<watt_per_square_meter_kelvin>(9.0);
/// let times = freeze_times(&bare, Some(film), fahrenheit(50.0), fahrenheit(0.0)).expect("frost");
/// assert!((times.to_zero.get::<hour>() - 0.259).abs() < 0.001);
/// assert!((times.further_to_solid.get::<hour>() - 2.59).abs() < 0.01);
/// ```
#[must_use]
pub fn freeze_times(
    pipe: &Pipe,
    film: Option<HeatTransfer>,
    water: ThermodynamicTemperature,
    air: ThermodynamicTemperature,
) -> Option<FreezeTimes> {
    let below = -in_celsius(air);
    let above = in_celsius(water);
    if below.is_nan() || below <= 0.0 || above.is_nan() || above < 0.0 {
        return None;
    }
    let lost = heat_loss_with_film(pipe, celsius(0.0), air, film).per_length;
    let resistance = below / lost.get::<watt_per_meter>();
    let cooling = water::heat_capacity(pipe) * resistance * math::ln((above + below) / below);
    Some(FreezeTimes {
        to_zero: Time::new::<second>(cooling),
        further_to_solid: Time::new::<second>(water::fusion(pipe) * resistance / below),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::length::millimeter;

    fn times(water_c: f64, air_c: f64) -> Option<FreezeTimes> {
        let pipe = Pipe::thin(uom::si::f64::Length::new::<millimeter>(20.0), 0.9.into());
        freeze_times(&pipe, None, celsius(water_c), celsius(air_c))
    }

    #[test]
    fn nothing_freezes_in_air_at_freezing_or_above() {
        assert_eq!(times(10.0, 0.0), None);
        assert_eq!(times(10.0, 5.0), None);
        assert_eq!(times(f64::NAN, -5.0), None);
    }

    #[test]
    fn where_nothing_resists_it_freezes_at_once() {
        let times = times(10.0, -5.0).expect("frost");
        assert_eq!((times.to_zero.value, times.further_to_solid.value), (0.0, 0.0));
    }
}
