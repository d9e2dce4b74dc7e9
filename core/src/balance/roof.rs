//! What leaks carry into the roof over the year.

use super::Weather;
use super::gaps::{leaks_of, setpoint};
use crate::air::leaks::leads_to;
use crate::home::{Home, LeadsTo};
use crate::moisture::{CeilingLeak, IndoorVapour, Roof, RoofYear, roof_year};
use crate::properties::air::standard_pressure;
use crate::units::insulance;
use uom::si::f64::{Area, Length, Ratio, TemperatureInterval};
use uom::si::length::meter;

/// Half the height of a room: the level of equal pressures lies halfway up
/// ([`HANDBOOK_2021_CH16`](crate::sources::air::HANDBOOK_2021_CH16), leaks spread evenly).
const ABOVE_NEUTRAL_M: f64 = 1.25;
/// Insulation on the ceiling, and the thin roof above it, m²K/W;
/// [`ROOF_LAYERS`](crate::sources::moisture::ROOF_LAYERS).
const CEILING_M2_K_W: f64 = 2.0;
const THIN_ROOF_M2_K_W: f64 = 0.05;

/// The year of the roof above all gaps that lead there; `None` where none is known to. Nothing
/// dilutes the leak, so it is the most that can gather.
#[must_use]
pub fn wet_roof(
    home: &Home,
    weather: &Weather<'_>,
    vapour: IndoorVapour,
    under_sky: TemperatureInterval,
) -> Option<RoofYear> {
    let leaks = leaks_of(home, weather)?;
    let into_roof = home.gaps.iter().zip(leaks.gaps);
    let area: Area = into_roof
        .filter(|(gap, _)| leads_to(gap) == LeadsTo::RoofCavity)
        .map(|(_, area)| area)
        .sum();
    let roof = Roof {
        leak: CeilingLeak::new(
            area,
            Length::new::<meter>(ABOVE_NEUTRAL_M),
            insulance(CEILING_M2_K_W),
            insulance(THIN_ROOF_M2_K_W),
        )?,
        ventilation: Ratio::default(),
        under_sky,
        room: setpoint(home),
        vapour,
        pressure: standard_pressure(weather.place.station.elevation)?,
    };
    (area > Area::default()).then(|| roof_year(&roof, weather.year))?
}
