//! The lines at which a reading becomes a danger, in one table. Whoever embeds the page may only
//! draw them tighter.

use crate::sources::{Source, safety};
use crate::units::{fahrenheit, in_fahrenheit};
use uom::si::f64::ThermodynamicTemperature;

/// Readings that were typed in °F do not come back bit for bit; a line is met within this.
const ROUNDING_F: f64 = 1e-6;

/// The lines at which a reading becomes a danger.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lines {
    /// Tap at which anyone is stopped today.
    pub hot_tap_anyone: ThermodynamicTemperature,
    /// Tap at which a home is stopped today where someone burns faster.
    pub hot_tap_frail: ThermodynamicTemperature,
    /// Tap that shows an overheating tank.
    pub hot_tank: ThermodynamicTemperature,
    /// Tap so cool that the reading is asked back.
    pub cool_tap: ThermodynamicTemperature,
    /// Tap so cool that germs may grow in the tank.
    pub growth_tap: ThermodynamicTemperature,
    /// The same where lungs or defenses are weak and no mixing valve allows hot storage.
    pub growth_tap_frail: ThermodynamicTemperature,
    /// Indoors, too cold for anyone.
    pub cold_anyone: ThermodynamicTemperature,
    /// Indoors, too cold for someone frail when the heat can't be kept up.
    pub cold_frail: ThermodynamicTemperature,
    /// Indoors, too hot for anyone.
    pub heat_anyone: ThermodynamicTemperature,
    /// Indoors, too hot for someone frail.
    pub heat_frail: ThermodynamicTemperature,
    /// Frost-free days below which a cable stays plugged in.
    pub frost_free_days: u16,
}

impl Lines {
    /// Judgement of the trade on top of published injury times.
    pub const SOURCE: &'static Source = &safety::LINES;

    /// Draws each line at the tighter of two tables.
    #[must_use]
    pub fn tightened_by(self, other: Self) -> Self {
        let lower = |a: ThermodynamicTemperature, b| if a < b { a } else { b };
        let upper = |a: ThermodynamicTemperature, b| if a > b { a } else { b };
        Self {
            hot_tap_anyone: lower(self.hot_tap_anyone, other.hot_tap_anyone),
            hot_tap_frail: lower(self.hot_tap_frail, other.hot_tap_frail),
            hot_tank: lower(self.hot_tank, other.hot_tank),
            cool_tap: upper(self.cool_tap, other.cool_tap),
            growth_tap: upper(self.growth_tap, other.growth_tap),
            growth_tap_frail: upper(self.growth_tap_frail, other.growth_tap_frail),
            cold_anyone: upper(self.cold_anyone, other.cold_anyone),
            cold_frail: upper(self.cold_frail, other.cold_frail),
            heat_anyone: lower(self.heat_anyone, other.heat_anyone),
            heat_frail: lower(self.heat_frail, other.heat_frail),
            frost_free_days: self.frost_free_days.max(other.frost_free_days),
        }
    }
}

impl Default for Lines {
    fn default() -> Self {
        Self {
            hot_tap_anyone: fahrenheit(150.0),
            hot_tap_frail: fahrenheit(130.0),
            hot_tank: fahrenheit(160.0),
            cool_tap: fahrenheit(75.0),
            growth_tap: fahrenheit(110.0),
            growth_tap_frail: fahrenheit(117.0),
            cold_anyone: fahrenheit(60.0),
            cold_frail: fahrenheit(65.0),
            heat_anyone: fahrenheit(90.0),
            heat_frail: fahrenheit(86.0),
            frost_free_days: 90,
        }
    }
}

/// Whether a reading is at a line or above it.
pub(crate) fn reaches(t: ThermodynamicTemperature, line: ThermodynamicTemperature) -> bool {
    in_fahrenheit(t) >= in_fahrenheit(line) - ROUNDING_F
}

#[cfg(test)]
mod tests {
    use super::{Lines, reaches};
    use crate::units::fahrenheit;

    #[test]
    fn a_reading_at_the_line_is_over_it_whatever_the_rounding() {
        for f in [60.0, 65.0, 75.0, 86.0, 90.0, 130.0, 150.0, 160.0] {
            assert!(reaches(fahrenheit(f), fahrenheit(f)));
            assert!(!reaches(fahrenheit(f - 0.1), fahrenheit(f)));
        }
    }

    #[test]
    fn lines_can_only_be_drawn_tighter() {
        let looser = Lines { hot_tap_frail: fahrenheit(145.0), ..Lines::default() };
        let tighter = Lines { hot_tap_frail: fahrenheit(125.0), ..Lines::default() };
        assert_eq!(Lines::default().tightened_by(looser), Lines::default());
        assert_eq!(Lines::default().tightened_by(tighter), tighter);
    }
}
