//! From JSON Schema to TypeScript, for the part of JSON Schema that our own schemas use.

use anyhow::{Context as _, Result, bail};
use serde_json::{Map, Value};
use std::collections::BTreeMap;
use std::fmt::Write as _;

const HEAD: &str = "\
// Made by `cargo xtask types` from the schema of the core; never edited by hand.
";

/// All named types: those in `$defs`, and each schema that the document lists by name.
pub(super) fn of(document: &Value) -> Result<String> {
    let mut named = BTreeMap::new();
    for (name, schema) in document.as_object().context("the schema is no map")? {
        gather(&capitalised(name), schema, &mut named)?;
    }
    let mut out = HEAD.to_owned();
    for (name, schema) in named {
        declare(&name, schema, &mut out).with_context(|| format!("the type {name}"))?;
    }
    Ok(out)
}

fn gather<'a>(
    name: &str,
    schema: &'a Value,
    named: &mut BTreeMap<String, &'a Value>,
) -> Result<()> {
    let inner = schema["$defs"].as_object().into_iter().flatten();
    for (name, schema) in
        inner.map(|(name, schema)| (name.clone(), schema)).chain([(name.to_owned(), schema)])
    {
        match named.insert(name.clone(), schema) {
            Some(other) if other != schema => bail!("there are two types {name}"),
            _ => {}
        }
    }
    Ok(())
}

fn capitalised(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().into_iter().flat_map(char::to_uppercase).chain(letters).collect()
}

fn declare(name: &str, schema: &Value, out: &mut String) -> Result<()> {
    out.push('\n');
    comment(schema, "", out);
    match schema["properties"].as_object() {
        Some(_) => {
            let _ = write!(out, "export interface {name} {}", map(schema, "")?);
            out.push('\n');
        }
        None => writeln!(out, "export type {name} = {};", spelled(schema, "")?)?,
    }
    Ok(())
}

/// What it is, and the range of a number.
fn comment(schema: &Value, indent: &str, out: &mut String) {
    let text = schema["description"].as_str().unwrap_or_default();
    let text = text.split_whitespace().map(str::to_owned).chain(range(schema));
    let text = text.collect::<Vec<_>>().join(" ");
    if !text.is_empty() {
        let _ = writeln!(out, "{indent}/** {text} */");
    }
}

fn range(schema: &Value) -> Option<String> {
    let (low, high) = (schema["minimum"].as_f64()?, schema["maximum"].as_f64()?);
    let unit = schema["x-unit"].as_str().unwrap_or_default();
    Some(format!("{low} to {high} {unit}").trim_end().to_owned() + ".")
}

/// A map with its fields, one a line.
fn map(schema: &Value, indent: &str) -> Result<String> {
    let fields = schema["properties"].as_object().context("a map without fields")?;
    let needed = |key: &str| {
        schema["required"].as_array().is_some_and(|keys| keys.iter().any(|needed| needed == key))
    };
    let inner = format!("{indent}  ");
    let mut out = "{\n".to_owned();
    for (key, field) in fields {
        comment(field, &inner, &mut out);
        let mark = if needed(key) { "" } else { "?" };
        writeln!(out, "{inner}{key}{mark}: {};", spelled(field, &inner)?)?;
    }
    Ok(out + indent + "}")
}

/// A schema as a type.
fn spelled(schema: &Value, indent: &str) -> Result<String> {
    let Some(parts) = schema.as_object() else { return Ok("unknown".to_owned()) };
    if let Some(name) = parts.get("$ref").and_then(Value::as_str) {
        return Ok(name.rsplit('/').next().unwrap_or(name).to_owned());
    }
    if let Some(value) = parts.get("const") {
        return Ok(value.to_string());
    }
    if let Some(values) = parts.get("enum") {
        return literals(values);
    }
    for key in ["anyOf", "oneOf", "allOf"] {
        if let Some(all) = parts.get(key).and_then(Value::as_array) {
            let join = if key == "allOf" { " & " } else { " | " };
            return joined(all.iter().map(|one| spelled(one, indent)), join);
        }
    }
    match parts.get("type") {
        Some(Value::String(name)) => plain(name, parts, indent),
        Some(Value::Array(names)) => {
            let names = names.iter().filter_map(Value::as_str);
            joined(names.map(|name| plain(name, parts, indent)), " | ")
        }
        _ => Ok("unknown".to_owned()),
    }
}

fn plain(name: &str, parts: &Map<String, Value>, indent: &str) -> Result<String> {
    Ok(match name {
        "string" | "boolean" | "null" => name.to_owned(),
        "number" | "integer" => "number".to_owned(),
        "array" => list(parts, indent)?,
        "object" if parts.contains_key("properties") => map(&Value::Object(parts.clone()), indent)?,
        "object" => {
            let values = parts.get("additionalProperties").unwrap_or(&Value::Null);
            format!("{{ [key: string]: {} }}", spelled(values, indent)?)
        }
        _ => bail!("an unknown type {name}"),
    })
}

fn list(parts: &Map<String, Value>, indent: &str) -> Result<String> {
    let entry = spelled(parts.get("items").unwrap_or(&Value::Null), indent)?;
    Ok(if entry.contains([' ', '|']) { format!("({entry})[]") } else { format!("{entry}[]") })
}

fn literals(values: &Value) -> Result<String> {
    let values = values.as_array().context("an enum that is no list")?;
    joined(values.iter().map(|value| Ok(value.to_string())), " | ")
}

fn joined(parts: impl Iterator<Item = Result<String>>, by: &str) -> Result<String> {
    let mut seen = Vec::new();
    for part in parts {
        let part = part?;
        if !seen.contains(&part) {
            seen.push(part);
        }
    }
    Ok(seen.join(by))
}

#[cfg(test)]
mod tests {
    use super::of;
    use serde_json::json;

    #[test]
    fn maps_words_lists_and_what_may_be_left_out_are_spelled() {
        let schema = json!({ "request": {
            "$defs": { "Shelter": { "enum": ["open", "close"], "description": "How open." } },
            "type": "object",
            "required": ["today"],
            "properties": {
                "today": { "type": "string" },
                "width_in": { "type": ["number", "null"], "description": "Across.",
                    "minimum": 0.0, "maximum": 12.5, "x-unit": "in" },
                "gaps": { "type": ["array", "null"], "items": { "anyOf": [
                    { "$ref": "#/$defs/Shelter" }, { "type": "null" } ] } },
            },
        }});
        let wanted = "\
// Made by `cargo xtask types` from the schema of the core; never edited by hand.

export interface Request {
  today: string;
  gaps?: (Shelter | null)[] | null;
  /** Across. 0 to 12.5 in. */
  width_in?: number | null;
}

/** How open. */
export type Shelter = \"open\" | \"close\";
";
        let sorted = |text: &str| {
            let mut lines: Vec<_> = text.lines().map(str::to_owned).collect();
            lines.sort();
            lines
        };
        // The order of fields is the schema's, which a test does not fix.
        assert_eq!(sorted(&of(&schema).unwrap()), sorted(wanted));
    }

    #[test]
    fn two_types_of_one_name_are_refused() {
        let one = |word| json!({ "$defs": { "A": { "const": word } } });
        assert!(of(&json!({ "x": one("a"), "y": one("b") })).is_err());
    }
}
