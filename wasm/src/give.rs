//! Values and refusals on their way out.

use js_sys::{Error, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::JsValue;
use winterseam::error::{FieldError, Reason};
use winterseam::wire::{Problem, problem};
use winterseam::words::{Language, render};

/// A value as plain objects and lists, what has no meaning as null; or a refusal.
pub(crate) fn given<T: Serialize>(
    answer: Result<T, Vec<FieldError>>,
    language: Language,
) -> Result<JsValue, JsValue> {
    plain(&answer.map_err(|errors| thrown(&errors, language))?)
}

fn plain<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    value.serialize(&Serializer::json_compatible()).map_err(JsValue::from)
}

/// An `Error` whose message names each problem on a line of its own.
pub(crate) fn thrown(errors: &[FieldError], language: Language) -> JsValue {
    let say = |error| problem(error, |phrase| render(phrase, language));
    let problems: Vec<Problem> = errors.iter().map(say).collect();
    let lines: Vec<&str> = problems.iter().map(|problem| problem.message.as_str()).collect();
    let error = Error::new(&lines.join("\n"));
    let listed = plain(&problems).unwrap_or(JsValue::NULL);
    // An `Error` that was just made takes a field; there is nobody to tell otherwise.
    let _ = Reflect::set(&error, &JsValue::from_str("problems"), &listed);
    error.into()
}

/// The language of a tag; English without one.
pub(crate) fn language(tag: &JsValue) -> Result<Language, JsValue> {
    if tag.is_null() || tag.is_undefined() {
        return Ok(Language::English);
    }
    let got = tag.as_string().unwrap_or_default();
    Language::from_tag(&got).ok_or_else(|| {
        let reason = Reason::NotOneOf { got, allowed: &["en", "es"] };
        thrown(&[FieldError::at("language", reason)], Language::English)
    })
}
