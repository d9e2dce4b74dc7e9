//! What a question is made of.

use crate::climate::Atlas;
use crate::error::FieldError;
use crate::wire::shape::Shape;
use crate::wire::tree::Tree;
use serde_json::Value;

/// One question of the probe.
#[derive(Debug, Clone, Copy)]
pub struct Question {
    /// What is asked for, in the field `ask`.
    pub name: &'static str,
    /// Its other fields.
    pub fields: Shape,
    /// What the answer holds.
    pub gives: &'static [Gives],
    pub(super) model: Model,
}

/// One part of an answer.
#[derive(Debug, Clone, Copy)]
pub enum Gives {
    /// A number.
    Number(&'static str),
    /// A number, or null where it has no meaning.
    NumberOrNull(&'static str),
    /// A text.
    Text(&'static str),
    /// One of these words.
    Word(&'static str, &'static [&'static str]),
}

/// What answers a question.
#[derive(Debug, Clone, Copy)]
pub(super) enum Model {
    /// The fields alone, whatever they are.
    Sure(fn(&Tree) -> Value),
    /// The fields alone.
    Plain(fn(&Tree) -> Answer),
    /// The fields and the climate tables.
    Placed(fn(&Tree, &Atlas) -> Answer),
}

pub(super) type Answer = Result<Value, Vec<FieldError>>;

/// Values of checked fields.
impl Tree {
    /// A number that must be there. The check has seen to it; if a table of fields forgot it, NaN
    /// makes the answer null.
    pub(super) fn must(&self, key: &str) -> f64 {
        self.get(key).number().unwrap_or(f64::NAN)
    }

    /// A number, or what stands in for it.
    pub(super) fn number_or(&self, key: &str, usual: f64) -> f64 {
        self.get(key).number().unwrap_or(usual)
    }

    /// A small whole number that must be there.
    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "checked")]
    pub(super) fn must_count(&self, key: &str) -> u8 {
        self.must(key) as u8
    }
}
