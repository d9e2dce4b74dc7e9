//! All leaks of a home together, as a test with a blower in the door finds them.

use crate::math;
use uom::si::f64::{Area, Length, MassDensity, Pressure, Ratio, VolumeRate};
use uom::si::{
    area::square_meter, length::meter, pressure::pascal, ratio::ratio,
    volume_rate::cubic_meter_per_second,
};

/// Density of the air in the handbook's relations between flow and area, kg/m³.
const DENSITY: f64 = 1.2;

/// The pressure and discharge coefficient that a leakage area is stated with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reference {
    pressure_pa: f64,
    discharge: f64,
}

impl Reference {
    /// 4 Pa and an opening without loss: the effective leakage area.
    pub const FOUR_PASCALS: Self = Self { pressure_pa: 4.0, discharge: 1.0 };
    /// 10 Pa and a sharp-edged opening: the equivalent leakage area.
    pub const TEN_PASCALS: Self = Self { pressure_pa: 10.0, discharge: 0.611 };

    /// Flow through one square metre, m³/s.
    fn speed(self) -> f64 {
        self.discharge * math::sqrt(2.0 * self.pressure_pa / DENSITY)
    }
}

/// Flow through all leaks of a home as a power of the pressure across them.
///
/// # Equation
///
/// Q = c · Δpⁿ;  A = Q(Δpᵣ) / (C · √(2 · Δpᵣ / ρ))
///
/// # Symbols
///
/// | symbol | meaning                          | unit        | in code                    |
/// |--------|----------------------------------|-------------|----------------------------|
/// | Q      | volume flow                      | m³/s        | [`PowerLaw::flow`]         |
/// | Δp     | pressure across the envelope     | Pa          | `across`                   |
/// | c      | flow coefficient                 | m³/(s Paⁿ)  | [`PowerLaw::coefficient`]  |
/// | n      | flow exponent                    | –           | [`PowerLaw::exponent`]     |
/// | A      | leakage area                     | m²          | [`PowerLaw::leakage_area`] |
/// | Δpᵣ, C | pressure and discharge stated    | Pa, –       | [`Reference`]              |
/// | ρ      | density of air, 1.2              | kg/m³       | –                          |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_LEAKAGE`](crate::sources::air::HANDBOOK_2021_CH16_LEAKAGE)
///
/// # Valid for
///
/// Exponents from ½ to 1; measured from 10 to 75 Pa. At 4 Pa, below what was measured, it may be
/// off by 40 %.
///
/// # Leaves out
///
/// Air warmer or thinner than that of the relations: see [`PowerLaw::at_standard_air`].
///
/// # Examples
///
/// A home that lets 1000 cfm through at 50 Pa has 354 cm² of leakage area at 4 Pa:
///
/// ```
/// use uom::si::f64::{Pressure, Ratio, VolumeRate};
/// use uom::si::{area::square_centimeter, pressure::pascal, ratio::ratio};
/// use winterseam::physics::power_law::{PowerLaw, Reference};
/// use winterseam::units::volume_rate::cfm;
///
/// let (flow, at) = (VolumeRate::new::<cfm>(1000.0), Pressure::new::<pascal>(50.0));
/// let home = PowerLaw::through(flow, at, Ratio::new::<ratio>(0.65)).unwrap();
/// let area = home.leakage_area(Reference::FOUR_PASCALS).get::<square_centimeter>();
/// assert!((area - 354.0).abs() < 0.05);
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PowerLaw {
    c: f64,
    n: f64,
}

impl PowerLaw {
    /// Exponent where nobody measured it at several pressures.
    pub const USUAL_EXPONENT: f64 = 0.65;

    /// From its two constants; `None` for a negative coefficient or an exponent outside ½ to 1.
    #[must_use]
    pub fn new(coefficient: f64, exponent: Ratio) -> Option<Self> {
        let n = exponent.get::<ratio>();
        let valid = coefficient >= 0.0 && coefficient.is_finite() && (0.5..=1.0).contains(&n);
        valid.then_some(Self { c: coefficient, n })
    }

    /// From the flow at one pressure.
    #[must_use]
    pub fn through(flow: VolumeRate, at: Pressure, exponent: Ratio) -> Option<Self> {
        let at = at.get::<pascal>();
        let per_power = math::pow(at, -exponent.get::<ratio>());
        let measured = at > 0.0;
        measured
            .then(|| Self::new(flow.get::<cubic_meter_per_second>() * per_power, exponent))
            .flatten()
    }

    /// From a leakage area and what it was stated with.
    #[must_use]
    pub fn of_area(area: Area, stated: Reference, exponent: Ratio) -> Option<Self> {
        let flow = area.get::<square_meter>() * stated.speed();
        let at = Pressure::new::<pascal>(stated.pressure_pa);
        Self::through(VolumeRate::new::<cubic_meter_per_second>(flow), at, exponent)
    }

    /// The straight line of the logarithms through a test at several pressures, by least squares;
    /// `None` below two pressures, for a flow or pressure that is not positive, and where the line
    /// has an exponent outside ½ to 1.
    #[must_use]
    pub fn fitted(test: &[(Pressure, VolumeRate)]) -> Option<Self> {
        let logs = |(p, q): &(Pressure, VolumeRate)| {
            (math::ln(p.get::<pascal>()), math::ln(q.get::<cubic_meter_per_second>()))
        };
        let points: Vec<(f64, f64)> = test.iter().map(logs).collect();
        let count = f64::from(u16::try_from(points.len()).ok()?);
        let mean = |of: fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>() / count;
        let (x, y) = (mean(|p| p.0), mean(|p| p.1));
        let rise: f64 = points.iter().map(|p| (p.0 - x) * (p.1 - y)).sum();
        let run: f64 = points.iter().map(|p| (p.0 - x) * (p.0 - x)).sum();
        let n = rise / run;
        Self::new(math::exp(y - n * x), Ratio::new::<ratio>(n))
    }

    /// Flow coefficient, m³/(s Paⁿ).
    #[must_use]
    pub fn coefficient(&self) -> f64 {
        self.c
    }

    /// Flow exponent.
    #[must_use]
    pub fn exponent(&self) -> Ratio {
        Ratio::new::<ratio>(self.n)
    }

    /// Flow at a pressure; a negative pressure turns it round.
    #[must_use]
    pub fn flow(&self, across: Pressure) -> VolumeRate {
        let p = across.get::<pascal>();
        let flow = self.c * math::pow(p.abs(), self.n);
        VolumeRate::new::<cubic_meter_per_second>(flow.copysign(p))
    }

    /// Leakage area by this statement.
    #[must_use]
    pub fn leakage_area(&self, stated: Reference) -> Area {
        let flow = self.flow(Pressure::new::<pascal>(stated.pressure_pa));
        Area::new::<square_meter>(flow.get::<cubic_meter_per_second>() / stated.speed())
    }

    /// The same leaks in other air: the coefficient that air of this density and viscosity, in
    /// multiples of those of 20 °C at sea level, was measured with.
    #[must_use]
    pub fn at_standard_air(&self, density: Ratio, viscosity: Ratio) -> Self {
        let thicker = math::pow(viscosity.get::<ratio>(), 2.0 * self.n - 1.0);
        Self { c: self.c * thicker * math::pow(density.get::<ratio>(), 1.0 - self.n), ..*self }
    }
}

/// Leakage of a home for its floor and height, by which homes of all sizes are compared.
///
/// # Equation
///
/// NL = 1000 · (A / F) · (H / 2.5 m)^0.4
///
/// # Symbols
///
/// | symbol | meaning                         | unit | in code        |
/// |--------|---------------------------------|------|----------------|
/// | NL     | normalized leakage              | –    | return value   |
/// | A      | effective leakage area at 4 Pa  | m²   | `leakage_area` |
/// | F      | area of the floor               | m²   | `floor`        |
/// | H      | height of the home              | m    | `height`       |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_LEAKAGE`](crate::sources::air::HANDBOOK_2021_CH16_LEAKAGE)
///
/// # Valid for
///
/// Any home; the factor 0.1 of the source goes with square centimetres.
///
/// # Leaves out
///
/// Where the leaks are.
///
/// # Examples
///
/// ```
/// use uom::si::f64::{Area, Length};
/// use uom::si::{area::{square_centimeter, square_meter}, length::meter, ratio::ratio};
/// use winterseam::physics::power_law::normalized_leakage;
///
/// let area = Area::new::<square_centimeter>(354.0);
/// let floor = Area::new::<square_meter>(90.0);
/// let leakage = normalized_leakage(area, floor, Length::new::<meter>(2.4));
/// assert!((leakage.get::<ratio>() - 0.387).abs() < 5e-4);
/// ```
#[must_use]
pub fn normalized_leakage(leakage_area: Area, floor: Area, height: Length) -> Ratio {
    let storey = height.get::<meter>() / 2.5;
    leakage_area / floor * 1000.0 * math::pow(storey, 0.4)
}

/// Air that a blower moves through the envelope, from what its own gauge shows.
///
/// # Equation
///
/// Q = Qᶠ · ρ₁ / ρ₂, with air 1 going through the fan and air 2 through the leaks
///
/// # Symbols
///
/// | symbol | meaning                            | unit  | in code          |
/// |--------|------------------------------------|-------|------------------|
/// | Q      | flow through the leaks             | m³/s  | return value     |
/// | Qᶠ     | flow through the fan               | m³/s  | `fan`            |
/// | ρ₁     | density of the air in the fan      | kg/m³ | `in_fan`         |
/// | ρ₂     | density of the air in the leaks    | kg/m³ | `in_leaks`       |
///
/// # Source
///
/// [`FAN_TEST_STANDARD`](crate::sources::air::FAN_TEST_STANDARD)
///
/// # Valid for
///
/// A blower that draws air out (the leaks take outdoor air) or pushes it in (they take room air).
///
/// # Leaves out
///
/// The calibration of the blower itself.
///
/// # Examples
///
/// ```
/// use uom::si::f64::{MassDensity, VolumeRate};
/// use uom::si::{mass_density::kilogram_per_cubic_meter, volume_rate::liter_per_second};
/// use winterseam::physics::power_law::through_the_leaks;
///
/// let fan = VolumeRate::new::<liter_per_second>(600.0);
/// let density = MassDensity::new::<kilogram_per_cubic_meter>;
/// let leaks = through_the_leaks(fan, density(1.20), density(1.29));
/// assert!(leaks < fan);
/// ```
#[must_use]
pub fn through_the_leaks(
    fan: VolumeRate,
    in_fan: MassDensity,
    in_leaks: MassDensity,
) -> VolumeRate {
    fan * (in_fan / in_leaks)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(pairs: &[(f64, f64)]) -> Vec<(Pressure, VolumeRate)> {
        let point = |(p, q): &(f64, f64)| {
            (Pressure::new::<pascal>(*p), VolumeRate::new::<cubic_meter_per_second>(*q))
        };
        pairs.iter().map(point).collect()
    }

    #[test]
    fn one_reading_or_a_dead_gauge_gives_no_line() {
        assert_eq!(PowerLaw::fitted(&[]), None);
        assert_eq!(PowerLaw::fitted(&points(&[(50.0, 0.5)])), None);
        assert_eq!(PowerLaw::fitted(&points(&[(0.0, 0.5), (50.0, 0.7)])), None);
        assert_eq!(PowerLaw::fitted(&points(&[(10.0, 0.5), (50.0, 0.5)])), None);
    }

    #[test]
    fn no_pressure_gives_no_flow_and_area_comes_back() {
        let exponent = Ratio::new::<ratio>(0.65);
        let area = Area::new::<square_meter>(0.05);
        for stated in [Reference::FOUR_PASCALS, Reference::TEN_PASCALS] {
            let home = PowerLaw::of_area(area, stated, exponent).unwrap();
            assert_eq!(home.flow(Pressure::default()), VolumeRate::default());
            assert!((home.leakage_area(stated) - area).abs() < area * 1e-12);
        }
        assert_eq!(PowerLaw::new(-0.1, exponent), None);
        assert_eq!(PowerLaw::new(0.1, Ratio::new::<ratio>(1.1)), None);
    }
}
