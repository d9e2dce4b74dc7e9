//! What was found, in words and figures: the tap, each gap, the cable, the filter, the fan.

use super::shown::{Scale, Shown};
use super::{Phrase, energy};
use crate::air::ventilation;
use crate::balance::{UseKey, Weather};
use crate::ducts::bag;
use crate::home::{FanEnd, Fuel, Home, People};
use crate::hot_water::{
    BurnTime, Person, Target, WordedTime, burn_time, target, thermometer_error,
};
use crate::safety::{Lines, Meaning, meaning};
use crate::sources::Figure;
use crate::uncertainty::Ranges;
use crate::units::{in_fahrenheit, volume_rate::cfm, warmer_by};
use uom::si::area::{square_inch, square_meter};
use uom::si::f64::{Area, Time, VolumeRate};
use uom::si::time::{day, second};
use uom::si::volume_rate::cubic_meter_per_second;

/// Something that was found.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// What it is about.
    pub item: &'static str,
    /// What it says.
    pub text: Phrase,
    /// The figure behind it.
    pub figure: Option<Shown>,
}

pub(super) fn findings(
    home: &Home,
    weather: Option<&Weather<'_>>,
    ranges: &Ranges,
    lines: &Lines,
) -> Vec<Finding> {
    let mut all = tap(home, lines);
    all.extend(super::burner_air::findings(home));
    all.extend(gaps(home, ranges));
    all.extend(ranges.roof.as_ref().map(super::roof::finding));
    all.extend(super::roof::wet_windows(home, ranges));
    all.extend(cable(ranges));
    all.extend(freeze_risk(ranges));
    all.extend(super::pipe::thermostat_failed(home));
    all.extend(super::pipe::too_weak(home, weather));
    all.extend(super::pipe::too_hot(home));
    all.extend(super::pipe::finding(home, weather));
    all.extend(super::below::findings(home));
    all.extend(filter(home));
    all.extend(super::airflow::findings(home));
    all.extend(bath_fan(home));
    all.extend(leakage(home, ranges));
    all.extend(fresh_air(home));
    all.extend(fresh_by_leaks(ranges));
    all.extend(already_good(home));
    all
}

/// Whose burn time is told: an adult's, that of everyone who burns faster and lives here, and a
/// child's where nobody asked.
pub(super) fn whose(people: People) -> Vec<Person> {
    [
        (Some(true), Person::Adult),
        (Some(people.child_under_5 != Some(false)), Person::Child),
        (people.age_65_or_more, Person::OlderAdult),
        (people.cannot_feel_or_move, Person::CannotFeelOrMove),
    ]
    .into_iter()
    .filter_map(|(lives_here, person)| (lives_here == Some(true)).then_some(person))
    .collect()
}

fn tap(home: &Home, lines: &Lines) -> Vec<Finding> {
    let Some(tap) = home.water_heater.tap else { return vec![] };
    let error = thermometer_error(home.water_heater.thermometer_checked == Some(true));
    let reading = in_fahrenheit(tap).round();
    let mut all: Vec<Finding> = whose(home.people)
        .into_iter()
        .filter_map(|person| Some(burn(reading, person, &burn_time(tap, error, person).ok()?)))
        .collect();
    if matches!(meaning(home, lines), Some(Meaning::TooCool | Meaning::AskBack)) {
        let for_care = matches!(target(home), Target::StoreHotAndMix(_));
        let key = if for_care { "finding.tap_cool_care" } else { "finding.tap_cool" };
        all.push(plain("tap", Phrase::new(key).with("tap", reading)));
    }
    all
}

fn burn(reading: f64, person: Person, time: &BurnTime) -> Finding {
    let scale = Scale {
        unit: "s",
        si_unit: "s",
        shown: |t: Time| t.get::<second>(),
        si: |t| t.get::<second>(),
    };
    let key = if time.time_protects { "finding.burn" } else { "finding.burn_no_time" };
    let (who, told) = (who_is(person), told(time.told()));
    let text = Phrase::new(key).with("tap", reading).with("who", who).with("time", told);
    let figure = time.time.as_ref().map(|figure| {
        let paths = ["water_heater.tap_f", "water_heater.thermometer_checked", "people"];
        Shown::new(&figure.clone().from_inputs(paths), &scale)
    });
    Finding { item: "tap", text, figure }
}

/// A time in words.
pub(super) fn told(time: WordedTime) -> Phrase {
    let (key, n) = match time {
        WordedTime::UnderSeconds(n) => ("time.under_seconds", n),
        WordedTime::AboutSeconds(n) => ("time.about_seconds", n),
        WordedTime::AboutMinutes(n) => ("time.about_minutes", n),
        WordedTime::AboutHours(n) => ("time.about_hours", n),
        WordedTime::OverHours(n) => ("time.over_hours", n),
    };
    Phrase::new(key).with("n", n)
}

pub(super) fn who_is(person: Person) -> Phrase {
    Phrase::new(match person {
        Person::Adult => "person.adult",
        Person::Child => "person.child",
        Person::OlderAdult => "person.older_adult",
        Person::CannotFeelOrMove => "person.cannot_feel_or_move",
    })
}

fn gaps(home: &Home, ranges: &Ranges) -> Vec<Finding> {
    let told = |(i, gap): (usize, &crate::home::Gap)| {
        if home.may_feed_a_burner(gap) {
            // A price would be a reason to stuff it.
            let name = super::uses::gap_name(gap);
            return Some(plain("gap", Phrase::new("finding.gap_stays").with("place", name)));
        }
        let amount = ranges.uses.get(&UseKey::Gap(i))?;
        let figure = energy::a_year(&amount.energy, home.heating.fuel);
        let text = Phrase::new("finding.gap")
            .with("place", super::uses::gap_name(gap))
            .with("energy", figure.text.clone());
        Some(Finding { item: "gap", text, figure: Some(figure) })
    };
    home.gaps.iter().enumerate().filter_map(told).collect()
}

fn cable(ranges: &Ranges) -> Option<Finding> {
    let amount = ranges.uses.get(&UseKey::HeatCable)?;
    let figure = energy::a_year(&amount.energy, Some(Fuel::Electricity));
    let text = Phrase::new("finding.heat_cable").with("energy", figure.text.clone());
    Some(Finding { item: "heat_cable", text, figure: Some(figure) })
}

/// Said only where a typical year has such hours; that it has none says nothing of a rare frost.
fn freeze_risk(ranges: &Ranges) -> Option<Finding> {
    let at_risk = ranges.freeze_risk?.get::<uom::si::time::hour>() >= 1.0;
    at_risk.then(|| plain("heat_cable", Phrase::new("finding.freeze_risk")))
}

fn filter(home: &Home) -> Option<Finding> {
    let days = home.filter.in_use?.get::<day>();
    Some(plain("filter", Phrase::new("finding.filter_age").with("days", days.round())))
}

fn bath_fan(home: &Home) -> Vec<Finding> {
    let mut all = vec![];
    let fan = &home.bath_fan;
    if let Some(flow) = fan.emptying.and_then(|t| bag::flow(t, bag::Direction::Emptying)) {
        let mut shown = air_flow(&flow.flow.from_inputs(["bath_fan.bag_emptied_s"]));
        if flow.bound == bag::Bound::AtLeast {
            let unit = Phrase::new("unit.cfm");
            let low = shown.shown[1].round();
            shown.text = Phrase::new("range.over_unit").with("low", low).with("unit", unit);
        }
        let text = Phrase::new("finding.bath_fan").with("flow", shown.text.clone());
        all.push(Finding { item: "bath_fan", text, figure: Some(shown) });
    }
    match fan.ends {
        Some(FanEnd::RoofCavity) => {
            all.push(plain("bath_fan", Phrase::new("finding.fan_roof_cavity")));
        }
        Some(FanEnd::UnderHome) => {
            all.push(plain("bath_fan", Phrase::new("finding.fan_under_home")));
        }
        Some(FanEnd::Outdoors) | None => {}
    }
    all
}

fn fresh_air(home: &Home) -> Option<Finding> {
    let (floor, bedrooms) = (home.building.floor()?, home.building.bedrooms?);
    let paths = ["home.width_ft", "home.length_ft", "home.bedrooms_count"];
    let shown = air_flow(&ventilation::need(floor, bedrooms).from_inputs(paths));
    let text = Phrase::new("finding.fresh_air").with("flow", shown.text.clone());
    Some(Finding { item: "fresh_air", text, figure: Some(shown) })
}

/// All leaks of the home as one hole.
fn leakage(home: &Home, ranges: &Ranges) -> Option<Finding> {
    let scale = Scale {
        unit: "in2",
        si_unit: "m2",
        shown: |area: Area| area.get::<square_inch>(),
        si: |area| area.get::<square_meter>(),
    };
    let shown = Shown::new(ranges.leakage.as_ref()?, &scale);
    let key = match home.something_burns() {
        Some(false) => "finding.leakage",
        _ => "finding.leakage_burner",
    };
    let text = Phrase::new(key).with("area", shown.text.clone());
    Some(Finding { item: "leaks", text, figure: Some(shown) })
}

fn fresh_by_leaks(ranges: &Ranges) -> Option<Finding> {
    let shown = air_flow(ranges.fresh_by_leaks.as_ref()?);
    let text = Phrase::new("finding.fresh_by_leaks").with("flow", shown.text.clone());
    Some(Finding { item: "fresh_air", text, figure: Some(shown) })
}

fn air_flow(figure: &Figure<VolumeRate>) -> Shown {
    let scale = Scale {
        unit: "cfm",
        si_unit: "m3/s",
        shown: |q: VolumeRate| q.get::<cfm>(),
        si: |q| q.get::<cubic_meter_per_second>(),
    };
    Shown::new(figure, &scale)
}

/// Near 120 °F, within the error of a thermometer, where nobody needs it stored hotter.
fn well_set(home: &Home) -> bool {
    let Target::TurnTo(target) = target(home) else { return false };
    home.water_heater.tap.is_some_and(|tap| {
        warmer_by(tap, target).abs() <= thermometer_error(true)
            && home.people.lung_or_immune == Some(false)
    })
}

/// At most two things that are well: people need to hear that too.
fn already_good(home: &Home) -> Vec<Finding> {
    use crate::home::{AirOpenings, Alarm, FilterLook};
    [
        (home.first_look.co_alarm == Some(Alarm::Working), "good.co_alarm"),
        (well_set(home), "good.tap"),
        (
            home.water_heater.openings == Some(AirOpenings::Open)
                && home.burner_in_closet() == Some(true),
            "good.openings",
        ),
        (home.filter.look == Some(FilterLook::Bright), "good.filter"),
        (home.first_look.smoke_alarm == Some(Alarm::Working), "good.smoke_alarm"),
    ]
    .into_iter()
    .filter(|(well, _)| *well)
    .take(2)
    .map(|(_, key)| plain("good", Phrase::new(key)))
    .collect()
}

pub(super) fn plain(item: &'static str, text: Phrase) -> Finding {
    Finding { item, text, figure: None }
}
