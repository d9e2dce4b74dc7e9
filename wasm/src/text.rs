//! Words out, readings in.

use crate::give::{given, language, thrown};
use crate::read;
use wasm_bindgen::{JsValue, prelude::wasm_bindgen};
use winterseam::wire;

/// The text of a phrase of an answer.
///
/// # Errors
/// What is no phrase; an unknown language.
#[wasm_bindgen]
pub fn words(
    #[wasm_bindgen(unchecked_param_type = "Phrase")] phrase: JsValue,
    tag: Option<String>,
) -> Result<String, JsValue> {
    let language = language(tag)?;
    let phrase = read::tree(phrase).and_then(|tree| wire::phrase(&tree));
    let phrase = phrase.map_err(|errors| thrown(&errors, language))?;
    Ok(winterseam::words::render(&phrase, language))
}

/// What a person wrote beside a tape, in the unit of the field that asks.
///
/// # Errors
/// What is no reading of that kind; an unknown unit or language.
#[wasm_bindgen(unchecked_return_type = "{ value: number, unit: string }")]
pub fn measure(text: &str, unit: &str, tag: Option<String>) -> Result<JsValue, JsValue> {
    let language = language(tag)?;
    given(wire::measure(text, unit).map_err(|error| vec![error]), language)
}
