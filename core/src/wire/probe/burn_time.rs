//! Time until hot water does serious harm.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::error::{FieldError, Reason};
use crate::home::Spoken as _;
use crate::hot_water::{Person, burn_time, thermometer_error};
use crate::units::celsius;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::time::second;

pub(super) const QUESTION: Question = Question {
    name: "burn_time",
    fields: Shape::Map(&[
        Field::needed("water_c", Shape::Number(&bounds::BURN_WATER), "Water on skin."),
        Field::needed("person", Shape::Word(Person::WORDS), "Whose skin it is."),
    ]),
    gives: &[Gives::NumberOrNull("seconds"), Gives::NumberOrNull("low_seconds")],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let Some(person) = fields.choice("person") else { return refuse("person", Reason::Missing) };
    let water = celsius(fields.must("water_c"));
    let burn = burn_time(water, thermometer_error(true), person)
        .map_err(|reason| vec![FieldError::at("water_c", reason)])?;
    let seconds = burn.time.map(|time| time.best.get::<second>());
    Ok(json!({"seconds": seconds, "low_seconds": burn.low.map(|time| time.get::<second>())}))
}
