//! A request in, its plan or its calendar out.

use crate::give::{given, language, thrown};
use crate::{place, read};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use winterseam::wire;

/// The plan for the home of a request. What is wrong with the request is said in the language of
/// the tag; the plan itself is in none.
///
/// # Errors
///
/// An `Error` that lists all problems of the request.
#[wasm_bindgen(unchecked_return_type = "Answer")]
pub fn assess(
    #[wasm_bindgen(unchecked_param_type = "Request")] request: JsValue,
    tag: Option<String>,
) -> Result<JsValue, JsValue> {
    let language = language(tag)?;
    let atlas = place::atlas();
    given(read::tree(request).and_then(|tree| wire::assess(&tree, atlas.as_deref())), language)
}

/// The reminders of the same plan as an iCalendar file.
///
/// # Errors
///
/// An `Error` that lists all problems of the request.
#[wasm_bindgen]
pub fn calendar(
    #[wasm_bindgen(unchecked_param_type = "Request")] request: JsValue,
    tag: Option<String>,
) -> Result<String, JsValue> {
    let language = language(tag)?;
    let atlas = place::atlas();
    read::tree(request)
        .and_then(|tree| wire::calendar(&tree, atlas.as_deref(), language))
        .map_err(|errors| thrown(&errors, language))
}
