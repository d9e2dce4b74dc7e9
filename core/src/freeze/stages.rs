//! When a pipe of standing water reaches 0 °C, ice, a plug, and solid ice.

use super::water;
use crate::math;
use crate::physics::film::Surroundings;
use crate::physics::pipe::{Pipe, heat_loss};
use crate::units::{celsius, in_celsius};
use std::f64::consts::PI;
use uom::si::f64::{ThermodynamicTemperature, Time, VolumetricHeatCapacity};
use uom::si::length::meter;
use uom::si::linear_power_density::watt_per_meter;
use uom::si::time::second;
use uom::si::volumetric_heat_capacity::joule_per_cubic_meter_kelvin;

/// Quiet water cools this far below 0 °C before ice forms by itself, at least.
const SUPERCOOLING_K: f64 = 4.0;

/// Times from the start, the earliest first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreezeStages {
    /// The water is at 0 °C.
    pub to_zero: Time,
    /// Needles of ice may stop the flow. This is the time that people are told, as "at least about".
    pub to_plug: Time,
    /// Ice forms by itself in water that nothing disturbed; `None` where the air is too warm for
    /// that, which promises nothing.
    pub to_nucleation: Option<Time>,
    /// All of it is ice.
    pub to_solid: Time,
}

/// When standing water reaches each stage of freezing; `None` where the air does not freeze water.
///
/// # Equation
/// ```text
/// t(T) = ∫ (C_w + C_p) ÷ q(T) dT from T to T_w, t_plug = t(0 °C) + f · L ÷ q(0 °C),
/// t_solid = t(0 °C) + L · [1 ÷ q(0 °C) + 1 ÷ (4π · k · (0 °C − T_a))]
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `t(T)` | time until the water is at T; at −4 °C ice forms by itself | s | `cooling` |
/// | `t_plug`, `t_solid` | time to a plug, and to solid ice | s | `to_plug`, `to_solid` |
/// | `C_w`, `C_p` | heat capacity of water and wall | J/(m·K) | `water::heat_capacity`, `wall` |
/// | `L` | heat of fusion of the water | J/m | `water::fusion` |
/// | `q` | loss of the pipe, [`heat_loss`] | W/m | `lost` |
/// | `f` | share of ice that 4 K of supercooling make, 5 % | – | `water::ice_of` |
/// | `k` | conductivity of ice | W/(m·K) | `water::ICE_CONDUCTIVITY` |
/// | `T_w`, `T_a` | water at the start, air | °C | `water`, `around.air` |
///
/// # Source
/// [`ISO_12241_FREEZING`](crate::sources::pipes::ISO_12241_FREEZING),
/// [`DENDRITIC_ICE`](crate::sources::pipes::DENDRITIC_ICE),
/// [`SUPERCOOLING`](crate::sources::pipes::SUPERCOOLING),
/// [`WATER_AND_ICE`](crate::sources::pipes::WATER_AND_ICE)
///
/// # Valid for
/// Standing water that starts at 0 °C or warmer, in a long pipe in air that stays as it is.
///
/// # Leaves out
/// Warm ends and the ground, which help; elbows against metal, draughts at one spot and a pipe that
/// is already part ice, which freeze sooner. The film weakens while the surface cools under growing
/// ice, so solid ice takes a little longer than said.
///
/// # Examples
/// ```
/// use winterseam::freeze::{PipeKind, PipeSize, freeze_stages};
/// use winterseam::physics::film::Surroundings;
/// use winterseam::units::fahrenheit;
/// use uom::si::time::hour;
///
/// let copper = PipeKind::CopperL;
/// let pipe = copper.bare(PipeSize::ThreeQuarters);
/// let still = Surroundings::still(fahrenheit(20.0));
/// let stages = freeze_stages(&pipe, copper.wall_heat(), fahrenheit(50.0), still).expect("frost");
/// assert!((stages.to_zero.get::<hour>() - 0.70).abs() < 0.02);
/// assert!(stages.to_plug > stages.to_zero && stages.to_plug < stages.to_solid);
/// ```
#[must_use]
pub fn freeze_stages(
    pipe: &Pipe,
    wall_heat: VolumetricHeatCapacity,
    water: ThermodynamicTemperature,
    around: Surroundings,
) -> Option<FreezeStages> {
    let (start, air) = (in_celsius(water), in_celsius(around.air));
    if start.is_nan() || start < 0.0 || air.is_nan() || air >= 0.0 {
        return None;
    }
    let cold = Cold { pipe, around, air };
    let heat = water::heat_capacity(pipe) + wall(pipe, wall_heat);
    let fusion = water::fusion(pipe);
    let lost = cold.lost(0.0);
    let to_zero = heat * cold.cooling(start, 0.0);
    let shell = fusion / (4.0 * PI * water::ICE_CONDUCTIVITY * -air);
    let alone = (air < -SUPERCOOLING_K).then(|| heat * cold.cooling(start, -SUPERCOOLING_K));
    Some(FreezeStages {
        to_zero: Time::new::<second>(to_zero),
        to_plug: Time::new::<second>(to_zero + water::ice_of(SUPERCOOLING_K) * fusion / lost),
        to_nucleation: alone.map(Time::new::<second>),
        to_solid: Time::new::<second>(to_zero + fusion / lost + shell),
    })
}

/// Heat that the wall gives up for each kelvin, J/(m·K).
fn wall(pipe: &Pipe, heat: VolumetricHeatCapacity) -> f64 {
    let (inside, outside) = (pipe.inside.get::<meter>(), pipe.outside.get::<meter>());
    let section = PI / 4.0 * (outside * outside - inside * inside);
    section * heat.get::<joule_per_cubic_meter_kelvin>()
}

/// A pipe in the cold.
struct Cold<'a> {
    pipe: &'a Pipe,
    around: Surroundings,
    /// °C.
    air: f64,
}

impl Cold<'_> {
    /// Loss in W/m with the inside at so many °C.
    fn lost(&self, inside: f64) -> f64 {
        heat_loss(self.pipe, celsius(inside), self.around).per_length.get::<watt_per_meter>()
    }

    /// Seconds from one temperature down to another, for each J/(m·K): Simpson's rule over the
    /// logarithm of the difference to the air, in which the loss for each kelvin hardly changes.
    fn cooling(&self, from: f64, to: f64) -> f64 {
        const SPANS: u8 = 8;
        let (high, low) = (math::ln(from - self.air), math::ln(to - self.air));
        let step = (high - low) / f64::from(SPANS);
        let sum: f64 = (0..=SPANS)
            .map(|i| {
                let weight = if i == 0 || i == SPANS { 1.0 } else { f64::from(2 + 2 * (i % 2)) };
                let apart = math::exp(low + step * f64::from(i));
                weight * apart / self.lost(self.air + apart)
            })
            .sum();
        sum * step / 3.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::freeze::{PipeKind, PipeSize};

    fn at(water_c: f64, air_c: f64) -> Option<FreezeStages> {
        let pipe = PipeKind::Pex.bare(PipeSize::Half);
        let still = Surroundings::still(celsius(air_c));
        freeze_stages(&pipe, PipeKind::Pex.wall_heat(), celsius(water_c), still)
    }

    #[test]
    fn stages_come_in_their_order() {
        for air in [-0.5, -3.0, -5.0, -20.0, -40.0] {
            let stages = at(10.0, air).expect("frost");
            assert!(stages.to_zero < stages.to_plug && stages.to_plug < stages.to_solid, "{air}");
            assert_eq!(stages.to_nucleation.is_some(), air < -4.0);
            // Supercooled water is colder than water at 0 °C and loses less, so it comes later.
            assert!(stages.to_nucleation.is_none_or(|time| stages.to_plug < time), "{air}");
        }
    }

    #[test]
    fn water_at_zero_needs_no_time_to_get_there() {
        assert_eq!(at(0.0, -5.0).expect("frost").to_zero, Time::new::<second>(0.0));
    }

    #[test]
    fn nothing_freezes_in_air_at_freezing_or_above() {
        assert_eq!(at(10.0, 0.0), None);
        assert_eq!(at(-1.0, -5.0), None);
        assert_eq!(at(10.0, f64::NAN), None);
    }
}
