//! JavaScript values as a deserializer that nothing passes unseen.
//!
//! `serde-wasm-bindgen` reads a date, a class or a regular expression as an empty map, which would
//! mean "nothing was seen", and lets a getter or a proxy throw through the module. Here plain
//! objects, lists, texts, numbers and flags are read, each step may fail, and everything else is
//! refused by the name of its kind.

use js_sys::{Array, JsString, Reflect};
use serde::de::value::Error;
use serde::de::{DeserializeSeed, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};
use serde::forward_to_deserialize_any;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast as _, JsValue};
use winterseam::error::FieldError;
use winterseam::wire::{MOST_CHARACTERS, Tree};

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(catch, js_namespace = Array, js_name = isArray)]
    fn is_list(value: &JsValue) -> Result<bool, JsValue>;

    #[wasm_bindgen(catch, js_namespace = Object, js_name = keys)]
    fn keys(value: &JsValue) -> Result<Array, JsValue>;
}

/// The tree of a value.
pub(crate) fn tree(value: JsValue) -> Result<Tree, Vec<FieldError>> {
    Tree::read(Value(Ok(value)))
}

/// A value, or what was thrown instead of it.
struct Value(Result<JsValue, JsValue>);

impl<'de> Deserializer<'de> for Value {
    type Error = Error;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Error> {
        let value = self.0.map_err(|_| Error::custom("unreadable"))?;
        if value.is_null() || value.is_undefined() {
            visitor.visit_unit()
        } else if let Some(flag) = value.as_bool() {
            visitor.visit_bool(flag)
        } else if let Some(number) = value.as_f64() {
            visitor.visit_f64(number)
        } else if let Some(text) = value.dyn_ref::<JsString>() {
            visitor.visit_string(copied(text))
        } else if is_list(&value) == Ok(true) {
            visitor.visit_seq(List { length: length(&value), value, next: 0 })
        } else if is_plain(&value) {
            visitor.visit_map(Map::of(value)?)
        } else {
            Err(Error::custom(kind(&value)))
        }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf option
        unit unit_struct newtype_struct seq tuple tuple_struct map struct enum identifier
        ignored_any
    }
}

/// A text; of one that is far too long only as much as shows that it is.
fn copied(text: &JsString) -> String {
    // Two units make a character at most.
    #[expect(
        clippy::cast_possible_truncation,
        reason = "the limit is far below four thousand million"
    )]
    const ENOUGH: u32 = 2 * (MOST_CHARACTERS as u32 + 1);
    if text.length() > ENOUGH { text.slice(0, ENOUGH).into() } else { text.into() }
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "`as` saturates")]
fn length(list: &JsValue) -> u32 {
    let length = Reflect::get(list, &JsValue::from_str("length"));
    length.ok().and_then(|length| length.as_f64()).unwrap_or(0.0) as u32
}

/// Whether an object was written as `{…}`: its prototype is that of all objects, or none.
fn is_plain(value: &JsValue) -> bool {
    let parent = |of: &JsValue| Reflect::get_prototype_of(of).map(JsValue::from);
    value.is_object()
        && parent(value).is_ok_and(|parent_of| {
            parent_of.is_null() || parent(&parent_of).is_ok_and(|above| above.is_null())
        })
}

/// What a value is, for the person who sent it.
fn kind(value: &JsValue) -> String {
    let name = value.js_typeof().as_string().unwrap_or_default();
    if value.is_instance_of::<js_sys::Date>() {
        "date".to_owned()
    } else if value.is_instance_of::<js_sys::Map<JsValue, JsValue>>() {
        "Map".to_owned()
    } else {
        name
    }
}

struct List {
    value: JsValue,
    length: u32,
    next: u32,
}

impl<'de> SeqAccess<'de> for List {
    type Error = Error;

    fn next_element_seed<S: DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Error> {
        if self.next >= self.length {
            return Ok(None);
        }
        let entry = Reflect::get_u32(&self.value, self.next);
        self.next += 1;
        seed.deserialize(Value(entry)).map(Some)
    }
}

struct Map {
    value: JsValue,
    keys: Array,
    next: u32,
}

impl Map {
    fn of(value: JsValue) -> Result<Self, Error> {
        let keys = keys(&value).map_err(|_| Error::custom("unreadable"))?;
        Ok(Self { value, keys, next: 0 })
    }
}

impl<'de> MapAccess<'de> for Map {
    type Error = Error;

    fn next_key_seed<S: DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Error> {
        if self.next >= self.keys.length() {
            return Ok(None);
        }
        seed.deserialize(Value(Ok(self.keys.get(self.next)))).map(Some)
    }

    fn next_value_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<S::Value, Error> {
        let value = Reflect::get(&self.value, &self.keys.get(self.next));
        self.next += 1;
        seed.deserialize(Value(value))
    }
}
