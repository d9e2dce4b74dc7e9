//! An error as it goes out: for programs a code and plain arguments, for people a sentence.

use super::request::REQUEST;
use crate::error::{FieldError, Reason};
use crate::report::{Arg, Phrase, problem as sentence};
use serde::Serialize;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// One thing that is wrong with one field.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Problem {
    /// Path from the root, such as `gaps[2].width_in`; empty for the whole.
    pub path: String,
    /// Stable word for programs.
    pub code: &'static str,
    /// The sentence for people.
    pub message: String,
    /// What the sentence is made of: the value given, the range, the unit.
    pub args: BTreeMap<&'static str, Value>,
}

/// An error as it goes out, its sentence written by `render`.
pub fn problem(error: &FieldError, render: impl Fn(&Phrase) -> String) -> Problem {
    Problem {
        path: error.path.clone(),
        code: error.reason.code(),
        message: render(&sentence(error, name)),
        args: args(error),
    }
}

/// The words for a field of a request. What no person typed is called by its path.
fn name(path: &str) -> Arg {
    match (path, REQUEST.what(path)) {
        ("", _) => Phrase::new("field.request").into(),
        ("text", _) => Phrase::new("field.reading").into(), // what `measure` was given
        (_, Some(what)) => Phrase::new(format!("field.{what}")).into(),
        (_, None) => path.into(),
    }
}

fn args(error: &FieldError) -> BTreeMap<&'static str, Value> {
    let mut args = reason_args(&error.reason);
    if let Some(what) = REQUEST.what(&error.path) {
        args.insert("what", json!(what));
    }
    args
}

/// A number that is none, or none that JSON can hold, is null.
fn reason_args(reason: &Reason) -> BTreeMap<&'static str, Value> {
    let pairs: Vec<(&'static str, Value)> = match reason {
        Reason::NotJson { line, column } => vec![("line", json!(line)), ("column", json!(column))],
        Reason::TooLarge { of, limit } => vec![("of", json!(of)), ("limit", json!(limit))],
        Reason::Unknown { got, near } => vec![("got", json!(got)), ("near", json!(near))],
        Reason::WrongType { want, got } | Reason::Malformed { want, got } => {
            vec![("want", json!(want)), ("got", json!(got))]
        }
        Reason::OutOfRange { got, allowed } => vec![
            ("got", json!(got)),
            ("min", json!(allowed.min)),
            ("max", json!(allowed.max)),
            ("unit", json!(allowed.unit)),
            ("because", json!(allowed.because)),
        ],
        Reason::NotOneOf { got, allowed } => vec![("got", json!(got)), ("allowed", json!(allowed))],
        Reason::NoSuchPlace { got } => vec![("got", json!(got))],
        Reason::Contradicts { other } => vec![("other", json!(other))],
        Reason::Twice | Reason::Missing | Reason::NotANumber | Reason::NoClimate => vec![],
    };
    let mut args = BTreeMap::new();
    args.extend(pairs);
    args
}
