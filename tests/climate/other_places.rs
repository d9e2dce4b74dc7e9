//! The home's own height, and the weather of another place.

use super::{air_f, heating_degree_days};
use serde_json::{Value, json};
use uom::si::f64::Length;
use uom::si::length::foot;
use uom::si::time::hour;
use winterseam::climate::{Atlas, Year};
use winterseam::units::fahrenheit;
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

/// The closed form and the hourly year count the same normals in two ways. Against typical years
/// their errors are 1.9 and 2.8 % (95 of 100 stations), so that both may be 5 % apart, or 40 °F·day
/// where it is warm; hours of frost 15 and 17 %, so a third, or 60 h where it rarely freezes.
#[test]
fn the_closed_form_counts_what_the_hours_count() {
    let limit = fahrenheit(32.0);
    for station in Atlas::embedded().stations().step_by(17) {
        let year = Year::of(station);
        let closed = station.normals.degree_days_below(fahrenheit(65.0)).0;
        let daily = heating_degree_days(&air_f(&year), 65.0);
        let name = &station.name;
        assert!((closed - daily).abs() <= 0.05 * daily + 40.0, "{name}: {closed} {daily}");
        let frost = station.normals.hours_below(limit).get::<hour>();
        let counted = f64::from(u16::try_from(year.hours_below(limit)).expect("hours of a year"));
        assert!((frost - counted).abs() <= counted / 3.0 + 60.0, "{name}: {frost} {counted}");
    }
}
