//! How much air fills or empties a bag in a time.

use super::question::{Answer, Gives, Model, Question};
use super::refuse;
use crate::bounds::question as bounds;
use crate::ducts::bag::{Bound, Direction, flow};
use crate::error::Reason;
use crate::wire::shape::{Field, Shape};
use crate::wire::tree::Tree;
use serde_json::json;
use uom::si::f64::Time;
use uom::si::{time::second, volume_rate::cubic_meter_per_second};

const BOUNDS: &[&str] = &["exact", "at_most", "at_least"];

pub(super) const QUESTION: Question = Question {
    name: "bag_flow",
    fields: Shape::Map(&[
        Field::needed("seconds", Shape::Number(&bounds::BAG), "Time that the bag takes."),
        Field::needed("direction", Shape::Word(&["filling", "emptying"]), "Into the bag or out."),
    ]),
    gives: &[Gives::Number("flow_m3_s"), Gives::Word("bound", BOUNDS)],
    model: Model::Plain(answer),
};

fn answer(fields: &Tree) -> Answer {
    let direction = match fields.get("direction").text() {
        Some("filling") => Direction::Filling,
        _ => Direction::Emptying,
    };
    let Some(bag) = flow(Time::new::<second>(fields.must("seconds")), direction) else {
        return refuse("seconds", Reason::NotANumber);
    };
    let bound = match bag.bound {
        Bound::Exact => "exact",
        Bound::AtMost => "at_most",
        Bound::AtLeast => "at_least",
    };
    let best = bag.flow.best.get::<cubic_meter_per_second>();
    Ok(json!({"flow_m3_s": best, "bound": bound}))
}
