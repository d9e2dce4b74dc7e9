//! Heat that a pipe full of standing water loses through its wall, its insulation and its surface.

use super::film::{Cylinder, Surroundings};
use crate::math;
use crate::units::in_kelvin;
use std::f64::consts::PI;
use uom::si::f64::{
    HeatTransfer, Length, LinearPowerDensity, Ratio, ThermalConductivity, ThermodynamicTemperature,
};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::meter;
use uom::si::linear_power_density::watt_per_meter;
use uom::si::thermal_conductivity::watt_per_meter_kelvin;
use uom::si::thermodynamic_temperature::kelvin;
use uom::si::velocity::meter_per_second;

/// A length of straight pipe.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pipe {
    /// Diameter that the water fills.
    pub inside: Length,
    /// Diameter of the bare pipe.
    pub outside: Length,
    /// Conductivity of its wall.
    pub wall: ThermalConductivity,
    /// Thickness of the insulation; zero is bare.
    pub insulation: Length,
    /// Conductivity of the insulation.
    pub insulation_conductivity: ThermalConductivity,
    /// Emissivity of the outermost surface.
    pub emissivity: Ratio,
}

/// What a pipe loses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Loss {
    /// Heat for each length; negative where the pipe gains.
    pub per_length: LinearPowerDensity,
    /// The outermost surface.
    pub surface: ThermodynamicTemperature,
}

/// Heat that a pipe loses to air and wind; the temperature of its surface follows.
///
/// # Equation
/// ```text
/// q = (T_i − T_a) ÷ [ln(D_o/D_i) ÷ (2π·k_w) + ln(D/D_o) ÷ (2π·k) + 1 ÷ (π·D·h)],
/// T_s = T_a + q ÷ (π·D·h), h of T_s
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `q` | heat for each length | W/m | `Loss::per_length` |
/// | `T_s` | outermost surface | K | `Loss::surface` |
/// | `T_i` | inside of the wall | K | `held` |
/// | `T_a` | air and all that the pipe sees | K | `around.air` |
/// | `D_i`, `D_o` | inside and outside diameter of the bare pipe | m | `pipe.inside`, `pipe.outside` |
/// | `D` | diameter over the insulation | m | `pipe.outside + 2 · pipe.insulation` |
/// | `k_w`, `k` | conductivity of wall and insulation | W/(m·K) | `pipe.wall`, `pipe.insulation_conductivity` |
/// | `h` | convection and radiation of [`cylinder_film`](super::film::cylinder_film) | W/(m²·K) | `Cylinder::conductance` |
///
/// # Source
/// [`ISO_12241`](crate::sources::freeze::ISO_12241)
///
/// # Valid for
/// Standing water, a long horizontal pipe, 101 325 Pa. A layer without thickness resists nothing.
///
/// # Leaves out
/// Hangers, valves and ends, which lose more; the ground that warms a buried end, which saves.
///
/// # Examples
/// ```
/// use winterseam::physics::{film::Surroundings, pipe::{Pipe, heat_loss}};
/// use winterseam::units::fahrenheit;
/// use uom::si::{f64::{Length, ThermalConductivity}, length::inch};
/// use uom::si::{linear_power_density::watt_per_meter, thermal_conductivity::watt_per_meter_kelvin};
///
/// let pipe = Pipe {
///     inside: Length::new::<inch>(0.785),
///     outside: Length::new::<inch>(0.875),
///     wall: ThermalConductivity::new::<watt_per_meter_kelvin>(390.0),
///     insulation: Length::new::<inch>(0.5),
///     insulation_conductivity: ThermalConductivity::new::<watt_per_meter_kelvin>(0.036),
///     emissivity: 0.9.into(),
/// };
/// let loss = heat_loss(&pipe, fahrenheit(40.0), Surroundings::still(fahrenheit(0.0)));
/// assert!((loss.per_length.get::<watt_per_meter>() - 5.18).abs() < 0.05);
/// ```
#[must_use]
pub fn heat_loss(pipe: &Pipe, held: ThermodynamicTemperature, around: Surroundings) -> Loss {
    let series = Series::of(pipe);
    let (flow, surface) = series.settle(in_kelvin(held), &series.cylinder(around));
    loss(flow, surface)
}

/// Heat that a pipe loses where its film is given, or left out with `None`.
///
/// # Equation
/// ```text
/// q = (T_i − T_a) ÷ [ln(D_o/D_i) ÷ (2π·k_w) + ln(D/D_o) ÷ (2π·k) + 1 ÷ (π·D·h)]
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `q` | heat for each length | W/m | `Loss::per_length` |
/// | `h` | film; none at all resists nothing | W/(m²·K) | `film` |
/// | `T_i`, `T_a` | inside of the wall, air | K | `held`, `air` |
/// | others | as in [`heat_loss`] | | |
///
/// # Source
/// [`ISO_12241`](crate::sources::freeze::ISO_12241)
///
/// # Valid for
/// Handbook examples and tables, which name their film or neglect it.
///
/// # Leaves out
/// How the film changes with the surface. Without any film the loss is an upper bound, and infinite
/// where no wall and no insulation stand in its way.
///
/// # Examples
/// ```
/// use winterseam::physics::pipe::{Pipe, heat_loss_with_film};
/// use winterseam::units::fahrenheit;
/// use uom::si::{f64::{HeatTransfer, Length}, length::inch};
/// use uom::si::{heat_transfer::watt_per_square_meter_kelvin, linear_power_density::watt_per_meter};
///
/// let bare = Pipe::thin(Length::new::<inch>(0.875), 0.9.into());
/// let film = HeatTransfer::new::<watt_per_square_meter_kelvin>(9.0);
/// let loss = heat_loss_with_film(&bare, fahrenheit(40.0), fahrenheit(0.0), Some(film));
/// assert!((loss.per_length.get::<watt_per_meter>() - 13.96).abs() < 0.01);
/// ```
#[must_use]
pub fn heat_loss_with_film(
    pipe: &Pipe,
    held: ThermodynamicTemperature,
    air: ThermodynamicTemperature,
    film: Option<HeatTransfer>,
) -> Loss {
    let series = Series::of(pipe);
    let (held, air) = (in_kelvin(held), in_kelvin(air));
    let apart = held - air;
    if apart == 0.0 {
        return loss(0.0, air);
    }
    let Some(film) = film else { return loss(apart / series.resistance, air) };
    let surface_gives = PI * series.diameter * film.get::<watt_per_square_meter_kelvin>();
    let surface = series.surface(held, air, surface_gives);
    loss(surface_gives * (surface - air), surface)
}

/// Temperature that a pipe settles at while something heats it from within.
///
/// # Equation
/// ```text
/// T_i = T_s + w · [ln(D_o/D_i) ÷ (2π·k_w) + ln(D/D_o) ÷ (2π·k)], T_s = T_a + w ÷ (π·D·h), h of T_s
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `T_i` | inside of the wall | K | returned |
/// | `w` | heat for each length | W/m | `given` |
/// | others | as in [`heat_loss`] | | |
///
/// # Source
/// [`ISO_12241`](crate::sources::freeze::ISO_12241)
///
/// # Valid for
/// As [`heat_loss`], of which it is the inverse. A cable on the outside of a pipe heats a
/// [`Pipe::thin`].
///
/// # Leaves out
/// Water that runs and carries heat away; one side of the pipe that gets hotter than the other.
///
/// # Examples
/// ```
/// use winterseam::physics::{film::Surroundings, pipe::{Pipe, settled_temperature}};
/// use winterseam::units::{fahrenheit, linear_power_density::watt_per_foot};
/// use uom::si::f64::{Length, LinearPowerDensity};
/// use uom::si::length::inch;
///
/// let bare = Pipe::thin(Length::new::<inch>(0.875), 0.6.into());
/// let cable = LinearPowerDensity::new::<watt_per_foot>(7.0);
/// let still = Surroundings::still(fahrenheit(0.0));
/// assert!(settled_temperature(&bare, cable, still) > fahrenheit(45.0));
/// ```
#[must_use]
pub fn settled_temperature(
    pipe: &Pipe,
    given: LinearPowerDensity,
    around: Surroundings,
) -> ThermodynamicTemperature {
    let series = Series::of(pipe);
    let given = given.get::<watt_per_meter>();
    let surface = Series::surface_given(given, &series.cylinder(around));
    ThermodynamicTemperature::new::<kelvin>(surface + given * series.resistance)
}

impl Pipe {
    /// A bare pipe whose wall resists nothing.
    #[must_use]
    pub fn thin(outside: Length, emissivity: Ratio) -> Self {
        let none = ThermalConductivity::new::<watt_per_meter_kelvin>(0.0);
        Self {
            inside: outside,
            outside,
            wall: none,
            insulation: Length::new::<meter>(0.0),
            insulation_conductivity: none,
            emissivity,
        }
    }
}

fn loss(flow: f64, surface: f64) -> Loss {
    Loss {
        per_length: LinearPowerDensity::new::<watt_per_meter>(flow),
        surface: ThermodynamicTemperature::new::<kelvin>(surface),
    }
}

/// A pipe as its outermost surface sees it, in plain numbers.
#[derive(Debug, Clone, Copy)]
struct Series {
    /// Wall and insulation, m·K/W.
    resistance: f64,
    /// Outermost, m.
    diameter: f64,
    emissivity: f64,
}

impl Series {
    const MISS_K: f64 = 1e-9;
    const TURNS: usize = 60;

    fn of(pipe: &Pipe) -> Self {
        let outside = pipe.outside.get::<meter>();
        let diameter = outside + 2.0 * pipe.insulation.get::<meter>();
        let wall = layer(pipe.inside.get::<meter>(), outside, pipe.wall);
        let insulation = layer(outside, diameter, pipe.insulation_conductivity);
        Self { resistance: wall + insulation, diameter, emissivity: pipe.emissivity.value }
    }

    fn cylinder(&self, around: Surroundings) -> Cylinder {
        Cylinder {
            diameter: self.diameter,
            emissivity: self.emissivity,
            air: in_kelvin(around.air),
            wind: around.wind.get::<meter_per_second>(),
        }
    }

    /// Heat for each length and surface temperature.
    ///
    /// Each turn puts the film of the last surface into the series. A film grows more slowly than
    /// the square root of its own difference in temperature, so each turn at least halves the miss.
    fn settle(&self, held: f64, outer: &Cylinder) -> (f64, f64) {
        let mut surface = f64::midpoint(held, outer.air);
        for _ in 0..Self::TURNS {
            let next = self.surface(held, outer.air, outer.conductance(surface));
            let moved = (next - surface).abs();
            surface = next;
            if moved < Self::MISS_K {
                break;
            }
        }
        (outer.conductance(surface) * (surface - outer.air), surface)
    }

    /// Where the surface settles while so many W/m pass through it. A film grows more slowly than
    /// the square root of its difference, so each turn at least halves the miss.
    fn surface_given(given: f64, outer: &Cylinder) -> f64 {
        let mut surface = outer.air;
        for _ in 0..Self::TURNS {
            let next = outer.air + given / outer.conductance(surface);
            let moved = (next - surface).abs();
            surface = next;
            if moved < Self::MISS_K {
                break;
            }
        }
        surface
    }

    /// Where the surface settles between the inside and the air.
    fn surface(&self, held: f64, air: f64, surface_gives: f64) -> f64 {
        air + (held - air) / (1.0 + self.resistance * surface_gives)
    }
}

/// Resistance of one layer for each length; nothing where it has no thickness.
fn layer(inner: f64, outer: f64, conductivity: ThermalConductivity) -> f64 {
    if outer <= inner {
        return 0.0;
    }
    math::ln(outer / inner) / (2.0 * PI * conductivity.get::<watt_per_meter_kelvin>())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::celsius;
    use uom::si::length::millimeter;
    use uom::si::velocity::meter_per_second;

    fn pipe(insulation_mm: f64) -> Pipe {
        let k = ThermalConductivity::new::<watt_per_meter_kelvin>(0.036);
        Pipe {
            insulation: Length::new::<millimeter>(insulation_mm),
            insulation_conductivity: k,
            ..Pipe::thin(Length::new::<millimeter>(22.2), 0.9.into())
        }
    }

    fn lost(pipe: &Pipe, held: f64, air: f64, wind: f64) -> f64 {
        let wind = uom::si::f64::Velocity::new::<meter_per_second>(wind);
        let around = Surroundings { air: celsius(air), wind };
        heat_loss(pipe, celsius(held), around).per_length.get::<watt_per_meter>()
    }

    #[test]
    fn a_pipe_as_warm_as_the_air_loses_nothing() {
        for insulation in [0.0, 12.7] {
            for wind in [0.0, 5.0] {
                assert_eq!(lost(&pipe(insulation), 3.0, 3.0, wind).to_bits(), 0.0_f64.to_bits());
            }
        }
    }

    #[test]
    fn cold_thin_and_windy_pipes_lose_more() {
        assert!(lost(&pipe(0.0), 4.0, -20.0, 0.0) > lost(&pipe(0.0), 4.0, -10.0, 0.0));
        assert!(lost(&pipe(10.0), 4.0, -10.0, 0.0) > lost(&pipe(20.0), 4.0, -10.0, 0.0));
        assert!(lost(&pipe(10.0), 4.0, -10.0, 3.0) > lost(&pipe(10.0), 4.0, -10.0, 0.0));
    }

    #[test]
    fn a_pipe_colder_than_the_air_gains() {
        assert!(lost(&pipe(10.0), 4.0, 20.0, 0.0) < 0.0);
    }

    #[test]
    fn a_pipe_without_size_still_has_a_finite_loss() {
        let nothing = Pipe::thin(Length::new::<millimeter>(0.0), 0.9.into());
        assert!(lost(&nothing, 4.0, -10.0, 0.0).is_finite());
        let wrapped = Pipe { insulation: Length::new::<millimeter>(10.0), ..nothing };
        assert_eq!(lost(&wrapped, 4.0, -10.0, 0.0).to_bits(), 0.0_f64.to_bits());
    }

    #[test]
    fn a_pipe_that_is_given_what_it_loses_stays_as_warm_as_it_was() {
        for insulation in [0.0, 12.7] {
            for (held, air) in [(4.0, -20.0), (60.0, 20.0), (3.0, 3.0)] {
                let around = Surroundings::still(celsius(air));
                let loss = heat_loss(&pipe(insulation), celsius(held), around).per_length;
                let settled = settled_temperature(&pipe(insulation), loss, around);
                assert!((in_kelvin(settled) - in_kelvin(celsius(held))).abs() < 1e-7);
            }
        }
    }

    #[test]
    fn what_passes_the_insulation_leaves_the_surface() {
        for wind in [0.0, 8.0] {
            let air = Surroundings {
                air: celsius(-20.0),
                wind: uom::si::f64::Velocity::new::<meter_per_second>(wind),
            };
            let loss = heat_loss(&pipe(12.7), celsius(5.0), air);
            let through = (in_kelvin(celsius(5.0)) - in_kelvin(loss.surface))
                / Series::of(&pipe(12.7)).resistance;
            assert!((through / loss.per_length.get::<watt_per_meter>() - 1.0).abs() < 1e-8);
        }
    }
}
