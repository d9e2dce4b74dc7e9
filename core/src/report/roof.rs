//! What gaps in the ceiling do to the roof.

use super::shown::{Scale, Shown};
use super::{Finding, Phrase};
use crate::balance;
use crate::home::{GapPlace, Home, LeadsTo};
use crate::uncertainty::RoofWater;
use uom::si::f64::{Mass, Volume};
use uom::si::mass::kilogram;
use uom::si::volume::{gallon, liter};

/// Whether gaps at this place lead into the roof.
pub(super) fn is_below(home: &Home, place: GapPlace) -> bool {
    let at_place = home.gaps.iter().filter(|gap| gap.place == place);
    at_place.map(balance::leads_to).any(|behind| behind == LeadsTo::RoofCavity)
}

/// A reason, and when the roof suffers as well.
pub(super) fn why(why: Phrase, water: &RoofWater) -> Phrase {
    Phrase::new("why.roof").with("why", why).with("when", when(water))
}

pub(super) fn finding(water: &RoofWater) -> Finding {
    let scale =
        Scale { unit: "gal", si_unit: "kg", shown: gallons, si: |mass| mass.get::<kilogram>() };
    let figure = Shown::new(&water.most, &scale);
    let text =
        Phrase::new("finding.roof").with("water", figure.text.clone()).with("when", when(water));
    Finding { item: "roof", text, figure: Some(figure) }
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
