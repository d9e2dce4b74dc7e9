//! A price and a life that somebody was told, and what they make of a plan.

use serde_json::{Value, json};
use winterseam::climate::Atlas;
use winterseam::money::{Dollars, Spending, Years, usual_real_rate, worth};
use winterseam::repairs;
use winterseam::wire::{Tree, assess};

fn answer(own_costs: &Value) -> Result<Value, Vec<String>> {
    let request = json!({
        "today": "2026-10-03", "home": {"zip": "59801", "sections": "single"},
        "first_look": {"co_alarm": "working", "other_burner": false},
        "heating": {"fuel": "electricity"}, "electricity_usd_per_kwh": 0.15,
        "water_heater": {"kind": "electric"},
        "gaps": [{"place": "door_bottom", "length_in": 36, "width_in": 0.375}],
        "own_costs": own_costs,
    });
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    match assess(&tree, Some(Atlas::embedded())) {
        Ok(answer) => Ok(serde_json::to_value(answer).expect("plain data")),
        Err(all) => Err(all.iter().map(|e| format!("{} {}", e.path, e.reason.code())).collect()),
    }
}

fn sweep(answer: &Value) -> Value {
    let steps = ["firsts", "later"].map(|list| answer[list].as_array().expect("a list").clone());
    let sweep = steps.concat().into_iter().find(|step| step["id"] == "door_sweep");
    sweep.expect("a sweep")
}

#[test]
fn a_price_that_was_told_takes_the_place_of_a_guess() {
    let guessed = sweep(&answer(&json!([])).expect("an answer"));
    let told = json!([{"repair": "door_sweep", "usd": 48, "life_years": 4}]);
    let told = sweep(&answer(&told).expect("an answer"));
    assert_eq!([&told["cost"]["low"], &told["cost"]["high"]], [48.0, 48.0]);
    assert_eq!(told["cost"]["confidence"], "billed");
    assert_eq!(told["life"]["value"], 4.0);
    assert_eq!(told["saving"], guessed["saving"], "a price changes no year");
    let number = |step: &Value, part: &str, key: &str| step[part][key].as_f64().expect("a number");
    assert!(number(&guessed, "life", "low") < number(&guessed, "life", "high"));
    let by_hand = worth(&Spending {
        cost: Dollars(48.0),
        saving_per_year: Dollars(number(&told, "saving", "value")),
        life: Years(4.0),
        real_rate: usual_real_rate(),
    });
    let ours = number(&told, "worth", "present_value_usd");
    assert!((ours - by_hand.present_value.0).abs() < 1e-9, "{ours}");
}

#[test]
fn a_repair_that_nobody_knows_and_a_price_below_nothing_are_refused_by_name() {
    let wrong = |told: Value| answer(&told).expect_err("refused");
    assert_eq!(wrong(json!([{"repair": "paint", "usd": 5}])), ["own_costs[0].repair not_one_of"]);
    assert_eq!(
        wrong(json!([{"repair": "door_sweep", "usd": -5}])),
        ["own_costs[0].usd out_of_range"]
    );
    assert_eq!(wrong(json!([{"usd": 5}])), ["own_costs[0].repair missing"]);
    assert_eq!(repairs::IDS.len(), repairs::ALL.len());
}
