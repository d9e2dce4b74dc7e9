//! Moist air: vapour, heat content, density.

use super::saturation::{saturation_pressure, saturation_temperature};
use crate::units::{in_celsius, in_kelvin};
use std::ops::RangeInclusive;
use uom::si::f64::{AvailableEnergy, MassDensity, Pressure, Ratio, ThermodynamicTemperature};
use uom::si::{
    available_energy::joule_per_kilogram, mass_density::kilogram_per_cubic_meter, pressure::pascal,
    ratio::ratio,
};

/// Molar mass of water over that of dry air; [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1).
const MOLAR_MASSES: f64 = 0.621_945;

/// Share of the saturation pressure that the vapour in the air has.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct RelativeHumidity(f64);

impl RelativeHumidity {
    /// From perfectly dry to saturated.
    pub const VALID: RangeInclusive<f64> = 0.0..=1.0;

    /// `None` outside [`RelativeHumidity::VALID`].
    #[must_use]
    pub fn new(share: Ratio) -> Option<Self> {
        let share = share.get::<ratio>();
        Self::VALID.contains(&share).then_some(Self(share))
    }
}

/// Air with vapour in it: ideal gases side by side. Below 0 °C the vapour is measured over ice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistAir {
    dry_bulb: ThermodynamicTemperature,
    pressure: Pressure,
    saturation: Pressure,
    vapour: Pressure,
}

impl MoistAir {
    /// `None` outside
    /// [`SATURATION_CELSIUS`](super::saturation::SATURATION_CELSIUS), or when the vapour alone
    /// would fill the pressure.
    #[must_use]
    pub fn new(
        dry_bulb: ThermodynamicTemperature,
        humidity: RelativeHumidity,
        pressure: Pressure,
    ) -> Option<Self> {
        let saturation = saturation_pressure(dry_bulb)?;
        let vapour = humidity.0 * saturation;
        let room_for_air = pressure.get::<pascal>().is_finite() && vapour < pressure;
        room_for_air.then_some(Self { dry_bulb, pressure, saturation, vapour })
    }

    /// Air with this much vapour in it, or as much of it as the air can hold; `None` outside
    /// [`SATURATION_CELSIUS`](super::saturation::SATURATION_CELSIUS), when the vapour alone would
    /// fill the pressure, or for a vapour pressure below zero.
    #[must_use]
    pub fn with_vapour(
        dry_bulb: ThermodynamicTemperature,
        vapour: Pressure,
        pressure: Pressure,
    ) -> Option<Self> {
        let saturation = saturation_pressure(dry_bulb)?;
        let vapour = if vapour > saturation { saturation } else { vapour };
        let sound = vapour >= Pressure::default() && pressure.get::<pascal>().is_finite();
        (sound && vapour < pressure).then_some(Self { dry_bulb, pressure, saturation, vapour })
    }

    /// Air that holds as much vapour as it can; `None` as for [`MoistAir::new`].
    #[must_use]
    pub fn saturated(dry_bulb: ThermodynamicTemperature, pressure: Pressure) -> Option<Self> {
        Self::new(dry_bulb, RelativeHumidity(1.0), pressure)
    }

    /// Its temperature.
    #[must_use]
    pub fn dry_bulb(&self) -> ThermodynamicTemperature {
        self.dry_bulb
    }

    /// Pressure of air and vapour together.
    #[must_use]
    pub fn pressure(&self) -> Pressure {
        self.pressure
    }

    /// Share of the saturation pressure that its vapour has.
    #[must_use]
    pub fn relative_humidity(&self) -> Ratio {
        self.vapour / self.saturation
    }

    /// How much dry air a cubic metre of it holds, vapour left out.
    #[must_use]
    pub fn dry_air_density(&self) -> MassDensity {
        self.density() / (Ratio::new::<ratio>(1.0) + self.humidity_ratio())
    }

    /// Vapour pressure that this air would have if it were saturated.
    #[must_use]
    pub fn saturation_pressure(&self) -> Pressure {
        self.saturation
    }

    /// Pressure of its vapour.
    #[must_use]
    pub fn vapour_pressure(&self) -> Pressure {
        self.vapour
    }

    /// Temperature at which it starts to wet (or frost) a surface; `None` when it is too dry for
    /// the saturation curve.
    #[must_use]
    pub fn dew_point(&self) -> Option<ThermodynamicTemperature> {
        saturation_temperature(self.vapour)
    }

    /// Vapour for each kilogram of dry air.
    ///
    /// # Equation
    ///
    /// W = 0.621945 · pᵥ / (p − pᵥ)
    ///
    /// # Symbols
    ///
    /// | symbol | meaning           | unit  | in code                  |
    /// |--------|-------------------|-------|--------------------------|
    /// | W      | humidity ratio    | kg/kg | return value             |
    /// | pᵥ    | vapour pressure   | Pa    | `self.vapour_pressure()` |
    /// | p      | pressure of the air | Pa  | `pressure` of `new`      |
    ///
    /// # Source
    ///
    /// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
    ///
    /// # Valid for
    ///
    /// Every [`MoistAir`].
    ///
    /// # Leaves out
    ///
    /// That gases disturb each other: the true ratio is 0.4 to 0.6 % higher.
    ///
    /// # Examples
    ///
    /// ```
    /// use uom::si::f64::{Pressure, Ratio};
    /// use uom::si::{pressure::pascal, ratio::{percent, ratio}};
    /// use winterseam::{physics::moist_air::{MoistAir, RelativeHumidity}, units::celsius};
    ///
    /// let half = RelativeHumidity::new(Ratio::new::<percent>(50.0)).unwrap();
    /// let sea_level = Pressure::new::<pascal>(101_325.0);
    /// let room = MoistAir::new(celsius(20.0), half, sea_level).unwrap();
    /// assert!((room.humidity_ratio().get::<ratio>() - 0.007262).abs() < 5e-7);
    /// ```
    #[must_use]
    pub fn humidity_ratio(&self) -> Ratio {
        MOLAR_MASSES * self.vapour / (self.pressure - self.vapour)
    }

    /// Heat content for each kilogram of dry air; zero for dry air at 0 °C.
    ///
    /// # Equation
    ///
    /// h = 1006 · t + W · (2 501 000 + 1860 · t)
    ///
    /// # Symbols
    ///
    /// | symbol | meaning          | unit         | in code                 |
    /// |--------|------------------|--------------|-------------------------|
    /// | h      | enthalpy         | J/kg dry air | return value            |
    /// | t      | temperature      | °C           | `dry_bulb` of `new`     |
    /// | W      | humidity ratio   | kg/kg        | `self.humidity_ratio()` |
    ///
    /// # Source
    ///
    /// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
    ///
    /// # Valid for
    ///
    /// Every [`MoistAir`].
    ///
    /// # Leaves out
    ///
    /// The rise of the heat capacities with temperature, below 0.1 % in a home.
    ///
    /// # Examples
    ///
    /// ```
    /// use uom::si::f64::{Pressure, Ratio};
    /// use uom::si::{available_energy::kilojoule_per_kilogram, pressure::pascal, ratio::percent};
    /// use winterseam::{physics::moist_air::{MoistAir, RelativeHumidity}, units::celsius};
    ///
    /// let half = RelativeHumidity::new(Ratio::new::<percent>(50.0)).unwrap();
    /// let sea_level = Pressure::new::<pascal>(101_325.0);
    /// let room = MoistAir::new(celsius(20.0), half, sea_level).unwrap();
    /// assert!((room.enthalpy().get::<kilojoule_per_kilogram>() - 38.552).abs() < 0.0005);
    /// ```
    #[must_use]
    pub fn enthalpy(&self) -> AvailableEnergy {
        let t = in_celsius(self.dry_bulb);
        let w = self.humidity_ratio().get::<ratio>();
        AvailableEnergy::new::<joule_per_kilogram>(1006.0 * t + w * (2_501_000.0 + 1860.0 * t))
    }

    /// How heavy a cubic metre of it is, vapour counted.
    ///
    /// # Equation
    ///
    /// ρ = (1 + W) · p / (287.042 · T · (1 + 1.607858 · W))
    ///
    /// # Symbols
    ///
    /// | symbol | meaning              | unit  | in code                 |
    /// |--------|----------------------|-------|-------------------------|
    /// | ρ      | density              | kg/m³ | return value            |
    /// | W      | humidity ratio       | kg/kg | `self.humidity_ratio()` |
    /// | p      | pressure of the air  | Pa    | `pressure` of `new`     |
    /// | T      | absolute temperature | K     | `dry_bulb` of `new`     |
    ///
    /// # Source
    ///
    /// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
    ///
    /// # Valid for
    ///
    /// Every [`MoistAir`].
    ///
    /// # Leaves out
    ///
    /// Real-gas behaviour: the true density is 0.04 to 0.1 % higher.
    ///
    /// # Examples
    ///
    /// ```
    /// use uom::si::f64::{Pressure, Ratio};
    /// use uom::si::{mass_density::kilogram_per_cubic_meter, pressure::pascal, ratio::percent};
    /// use winterseam::{physics::moist_air::{MoistAir, RelativeHumidity}, units::celsius};
    ///
    /// let half = RelativeHumidity::new(Ratio::new::<percent>(50.0)).unwrap();
    /// let sea_level = Pressure::new::<pascal>(101_325.0);
    /// let room = MoistAir::new(celsius(20.0), half, sea_level).unwrap();
    /// let density = room.density().get::<kilogram_per_cubic_meter>();
    /// assert!((density - 1.19890).abs() < 0.000005);
    /// ```
    #[must_use]
    pub fn density(&self) -> MassDensity {
        let w = self.humidity_ratio().get::<ratio>();
        let t = in_kelvin(self.dry_bulb);
        let volume = 287.042 * t * (1.0 + 1.607_858 * w) / self.pressure.get::<pascal>();
        MassDensity::new::<kilogram_per_cubic_meter>((1.0 + w) / volume)
    }
}

/// Pressure of the vapour in air of a known humidity ratio.
///
/// # Equation
///
/// pᵥ = p · W / (0.621945 + W): [`MoistAir::humidity_ratio`] turned round.
///
/// # Symbols
///
/// | symbol | meaning             | unit  | in code          |
/// |--------|---------------------|-------|------------------|
/// | pᵥ    | vapour pressure     | Pa    | return value     |
/// | W      | humidity ratio      | kg/kg | `humidity_ratio` |
/// | p      | pressure of the air | Pa    | `pressure`       |
///
/// # Source
///
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// Ratios from zero.
///
/// # Leaves out
///
/// What [`MoistAir::humidity_ratio`] leaves out.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::{Pressure, Ratio}, pressure::pascal, ratio::ratio};
/// use winterseam::physics::moist_air::vapour_pressure;
///
/// let sea_level = Pressure::new::<pascal>(101_325.0);
/// let vapour = vapour_pressure(Ratio::new::<ratio>(0.007262), sea_level);
/// assert!((vapour.get::<pascal>() - 1169.4).abs() < 0.05);
/// ```
#[must_use]
pub fn vapour_pressure(humidity_ratio: Ratio, pressure: Pressure) -> Pressure {
    pressure * humidity_ratio / (Ratio::new::<ratio>(MOLAR_MASSES) + humidity_ratio)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::celsius;

    fn humidity(share: f64) -> Option<RelativeHumidity> {
        RelativeHumidity::new(Ratio::new::<ratio>(share))
    }

    fn air(t: f64, share: f64, p: f64) -> Option<MoistAir> {
        MoistAir::new(celsius(t), humidity(share)?, Pressure::new::<pascal>(p))
    }

    #[test]
    fn air_that_cannot_be_is_refused() {
        for share in [-0.01, 1.01, f64::NAN, f64::INFINITY] {
            assert_eq!(humidity(share), None);
        }
        for p in [0.0, -101_325.0, f64::NAN, f64::INFINITY] {
            assert_eq!(air(20.0, 0.5, p), None);
        }
        assert_eq!(air(f64::NAN, 0.5, 101_325.0), None);
        assert_eq!(air(120.0, 1.0, 101_325.0), None, "steam leaves no room for air");
    }

    #[test]
    fn dry_air_has_no_dew_point() {
        let dry = air(20.0, 0.0, 101_325.0).unwrap();
        assert_eq!(dry.dew_point(), None);
        assert_eq!(dry.humidity_ratio().get::<ratio>().to_bits(), 0);
    }

    #[test]
    fn air_takes_no_more_vapour_than_it_can_hold() {
        let p = Pressure::new::<pascal>;
        let with = |vapour| MoistAir::with_vapour(celsius(10.0), p(vapour), p(101_325.0));
        assert_eq!(with(9000.0), air(10.0, 1.0, 101_325.0));
        assert_eq!(with(9000.0), MoistAir::saturated(celsius(10.0), p(101_325.0)));
        assert!((with(614.0).unwrap().vapour_pressure() - p(614.0)).abs() < p(1e-9));
        assert_eq!(with(-1.0), None);
        assert_eq!(with(f64::NAN), None);
    }

    #[test]
    fn saturated_air_wets_at_its_own_temperature() {
        for t in [-30.0, -0.1, 0.0, 0.1, 35.0] {
            let dew = air(t, 1.0, 101_325.0).unwrap().dew_point().unwrap();
            assert!((in_celsius(dew) - t).abs() < 1e-9, "{t}");
        }
    }
}
