//! Time until a serious burn: the damage integral over the warming of the basal layer.

use super::damage::LONGEST_S;
use super::{Person, WordedTime};
use crate::bounds::Bounds;
use crate::error::Reason;
use crate::sources::hot_water::{BLOOD_FLOW, DAMAGE_INTEGRAL, EXPOSURES};
use crate::sources::{Confidence, Figure};
use crate::units::{in_celsius, kelvins};
use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature, Time};
use uom::si::{temperature_interval::kelvin, time::second};

/// Water that comes from a tap.
pub const WATER: Bounds = Bounds {
    what: "hot_water",
    unit: "°C",
    min: 0.0,
    max: 110.0,
    because: "water is ice below; above, a tank under pressure gives steam",
};

/// How far a reading may be off.
pub const READING_ERROR: Bounds = Bounds {
    what: "reading_error",
    unit: "K",
    min: 0.0,
    max: 10.0,
    because: "a thermometer that is further off has to be replaced",
};

/// Time until a serious burn, and what may be told of it.
#[derive(Debug, Clone, PartialEq)]
pub struct BurnTime {
    /// At the reading; `None` beyond [`LONGEST_S`]. Its range is that of the thermometer, its upper
    /// end is cut at [`LONGEST_S`].
    pub time: Option<Figure<Time>>,
    /// At the reading and the error of the thermometer together: the only time to tell. `None`
    /// beyond [`LONGEST_S`].
    pub low: Option<Time>,
    /// Whether the person feels the heat and pulls away; if not, no time protects.
    pub time_protects: bool,
}

impl BurnTime {
    /// The time in the form in which it may be told.
    #[must_use]
    pub fn told(&self) -> WordedTime {
        WordedTime::rounded_down(self.low)
    }
}

/// Error of a kitchen thermometer that passed the ice-water check, K; 2 °F.
const CHECKED_K: f64 = 2.0 / 1.8;
/// Error of one that did not, or was not put to it, K; 4 °F.
const UNCHECKED_K: f64 = 4.0 / 1.8;

/// How far a kitchen thermometer may be off: 2 °F when it passed the ice-water check, else 4 °F;
/// [`THERMOMETER`](crate::sources::hot_water::THERMOMETER).
#[must_use]
pub fn thermometer_error(checked: bool) -> TemperatureInterval {
    kelvins(if checked { CHECKED_K } else { UNCHECKED_K })
}

/// Time until a serious burn: a deep second-degree or a third-degree one, the epidermis lost.
///
/// # Equation
/// The time of [`Exposure::onset`](super::damage::Exposure::onset) at the reading, and at the reading
/// with the error of the thermometer added (the time to tell) and taken away.
///
/// # Symbols
/// | symbol | meaning | unit | in the code |
/// |---|---|---|---|
/// | T | hottest reading at the tap | K | `water` |
/// | ΔT | how far the thermometer may be off | K | `error`, [`thermometer_error`] |
///
/// # Source
/// [`EXPOSURES`], [`DAMAGE_INTEGRAL`], [`BLOOD_FLOW`],
/// [`SKIN_LAYERS`](crate::sources::hot_water::SKIN_LAYERS); a child by
/// [`CHILD_SKIN`](crate::sources::hot_water::CHILD_SKIN), an older adult by
/// [`OLDER_SKIN`](crate::sources::hot_water::OLDER_SKIN).
///
/// Every published time found, against the adult at the reading. The lists descend from the same
/// experiments, so that agreement shows that nothing was misread, and no more. They differ by 1.3
/// among themselves and by 2 at 120 °F. The points at 44 and 53 °C and the remembered list are from
/// memory.
///
/// | exposures, °C | 44 | 45 | 47 | 48 | 49 | 51 | 53 | 55 | 60 |
/// |---|---|---|---|---|---|---|---|---|---|
/// | epidermis lost | 6 h | 3 h | 45 min | 20 min | 10 min | 4.2 min | 60 s | 30 s | 5 s |
/// | model / published | 0.80 | 0.77 | 0.73 | 0.81 | 0.82 | 0.55 | 0.80 | 0.67 | 0.79 |
/// | healed after |  | 2 h | 20 min | 15 min | 8 min | 2 min | 30 s | 17 s | 3 s |
/// | first injury / published |  | 0.61 | 0.88 | 0.59 | 0.57 | 0.69 | 1.03 | 0.80 | 1.01 |
///
/// Lists: published time, model / published.
///
/// | °F | model, s | memorandum | hospital | paediatric | university | charity | remembered |
/// |---|---|---|---|---|---|---|---|
/// | 116 | 2493 | 45 min, 0.92 |  |  |  |  |  |
/// | 120 | 529.3 |  |  | 5 min, 1.76 | 10 min, 0.88 |  | 10 min, 0.88 |
/// | 122 | 256.2 | 5 min, 0.85 |  |  |  |  |  |
/// | 125 | 95.43 |  | 2 min, 0.80 |  | 2 min, 0.80 |  | 2 min, 0.80 |
/// | 127 | 53.56 |  |  |  |  |  | 1 min, 0.89 |
/// | 130 | 25.15 |  | 30 s, 0.84 | 30 s, 0.84 |  |  | 30 s, 0.84 |
/// | 131 | 20.02 | 25 s, 0.80 |  |  |  |  |  |
/// | 133 | 13.07 |  |  |  |  | 15 s, 0.87 |  |
/// | 135 | 8.868 |  | 10 s, 0.89 |  |  |  |  |
/// | 140 | 3.957 | 5 s, 0.79 | 5 s, 0.79 | 6 s, 0.66 | 6 s, 0.66 | 5 s, 0.79 | 5 s, 0.79 |
/// | 145 | 2.137 |  | 3 s, 0.71 |  |  |  |  |
/// | 149 | 1.443 | 2 s, 0.72 |  |  |  | 2 s, 0.72 |  |
/// | 150 | 1.323 |  | 1.5 s, 0.88 | 2 s, 0.66 | 2 s, 0.66 |  | 1.5 s, 0.88 |
/// | 154 | 0.9671 | 1 s, 0.97 |  |  |  |  |  |
/// | 155 | 0.9013 |  | 1 s, 0.90 |  |  |  |  |
/// | 156 | 0.8423 |  |  |  |  | 1 s, 0.84 | 1 s, 0.84 |
/// | 158 | 0.7412 |  |  |  |  |  | 1 s, 0.74 |
///
/// The memorandum's other column, first-degree burns, against first injury (damage of 0.53): 116 °F
/// 35 min, 0.64; 122 °F 1 min, 2.45; 131 °F 5 s, 2.73; 140 °F 2 s, 1.52; 149 °F 1 s, 1.19.
/// Reddening comes before any injury that is modelled, and no time is told for it.
///
/// The hospital's list has "more than 5 min" at 120 °F; the dial table of a heater manual repeats it
/// (with "more than 30 s" at 130 °F: 0.84). A campaign's times for a baby against the
/// child: 120 °F 4 min, 1.08; 140 °F 1 s, 1.03; 150 °F 0.5 s, 0.57.
///
/// # Valid for
/// Running water, 43 to 72 °C; computed over all of [`WATER`]. No time is ever without danger: it is
/// when injury has happened on average skin, not how long one may stay.
///
/// # Leaves out
/// Thick skin (palm, sole: later), thin skin (eyelid: earlier), pain that pulls a hand away, a bath
/// that cools, clothes that hold hot water on the skin (earlier than one would think).
///
/// # Errors
/// A reading or an error of the thermometer that is no number or outside [`WATER`] or
/// [`READING_ERROR`].
///
/// # Examples
/// ```
/// use winterseam::hot_water::{Person, WordedTime, burn_time, thermometer_error};
/// use winterseam::units::fahrenheit;
///
/// let tap = fahrenheit(120.0);
/// let adult = burn_time(tap, thermometer_error(true), Person::Adult)?;
/// // Nearly nine minutes at the reading, but it may be off by 2 °F:
/// assert_eq!(adult.told(), WordedTime::AboutMinutes(4));
/// let child = burn_time(tap, thermometer_error(true), Person::Child)?;
/// assert_eq!(child.told(), WordedTime::AboutMinutes(2));
/// # Ok::<(), winterseam::error::Reason>(())
/// ```
pub fn burn_time(
    water: ThermodynamicTemperature,
    error: TemperatureInterval,
    person: Person,
) -> Result<BurnTime, Reason> {
    within(&WATER, in_celsius(water))?;
    within(&READING_ERROR, error.get::<kelvin>())?;
    let exposure = person.exposure();
    let low = exposure.onset(water + error);
    let high = exposure.onset(water - error).unwrap_or(Time::new::<second>(LONGEST_S));
    let figure = |best| {
        let mut sources = vec![&EXPOSURES, &DAMAGE_INTEGRAL, &BLOOD_FLOW];
        sources.extend(person.sources());
        Figure::exact(best, Confidence::Measured, &sources).between(low.unwrap_or(best), high)
    };
    let time = exposure.onset(water).map(figure);
    Ok(BurnTime { time, low, time_protects: person.can_pull_away() })
}

fn within(bounds: &'static Bounds, got: f64) -> Result<(), Reason> {
    if !got.is_finite() {
        Err(Reason::NotANumber)
    } else if bounds.allow(got) {
        Ok(())
    } else {
        Err(Reason::OutOfRange { got, allowed: bounds })
    }
}

#[cfg(test)]
mod tests {
    use super::{Person, WordedTime, burn_time, thermometer_error};
    use crate::error::Reason;
    use crate::units::{celsius, kelvins};
    use uom::si::{f64::Time, time::second};

    fn told(water_c: f64, person: Person) -> WordedTime {
        burn_time(celsius(water_c), thermometer_error(true), person).expect("a tap").told()
    }

    #[test]
    fn the_range_lies_round_the_best_value_and_ends_at_six_hours() {
        for water in [44.0, 50.0, 60.0, 98.0] {
            let burn = burn_time(celsius(water), kelvins(2.0), Person::Adult).expect("a tap");
            let time = burn.time.expect("within six hours");
            assert!(time.low < time.best && time.best < time.high, "{water}");
            assert_eq!(Some(time.low), burn.low);
            assert!(time.high <= Time::new::<second>(21_600.0));
        }
    }

    #[test]
    fn body_warm_and_cold_water_never_get_a_time_and_boiling_water_does() {
        for person in Person::ALL {
            for water in [0.0, 20.0, 37.0] {
                assert_eq!(told(water, person), WordedTime::OverHours(6));
            }
            assert_eq!(told(100.0, person), WordedTime::UnderSeconds(1));
        }
    }

    #[test]
    fn a_time_may_be_told_where_the_reading_alone_gives_none() {
        let burn = burn_time(celsius(43.3), thermometer_error(true), Person::Adult).expect("tap");
        assert!(burn.time.is_none() && burn.low.is_some());
    }

    #[test]
    fn no_time_protects_who_cannot_pull_away() {
        let burn = |p| burn_time(celsius(50.0), thermometer_error(false), p).expect("a tap");
        let (older, cannot) = (burn(Person::OlderAdult), burn(Person::CannotFeelOrMove));
        assert_eq!(older.time, cannot.time);
        assert!(older.time_protects && !cannot.time_protects);
    }

    #[test]
    fn what_no_tap_gives_is_refused() {
        let refused = |water, error| burn_time(celsius(water), kelvins(error), Person::Adult);
        for (water, error) in [(f64::NAN, 1.0), (f64::INFINITY, 1.0), (50.0, f64::NAN)] {
            assert_eq!(refused(water, error), Err(Reason::NotANumber));
        }
        for (water, error) in [(-1.0, 1.0), (110.5, 1.0), (50.0, -1.0), (50.0, 11.0)] {
            assert!(matches!(refused(water, error), Err(Reason::OutOfRange { .. })));
        }
    }
}
