//! Whether leaks alone still bring the fresh air that people need.

use crate::air::ventilation::{credit, weather_factor};
use crate::air::whole_home;
use crate::balance::Assessment;
use crate::home::Home;
use crate::physics::power_law::normalized_leakage;
use crate::sources::Figure;
use uom::si::f64::VolumeRate;

/// Fresh air that the leaks of a home bring over the year, by the rule for it; `None` where too
/// little is known.
#[must_use]
pub fn by_leaks(home: &Home, year: &Assessment) -> Option<Figure<VolumeRate>> {
    let floor = whole_home::floor(&home.building);
    let leakage = normalized_leakage(year.leakage?, floor, whole_home::height());
    Some(credit(leakage, weather_factor(year.air?.speed()), floor))
}

/// Whether leaks bring less than the home needs, and no fan makes up for it.
#[must_use]
pub fn is_short(home: &Home, year: &Assessment) -> bool {
    let need = whole_home::fresh_air_need(&home.building).best;
    let fan = home.bath_fan.runs_steadily == Some(true);
    let leaks = by_leaks(home, year).map(|figure| figure.best);
    !fan && leaks.is_some_and(|leaks| leaks < need)
}
