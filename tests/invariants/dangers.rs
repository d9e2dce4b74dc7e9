//! A danger more never brings money in: no saving, no job, no use appears that was not there.

use super::answered;
use super::random::{Luck, request};
use serde_json::{Value, json};

const DANGERS: [(&str, &str); 11] = [
    ("/first_look/gas_smell", "true"),
    ("/first_look/symptoms", "true"),
    ("/first_look/co_alarm", "\"sounding\""),
    ("/first_look/flame_indoors", "true"),
    ("/first_look/hot_wiring", "true"),
    ("/first_look/metal_tingles", "true"),
    ("/first_look/tap_dry", "true"),
    ("/heat_cable/damaged", "true"),
    ("/water_heater/relief", "\"plugged\""),
    ("/heating/soot", "true"),
    ("/heating/stove_clear", "false"),
];

/// The request with one danger more; `None` where it has no such part.
fn with(request: &Value, (path, word): (&str, &str)) -> Option<Value> {
    let (_, key) = path.rsplit_once('/')?;
    let group = path.strip_suffix(&format!("/{key}"))?;
    let mut more = request.clone();
    let map = more.pointer_mut(group)?.as_object_mut()?;
    if map.get("present") == Some(&json!(false)) {
        return None;
    }
    map.insert(key.to_owned(), serde_json::from_str(word).expect("JSON"));
    Some(more)
}

/// Everything with a price tag: each step that saves, each use.
fn money(answer: &Value) -> Vec<String> {
    let steps = ["firsts", "later"].map(|list| answer[list].as_array().expect("a list").iter());
    let mends = answer["stops"].as_array().expect("a list").iter();
    let mends = mends.flat_map(|stop| stop["mends"].as_array().expect("a list"));
    let saves = steps.into_iter().flatten().chain(mends).filter(|s| !s["saving_energy"].is_null());
    let uses = answer["uses"].as_array().expect("a list").iter();
    saves.map(|step| step["id"].to_string()).chain(uses.map(|u| u["key"].to_string())).collect()
}

fn kinds(answer: &Value) -> Vec<&str> {
    let stops = answer["stops"].as_array().expect("a list").iter();
    stops.map(|stop| stop["kind"].as_str().expect("a word")).collect()
}

#[test]
fn a_danger_more_brings_no_saving_in() {
    let (mut hidden, mut shown) = (0, 0);
    for seed in 0..14 {
        let request = request(&mut Luck::new(seed), true);
        let before = money(&answered(&request));
        shown += before.len();
        for danger in DANGERS {
            let Some(more) = with(&request, danger) else { continue };
            let after = answered(&more);
            let left = money(&after);
            assert!(left.iter().all(|name| before.contains(name)), "{danger:?}: {request}");
            let met = kinds(&after);
            let leave = met.contains(&"out") || met.contains(&"off");
            assert!(!leave || left.is_empty(), "{danger:?}: {request}");
            hidden += usize::from(left.is_empty() && !before.is_empty());
        }
    }
    assert!(hidden > 10 && shown > 10, "{hidden} {shown}");
}

/// All dangers at once, in a home of which nothing else is known: only who to call and where to go.
#[test]
fn a_home_in_every_danger_is_told_to_leave_and_nothing_else() {
    let mut request = json!({
        "today": "2026-01-18", "first_look": {}, "heating": {}, "water_heater": {},
        "heat_cable": {"present": true},
        "gaps": [{"place": "door_bottom", "length_in": 36, "width_in": 0.5}],
    });
    for danger in DANGERS {
        request = with(&request, danger).expect("a part");
    }
    let answer = answered(&request);
    let met = kinds(&answer);
    assert_eq!(met[0], "out");
    assert!(
        met.is_sorted_by_key(|kind| ["out", "off", "today", "soon"].iter().position(|k| k == kind))
    );
    for stop in answer["stops"].as_array().expect("a list") {
        assert!(stop["mends"].as_array().expect("a list").is_empty());
        assert!(stop["kind"] == "out" || stop["meanwhile"].as_array().expect("a list").is_empty());
    }
    for list in ["firsts", "later", "uses", "look_next", "findings", "shopping"] {
        assert!(answer[list].as_array().expect("a list").is_empty(), "{list}");
    }
}
