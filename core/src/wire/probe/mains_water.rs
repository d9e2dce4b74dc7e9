//! The cold water that comes into a home.

use super::question::{Gives, Model, Question};
use crate::bounds::question as bounds;
use crate::hot_water::mains_water;
use crate::units::{celsius, in_celsius, kelvins};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::{Value, json};

pub(super) const QUESTION: Question = Question {
    name: "mains_water",
    fields: Shape::Map(&[
        Field::needed("annual_mean_c", Shape::Number(&bounds::ANNUAL_MEAN), "Air of the year."),
        Field::needed(
            "monthly_swing_k",
            Shape::Number(&bounds::MONTHLY_SWING),
            "Warmest less coldest monthly mean.",
        ),
        Field::needed("day_of_year", Shape::Whole(&bounds::DAY), "From 1 to 365."),
    ]),
    gives: &[Gives::Number("water_c")],
    model: Model::Sure(answer),
};

fn answer(fields: &Tree) -> Value {
    let mean = celsius(fields.must("annual_mean_c"));
    let swing = kelvins(fields.must("monthly_swing_k"));
    let day = fields.whole("day_of_year").unwrap_or_default();
    json!({ "water_c": in_celsius(mains_water(mean, swing, day)) })
}
