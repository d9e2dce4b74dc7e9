//! Hot and cold water in one stream.

use crate::units::{in_kelvin, kelvins, warmer_by};
use uom::si::f64::{Ratio, ThermodynamicTemperature};
use uom::si::ratio::ratio;

/// Share of hot water in a mix; `None` where no share gives that temperature.
///
/// # Equation
/// `f = (T_mix − T_cold) / (T_hot − T_cold)`
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | f | share of hot water | – | return value |
/// | `T_mix`, `T_hot`, `T_cold` | the mix and its two parts | K | `mixed`, `hot`, `cold` |
///
/// # Source
/// Balance of energy; heat capacity as one number:
/// [`WATER_HEAT`](crate::properties::water::WATER_HEAT).
///
/// # Valid for
/// Water from tap to tap.
///
/// # Leaves out
/// What the pipe takes on the way.
///
/// # Examples
/// ```
/// use winterseam::{hot_water::mixing::hot_share, units::fahrenheit};
///
/// let bath = hot_share(fahrenheit(105.0), fahrenheit(120.0), fahrenheit(60.0)).unwrap();
/// assert!((bath.value - 0.75).abs() < 1e-9);
/// assert!(hot_share(fahrenheit(105.0), fahrenheit(100.0), fahrenheit(60.0)).is_none());
/// ```
#[must_use]
pub fn hot_share(
    mixed: ThermodynamicTemperature,
    hot: ThermodynamicTemperature,
    cold: ThermodynamicTemperature,
) -> Option<Ratio> {
    let share = (in_kelvin(mixed) - in_kelvin(cold)) / (in_kelvin(hot) - in_kelvin(cold));
    (0.0..=1.0).contains(&share).then(|| Ratio::new::<ratio>(share))
}

/// Temperature of a mix.
///
/// # Equation
/// `T_mix = T_cold + f·(T_hot − T_cold)`
///
/// # Symbols
/// As in [`hot_share`].
///
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | f | share of hot water | – | `share` |
///
/// # Source
/// As in [`hot_share`].
///
/// # Valid for
/// Shares from 0 to 1.
///
/// # Leaves out
/// What the pipe takes on the way.
///
/// # Examples
/// ```
/// use winterseam::{hot_water::mixing::mixed, units::fahrenheit};
///
/// let valve = mixed(0.75.into(), fahrenheit(140.0), fahrenheit(60.0));
/// assert!((valve.value - fahrenheit(120.0).value).abs() < 1e-9);
/// ```
#[must_use]
pub fn mixed(
    share: Ratio,
    hot: ThermodynamicTemperature,
    cold: ThermodynamicTemperature,
) -> ThermodynamicTemperature {
    cold + kelvins(warmer_by(hot, cold).value * share.get::<ratio>())
}
