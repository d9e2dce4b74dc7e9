//! The JavaScript door of winterseam: values in, values out, and every refusal an `Error` that
//! lists its `problems`. No decision and no formula is made here.

mod give;
pub mod place;
pub mod plan;
#[cfg(feature = "questions")]
pub mod questions;
mod read;
pub mod text;

use wasm_bindgen::prelude::wasm_bindgen;

/// Version of the core.
#[wasm_bindgen]
#[must_use]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}

/// JSON Schemas of the request and of the questions, as JSON text.
#[cfg(feature = "questions")]
#[wasm_bindgen]
#[must_use]
pub fn schema() -> String {
    winterseam::wire::schema().to_owned()
}
