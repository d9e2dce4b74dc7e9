//! Fields that are right on their own and cannot be true together.
//!
//! Looks only at fields of the right kind; the check has named the others already.

use crate::air::components::component;
use crate::bounds::{Bounds, walk};
use crate::error::{FieldError, Reason};
use crate::home::Spoken;
use crate::home::{Belly, Building, Fuel, GapPlace, PriceUnit, WidthClass};
use crate::wire::check::date;
use crate::wire::tree::Tree;

/// Every pair of fields that contradict each other.
pub(super) fn contradictions(request: &Tree) -> Vec<FieldError> {
    let mut problems = vec![];
    problems.extend(built_after_today(request));
    problems.extend(year_of_walk(request));
    problems.extend(price(request.get("heating")));
    problems.extend(cable(request.get("heat_cable")));
    problems.extend(request.get("gaps").entries().iter().enumerate().flat_map(gap));
    problems.extend(leak_test(request.get("leak_test")));
    problems.extend(skirting(request.get("home")));
    problems.extend(ducts(request.get("ducts")));
    problems.extend(label_rise(request.get("heating")));
    problems.extend(belly(request.get("home")));
    let filter = request.get("furnace_filter");
    problems.extend(one_without_other(filter, "furnace_filter", ("width_in", "height_in")));
    problems.extend(weather_without_zip(request.get("home")));
    problems.extend(request.get("windows").entries().iter().enumerate().flat_map(window));
    problems
}

fn contradicts(path: impl Into<String>, other: &'static str) -> FieldError {
    FieldError::at(path, Reason::Contradicts { other })
}

#[expect(clippy::cast_possible_truncation, reason = "`as` saturates, and the range is checked")]
fn built_after_today(request: &Tree) -> Option<FieldError> {
    let today = date(request.get("today").text()?)?;
    let year = request.get("home").get("year_built").number()?;
    let later = !Building::could_be_built_in(year as i16, today) && walk::YEAR_BUILT.allow(year);
    later.then(|| contradicts("home.year_built", "today"))
}

fn year_of_walk(request: &Tree) -> Option<FieldError> {
    let got = f64::from(date(request.get("today").text()?)?.year());
    let reason = Reason::OutOfRange { got, allowed: &walk::TODAY_YEAR };
    (!walk::TODAY_YEAR.allow(got)).then(|| FieldError::at("today", reason))
}

/// What a price must be given with, sold by, and lie between.
fn price(heating: &Tree) -> Vec<FieldError> {
    let per = heating.get("price_per").text().and_then(PriceUnit::of_word);
    let fuel = heating.get("fuel").text().and_then(Fuel::of_word);
    let mut problems = one_without_other(heating, "heating", ("price_usd", "price_per"));
    if let (Some(fuel), Some(per)) = (fuel, per)
        && !fuel.sold_by().contains(&per)
    {
        problems.push(contradicts("heating.price_per", "heating.fuel"));
    }
    if let (Some(got), Some(per)) = (heating.get("price_usd").number(), per)
        && walk::PRICE.allow(got)
        && !price_bounds(per).allow(got)
    {
        let reason = Reason::OutOfRange { got, allowed: price_bounds(per) };
        problems.push(FieldError::at("heating.price_usd", reason));
    }
    problems
}

fn price_bounds(per: PriceUnit) -> &'static Bounds {
    match per {
        PriceUnit::KilowattHour => &walk::PRICE_KWH,
        PriceUnit::Therm => &walk::PRICE_THERM,
        PriceUnit::Ccf => &walk::PRICE_CCF,
        PriceUnit::Gallon => &walk::PRICE_GALLON,
        PriceUnit::Cord => &walk::PRICE_CORD,
        PriceUnit::Bag => &walk::PRICE_BAG,
    }
}

/// What is said of a cable: nothing when there is none, and that there is one when anything is.
fn cable(cable: &Tree) -> Vec<FieldError> {
    let Tree::Map(fields) = cable else { return vec![] };
    let said = |(key, value): &(&String, &Tree)| *key != "present" && value.is_seen();
    let mut problems = one_without_other(cable, "heat_cable", ("on_day", "off_day"));
    match cable.get("present") {
        Tree::Bool(false) => problems.extend(
            fields
                .iter()
                .filter(said)
                .filter(|(key, _)| super::fields::is_of_cable(key))
                .map(|(key, _)| contradicts(format!("heat_cable.{key}"), "heat_cable.present")),
        ),
        Tree::Null if fields.iter().any(|field| said(&field)) => {
            problems.push(FieldError::at("heat_cable.present", Reason::Missing));
        }
        _ => {}
    }
    problems
}

/// A gap has one width and with it a length; left unmeasured it has a place at which something is
/// usual.
fn gap((row, gap): (usize, &Tree)) -> Vec<FieldError> {
    if !matches!(gap, Tree::Map(_)) {
        return vec![];
    }
    let path = |field: &str| format!("gaps[{row}].{field}");
    let missing = |field: &str| FieldError::at(path(field), Reason::Missing);
    let seen = |field: &str| gap.get(field).is_seen();
    let class = gap.get("width_class").text().and_then(WidthClass::of_word);
    let place = gap.get("place").text().and_then(GapPlace::of_word);
    let mut problems = vec![];
    if seen("width_in") && seen("width_class") {
        problems.push(contradicts(path("width_class"), "width_in"));
    }
    if class == Some(WidthClass::NotMeasured) {
        let unusual = place.is_some_and(|place| component(place, None).is_none());
        problems.extend(unusual.then(|| missing("width_in")));
        return problems;
    }
    problems.extend((!seen("length_in")).then(|| missing("length_in")));
    let unread = !(seen("width_in") || seen("width_class"));
    let only_error = seen("width_error_in") && !seen("width_in");
    problems.extend((unread || only_error).then(|| missing("width_in")));
    problems
}

/// Heated air leaves warmer than it came, and no more registers are closed than there are.
fn ducts(ducts: &Tree) -> Vec<FieldError> {
    let number = |key: &str| ducts.get(key).number();
    let over = |low: &str, high: &str| number(low).zip(number(high)).is_some_and(|(l, h)| l > h);
    let mut problems = vec![];
    if over("registers_closed_count", "registers_count") {
        problems.push(contradicts("ducts.registers_closed_count", "ducts.registers_count"));
    }
    if over("return_f", "supply_f") {
        problems.push(contradicts("ducts.supply_f", "ducts.return_f"));
    }
    if over("return_f", "far_f") {
        problems.push(contradicts("ducts.far_f", "ducts.return_f"));
    }
    problems
}

/// A label has both ends, the lower one first.
fn label_rise(heating: &Tree) -> Vec<FieldError> {
    let ends = ("label_rise_min_f", "label_rise_max_f");
    let mut problems = one_without_other(heating, "heating", ends);
    if let (Some(min), Some(max)) = (heating.get(ends.0).number(), heating.get(ends.1).number())
        && min >= max
    {
        problems.push(contradicts("heating.label_rise_max_f", "heating.label_rise_min_f"));
    }
    problems
}

/// Skirting is missing or it is not.
fn skirting(home: &Tree) -> Option<FieldError> {
    let (open, feet) = (home.get("skirting_open").flag()?, home.get("skirting_open_ft").number()?);
    let differ = open != (feet > 0.0) && walk::SKIRTING_GAP.allow(feet);
    differ.then(|| contradicts("home.skirting_open_ft", "home.skirting_open"))
}

/// Another place's weather, or the home's own height, needs the place of the home.
fn weather_without_zip(home: &Tree) -> Option<FieldError> {
    let asked = home.get("weather_zip").is_seen() || home.get("elevation_ft").is_seen();
    (asked && !home.get("zip").is_seen()).then(|| FieldError::at("home.zip", Reason::Missing))
}

/// Only a torn belly has holes to measure.
fn belly(home: &Tree) -> Option<FieldError> {
    let belly = Belly::of_word(home.get("belly").text()?)?;
    let measured = home.get("belly_hole_in2").number().is_some();
    (belly != Belly::Torn && measured).then(|| contradicts("home.belly_hole_in2", "home.belly"))
}

fn window((row, window): (usize, &Tree)) -> Vec<FieldError> {
    one_without_other(window, &format!("windows[{row}]"), ("width_in", "height_in"))
}

/// A test has one result.
fn leak_test(test: &Tree) -> Vec<FieldError> {
    let results = ["flow_50_cfm", "area_4pa_in2", "area_10pa_in2"];
    let seen: Vec<&str> = results.into_iter().filter(|key| test.get(key).is_seen()).collect();
    let mut problems: Vec<FieldError> = seen
        .iter()
        .skip(1)
        .map(|key| contradicts(format!("leak_test.{key}"), "leak_test"))
        .collect();
    if test.get("exponent").is_seen() && !test.get("flow_50_cfm").is_seen() {
        problems.push(FieldError::at("leak_test.flow_50_cfm", Reason::Missing));
    }
    problems
}

/// The field that is missing of two that mean something only together.
fn one_without_other(
    map: &Tree,
    of: &str,
    (one, other): (&'static str, &'static str),
) -> Vec<FieldError> {
    let missing = match (map.get(one).is_seen(), map.get(other).is_seen()) {
        (true, false) => other,
        (false, true) => one,
        _ => return vec![],
    };
    vec![FieldError::at(format!("{of}.{missing}"), Reason::Missing)]
}
