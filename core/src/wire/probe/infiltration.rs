//! Air through a whole home.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::air::infiltration::{Coefficients, Storeys, flow};
use crate::bounds::question as bounds;
use crate::error::{FieldError, Reason};
use crate::home::Shelter;
use crate::home::Spoken;
use crate::units::{celsius, warmer_by};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::{Area, Velocity};
use uom::si::volume_rate::cubic_meter_per_second;
use uom::si::{area::square_meter, velocity::meter_per_second};

/// Fields that only the enhanced model has.
const ENHANCED: [&str; 3] = ["exponent", "flue", "foundation"];

pub(super) const QUESTION: Question = Question {
    name: "infiltration",
    fields: Shape::Map(&[
        Field::needed("model", Shape::Word(&["basic", "enhanced"]), "Model of the handbook."),
        Field::needed("leakage_area_m2", Shape::Number(&bounds::LEAKAGE_AREA), "At 4 Pa."),
        Field::needed("indoor_c", Shape::Number(&bounds::AIR), "Indoor air."),
        Field::needed("outdoor_c", Shape::Number(&bounds::AIR), "Outdoor air."),
        Field::needed("wind_m_s", Shape::Number(&bounds::WIND), "Wind at the station."),
        Field::needed("shelter_class", Shape::Whole(&bounds::SHELTER_CLASS), "1 open to 5."),
        Field::needed("storeys", Shape::Whole(&bounds::STOREYS), "Storeys."),
        Field::seen("exponent", Shape::Number(&bounds::EXPONENT), "Enhanced model only."),
        Field::seen("flue", Shape::Flag, "Enhanced model only."),
        Field::seen("foundation", Shape::Word(&["slab", "crawl_space"]), "Enhanced model only."),
    ]),
    gives: &[Gives::Number("flow_m3_s")],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    if fields.get("model").text() == Some("enhanced") {
        return refuse("model", Reason::NotYet);
    }
    let foreign = ENHANCED.iter().filter(|key| fields.get(key).is_seen());
    let foreign: Vec<FieldError> =
        foreign.map(|key| FieldError::at(*key, Reason::Contradicts { other: "model" })).collect();
    if foreign.is_empty() { basic(fields) } else { Err(foreign) }
}

fn basic(fields: &Tree) -> Answer {
    let class = usize::from(fields.must_count("shelter_class"));
    let shelter = Shelter::CHOICES.iter().find(|choice| usize::from(choice.class()) == class);
    let storeys = Storeys::from_count(fields.must_count("storeys"));
    let (Some(shelter), Some(storeys)) = (shelter, storeys) else {
        return refuse("", Reason::NotANumber);
    };
    let flow = flow(
        Area::new::<square_meter>(fields.must("leakage_area_m2")),
        warmer_by(celsius(fields.must("indoor_c")), celsius(fields.must("outdoor_c"))),
        Velocity::new::<meter_per_second>(fields.must("wind_m_s")),
        &Coefficients::of(*shelter, storeys),
    );
    Ok(json!({"flow_m3_s": flow.best.get::<cubic_meter_per_second>()}))
}
