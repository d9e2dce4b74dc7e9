//! Hot water that people use in a day.

use super::mixing::hot_share;
use crate::units::fahrenheit;
use uom::si::f64::{Ratio, ThermodynamicTemperature, Time, Volume, VolumeRate};
use uom::si::ratio::ratio;
use uom::si::time::minute;
use uom::si::volume::gallon;

/// Showers for each person and day, and how long one lasts;
/// [`SHOWER`](crate::sources::water_heater::SHOWER).
const SHOWERS: f64 = 0.7;
const SHOWER_MIN: f64 = 8.0;
/// Other water that is mixed to the hand's warmth, for each person and day: sinks and baths;
/// [`WATER_USE`](crate::sources::water_heater::WATER_USE).
const OTHER_MIXED_GAL: f64 = 8.0;
/// Water that machines take as hot as it comes, for each person and day; the same source.
const PLAIN_GAL: f64 = 3.0;

/// Water used in a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draws {
    /// Mixed at the tap to [`Draws::mixed_to`].
    pub mixed: Volume,
    /// Taken as hot as it comes.
    pub plain: Volume,
}

impl Draws {
    /// A day of so many people with this flow of the shower.
    ///
    /// # Equation
    /// `mixed = n·(0.7·8 min·q + 8 gal)`, `plain = n·3 gal`
    ///
    /// # Symbols
    /// | symbol | meaning | unit | name |
    /// |---|---|---|---|
    /// | n | people | – | `people` |
    /// | q | flow of the shower | m³/s | `shower` |
    ///
    /// # Source
    /// [`WATER_USE`](crate::sources::water_heater::WATER_USE),
    /// [`SHOWER`](crate::sources::water_heater::SHOWER)
    ///
    /// # Valid for
    /// The middle of many homes. One home may use half or twice as much.
    ///
    /// # Leaves out
    /// Leaks, and water that runs until it is warm.
    ///
    /// # Examples
    /// ```
    /// use uom::si::{f64::{Volume, VolumeRate}, volume::gallon, volume_rate::gallon_per_minute};
    /// use winterseam::{hot_water::draws::Draws, units::fahrenheit};
    ///
    /// let one = Draws::of(1.0.into(), VolumeRate::new::<gallon_per_minute>(2.1));
    /// let hot = one.hot(fahrenheit(125.0), fahrenheit(58.0)).get::<gallon>();
    /// assert!((15.0..=20.0).contains(&hot), "medians of field studies");
    /// ```
    #[must_use]
    pub fn of(people: Ratio, shower: VolumeRate) -> Self {
        let showered = shower * Time::new::<minute>(SHOWERS * SHOWER_MIN);
        Self {
            mixed: (showered + Volume::new::<gallon>(OTHER_MIXED_GAL)) * people,
            plain: Volume::new::<gallon>(PLAIN_GAL) * people,
        }
    }

    /// What people mix to: a warm shower (common practice).
    #[must_use]
    pub fn mixed_to() -> ThermodynamicTemperature {
        fahrenheit(105.0)
    }

    /// Water that leaves the tank.
    #[must_use]
    pub fn hot(&self, tank: ThermodynamicTemperature, inlet: ThermodynamicTemperature) -> Volume {
        let share = hot_share(Self::mixed_to(), tank, inlet);
        self.mixed * share.unwrap_or(Ratio::new::<ratio>(1.0)) + self.plain
    }
}
