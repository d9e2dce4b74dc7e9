//! What has to be known to read the plan rightly.

use super::Phrase;
use crate::climate::Place;
use crate::home::{HeaterKind, HeaterPlace, Home};
use crate::plan::Plan;
use crate::safety;
use uom::si::length::{foot, mile};

/// Nine areas of ten have a station within 42 miles; beyond this the weather may be another.
const FAR_MILES: f64 = 60.0;

pub(super) fn notes(home: &Home, place: Option<&Place>, plan: &Plan) -> Vec<Phrase> {
    let mut all = vec![Phrase::new("note.education")];
    match place {
        None => all.push(Phrase::new("note.no_zip")),
        Some(place) if place.by_area => all.push(Phrase::new("note.zip_by_area")),
        Some(_) => {}
    }
    let far = place.and_then(|place| place.distance).map(|d| d.get::<mile>());
    if let Some(miles) = far.filter(|&miles| miles > FAR_MILES) {
        all.push(Phrase::new("note.far_station").with("miles", miles));
    }
    if let Some(feet) = place.and_then(|place| place.lifted).map(|by| by.get::<foot>().round()) {
        let key = if feet < 0.0 { "note.lower_than_station" } else { "note.higher_than_station" };
        all.push(Phrase::new(key).with("feet", feet.abs()));
    }
    if home.building.weather_zip.is_some() {
        all.push(Phrase::new("note.weather_of_another_place"));
    }
    if safety::hides_jobs(&plan.stops) {
        all.push(Phrase::new("note.jobs_hidden"));
    } else if safety::hides_savings(&plan.stops) {
        all.push(Phrase::new("note.savings_hidden"));
    }
    if let Some(why) = plan.no_tightening.filter(|_| !home.gaps.is_empty()) {
        all.push(Phrase::new(format!("note.no_tightening_{}", why.word())));
    }
    if home.gaps.iter().any(|gap| home.may_feed_a_burner(gap)) {
        all.push(Phrase::new("note.burner_gap"));
    }
    if !home.gaps.is_empty() && home.heating.fuel.is_none() {
        all.push(Phrase::new("note.no_fuel"));
    }
    if !home.gaps.is_empty() {
        all.push(Phrase::new("note.heating_only"));
    }
    all.extend(hot_water(home, place));
    if plan.little_left && plan.firsts.is_empty() && knows_something(home) {
        all.push(super::dangers::warning(crate::repairs::Warning::SMALL_POTENTIAL));
    }
    all
}

/// How a tap is read, and where a tank is counted.
fn hot_water(home: &Home, place: Option<&Place>) -> Vec<Phrase> {
    let heater = &home.water_heater;
    let read = heater.tap.is_some();
    let counted = place.is_some() && heater.kind.is_some_and(HeaterKind::has_tank);
    let in_room = heater.place.map(|place| place == HeaterPlace::Room);
    [
        (read, "note.tap_reading"),
        (read && home.people.burn_faster() != Some(false), "note.tub_too"),
        (counted && in_room == Some(true), "note.tank_in_room"),
        (counted && in_room == Some(false), "note.tank_elsewhere"),
    ]
    .into_iter()
    .filter(|(applies, _)| *applies)
    .map(|(_, key)| Phrase::new(key))
    .collect()
}

/// Whether enough was seen to say that little is left.
fn knows_something(home: &Home) -> bool {
    home.water_heater.tap.is_some()
        && home.filter.look.is_some()
        && home.first_look.smoke_alarm.is_some()
}
