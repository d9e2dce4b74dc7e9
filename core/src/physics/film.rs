//! How a cylinder gives heat to the air around it and to what it sees.

use super::GRAVITY_M_S2;
use crate::math;
use crate::properties::air_heat::AirFilm;
use crate::units::in_kelvin;
use std::f64::consts::PI;
use uom::si::f64::{HeatTransfer, Length, Ratio, ThermodynamicTemperature, Velocity};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::meter;
use uom::si::velocity::meter_per_second;

const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;

/// What a surface stands in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surroundings {
    /// The air; whatever the surface radiates to is taken to be as warm.
    pub air: ThermodynamicTemperature,
    /// Wind across it; zero is still air.
    pub wind: Velocity,
}

impl Surroundings {
    /// Air that nothing moves but the heat itself.
    #[must_use]
    pub fn still(air: ThermodynamicTemperature) -> Self {
        Self { air, wind: Velocity::new::<meter_per_second>(0.0) }
    }
}

/// The two ways in which a surface gives heat away, for each area and each kelvin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Film {
    /// To the air that touches it.
    pub convection: HeatTransfer,
    /// To what it sees.
    pub radiation: HeatTransfer,
}

/// Nusselt number of a horizontal cylinder in still air.
///
/// # Equation
/// ```text
/// Nu = {0.60 + 0.387 · Ra^(1/6) ÷ [1 + (0.559/Pr)^(9/16)]^(8/27)}²
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `Nu` | heat carried, over heat that would be conducted | – | returned |
/// | `Ra` | Rayleigh number: buoyancy over drag and conduction | – | `rayleigh` |
/// | `Pr` | Prandtl number | – | `prandtl` |
///
/// # Source
/// [`CHURCHILL_CHU_1975`](crate::sources::freeze::CHURCHILL_CHU_1975)
///
/// # Valid for
/// Ra up to 10¹²; properties at the mean of surface and air.
///
/// # Leaves out
/// A ceiling, a wall or another pipe close by, which hold the warm air back: the loss is then less.
///
/// # Examples
/// ```
/// use winterseam::physics::film::natural_convection;
///
/// let nusselt = natural_convection(1e4.into(), 0.71.into());
/// assert!((nusselt.value - 4.373).abs() < 0.001);
/// ```
#[must_use]
pub fn natural_convection(rayleigh: Ratio, prandtl: Ratio) -> Ratio {
    natural_nusselt(rayleigh.value, prandtl.value).into()
}

/// Nusselt number of a cylinder with wind across it.
///
/// # Equation
/// ```text
/// Nu = 0.3 + 0.62 · Re^½ · Pr^⅓ ÷ [1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282 000)^⅝]^⅘
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `Nu` | heat carried, over heat that would be conducted | – | returned |
/// | `Re` | Reynolds number: wind times diameter over kinematic viscosity | – | `reynolds` |
/// | `Pr` | Prandtl number | – | `prandtl` |
///
/// # Source
/// [`CHURCHILL_BERNSTEIN_1977`](crate::sources::freeze::CHURCHILL_BERNSTEIN_1977)
///
/// # Valid for
/// Re · Pr above 0.2.
///
/// # Leaves out
/// Gusts and eddies of the wind: its authors call it a lower bound.
///
/// # Examples
/// ```
/// use winterseam::physics::film::forced_convection;
///
/// let nusselt = forced_convection(1000.0.into(), 0.71.into());
/// assert!((nusselt.value - 16.02).abs() < 0.01);
/// ```
#[must_use]
pub fn forced_convection(reynolds: Ratio, prandtl: Ratio) -> Ratio {
    forced_nusselt(reynolds.value, prandtl.value).into()
}

/// Nusselt number where wind and buoyancy both move the air across a horizontal cylinder.
///
/// # Equation
/// ```text
/// Nu = (Nu_n⁴ + Nu_f⁴)^¼
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `Nu` | of both together | – | returned |
/// | `Nu_n` | of [`natural_convection`] | – | `natural` |
/// | `Nu_f` | of [`forced_convection`] | – | `forced` |
///
/// # Source
/// [`ASTM_C680`](crate::sources::freeze::ASTM_C680)
///
/// # Valid for
/// Horizontal cylinders with wind across them.
///
/// # Leaves out
/// Wind along the pipe, which carries less.
///
/// # Examples
/// ```
/// use winterseam::physics::film::mixed_convection;
///
/// assert_eq!(mixed_convection(6.0.into(), 0.0.into()).value, 6.0);
/// ```
#[must_use]
pub fn mixed_convection(natural: Ratio, forced: Ratio) -> Ratio {
    mixed_nusselt(natural.value, forced.value).into()
}

/// Radiation of a surface to surroundings that are all equally warm.
///
/// # Equation
/// ```text
/// h = ε · σ · (T_s² + T_a²) · (T_s + T_a)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `h` | heat for each area and kelvin of difference | W/(m²·K) | returned |
/// | `ε` | share of what a black body would radiate | – | `emissivity` |
/// | `σ` | Stefan–Boltzmann constant | W/(m²·K⁴) | `STEFAN_BOLTZMANN` |
/// | `T_s` | surface | K | `surface` |
/// | `T_a` | what the surface sees | K | `around` |
///
/// # Source
/// [`CODATA_2018`](crate::sources::freeze::CODATA_2018),
/// [`ISO_12241`](crate::sources::freeze::ISO_12241)
///
/// # Valid for
/// A small grey body in wide surroundings.
///
/// # Leaves out
/// Open sky, which is colder than the air: the loss is then more.
///
/// # Examples
/// ```
/// use winterseam::physics::film::radiation;
/// use winterseam::units::celsius;
/// use uom::si::heat_transfer::watt_per_square_meter_kelvin;
///
/// let black = radiation(1.0.into(), celsius(0.0), celsius(0.0));
/// assert!((black.get::<watt_per_square_meter_kelvin>() - 4.62).abs() < 0.01);
/// ```
#[must_use]
pub fn radiation(
    emissivity: Ratio,
    surface: ThermodynamicTemperature,
    around: ThermodynamicTemperature,
) -> HeatTransfer {
    let h = radiated(emissivity.value, in_kelvin(surface), in_kelvin(around));
    HeatTransfer::new::<watt_per_square_meter_kelvin>(h)
}

/// Convection and radiation of a horizontal cylinder whose surface temperature is known.
///
/// # Equation
/// ```text
/// h_c = Nu · k ÷ D, Ra = g · |T_s − T_a| · D³ · Pr ÷ (T_f · ν²), Re = v · D ÷ ν
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `h_c` | convection | W/(m²·K) | `Film::convection` |
/// | `Nu` | [`natural_convection`], in wind joined by [`mixed_convection`] | – | `nusselt` |
/// | `k`, `ν`, `Pr` | air at `T_f` and 101 325 Pa | W/(m·K), m²/s, – | `AirFilm` |
/// | `T_f` | mean of surface and air | K | `film` |
/// | `T_s`, `T_a` | surface, air | K | `surface`, `around.air` |
/// | `D` | diameter of the surface | m | `outside` |
/// | `v` | wind across it | m/s | `around.wind` |
/// | `g` | gravity | m/s² | `GRAVITY_M_S2` |
///
/// # Source
/// [`CHURCHILL_CHU_1975`](crate::sources::freeze::CHURCHILL_CHU_1975),
/// [`CHURCHILL_BERNSTEIN_1977`](crate::sources::freeze::CHURCHILL_BERNSTEIN_1977),
/// [`ASTM_C680`](crate::sources::freeze::ASTM_C680)
///
/// # Valid for
/// Diameters above zero, dry air at sea level.
///
/// # Leaves out
/// Thin air of high places, which carries less: some 9 % less in still air at 1500 m.
///
/// # Examples
/// ```
/// use winterseam::physics::film::{Surroundings, cylinder_film};
/// use winterseam::units::celsius;
/// use uom::si::{f64::Length, heat_transfer::watt_per_square_meter_kelvin, length::millimeter};
///
/// let pipe = Length::new::<millimeter>(22.2);
/// let film = cylinder_film(pipe, celsius(4.4), 0.9.into(), Surroundings::still(celsius(-17.8)));
/// assert!((film.convection.get::<watt_per_square_meter_kelvin>() - 6.5).abs() < 0.1);
/// ```
#[must_use]
pub fn cylinder_film(
    outside: Length,
    surface: ThermodynamicTemperature,
    emissivity: Ratio,
    around: Surroundings,
) -> Film {
    let (d, t_s, t_a) = (outside.get::<meter>(), in_kelvin(surface), in_kelvin(around.air));
    let air = AirFilm::at(f64::midpoint(t_s, t_a));
    let wind = around.wind.get::<meter_per_second>();
    let h_c = nusselt(&air, d, (t_s, t_a), wind) * air.conductivity / d;
    Film {
        convection: HeatTransfer::new::<watt_per_square_meter_kelvin>(h_c),
        radiation: radiation(emissivity, surface, around.air),
    }
}

/// A cylinder in its surroundings, in plain numbers, for solvers.
#[derive(Debug, Clone, Copy)]
pub(super) struct Cylinder {
    pub(super) diameter: f64,
    pub(super) emissivity: f64,
    pub(super) air: f64,
    pub(super) wind: f64,
}

impl Cylinder {
    /// Heat for each metre of length and kelvin of difference. Finite at diameter zero.
    pub(super) fn conductance(&self, surface: f64) -> f64 {
        let air = AirFilm::at(f64::midpoint(surface, self.air));
        let nu = nusselt(&air, self.diameter, (surface, self.air), self.wind);
        let h_r = radiated(self.emissivity, surface, self.air);
        PI * (nu * air.conductivity + self.diameter * h_r)
    }
}

fn nusselt(air: &AirFilm, d: f64, (t_s, t_a): (f64, f64), wind: f64) -> f64 {
    let film = f64::midpoint(t_s, t_a);
    let grashof =
        GRAVITY_M_S2 * (t_s - t_a).abs() * d * d * d / (film * air.kinematic * air.kinematic);
    let natural = natural_nusselt(grashof * air.prandtl, air.prandtl);
    if wind > 0.0 {
        let forced = forced_nusselt(wind * d / air.kinematic, air.prandtl);
        mixed_nusselt(natural, forced)
    } else {
        natural
    }
}

fn natural_nusselt(ra: f64, pr: f64) -> f64 {
    let shape = math::pow(1.0 + math::pow(0.559 / pr, 9.0 / 16.0), 8.0 / 27.0);
    let root = 0.60 + 0.387 * math::pow(ra, 1.0 / 6.0) / shape;
    root * root
}

fn forced_nusselt(re: f64, pr: f64) -> f64 {
    let shape = math::sqrt(math::sqrt(1.0 + math::pow(0.4 / pr, 2.0 / 3.0)));
    let laminar = 0.62 * math::sqrt(re) * math::pow(pr, 1.0 / 3.0) / shape;
    0.3 + laminar * math::pow(1.0 + math::pow(re / 282_000.0, 5.0 / 8.0), 4.0 / 5.0)
}

fn mixed_nusselt(natural: f64, forced: f64) -> f64 {
    let (n2, f2) = (natural * natural, forced * forced);
    math::sqrt(math::sqrt(n2 * n2 + f2 * f2))
}

fn radiated(emissivity: f64, t_s: f64, t_a: f64) -> f64 {
    emissivity * STEFAN_BOLTZMANN * (t_s * t_s + t_a * t_a) * (t_s + t_a)
}
