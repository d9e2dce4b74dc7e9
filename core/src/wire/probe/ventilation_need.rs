//! Fresh air that a home needs.

use super::question::{Gives, Model, Question};
use crate::air::ventilation::need;
use crate::bounds::question as bounds;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::{Value, json};
use uom::si::f64::Area;
use uom::si::{area::square_meter, volume_rate::cubic_meter_per_second};

pub(super) const QUESTION: Question = Question {
    name: "ventilation_need",
    fields: Shape::Map(&[
        Field::needed("floor_area_m2", Shape::Number(&bounds::FLOOR), "Floor area."),
        Field::needed("bedrooms", Shape::Whole(&bounds::BEDROOMS), "Rooms meant for sleeping."),
    ]),
    gives: &[Gives::Number("flow_m3_s")],
    model: Model::Sure(answer),
};

fn answer(fields: &Tree) -> Value {
    let floor = Area::new::<square_meter>(fields.must("floor_area_m2"));
    let flow = need(floor, fields.must_count("bedrooms")).best;
    json!({"flow_m3_s": flow.get::<cubic_meter_per_second>()})
}
