//! Words out, readings in.

use crate::give::{self, given, thrown};
use crate::read;
use wasm_bindgen::{JsValue, prelude::wasm_bindgen};
use winterseam::wire;
use winterseam::words::render;

/// The text of a phrase of an answer.
///
/// # Errors
/// What is no phrase; an unknown language.
#[wasm_bindgen]
pub fn words(
    #[wasm_bindgen(unchecked_param_type = "Phrase")] phrase: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "\"en\" | \"es\"")] language: &JsValue,
) -> Result<String, JsValue> {
    let language = give::language(language)?;
    let phrase = read::tree(phrase).and_then(|tree| wire::phrase(&tree));
    let phrase = phrase.map_err(|errors| thrown(&errors, language))?;
    Ok(render(&phrase, language))
}

/// What a person wrote beside a tape, in the unit of the field that asks.
///
/// # Errors
/// What is no reading of that kind; an unknown unit or language.
#[wasm_bindgen(unchecked_return_type = "{ value: number, unit: string }")]
pub fn measure(
    #[wasm_bindgen(unchecked_param_type = "string")] text: JsValue,
    #[wasm_bindgen(unchecked_param_type = "string")] unit: JsValue,
    #[wasm_bindgen(unchecked_optional_param_type = "\"en\" | \"es\"")] language: &JsValue,
) -> Result<JsValue, JsValue> {
    let plain = |value: JsValue| value.as_string().unwrap_or_default();
    let read = wire::measure(&plain(text), &plain(unit)).map_err(|error| vec![error]);
    given(read, give::language(language)?)
}
