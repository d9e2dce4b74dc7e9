//! Questions to one model at a time, in SI units, so that anything can check or use the models
//! without Rust.
//!
//! Each question is a file: its fields, its answer, and the call of the model between them.

mod bag_flow;
mod burn_time;
mod cable_year;
mod ceiling_leak;
mod climate;
mod duct_delivery;
mod freeze_time;
mod gap;
mod infiltration;
mod mains_water;
mod moist_air;
mod pipe_loss;
mod question;
mod ventilation_need;
mod window_u;
mod worth;

pub use question::{Gives, Question};

use super::check::check;
use super::tree::Tree;
use crate::climate::Atlas;
use crate::error::{FieldError, Reason};
use question::Model;
use serde_json::Value;

/// Every question, by name.
pub const QUESTIONS: [Question; 15] = [
    bag_flow::QUESTION,
    burn_time::QUESTION,
    cable_year::QUESTION,
    ceiling_leak::QUESTION,
    climate::QUESTION,
    duct_delivery::QUESTION,
    freeze_time::QUESTION,
    gap::QUESTION,
    infiltration::QUESTION,
    mains_water::QUESTION,
    moist_air::QUESTION,
    pipe_loss::QUESTION,
    ventilation_need::QUESTION,
    window_u::QUESTION,
    worth::QUESTION,
];

const NAMES: [&str; QUESTIONS.len()] = {
    let mut names = [""; QUESTIONS.len()];
    let mut at = 0;
    while at < names.len() {
        names[at] = QUESTIONS[at].name;
        at += 1;
    }
    names
};

/// Answers a question that names itself in its field `ask`.
///
/// ```
/// # #[cfg(feature = "atlas")] {
/// use winterseam::climate::Atlas;
/// use winterseam::wire::{Tree, ask};
///
/// let question = r#"{"ask": "ventilation_need", "floor_area_m2": 86, "bedrooms": 2}"#;
/// let answer = ask(&Tree::from_json(question).unwrap(), Atlas::embedded()).unwrap();
/// assert!(answer["flow_m3_s"].as_f64().unwrap() > 0.023);
/// # }
/// ```
///
/// # Errors
///
/// Everything that is wrong with the question.
pub fn ask(question: &Tree, atlas: &Atlas) -> Result<Value, Vec<FieldError>> {
    let Tree::Map(fields) = question else { return refuse("", not_a("map", question)) };
    let mut fields = fields.clone();
    match fields.remove("ask").unwrap_or_default() {
        Tree::Text(name) => ask_for(&name, &Tree::Map(fields), Some(atlas)),
        Tree::Null => refuse("ask", Reason::Missing),
        other => refuse("ask", not_a("text", &other)),
    }
}

/// Answers the question of a name. Most need no climate.
///
/// # Errors
///
/// Everything that is wrong with the question; that it needs a climate and there is none.
pub fn ask_for(name: &str, fields: &Tree, atlas: Option<&Atlas>) -> Result<Value, Vec<FieldError>> {
    let Some(question) = QUESTIONS.iter().find(|question| question.name == name) else {
        let got = super::path::shortened(name);
        return refuse("ask", Reason::NotOneOf { got, allowed: &NAMES });
    };
    let problems = check(fields, &question.fields);
    match (question.model, atlas) {
        _ if !problems.is_empty() => Err(problems),
        (Model::Sure(model), _) => Ok(model(fields)),
        (Model::Plain(model), _) => model(fields),
        (Model::Placed(model), Some(atlas)) => model(fields, atlas),
        (Model::Placed(_), None) => refuse("", Reason::NoClimate),
    }
}

fn not_a(want: &'static str, got: &Tree) -> Reason {
    Reason::WrongType { want, got: got.shown() }
}

/// One error.
fn refuse<T>(path: &str, reason: Reason) -> Result<T, Vec<FieldError>> {
    Err(vec![FieldError::at(path, reason)])
}
