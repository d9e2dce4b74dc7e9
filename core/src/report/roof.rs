//! Damp air: what gaps in the ceiling do to the roof, and what wet windows tell.

use super::shown::{Scale, Shown};
use super::{Finding, Phrase};
use crate::air::leaks::leads_to;
use crate::home::{FanEnd, GapPlace, Home, LeadsTo, WetWindows};
use crate::moisture::RoofGrade;
use crate::uncertainty::{Ranges, RoofWater};
use uom::si::f64::{Mass, Ratio, Volume};
use uom::si::mass::kilogram;
use uom::si::ratio::{percent, ratio};
use uom::si::volume::{gallon, liter};

/// Whether gaps at this place lead into the roof.
pub(super) fn is_below(home: &Home, place: GapPlace) -> bool {
    let at_place = home.gaps.iter().filter(|gap| gap.place == place);
    at_place.map(leads_to).any(|behind| behind == LeadsTo::RoofCavity)
}

/// A reason, and when the roof suffers as well.
pub(super) fn why(why: Phrase, water: &RoofWater) -> Phrase {
    Phrase::new("why.roof").with("why", why).with("when", when(water))
}

pub(super) fn finding(water: &RoofWater) -> Finding {
    let scale =
        Scale { unit: "gal", si_unit: "kg", shown: gallons, si: |mass| mass.get::<kilogram>() };
    let figure = Shown::new(&water.most, &scale);
    let text = Phrase::new("finding.roof")
        .with("water", figure.text.clone())
        .with("when", when(water))
        .with("end", end(water.unaired));
    Finding { item: "roof", text, figure: Some(figure) }
}

/// What to do where windows are wet, and how damp the air then is where the climate is known.
pub(super) fn wet_windows(home: &Home, ranges: &Ranges) -> Option<Finding> {
    if !matches!(home.building.wet_windows?, WetWindows::Often | WetWindows::Sometimes) {
        return None;
    }
    let fan_helps = !home.fan_may_pull_fumes()
        && !matches!(home.bath_fan.ends, Some(FanEnd::RoofCavity | FanEnd::UnderHome));
    let text =
        Phrase::new(if fan_helps { "finding.wet_windows" } else { "finding.wet_windows_no_fan" });
    let Some(humidity) = &ranges.wet_windows else {
        return Some(Finding { item: "windows", text, figure: None });
    };
    let scale = Scale {
        unit: "percent",
        si_unit: "1",
        shown: |share: Ratio| share.get::<percent>(),
        si: |share| share.get::<ratio>(),
    };
    let figure = Shown::new(humidity, &scale);
    let text =
        Phrase::new("finding.damp_air").with("why", text).with("humidity", figure.text.clone());
    Some(Finding { item: "windows", text, figure: Some(figure) })
}

/// How the year ends. An aired roof is never worse, so a good end is sure and a bad one is not.
fn end(unaired: RoofGrade) -> Phrase {
    Phrase::new(match unaired {
        RoofGrade::MayStayWet => "roof.may_stay_wet",
        RoofGrade::StaysDry | RoofGrade::DriesWithinTheYear => "roof.dries",
    })
}

/// A kilogram of water is a litre.
fn gallons(water: Mass) -> f64 {
    Volume::new::<liter>(water.get::<kilogram>()).get::<gallon>()
}

fn when(water: &RoofWater) -> Phrase {
    let month = |month: u8| Phrase::new(format!("month.{month}"));
    let key = if water.from == water.to { "when.in_month" } else { "when.in_months" };
    Phrase::new(key).with("from", month(water.from)).with("to", month(water.to))
}
