//! Air through a gap that was measured with a tape.

mod slit;
pub use slit::{SLIT_METRES, Slit, loss_coefficient};

use crate::properties::air::Air;
use uom::si::f64::{Area, Pressure, Ratio, VolumeRate};
use uom::si::{
    dynamic_viscosity::pascal_second, length::meter, mass_density::kilogram_per_cubic_meter,
    pressure::pascal, ratio::ratio, volume_rate::cubic_meter_per_second,
};

/// Pressure at which a leakage area is stated, Pa.
const REFERENCE_PRESSURE: f64 = 4.0;

/// Air that a slit lets through.
///
/// # Equation
///
/// Δp = (12 · μ · z / (L · d³)) · Q + (ρ · C / (2 · d² · L²)) · Q², solved for Q
///
/// # Symbols
///
/// | symbol | meaning                            | unit  | in code           |
/// |--------|------------------------------------|-------|-------------------|
/// | Q      | volume flow                        | m³/s  | return value      |
/// | Δp     | pressure difference                | Pa    | `across`          |
/// | L      | length along the gap               | m     | `slit.length`     |
/// | d      | opening seen                       | m     | `slit.width`      |
/// | z      | way of the air                     | m     | `slit.depth`      |
/// | C      | [`loss_coefficient`]               | –     | –                 |
/// | ρ      | density of the air that enters     | kg/m³ | `air.density()`   |
/// | μ      | viscosity of the air that enters   | Pa s  | `air.viscosity()` |
///
/// # Source
///
/// [`CRACK_FLOW_1987`](crate::sources::air::CRACK_FLOW_1987),
/// [`CRACK_EDGE`](crate::sources::air::CRACK_EDGE)
///
/// # Valid for
///
/// Every [`Slit`] and finite difference; a negative one gives a flow the other way.
///
/// # Leaves out
///
/// Rough and uneven walls, dust, brushes: a real gap leaks less. Deep slits that are wide enough
/// for turbulent friction: those leak a little less as well.
///
/// # Examples
///
/// Below a door of 0.91 m, 6 mm wide, 45 mm deep:
///
/// ```
/// use uom::si::f64::{Length, Pressure};
/// use uom::si::{length::millimeter, pressure::pascal, volume_rate::liter_per_second};
/// use winterseam::{physics::gap::{Slit, flow}, properties::air::Air};
///
/// let mm = Length::new::<millimeter>;
/// let door = Slit::new(mm(910.0), mm(6.0), mm(45.0), 0).unwrap();
/// let air = flow(&door, Pressure::new::<pascal>(4.0), &Air::of_a_room());
/// assert!((air.get::<liter_per_second>() - 10.70).abs() < 0.01);
/// ```
#[must_use]
pub fn flow(slit: &Slit, across: Pressure, air: &Air) -> VolumeRate {
    flow_with_loss(slit, loss_coefficient(slit), across, air)
}

/// Air that a slit lets through when its loss is known.
///
/// # Equation
///
/// That of [`flow`] with C given.
///
/// # Symbols
///
/// | symbol | meaning          | unit | in code |
/// |--------|------------------|------|---------|
/// | C      | loss coefficient | –    | `loss`  |
///
/// The others as in [`flow`].
///
/// # Source
///
/// [`CRACK_FLOW_1987`](crate::sources::air::CRACK_FLOW_1987)
///
/// # Valid for
///
/// A positive loss.
///
/// # Leaves out
///
/// What [`flow`] leaves out.
///
/// # Examples
///
/// The plain law, without a word about edges:
///
/// ```
/// use uom::si::f64::{Length, Pressure, Ratio};
/// use uom::si::{length::millimeter, pressure::pascal, ratio::ratio};
/// use winterseam::{physics::gap::{Slit, flow, flow_with_loss}, properties::air::Air};
///
/// let mm = Length::new::<millimeter>;
/// let (across, air) = (Pressure::new::<pascal>(4.0), Air::of_a_room());
/// let shallow = Slit::new(mm(1000.0), mm(10.0), mm(20.0), 0).unwrap();
/// let plain = flow_with_loss(&shallow, Ratio::new::<ratio>(1.5), across, &air);
/// assert!(flow(&shallow, across, &air) < plain);
/// ```
#[must_use]
pub fn flow_with_loss(slit: &Slit, loss: Ratio, across: Pressure, air: &Air) -> VolumeRate {
    let resistance = Resistance::of(slit, loss, air);
    let p = across.get::<pascal>();
    VolumeRate::new::<cubic_meter_per_second>(resistance.flow(p.abs()).copysign(p))
}

/// How steeply the flow grows with the pressure: the exponent that a power law would have here.
///
/// # Equation
///
/// n = d ln Q / d ln p = ½ · (1 + a / √(a² + 4 · b · p)), with a and b the factors of Q and Q²
/// in [`flow`]
///
/// # Symbols
///
/// | symbol | meaning             | unit | in code      |
/// |--------|---------------------|------|--------------|
/// | n      | local flow exponent | –    | return value |
/// | p      | pressure difference | Pa   | `across`     |
///
/// # Source
///
/// Derived from [`CRACK_FLOW_1987`](crate::sources::air::CRACK_FLOW_1987).
///
/// # Valid for
///
/// Every [`Slit`]; from ½ (a sharp hole) to 1 (a hair crack, or no pressure).
///
/// # Leaves out
///
/// What [`flow`] leaves out.
///
/// # Examples
///
/// ```
/// use uom::si::f64::{Length, Pressure};
/// use uom::si::{length::millimeter, pressure::pascal, ratio::ratio};
/// use winterseam::{physics::gap::{Slit, local_exponent}, properties::air::Air};
///
/// let mm = Length::new::<millimeter>;
/// let hair = Slit::new(mm(1000.0), mm(0.5), mm(25.0), 0).unwrap();
/// let n = local_exponent(&hair, Pressure::new::<pascal>(4.0), &Air::of_a_room());
/// assert!(n.get::<ratio>() > 0.99);
/// ```
#[must_use]
pub fn local_exponent(slit: &Slit, across: Pressure, air: &Air) -> Ratio {
    let resistance = Resistance::of(slit, loss_coefficient(slit), air);
    Ratio::new::<ratio>(resistance.exponent(across.get::<pascal>().abs()))
}

/// The opening without any loss that lets as much air through at 4 Pa.
///
/// # Equation
///
/// A = Q(4 Pa) · √(ρ / (2 · 4 Pa))
///
/// # Symbols
///
/// | symbol | meaning                        | unit  | in code         |
/// |--------|--------------------------------|-------|-----------------|
/// | A      | effective leakage area         | m²    | return value    |
/// | Q      | [`flow`] of the slit           | m³/s  | –               |
/// | ρ      | density of the air that enters | kg/m³ | `air.density()` |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_ORIFICE`](crate::sources::air::HANDBOOK_2021_CH16_ORIFICE)
///
/// # Valid for
///
/// Every [`Slit`].
///
/// # Leaves out
///
/// What [`flow`] leaves out. A tape reads ± 1/16 in: in a narrow crack the area goes with the
/// third power of that.
///
/// # Examples
///
/// ```
/// use uom::si::{area::square_centimeter, f64::Length, length::millimeter};
/// use winterseam::{physics::gap::{Slit, leakage_area}, properties::air::Air};
///
/// let mm = Length::new::<millimeter>;
/// let door = Slit::new(mm(910.0), mm(6.0), mm(45.0), 0).unwrap();
/// let area = leakage_area(&door, &Air::of_a_room());
/// assert!((area.get::<square_centimeter>() - 41.5).abs() < 0.05);
/// ```
#[must_use]
pub fn leakage_area(slit: &Slit, air: &Air) -> Area {
    let reference = Pressure::new::<pascal>(REFERENCE_PRESSURE);
    flow(slit, reference, air) / (2.0 * reference / air.density()).sqrt()
}

/// The two factors of the quadratic law, cleared of L and d so that depth zero and width zero
/// stay finite: with v = 12 μ z and w(p) = √(v² + 2 ρ C p d⁴), Q = 2 p L d³ / (v + w).
struct Resistance {
    /// L d³.
    passage: f64,
    /// 12 μ z.
    friction: f64,
    /// 2 ρ C d⁴.
    inertia: f64,
}

impl Resistance {
    fn of(slit: &Slit, loss: Ratio, air: &Air) -> Self {
        let d = slit.width.get::<meter>();
        let rho = air.density().get::<kilogram_per_cubic_meter>();
        Self {
            passage: slit.length.get::<meter>() * d * d * d,
            friction: 12.0 * air.viscosity().get::<pascal_second>() * slit.depth.get::<meter>(),
            inertia: 2.0 * rho * loss.get::<ratio>() * (d * d) * (d * d),
        }
    }

    fn root(&self, p: f64) -> f64 {
        (self.friction * self.friction + self.inertia * p).sqrt()
    }

    fn flow(&self, p: f64) -> f64 {
        let resists = self.friction + self.root(p);
        // Nothing resists: no pressure over a sharp edge, or a closed slit without depth.
        if resists == 0.0 { 0.0 } else { 2.0 * p * self.passage / resists }
    }

    fn exponent(&self, p: f64) -> f64 {
        let root = self.root(p);
        if root == 0.0 { 0.5 } else { 0.5 * (1.0 + self.friction / root) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use uom::si::f64::Length;

    fn slit(length: f64, width: f64, depth: f64) -> Option<Slit> {
        let m = Length::new::<meter>;
        Slit::new(m(length), m(width), m(depth), 0)
    }

    fn litres(slit: &Slit, p: f64) -> f64 {
        let across = Pressure::new::<pascal>(p);
        flow(slit, across, &Air::of_a_room()).get::<cubic_meter_per_second>() * 1000.0
    }

    #[test]
    fn no_pressure_and_no_opening_give_no_flow() {
        for depth in [0.0, 0.04] {
            assert_eq!(litres(&slit(1.0, 0.006, depth).unwrap(), 0.0).to_bits(), 0);
            assert_eq!(litres(&slit(1.0, 0.0, depth).unwrap(), 4.0).to_bits(), 0);
        }
    }

    #[test]
    fn the_flow_turns_with_the_pressure() {
        let door = slit(0.9, 0.006, 0.045).unwrap();
        assert_eq!(litres(&door, -4.0).to_bits(), (-litres(&door, 4.0)).to_bits());
    }
}
