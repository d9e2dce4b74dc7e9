//! The `jsonschema` library asked live: our schema is one, and it says of a request what the check
//! says.

use super::chance::Chance;
use super::wrong;
use serde_json::{Value, json};
use std::io::Write as _;
use std::process::{Command, Stdio};
use winterseam::wire::request_schema;

const REQUESTS: usize = 3000;

/// What a schema sees as well. The others hang on two fields, or on what a calendar knows.
const SEEN_BY_A_SCHEMA: [&str; 5] =
    ["unknown_field", "wrong_type", "not_one_of", "not_a_number", "too_large"];

#[test]
fn the_schema_and_the_check_agree() {
    let mut chance = Chance::new(5);
    let requests: Vec<Value> = (0..REQUESTS).map(|_| broken(&mut chance)).collect();
    let (mut fit, mut unfit) = (0, 0);
    for (request, fits) in requests.iter().zip(ask_jsonschema(&requests)) {
        let wrong = wrong(&request.to_string());
        let seen = wrong.iter().any(|error| SEEN_BY_A_SCHEMA.iter().any(|c| error.ends_with(c)));
        assert!(fits || !wrong.is_empty(), "refused by the schema alone: {request}");
        assert!(!fits || !seen, "refused by the check alone: {wrong:?} in {request}");
        if fits { fit += 1 } else { unfit += 1 }
    }
    assert!(fit > 100 && unfit > 100, "{fit} fit, {unfit} do not: no test of either");
}

fn ask_jsonschema(requests: &[Value]) -> Vec<bool> {
    let python = std::env::var("WINTERSEAM_PYTHON").expect("set by cargo verify");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/peers/json_schema.py");
    let mut child = Command::new(python)
        .arg(script)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .expect("Python starts");
    let asked = json!({"schema": request_schema(), "requests": requests}).to_string();
    child.stdin.take().expect("piped").write_all(asked.as_bytes()).expect("Python reads");
    let answer = child.wait_with_output().expect("Python ends");
    assert!(answer.status.success(), "jsonschema refused the schema");
    let text = String::from_utf8(answer.stdout).expect("text");
    let fits: Vec<bool> = text.lines().map(|line| line == "1").collect();
    assert_eq!(fits.len(), requests.len(), "one line a request");
    fits
}

/// A good request with up to three fields changed.
fn broken(chance: &mut Chance) -> Value {
    let mut request = good();
    for _ in 0..chance.below(4) {
        change(&mut request, chance);
    }
    request
}

fn change(value: &mut Value, chance: &mut Chance) {
    let odd = [
        json!(null),
        json!(true),
        json!("single"),
        json!("x"),
        json!(1),
        json!(14.5),
        json!(-3),
        json!(1e9),
        json!([]),
        json!({}),
    ];
    match value {
        Value::Object(fields) if chance.below(6) == 0 => {
            fields.insert("colour".to_owned(), chance.pick(&odd).clone());
        }
        Value::Object(fields) if !fields.is_empty() && chance.below(8) > 0 => {
            let at = chance.below(fields.len());
            change(fields.values_mut().nth(at).expect("there"), chance);
        }
        Value::Array(entries) if !entries.is_empty() && chance.below(8) > 0 => {
            let at = chance.below(entries.len());
            change(&mut entries[at], chance);
        }
        other => *other = chance.pick(&odd).clone(),
    }
}

fn good() -> Value {
    json!({
        "today": "2026-11-25",
        "home": {"zip": "59801", "sections": "single", "width_ft": 14, "length_ft": 66,
            "year_built": 1988, "bedrooms_count": 2, "setpoint_f": 68.5, "cooling": null},
        "people": {"child_under_5": true, "oxygen": false},
        "first_look": {"co_alarm": "working", "gas_smell": false},
        "heating": {"fuel": "propane", "price_usd": 2.6, "price_per": "gal", "soot": null},
        "water_heater": {"kind": "draft_hood", "tap_f": 124, "relief": "sound"},
        "bath_fan": {"bag_emptied_s": 9, "ends": "outdoors"},
        "gaps": [
            {"place": "door_bottom", "label": "front door", "length_in": 36, "width_in": 0.375},
            {"place": "casing", "length_in": 48, "width_in": 0.1, "bends_count": 1},
        ],
        "heat_cable": {"present": true, "length_ft": 24, "on_day": 280, "off_day": 130},
    })
}
