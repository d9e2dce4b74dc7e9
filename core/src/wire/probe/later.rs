//! Questions that are known by name and whose models are not built yet.

use super::question::{Model, Question};
use crate::wire::shape::Shape;

pub(super) const DUCT_DELIVERY: Question = later("duct_delivery");
pub(super) const FREEZE_TIME: Question = later("freeze_time");
pub(super) const PIPE_LOSS: Question = later("pipe_loss");
pub(super) const WINDOW_U: Question = later("window_u");

const fn later(name: &'static str) -> Question {
    Question { name, fields: Shape::Map(&[]), gives: &[], model: Model::Later }
}
