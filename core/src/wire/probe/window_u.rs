//! Heat through the middle of a window.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::error::{FieldError, Reason};
use crate::units::{celsius, in_celsius};
use crate::windows::{Glazing, faces, u_value};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::Length;
use uom::si::{heat_transfer::watt_per_square_meter_kelvin, length::meter};

const LAYERS: &[&str] = &["single", "single_film", "double", "double_film"];
/// Room and outdoors, °C.
const INDOOR: f64 = 21.0;
const OUTDOOR: f64 = -7.0;

pub(super) const QUESTION: Question = Question {
    name: "window_u",
    fields: Shape::Map(&[
        Field::needed("layers", Shape::Word(LAYERS), "Panes, and a film over them."),
        Field::seen("gap_m", Shape::Number(&bounds::WINDOW_GAP), "Behind a film."),
        Field::needed("glass_m", Shape::Number(&bounds::GLASS), "Thickness of each pane."),
        Field::seen("pane_gap_m", Shape::Number(&bounds::WINDOW_GAP), "Between two panes."),
    ]),
    gives: &[Gives::Number("u_w_m2_k"), Gives::Number("inside_surface_c")],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let layers = fields.get("layers").text().unwrap_or_default();
    let glazing = Glazing {
        glass: Length::new::<meter>(fields.must("glass_m")),
        pane_gap: gap(fields, "pane_gap_m", layers.starts_with("double"))?,
        film_gap: gap(fields, "gap_m", layers.ends_with("film"))?,
    };
    let room = faces(&glazing, celsius(INDOOR), celsius(OUTDOOR)).room;
    Ok(json!({
        "u_w_m2_k": u_value(&glazing).get::<watt_per_square_meter_kelvin>(),
        "inside_surface_c": in_celsius(room),
    }))
}

/// A gap that these layers have and that must then be told; what they lack is passed over.
fn gap(fields: &Tree, key: &str, wanted: bool) -> Result<Option<Length>, Vec<FieldError>> {
    match fields.get(key).number() {
        _ if !wanted => Ok(None),
        None => refuse(key, Reason::Missing),
        Some(width) => Ok(Some(Length::new::<meter>(width))),
    }
}
