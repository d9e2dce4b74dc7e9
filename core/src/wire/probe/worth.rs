//! What a spending is worth over its life.

use super::question::{Gives, Model, Question};
use crate::bounds::question as bounds;
use crate::money::{Dollars, Spending, Years, worth};
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::{Value, json};
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

pub(super) const QUESTION: Question = Question {
    name: "worth",
    fields: Shape::Map(&[
        Field::needed("cost_usd", Shape::Number(&bounds::COST), "Spent once."),
        Field::needed("saving_usd_per_year", Shape::Number(&bounds::SAVING), "At year ends."),
        Field::needed("life_years", Shape::Number(&bounds::LIFE), "How long it saves."),
        Field::needed("real_discount_rate", Shape::Number(&bounds::DISCOUNT), "A share."),
    ]),
    gives: &[
        Gives::Number("present_value_usd"),
        Gives::NumberOrNull("savings_to_investment"),
        Gives::NumberOrNull("simple_payback_years"),
        Gives::NumberOrNull("discounted_payback_years"),
        Gives::NumberOrNull("adjusted_irr"),
    ],
    model: Model::Sure(answer),
};

fn answer(fields: &Tree) -> Value {
    let worth = worth(&Spending {
        cost: Dollars(fields.must("cost_usd")),
        saving_per_year: Dollars(fields.must("saving_usd_per_year")),
        life: Years(fields.must("life_years")),
        real_rate: Ratio::new::<ratio>(fields.must("real_discount_rate")),
    });
    json!({
        "present_value_usd": worth.present_value.0,
        "savings_to_investment": worth.savings_to_investment.map(|share| share.get::<ratio>()),
        "simple_payback_years": worth.simple_payback.map(|years| years.0),
        "discounted_payback_years": worth.discounted_payback.map(|years| years.0),
        "adjusted_irr": worth.adjusted_irr.map(|share| share.get::<ratio>()),
    })
}
