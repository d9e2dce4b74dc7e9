//! What wet windows tell of the air in a home.

use super::Weather;
use super::gaps::setpoint;
use crate::home::Home;
use crate::moisture::{highest_humidity, surface_temperature};
use crate::sources::{Confidence, Figure, Source, climate, moisture};
use crate::units::insulance;
use uom::si::f64::{Ratio, ThermodynamicTemperature};

/// Films of air indoors and outdoors, and the air between two panes, m²K/W; glass itself is next to
/// nothing: [`ISO_6946`](moisture::ISO_6946).
const FILM_INSIDE: f64 = 0.13;
const FILM_OUTSIDE: f64 = 0.04;
const BETWEEN_PANES: f64 = 0.18;

const SOURCES: &[&Source] =
    &[&moisture::HANDBOOK_CH1, &moisture::ISO_6946, &moisture::ISO_13788, &climate::NORMALS];

/// Humidity indoors from which on a window gets wet on an ordinary morning of the coldest month:
/// from a single to a double pane, as nobody asked which.
#[must_use]
pub fn wet_window_humidity(home: &Home, weather: &Weather<'_>) -> Option<Figure<Ratio>> {
    let room = setpoint(home);
    let coldest = |a: ThermodynamicTemperature, b| if b < a { b } else { a };
    let morning = weather.place.station.normals.min.into_iter().reduce(coldest)?;
    let humidity = |between: f64| {
        let whole = insulance(FILM_INSIDE + between + FILM_OUTSIDE);
        let pane = surface_temperature(room, morning, insulance(FILM_INSIDE), whole);
        highest_humidity(room, pane)
    };
    let (single, double) = (humidity(0.0)?, humidity(BETWEEN_PANES)?);
    let figure = Figure::exact((single + double) / 2.0, Confidence::Guessed, SOURCES);
    let inputs = ["home.wet_windows", "home.zip", "home.setpoint_f"];
    Some(figure.between(single, double).from_inputs(inputs))
}
