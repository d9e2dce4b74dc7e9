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
