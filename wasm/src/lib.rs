//! stand-in
use wasm_bindgen::prelude::*;
/// a
#[wasm_bindgen]
pub fn assess(request: JsValue, _language: Option<String>) -> Result<JsValue, JsValue> {
    let m: std::collections::BTreeMap<String, f64> = serde_wasm_bindgen::from_value(request)?;
    assert!(!m.is_empty());
    Ok(JsValue::from_f64(m.values().map(|x| winterseam::math::exp(*x)).sum()))
}
/// a
#[wasm_bindgen]
pub fn load_climate(_b: &[u8]) {}
//! The JavaScript door of winterseam: values in, values out, and every refusal an `Error` that
//! lists its `problems`. No decision and no formula is made here.

mod give;
mod place;
mod questions;
mod read;

use give::{given, language, thrown};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use winterseam::wire;

/// The text of a phrase of an answer.
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
#[wasm_bindgen(unchecked_return_type = "{ value: number, unit: string }")]
pub fn measure(text: &str, unit: &str, tag: Option<String>) -> Result<JsValue, JsValue> {
    let language = language(tag)?;
    given(wire::measure(text, unit).map_err(|error| vec![error]), language)
}

/// Version of the core.
#[wasm_bindgen]
#[must_use]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}
