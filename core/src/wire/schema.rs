//! The shape of what comes in, as JSON Schema and as TypeScript.

use super::request::REQUEST;
use super::shape::{Field, Shape};
use serde_json::{Map, Value, json};
use std::fmt::Write as _;

/// JSON Schema (2020-12) of a request.
#[must_use]
pub fn request_schema() -> Value {
    let mut schema = of_shape(&REQUEST);
    schema["$schema"] = json!("https://json-schema.org/draft/2020-12/schema");
    schema["title"] = json!("Request");
    schema
}

/// JSON Schema of one value. Ranges that hang on another field are not in it.
pub(super) fn of_shape(shape: &Shape) -> Value {
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

/// TypeScript of a request.
#[must_use]
pub fn request_types() -> String {
    let mut text = String::from("/** A request: what a person saw and measured. */\n");
    text.push_str("export interface Request ");
    write_type(&mut text, &REQUEST, 0);
    text.push('\n');
    text
}

fn write_type(text: &mut String, shape: &Shape, level: usize) {
    match shape {
        Shape::Map(fields) => {
            text.push_str("{\n");
            for field in *fields {
                write_field(text, field, level + 1);
            }
            text.push_str(&"  ".repeat(level));
            text.push('}');
        }
        Shape::List { of, .. } => {
            text.push_str("Array<");
            write_type(text, of, level);
            text.push('>');
        }
        Shape::Number(_) | Shape::Whole(_) => text.push_str("number"),
        Shape::Flag => text.push_str("boolean"),
        Shape::Word(words) => {
            let quoted: Vec<String> = words.iter().map(|word| format!("\"{word}\"")).collect();
            text.push_str(&quoted.join(" | "));
        }
        Shape::Text { .. } | Shape::Date | Shape::Zip => text.push_str("string"),
    }
}

fn write_field(text: &mut String, field: &Field, level: usize) {
    let indent = "  ".repeat(level);
    let (mark, or_null) = if field.required { ("", "") } else { ("?", " | null") };
    let doc = format!("{}{}", field.doc, range(&field.shape));
    write!(text, "{indent}/** {doc} */\n{indent}{}{mark}: ", field.key)
        .expect("writing to a String cannot fail");
    write_type(text, &field.shape, level);
    text.push_str(or_null);
    text.push_str(";\n");
}

/// The range of a number, behind what it is.
fn range(shape: &Shape) -> String {
    match shape {
        Shape::Number(b) | Shape::Whole(b) => {
            format!(" {} to {} {}", b.min, b.max, b.unit).trim_end().to_owned() + "."
        }
        _ => String::new(),
    }
}
