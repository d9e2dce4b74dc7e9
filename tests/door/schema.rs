//! The JSON Schema and the check say the same of a request.

use super::walk_in;
use serde_json::json;

/// The schema of a request, as it is built in.
pub(super) fn request() -> serde_json::Value {
    let all: serde_json::Value = serde_json::from_str(winterseam::wire::schema()).expect("JSON");
    all["Request"].clone()
}

#[test]
fn the_schema_names_every_field_with_range_and_unit() {
    let schema = request();
    let width = &schema["properties"]["gaps"]["items"]["properties"]["width_in"];
    assert_eq!((&width["minimum"], &width["maximum"]), (&json!(0.01), &json!(12.0)));
    assert_eq!(width["x-unit"], "in");
    assert_eq!(schema["required"], json!(["today"]));
    assert_eq!(schema["additionalProperties"], json!(false));
}

#[test]
fn the_ends_of_every_range_in_the_schema_pass_and_what_lies_beyond_is_refused() {
    let schema = request();
    let mut tried = 0;
    for (group, shape) in schema["properties"].as_object().unwrap() {
        for (key, field) in shape["properties"].as_object().into_iter().flatten() {
            let (Some(min), Some(max)) = (field["minimum"].as_f64(), field["maximum"].as_f64())
            else {
                continue;
            };
            tried += 1;
            let refused = |value: f64| {
                let request = json!({"today": "2026-11-25", group: {key: value}}).to_string();
                let path = format!("{group}.{key}");
                let problems = walk_in(&request).err().unwrap_or_default();
                problems.iter().any(|e| e.path == path && e.reason.code() == "out_of_range")
            };
            assert!(!refused(min) && !refused(max), "{group}.{key}");
            assert!(refused(min - 1e-6) && refused(max + 1e-6), "{group}.{key}");
        }
    }
    assert!(tried >= 15, "{tried} ranges tried");
}
