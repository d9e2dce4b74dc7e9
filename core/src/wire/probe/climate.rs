//! The climate of a ZIP code or a station.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::climate::{Atlas, Station, Year};
use crate::error::{FieldError, Reason};
use crate::units::celsius;
use crate::wire::path::shortened;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::Length;
use uom::si::{length::kilometer, velocity::meter_per_second};

pub(super) const STATION: Shape = Shape::Text { max: 12 };

pub(super) const QUESTION: Question = Question {
    name: "climate",
    fields: Shape::Map(&[
        Field::seen("zip", Shape::Zip, "ZIP code; or else a station."),
        Field::seen("station", STATION, "Number of a weather station; or else a ZIP code."),
    ]),
    gives: &[
        Gives::Number("hdd65_f_day"),
        Gives::Number("cdd65_f_day"),
        Gives::Number("hours_below_0c"),
        Gives::Number("hours_below_3_3c"),
        Gives::NumberOrNull("last_freeze_day"),
        Gives::NumberOrNull("first_freeze_day"),
        Gives::Number("mean_wind_m_s"),
        Gives::Text("station"),
        Gives::NumberOrNull("distance_km"),
    ],
    model: Model::Placed(answer),
};

fn answer(fields: &Tree, atlas: &Atlas) -> Answer {
    let (station, distance) = place(fields, atlas)?;
    let year = Year::of(&station);
    Ok(json!({
        "hdd65_f_day": station.hdd65.0,
        "cdd65_f_day": station.cdd65.0,
        "hours_below_0c": year.hours_below(celsius(0.0)),
        "hours_below_3_3c": year.hours_below(celsius(3.333)),
        "last_freeze_day": station.last_freeze(),
        "first_freeze_day": station.first_freeze(),
        "mean_wind_m_s": station.normals.mean_wind().get::<meter_per_second>(),
        "station": station.usaf,
        "distance_km": distance.map(|distance| distance.get::<kilometer>()),
    }))
}

/// The station that is asked for, and how far it is from the ZIP code.
fn place(fields: &Tree, atlas: &Atlas) -> Result<(Station, Option<Length>), Vec<FieldError>> {
    match (fields.get("zip").text(), fields.get("station").text()) {
        (Some(_), Some(_)) => refuse("station", Reason::Contradicts { other: "zip" }),
        (None, Some(_)) => Ok((station(fields, atlas)?, None)),
        (None, None) => refuse("zip", Reason::Missing),
        (Some(zip), None) => match atlas.place(zip) {
            Some(place) => Ok((place.station, place.distance)),
            None => refuse("zip", Reason::NoSuchPlace { got: zip.to_owned() }),
        },
    }
}

/// The station of the field `station`.
pub(super) fn station(fields: &Tree, atlas: &Atlas) -> Result<Station, Vec<FieldError>> {
    let number = fields.get("station").text().unwrap_or_default();
    atlas
        .station(number)
        .map_or_else(|| refuse("station", Reason::NoSuchPlace { got: shortened(number) }), Ok)
}
