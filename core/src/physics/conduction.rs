//! Heat that spreads through layers, one behind the other, and that a stream carries away inside
//! them: exact in space, and in time to eight digits.
//!
//! There is no mesh and no time step. In the Laplace domain each layer is a two-by-two matrix; the
//! product of the matrices is inverted on a contour, as cheaply at a millisecond as at a day.

mod complex;
mod talbot;

use complex::Complex;
use talbot::Contour;
use uom::si::f64::{
    Frequency, HeatTransfer, Length, Ratio, ThermalConductivity, Time, VolumetricHeatCapacity,
};
use uom::si::ratio::ratio;

/// One layer of one material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layer {
    /// How thick it is.
    pub thickness: Length,
    /// How well it conducts.
    pub conductivity: ThermalConductivity,
    /// Heat that warms a volume of it: density times specific heat.
    pub heat_capacity: VolumetricHeatCapacity,
    /// How fast the stream inside pulls it to the stream's temperature, were it alone: heat carried
    /// for each volume and kelvin, divided by [`Self::heat_capacity`]. Zero where nothing flows.
    pub sink: Frequency,
}

/// What lies behind the last layer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Back {
    /// Held at the temperature of the streams.
    Held,
    /// No heat passes.
    Insulated,
}

/// Layers from the face inwards.
#[derive(Debug, Clone, PartialEq)]
pub struct Wall {
    /// The layers, that at the face first.
    pub layers: Vec<Layer>,
    /// What lies behind the last.
    pub back: Back,
    /// Film between the face and what warms it; `None` holds the face at that temperature.
    pub film: Option<HeatTransfer>,
}

/// How one depth of a [`Wall`] follows a step of temperature before its face: 0 is no rise, 1 the
/// whole step. It is the same for every step, because the law is linear.
#[derive(Debug, Clone)]
pub struct StepResponse {
    above: Vec<Slice>,
    below: Vec<Slice>,
    back: Back,
    film_resistance: f64,
    contour: Contour,
}

/// A layer or a part of one, in base units, with the powers that its matrix needs.
#[derive(Debug, Clone, Copy)]
struct Slice {
    thickness: f64,
    conductivity: f64,
    diffusivity: f64,
    sink: f64,
}

/// Temperature and heat flow inwards at one depth, to a common factor.
#[derive(Clone, Copy)]
struct State {
    temperature: Complex,
    flow: Complex,
}

impl Wall {
    /// The response of the point that lies `depth` behind the face. A depth outside the wall is
    /// taken as the end that is nearest.
    #[must_use]
    pub fn at(&self, depth: Length) -> StepResponse {
        let (mut above, mut below, mut left) = (vec![], vec![], depth.value.max(0.0));
        for layer in &self.layers {
            let first = left.min(layer.thickness.value);
            left -= first;
            above.push(Slice::of(layer, first));
            below.push(Slice::of(layer, layer.thickness.value - first));
        }
        StepResponse {
            above: above.into_iter().filter(Slice::is_something).collect(),
            below: below.into_iter().filter(Slice::is_something).collect(),
            back: self.back,
            film_resistance: self.film.map_or(0.0, |film| 1.0 / film.value),
            contour: Contour::new(),
        }
    }
}

impl StepResponse {
    /// Share of the step that has arrived after a time.
    ///
    /// # Equation
    /// In each layer ∂T/∂t = a ∂²T/∂x² − b (T − Tₛ). Its Laplace transform is solved by
    /// cosh and sinh of q x with q = √((s + b)/a); temperature and heat flow are continuous where
    /// layers meet, so the layers' matrices multiply:
    ///
    /// T₁ = T₂ cosh qL + F₂ sinh(qL)/(k q), F₁ = F₂ cosh qL + T₂ k q sinh qL.
    ///
    /// The share is the inverse transform of T(depth)/(s (T₀ + F₀/h)) on a fixed Talbot contour.
    ///
    /// # Symbols
    /// | symbol | meaning | unit | in the code |
    /// |---|---|---|---|
    /// | a | diffusivity: k over the heat capacity | m²/s | `diffusivity` |
    /// | b | pull of the stream | 1/s | [`Layer::sink`] |
    /// | k | conductivity | W/(m K) | [`Layer::conductivity`] |
    /// | L | thickness | m | [`Layer::thickness`] |
    /// | h | film before the face | W/(m² K) | [`Wall::film`] |
    /// | F | heat flow inwards | W/m² | `flow` |
    /// | T, Tₛ | temperature, that of the stream | K | `temperature` |
    /// | s | variable of the transform | 1/s | `s` |
    ///
    /// # Source
    /// [`CONDUCTION_MATRIX`](crate::sources::conduction::CONDUCTION_MATRIX),
    /// [`TALBOT`](crate::sources::conduction::TALBOT).
    ///
    /// # Valid for
    /// Constant properties, perfect contact, plane layers. Times above zero; at zero and before,
    /// and for no number, the share is 0.
    ///
    /// # Leaves out
    /// Sideways spread (a small warm spot warms less), and properties that change with temperature
    /// (either way).
    ///
    /// # Examples
    /// ```
    /// use uom::si::f64::*;
    /// use uom::si::{frequency::hertz, length::millimeter, ratio::ratio, time::second};
    /// use uom::si::thermal_conductivity::watt_per_meter_kelvin;
    /// use uom::si::volumetric_heat_capacity::joule_per_cubic_meter_kelvin;
    /// use winterseam::physics::conduction::{Back, Layer, Wall};
    ///
    /// let board = Layer {
    ///     thickness: Length::new::<millimeter>(12.0),
    ///     conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.16),
    ///     heat_capacity: VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(0.9e6),
    ///     sink: Frequency::new::<hertz>(0.0),
    /// };
    /// let wall = Wall { layers: vec![board], back: Back::Insulated, film: None };
    /// let far_side = wall.at(Length::new::<millimeter>(12.0));
    /// let after = |s| far_side.after(Time::new::<second>(s)).get::<ratio>();
    /// assert!(after(10.0) < 0.01 && after(3600.0) > 0.99);
    /// ```
    #[must_use]
    pub fn after(&self, time: Time) -> Ratio {
        let share = if time.value > 0.0 {
            self.contour.step(time.value, |s| self.transform(s))
        } else {
            0.0
        };
        Ratio::new::<ratio>(share.clamp(0.0, 1.0))
    }

    /// Share of the step that arrives in the end.
    #[must_use]
    pub fn settled(&self) -> Ratio {
        Ratio::new::<ratio>(self.transform(Complex::ZERO).re)
    }

    /// Temperature at the depth over that before the face, for one s.
    fn transform(&self, s: Complex) -> Complex {
        let deep = match self.back {
            Back::Held => State { temperature: Complex::ZERO, flow: Complex::ONE },
            Back::Insulated => State { temperature: Complex::ONE, flow: Complex::ZERO },
        };
        let here = self.below.iter().rev().fold(deep, |state, slice| slice.outwards(state, s).0);
        let climb = |(state, damping): (State, Complex), slice: &Slice| {
            let (state, by) = slice.outwards(state, s);
            (state, damping * by)
        };
        let (face, damping) = self.above.iter().rev().fold((here, Complex::ONE), climb);
        here.temperature * damping / (face.temperature + face.flow * self.film_resistance)
    }
}

impl Slice {
    fn of(layer: &Layer, thickness: f64) -> Self {
        Self {
            thickness,
            conductivity: layer.conductivity.value,
            diffusivity: layer.conductivity.value / layer.heat_capacity.value,
            sink: layer.sink.value,
        }
    }

    fn is_something(&self) -> bool {
        self.thickness > 0.0
    }

    /// The state at the outer side from that at the inner side, times e^(−qL); and e^(−qL), so that
    /// a thick layer cannot overflow.
    fn outwards(&self, inner: State, s: Complex) -> (State, Complex) {
        let square = (s + Complex::real(self.sink)) * (1.0 / self.diffusivity);
        let z = square.sqrt() * self.thickness;
        let damping = (z * -1.0).exp();
        let (cosh, sinh_over_z) = damped(z, damping);
        let to_temperature = sinh_over_z * (self.thickness / self.conductivity);
        let to_flow = square * sinh_over_z * (self.thickness * self.conductivity);
        let outer = State {
            temperature: inner.temperature * cosh + inner.flow * to_temperature,
            flow: inner.flow * cosh + inner.temperature * to_flow,
        };
        (outer, damping)
    }
}

/// cosh z and sinh(z)/z, both times e^(−z), which is given too.
fn damped(z: Complex, damping: Complex) -> (Complex, Complex) {
    let twice = damping * damping;
    let cosh = (Complex::ONE + twice) * 0.5;
    if z.size() > 1e-3 {
        return (cosh, (Complex::ONE - twice) * 0.5 / z);
    }
    // The quotient's series: the difference above would lose the digits that it needs.
    let series = Complex::ONE - z * (Complex::ONE - z * (Complex::real(2.0) - z) * (1.0 / 3.0));
    (cosh, series)
}

#[cfg(test)]
mod tests {
    use super::{Back, Layer, Wall};
    use crate::math;
    use uom::si::f64::{Frequency, Length, ThermalConductivity, Time, VolumetricHeatCapacity};
    use uom::si::{
        frequency::hertz, length::meter, ratio::ratio, thermal_conductivity::watt_per_meter_kelvin,
        time::second, volumetric_heat_capacity::joule_per_cubic_meter_kelvin,
    };

    fn wall(sink: f64, back: Back) -> Wall {
        let layer = Layer {
            thickness: Length::new::<meter>(0.02),
            conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.5),
            heat_capacity: VolumetricHeatCapacity::new::<joule_per_cubic_meter_kelvin>(4e6),
            sink: Frequency::new::<hertz>(sink),
        };
        Wall { layers: vec![layer], back, film: None }
    }

    #[test]
    fn a_still_wall_held_at_its_back_settles_on_a_straight_line() {
        for depth in [0.0, 0.005, 0.01, 0.02] {
            let settled = wall(0.0, Back::Held).at(Length::new::<meter>(depth)).settled();
            assert!((settled.get::<ratio>() - (1.0 - depth / 0.02)).abs() < 1e-12, "{depth}");
        }
    }

    #[test]
    fn a_stream_inside_leaves_what_a_fin_would_have() {
        let sink = 1.2e-3;
        let m = math::sqrt(sink * 4e6 / 0.5) * 0.02;
        let fin = 2.0 / (math::exp(m) + math::exp(-m));
        let settled = wall(sink, Back::Insulated).at(Length::new::<meter>(0.02)).settled();
        assert!((settled.get::<ratio>() - fin).abs() < 1e-12);
    }

    #[test]
    fn nothing_arrives_before_the_step_and_all_of_it_at_the_face_after() {
        let wall = wall(0.0, Back::Held);
        let after = |depth, t| {
            wall.at(Length::new::<meter>(depth)).after(Time::new::<second>(t)).get::<ratio>()
        };
        for t in [f64::NAN, -1.0, 0.0] {
            assert_eq!(after(0.0, t).to_bits(), 0.0_f64.to_bits());
        }
        assert!((after(0.0, 1e-3) - 1.0).abs() < 1e-7);
        assert!(after(0.02, 1e9) < 1e-7);
    }
}
