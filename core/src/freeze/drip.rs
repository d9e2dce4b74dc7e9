//! How much water must run so that none of it freezes.

use crate::math;
use crate::physics::film::Surroundings;
use crate::physics::pipe::{Pipe, heat_loss};
use crate::units::{celsius, in_celsius};
use uom::si::f64::{Length, ThermodynamicTemperature, VolumeRate};
use uom::si::linear_power_density::watt_per_meter;
use uom::si::{length::meter, volume_rate::cubic_meter_per_second};

/// The far end is kept here, 34 °F.
const OUTLET_C: f64 = 10.0 / 9.0;
/// Heat capacity of water, J/(m³·K).
const WATER: f64 = 4.2e6;

/// The least flow that leaves a cold stretch of pipe at 34 °F; `None` where no flow does, because
/// the water comes colder than that.
///
/// # Equation
/// ```text
/// V = L ÷ (R · c · ln[(T_in − T_a) ÷ (T_out − T_a)]), R = (T_m − T_a) ÷ q(T_m),
/// T_m = (T_in + T_out) ÷ 2
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `V` | flow | m³/s | returned |
/// | `L` | length of the cold stretch | m | `length` |
/// | `c` | heat capacity of water, 4.2 MJ/(m³·K) | J/(m³·K) | `WATER` |
/// | `T_in`, `T_out` | water that enters and leaves | °C | `inlet`, `OUTLET_C` |
/// | `T_a` | air | °C | `around.air` |
/// | `q` | loss of the pipe, [`heat_loss`] | W/m | `lost` |
///
/// # Source
/// [`DRIP`](crate::sources::pipes::DRIP), [`WATER_AND_ICE`](crate::sources::pipes::WATER_AND_ICE)
///
/// # Valid for
/// A steady stream; zero where the air is at 34 °F or warmer.
///
/// # Leaves out
/// The drain, which may freeze shut while the stream runs: where drains are not protected a drip
/// floods. Water that comes colder than it did before.
///
/// # Examples
/// ```
/// use winterseam::freeze::{PipeKind, PipeSize, drip};
/// use winterseam::physics::film::Surroundings;
/// use winterseam::units::fahrenheit;
/// use uom::si::{f64::Length, length::foot, volume_rate::gallon_per_minute};
///
/// let pipe = PipeKind::CopperL.bare(PipeSize::ThreeQuarters);
/// let still = Surroundings::still(fahrenheit(0.0));
/// let flow = drip(&pipe, Length::new::<foot>(20.0), fahrenheit(50.0), still).expect("a flow");
/// assert!(flow.get::<gallon_per_minute>() < 0.05);
/// ```
#[must_use]
pub fn drip(
    pipe: &Pipe,
    length: Length,
    inlet: ThermodynamicTemperature,
    around: Surroundings,
) -> Option<VolumeRate> {
    let (enters, air) = (in_celsius(inlet), in_celsius(around.air));
    if air >= OUTLET_C {
        return Some(VolumeRate::new::<cubic_meter_per_second>(0.0));
    }
    if enters.is_nan() || enters <= OUTLET_C || air.is_nan() {
        return None;
    }
    let mean = f64::midpoint(enters, OUTLET_C);
    let lost = heat_loss(pipe, celsius(mean), around).per_length.get::<watt_per_meter>();
    let conducts = length.get::<meter>() * lost / (mean - air);
    let cooled = math::ln((enters - air) / (OUTLET_C - air));
    Some(VolumeRate::new::<cubic_meter_per_second>(conducts / (WATER * cooled)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::freeze::{PipeKind, PipeSize};

    fn flow(inlet_c: f64, air_c: f64) -> Option<f64> {
        let pipe = PipeKind::Pex.bare(PipeSize::ThreeQuarters);
        let still = Surroundings::still(celsius(air_c));
        let flow = drip(&pipe, Length::new::<meter>(10.0), celsius(inlet_c), still)?;
        Some(flow.get::<cubic_meter_per_second>())
    }

    #[test]
    fn warm_air_needs_no_drip_and_cold_water_finds_none() {
        assert_eq!(flow(10.0, 2.0), Some(0.0));
        assert_eq!(flow(1.0, -5.0), None);
        assert_eq!(flow(10.0, f64::NAN), None);
    }

    #[test]
    fn colder_air_needs_more() {
        assert!(flow(10.0, -30.0) > flow(10.0, -10.0));
    }
}
