//! The climate tables, loaded once.

use crate::give::thrown;
use js_sys::Uint8Array;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::{JsCast as _, JsValue, prelude::wasm_bindgen};
use winterseam::climate::Atlas;
use winterseam::error::{FieldError, Reason};
use winterseam::words::Language;

thread_local! {
    static ATLAS: RefCell<Option<Rc<Atlas>>> = const { RefCell::new(None) };
}

/// Loads the climate tables from their bytes. The last ones that could be read stay.
///
/// # Errors
/// When the bytes are anything else.
#[wasm_bindgen]
pub fn load_climate(
    #[wasm_bindgen(unchecked_param_type = "Uint8Array")] bytes: &JsValue,
) -> Result<(), JsValue> {
    let bytes = bytes.dyn_ref::<Uint8Array>().map(Uint8Array::to_vec).unwrap_or_default();
    let Ok(atlas) = Atlas::from_bytes(&bytes) else {
        return Err(thrown(&[FieldError::at("bytes", Reason::NoClimate)], Language::English));
    };
    ATLAS.with(|loaded| *loaded.borrow_mut() = Some(Rc::new(atlas)));
    Ok(())
}

/// The tables, if they were loaded. They are handed out and not borrowed, so that nothing stays
/// locked when JavaScript throws across a call.
pub(crate) fn atlas() -> Option<Rc<Atlas>> {
    ATLAS.with(|loaded| loaded.borrow().clone())
}
