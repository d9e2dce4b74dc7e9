//! The shape of what comes in and of short answers, as JSON Schema. The types of the page are made
//! from it.

use super::probe::{Gives, QUESTIONS, Question};
use super::request::REQUEST;
use super::shape::{Field, Shape};
use serde_json::{Map, Value, json};

/// JSON Schema of everything that goes through the door, by the name of the type, made from the
/// shapes and types themselves.
#[must_use]
pub fn made_schema() -> String {
    let mut all = question_schemas();
    all.insert("Request".to_owned(), request_schema());
    all.insert("Answer".to_owned(), written::<super::Answer>());
    all.insert("Problem".to_owned(), written::<super::Problem>());
    format!("{:#}\n", Value::Object(all))
}

/// JSON Schema (2020-12) of a type as it is written: what may be null is still there.
fn written<T: schemars::JsonSchema>() -> Value {
    let settings = schemars::generate::SchemaSettings::draft2020_12().for_serialize();
    settings.into_generator().into_root_schema_for::<T>().to_value()
}

/// JSON Schema (2020-12) of a request.
fn request_schema() -> Value {
    let mut schema = of_shape(&REQUEST);
    schema["$schema"] = json!("https://json-schema.org/draft/2020-12/schema");
    schema["title"] = json!("Request");
    schema
}

/// JSON Schemas of every question of the probe and of its answer, by the name of the type:
/// `GapQuestion`, `GapAnswer`.
fn question_schemas() -> Map<String, Value> {
    let built = QUESTIONS.iter().filter(|question| !question.gives.is_empty());
    built.flat_map(of_question).collect()
}

fn of_question(question: &Question) -> [(String, Value); 2] {
    let name = camel(question.name);
    [
        (format!("{name}Question"), of_shape(&question.fields)),
        (format!("{name}Answer"), of_answer(question.gives)),
    ]
}

fn of_answer(gives: &[Gives]) -> Value {
    let properties: Map<String, Value> = gives
        .iter()
        .map(|part| match *part {
            Gives::Number(key) => (key.to_owned(), json!({"type": "number"})),
            Gives::NumberOrNull(key) => (key.to_owned(), json!({"type": ["number", "null"]})),
            Gives::Text(key) => (key.to_owned(), json!({"type": "string"})),
            Gives::Word(key, words) => (key.to_owned(), json!({"type": "string", "enum": words})),
        })
        .collect();
    let required: Vec<&String> = properties.keys().collect();
    json!({"type": "object", "required": required, "properties": properties})
}

/// `burn_time` as `BurnTime`.
fn camel(name: &str) -> String {
    let parts = name.split('_').map(|part| part[..1].to_uppercase() + &part[1..]);
    parts.collect()
}

/// JSON Schema of one value. Ranges that hang on another field are not in it.
fn of_shape(shape: &Shape) -> Value {
    match shape {
        Shape::Map(fields) => of_map(fields),
        Shape::List { of, max, .. } => {
            json!({"type": "array", "items": of_shape(of), "maxItems": max})
        }
        Shape::Number(b) => {
            json!({"type": "number", "minimum": b.min, "maximum": b.max, "x-unit": b.unit})
        }
        Shape::Whole(b) => {
            json!({"type": "integer", "minimum": b.min, "maximum": b.max, "x-unit": b.unit})
        }
        Shape::Flag => json!({"type": "boolean"}),
        Shape::Word(words) => json!({"type": "string", "enum": words}),
        Shape::Text { max } => json!({"type": "string", "maxLength": max}),
        Shape::Date => json!({
            "type": "string", "format": "date", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$",
        }),
        Shape::Zip => json!({"type": "string", "pattern": "^[0-9]{5}$"}),
    }
}

fn of_map(fields: &[Field]) -> Value {
    let properties: Map<String, Value> =
        fields.iter().map(|field| (field.key.to_owned(), of_field(field))).collect();
    let required: Vec<&str> = fields.iter().filter(|f| f.required).map(|f| f.key).collect();
    let mut map = json!({
        "type": "object", "properties": properties, "additionalProperties": false,
    });
    if !required.is_empty() {
        map["required"] = json!(required);
    }
    map
}

/// A field that may be left out may also be null: not seen.
fn of_field(field: &Field) -> Value {
    let mut schema = of_shape(&field.shape);
    schema["description"] = json!(field.doc);
    if !field.required {
        let kind = schema["type"].take();
        schema["type"] = json!([kind, "null"]);
        if let Some(words) = schema.get_mut("enum").and_then(Value::as_array_mut) {
            words.push(Value::Null);
        }
    }
    schema
}
