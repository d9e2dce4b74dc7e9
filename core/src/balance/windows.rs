//! What wet windows tell of the air in a home.

use super::Weather;
use super::gaps::setpoint;
use crate::home::Home;
use crate::moisture::highest_humidity;
use crate::sources::{Confidence, Figure, Source, climate, moisture, windows};
use crate::windows::{Glazing, faces};
use uom::si::f64::{Length, Ratio, ThermodynamicTemperature};
use uom::si::length::meter;

/// A pane, and the air between two of them, m: such homes have thin glass (common practice).
const PANE_M: f64 = 0.003;
const BETWEEN_PANES_M: f64 = 0.012;

const SOURCES: &[&Source] =
    &[&moisture::HANDBOOK_CH1, &windows::EN_673, &moisture::ISO_13788, &climate::NORMALS];

/// Humidity indoors from which on a window gets wet on an ordinary morning of the coldest month:
/// from a single to a double pane, as nobody asked which.
#[must_use]
pub fn wet_window_humidity(home: &Home, weather: &Weather<'_>) -> Option<Figure<Ratio>> {
    let room = setpoint(home);
    let coldest = |a: ThermodynamicTemperature, b| if b < a { b } else { a };
    let morning = weather.place.station.normals.min.into_iter().reduce(coldest)?;
    let metres = Length::new::<meter>;
    let humidity = |pane_gap| {
        let window = Glazing { glass: metres(PANE_M), pane_gap, film_gap: None };
        highest_humidity(room, faces(&window, room, morning).room)
    };
    let (single, double) = (humidity(None)?, humidity(Some(metres(BETWEEN_PANES_M)))?);
    let figure = Figure::exact((single + double) / 2.0, Confidence::Guessed, SOURCES);
    let inputs = ["home.wet_windows", "home.zip", "home.setpoint_f"];
    Some(figure.between(single, double).from_inputs(inputs))
}
