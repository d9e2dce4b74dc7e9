//! How much air fills or empties a bag in a time.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::ducts::bag::{Bound, Direction, flow};
use crate::error::Reason;
use crate::home::Spoken as _;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::Time;
use uom::si::{time::second, volume_rate::cubic_meter_per_second};

pub(super) const QUESTION: Question = Question {
    name: "bag_flow",
    fields: Shape::Map(&[
        Field::needed("seconds", Shape::Number(&bounds::BAG), "Time that the bag takes."),
        Field::needed("direction", Shape::Word(Direction::WORDS), "Into the bag or out."),
    ]),
    gives: &[Gives::Number("flow_m3_s"), Gives::Word("bound", Bound::WORDS)],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let time = Time::new::<second>(fields.must("seconds"));
    let Some(bag) = fields.choice("direction").and_then(|direction| flow(time, direction)) else {
        return refuse("seconds", Reason::NotANumber);
    };
    let best = bag.flow.best.get::<cubic_meter_per_second>();
    Ok(json!({"flow_m3_s": best, "bound": bag.bound.word()}))
}
