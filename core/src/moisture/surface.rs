//! Dew and mould on an inside surface: a window, the corner of an outside wall.

use crate::physics::moist_air::MoistAir;
use crate::physics::saturation::{saturation_pressure, saturation_temperature};
use crate::units::{Insulance, warmer_by};
use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::ratio;

/// Humidity at a surface from which on mould may grow, as a mean of a month;
/// [`ISO_13788`](crate::sources::moisture::ISO_13788).
pub const CRITICAL_HUMIDITY: f64 = 0.8;

/// What the humidity at a surface leads to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum SurfaceGrade {
    /// Below [`CRITICAL_HUMIDITY`].
    Dry,
    /// From [`CRITICAL_HUMIDITY`] on: mould may grow where that lasts.
    MouldMayGrow,
    /// At or below the dew point: water stands on it.
    Wet,
}

impl SurfaceGrade {
    /// The grade of a surface; `None` outside the saturation curve.
    #[must_use]
    pub fn of(room: &MoistAir, surface: ThermodynamicTemperature) -> Option<Self> {
        let humidity = surface_humidity(room, surface)?.get::<ratio>();
        Some(if humidity >= 1.0 {
            Self::Wet
        } else if humidity >= CRITICAL_HUMIDITY {
            Self::MouldMayGrow
        } else {
            Self::Dry
        })
    }
}

/// Temperature of the inside surface of a wall or window.
///
/// # Equation
///
/// Tₛ = Tᵢ − (Tᵢ − Tₒ) · Rₛᵢ / R
///
/// # Symbols
///
/// | symbol | meaning                                  | unit  | in code       |
/// |--------|------------------------------------------|-------|---------------|
/// | Tₛ     | inside surface                           | K     | return value  |
/// | Tᵢ, Tₒ | air indoors, outdoors                    | K     | `indoors`, `outdoors` |
/// | Rₛᵢ   | film of air indoors                      | m²K/W | `film`        |
/// | R      | from air to air, both films counted      | m²K/W | `whole`       |
///
/// # Source
///
/// [`ISO_6946`](crate::sources::moisture::ISO_6946),
/// [`ISO_13788`](crate::sources::moisture::ISO_13788)
///
/// # Valid for
///
/// A steady state and heat that flows straight through; a film of 0.13 m²K/W on a window, 0.25 where
/// mould is asked for, as behind furniture.
///
/// # Leaves out
///
/// Edges of glass, frames and corners, which are colder.
///
/// # Examples
///
/// ```
/// use winterseam::moisture::surface_temperature;
/// use winterseam::units::{celsius, insulance, kelvins, warmer_by};
///
/// let whole = insulance(0.13 + 1.0 + 0.04);
/// let wall = surface_temperature(celsius(20.0), celsius(-10.0), insulance(0.13), whole);
/// assert!(warmer_by(wall, celsius(16.67)).abs() < kelvins(0.005));
/// ```
#[must_use]
pub fn surface_temperature(
    indoors: ThermodynamicTemperature,
    outdoors: ThermodynamicTemperature,
    film: Insulance,
    whole: Insulance,
) -> ThermodynamicTemperature {
    let share: Ratio = film / whole;
    indoors - warmer_by(indoors, outdoors) * share
}

/// How near a surface is to the room: 1 as warm as the room, 0 as cold as outdoors.
///
/// # Equation
///
/// f = (Tₛ − Tₒ) / (Tᵢ − Tₒ)
///
/// # Symbols
///
/// | symbol | meaning               | unit | in code               |
/// |--------|-----------------------|------|-----------------------|
/// | f      | temperature factor    | –    | return value          |
/// | Tₛ     | inside surface        | K    | `surface`             |
/// | Tᵢ, Tₒ | air indoors, outdoors | K    | `indoors`, `outdoors` |
///
/// # Source
///
/// [`ISO_13788`](crate::sources::moisture::ISO_13788)
///
/// # Valid for
///
/// Air indoors and outdoors of different temperature; `None` where they are the same.
///
/// # Leaves out
///
/// Nothing: it is a definition.
///
/// # Examples
///
/// ```
/// use uom::si::ratio::ratio;
/// use winterseam::moisture::temperature_factor;
/// use winterseam::units::celsius;
///
/// let wall = temperature_factor(celsius(16.67), celsius(20.0), celsius(-10.0)).unwrap();
/// assert!((wall.get::<ratio>() - 0.889).abs() < 0.0005);
/// ```
#[must_use]
pub fn temperature_factor(
    surface: ThermodynamicTemperature,
    indoors: ThermodynamicTemperature,
    outdoors: ThermodynamicTemperature,
) -> Option<Ratio> {
    (indoors != outdoors).then(|| warmer_by(surface, outdoors) / warmer_by(indoors, outdoors))
}

/// Relative humidity of the air that touches a surface; 1 and more is dew.
///
/// # Equation
///
/// φ = pᵥ / p(Tₛ, saturated)
///
/// # Symbols
///
/// | symbol | meaning                 | unit | in code                  |
/// |--------|-------------------------|------|--------------------------|
/// | φ      | humidity at the surface | –    | return value             |
/// | pᵥ    | vapour pressure         | Pa   | `room.vapour_pressure()` |
/// | Tₛ     | inside surface          | K    | `surface`                |
///
/// # Source
///
/// [`ISO_13788`](crate::sources::moisture::ISO_13788), with the saturation pressure of
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// Surfaces of the saturation curve; `None` elsewhere.
///
/// # Leaves out
///
/// Surfaces that take up water.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::{Pressure, Ratio}, pressure::pascal, ratio::{percent, ratio}};
/// use winterseam::moisture::surface_humidity;
/// use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
/// use winterseam::units::celsius;
///
/// let half = RelativeHumidity::new(Ratio::new::<percent>(50.0)).unwrap();
/// let room = MoistAir::new(celsius(20.0), half, Pressure::new::<pascal>(101_325.0)).unwrap();
/// let cold_corner = surface_humidity(&room, celsius(12.62)).unwrap();
/// assert!((cold_corner.get::<ratio>() - 0.8).abs() < 0.001);
/// ```
#[must_use]
pub fn surface_humidity(room: &MoistAir, surface: ThermodynamicTemperature) -> Option<Ratio> {
    Some(room.vapour_pressure() / saturation_pressure(surface)?)
}

/// The most humid that a room can be before a surface is wet.
///
/// # Equation
///
/// φ = p(Tₛ, saturated) / p(Tᵢ, saturated)
///
/// # Symbols
///
/// | symbol | meaning                        | unit | in code      |
/// |--------|--------------------------------|------|--------------|
/// | φ      | relative humidity of the room  | –    | return value |
/// | Tₛ     | inside surface                 | K    | `surface`    |
/// | Tᵢ     | air indoors                    | K    | `indoors`    |
///
/// # Source
///
/// [`ISO_13788`](crate::sources::moisture::ISO_13788), with the saturation pressure of
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// Temperatures of the saturation curve; `None` elsewhere. A surface warmer than the room gives
/// more than 1: it never gets wet.
///
/// # Leaves out
///
/// What [`surface_temperature`] leaves out.
///
/// # Examples
///
/// A room of 20 °C and 50 % has its dew point at 9.27 °C:
///
/// ```
/// use uom::si::ratio::percent;
/// use winterseam::{moisture::highest_humidity, units::celsius};
///
/// let most = highest_humidity(celsius(20.0), celsius(9.27)).unwrap();
/// assert!((most.get::<percent>() - 50.0).abs() < 0.02);
/// ```
#[must_use]
pub fn highest_humidity(
    indoors: ThermodynamicTemperature,
    surface: ThermodynamicTemperature,
) -> Option<Ratio> {
    Some(saturation_pressure(surface)? / saturation_pressure(indoors)?)
}

/// The least temperature factor with which a surface stays below [`CRITICAL_HUMIDITY`].
///
/// # Equation
///
/// f = (Tₛ − Tₒ) / (Tᵢ − Tₒ), with p(Tₛ, saturated) = pᵥ / 0.8
///
/// # Symbols
///
/// | symbol | meaning               | unit | in code                  |
/// |--------|-----------------------|------|--------------------------|
/// | f      | temperature factor    | –    | return value             |
/// | Tₛ     | inside surface        | K    | –                        |
/// | Tᵢ, Tₒ | air indoors, outdoors | K    | `room`, `outdoors`       |
/// | pᵥ    | vapour pressure       | Pa   | `room.vapour_pressure()` |
///
/// # Source
///
/// [`ISO_13788`](crate::sources::moisture::ISO_13788), with the saturation pressure of
/// [`HANDBOOK_CH1`](crate::sources::moisture::HANDBOOK_CH1)
///
/// # Valid for
///
/// Means of a month. `None` for air without vapour, and where it is as warm outdoors as indoors.
///
/// # Leaves out
///
/// Air that leaks: the standard leaves it out as well. [`carried`](super::carried) counts it.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::{Pressure, Ratio}, pressure::pascal, ratio::{percent, ratio}};
/// use winterseam::moisture::least_temperature_factor;
/// use winterseam::physics::moist_air::{MoistAir, RelativeHumidity};
/// use winterseam::units::celsius;
///
/// let half = RelativeHumidity::new(Ratio::new::<percent>(50.0)).unwrap();
/// let room = MoistAir::new(celsius(20.0), half, Pressure::new::<pascal>(101_325.0)).unwrap();
/// let least = least_temperature_factor(&room, celsius(-10.0)).unwrap();
/// assert!((least.get::<ratio>() - 0.754).abs() < 0.0005);
/// ```
#[must_use]
pub fn least_temperature_factor(
    room: &MoistAir,
    outdoors: ThermodynamicTemperature,
) -> Option<Ratio> {
    let surface = saturation_temperature(room.vapour_pressure() / CRITICAL_HUMIDITY)?;
    temperature_factor(surface, room.dry_bulb(), outdoors)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::moist_air::RelativeHumidity;
    use crate::units::celsius;
    use uom::si::f64::Pressure;
    use uom::si::pressure::pascal;

    #[test]
    fn a_surface_is_graded_by_its_own_humidity() {
        let half = RelativeHumidity::new(Ratio::new::<ratio>(0.5)).unwrap();
        let room = MoistAir::new(celsius(20.0), half, Pressure::new::<pascal>(101_325.0)).unwrap();
        let grade = |surface| SurfaceGrade::of(&room, celsius(surface)).unwrap();
        assert_eq!(grade(18.0), SurfaceGrade::Dry);
        assert_eq!(grade(12.0), SurfaceGrade::MouldMayGrow);
        assert_eq!(grade(9.0), SurfaceGrade::Wet);
    }

    #[test]
    fn a_factor_needs_a_difference() {
        assert_eq!(temperature_factor(celsius(20.0), celsius(20.0), celsius(20.0)), None);
    }
}
