//! The home's own height, and the weather of another place.

use serde_json::{Value, json};
use uom::si::f64::Length;
use uom::si::length::foot;
use winterseam::climate::Atlas;
use winterseam::wire::{Tree, assess};

fn answer(home: &Value) -> Result<Value, Vec<String>> {
    let request = json!({"today": "2026-11-25", "home": home});
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    match assess(&tree, Some(Atlas::embedded())) {
        Ok(answer) => Ok(serde_json::to_value(answer).expect("plain data")),
        Err(all) => Err(all.iter().map(|e| format!("{} {}", e.path, e.reason.code())).collect()),
    }
}

fn notes(answer: &Value) -> Vec<&str> {
    let notes = answer["notes"].as_array().expect("a list").iter();
    notes.map(|note| note["key"].as_str().expect("a key")).collect()
}

/// Source: the standard atmosphere's fall of temperature, 6.5 K a kilometre dry and some 3.4 °F for
/// 1,000 ft in the mean of mountain stations (common practice).
#[test]
fn a_home_above_its_station_is_colder_and_freezes_longer() {
    let town = Atlas::embedded().place("59801").expect("known");
    let freeze = |feet: f64| {
        let by = Length::new::<foot>(feet);
        town.clone().at(town.station.elevation + by).station.freeze.expect("frost")
    };
    let dates = [-2000.0, -1000.0, 0.0, 1000.0, 2000.0].map(freeze);
    assert!(dates.is_sorted_by(|a, b| a.last <= b.last && a.first >= b.first), "{dates:?}");
    assert_eq!(Some(dates[2]), town.station.freeze);
    // On the highest ground no season is left, and nothing breaks.
    let peak = freeze(12_000.0);
    assert!(peak.last <= peak.first, "{peak:?}");
}

#[test]
fn the_answer_says_whose_weather_it_is() {
    let own = answer(&json!({"zip": "59801", "elevation_ft": 5200})).expect("an answer");
    let lifted = own["place"]["lifted_ft"].as_f64().expect("lifted");
    assert!((1500.0..2500.0).contains(&lifted), "{lifted}");
    assert!(notes(&own).contains(&"note.higher_than_station"));
    let other = answer(&json!({"zip": "59801", "weather_zip": "99701"})).expect("an answer");
    assert!(notes(&other).contains(&"note.weather_of_another_place"));
    assert_ne!(other["place"]["station"], own["place"]["station"]);
    assert_eq!(other["place"]["zone"], own["place"]["zone"], "the zone is that of the county");
}

/// A station 4,157 km away is told with its distance.
#[test]
fn a_zip_far_from_every_station_says_how_far() {
    let island = answer(&json!({"zip": "96799"})).expect("an answer");
    let far = island["place"]["distance_km"].as_f64().expect("a distance");
    assert!(far > 150.0, "{far}");
    let notes = island["notes"].as_array().expect("a list");
    let told = notes.iter().find(|note| note["key"] == "note.far_station").expect("a note");
    let miles = told["args"]["miles"].as_f64().expect("miles");
    assert!((miles * 1.609_344 - far).abs() < 2.0, "{miles} miles, {far} km");
}

#[test]
fn weather_without_a_home_and_places_that_are_none_are_refused_by_name() {
    let wrong = |home| answer(&home).expect_err("refused");
    assert_eq!(wrong(json!({"elevation_ft": 800})), ["home.zip missing"]);
    assert_eq!(wrong(json!({"weather_zip": "59801"})), ["home.zip missing"]);
    assert_eq!(
        wrong(json!({"zip": "59801", "weather_zip": "00000"})),
        ["home.weather_zip no_such_place"]
    );
    assert_eq!(
        wrong(json!({"zip": "59801", "elevation_ft": 40_000})),
        ["home.elevation_ft out_of_range"]
    );
}
