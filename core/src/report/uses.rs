//! What takes energy in a year, the largest first.

use super::shown::Shown;
use super::{Phrase, energy};
use crate::air::whole_home;
use crate::balance::{self, UseKey};
use crate::home::{Fuel, Gap, Home, Spoken as _};
use crate::math::put_in_order;
use crate::uncertainty::Ranges;

/// One use of energy.
#[derive(Debug, Clone, PartialEq)]
pub struct UseLine {
    /// Stable name.
    pub key: String,
    /// What people call it.
    pub name: Phrase,
    /// Energy in a year.
    pub energy: Shown,
    /// Dollars in a year, where the price is known.
    pub cost: Option<Shown>,
}

pub(super) fn uses(home: &Home, ranges: &Ranges) -> Vec<UseLine> {
    let mut lines: Vec<UseLine> = ranges
        .uses
        .iter()
        .filter(|(key, _)| !stays_open(home, **key) && is_known(home, **key))
        .map(|(key, amount)| {
            let (name, label, fuel) = named(home, *key);
            UseLine {
                key: name,
                name: label,
                energy: energy::a_year(&amount.energy, fuel),
                cost: amount.dollars.as_ref().map(Shown::dollars_a_year),
            }
        })
        .collect();
    put_in_order(&mut lines, |a, b| a.energy.si[0] > b.energy.si[0]);
    lines
}

/// Stable name of a use, what people call it, and the fuel it is bought as.
fn named(home: &Home, key: UseKey) -> (String, Phrase, Option<Fuel>) {
    let (name, fuel) = match key {
        UseKey::Gap(i) => {
            return (format!("gap.{i}"), gap_name(&home.gaps[i]), home.heating.fuel);
        }
        UseKey::HotWater => ("hot_water", balance::heater_fuel(home)),
        UseKey::HotTank => ("hot_tank", balance::heater_fuel(home)),
        UseKey::HeatCable => ("heat_cable", Some(Fuel::Electricity)),
        UseKey::OtherLeaks => ("other_leaks", home.heating.fuel),
        UseKey::SteadyFan => ("steady_fan", home.heating.fuel),
        UseKey::Ducts => ("ducts", home.heating.fuel),
        UseKey::DrawnByHeater => ("drawn_by_heater", home.heating.fuel),
        UseKey::Walls => ("walls", home.heating.fuel),
        UseKey::Roof => ("roof", home.heating.fuel),
        UseKey::Floor => ("floor", home.heating.fuel),
        UseKey::Windows => ("windows", home.heating.fuel),
        UseKey::Doors => ("doors", home.heating.fuel),
    };
    (name.to_owned(), Phrase::new(format!("use.{name}")), fuel)
}

/// Of the home as a whole nothing is told before somebody said how large it is.
fn is_known(home: &Home, key: UseKey) -> bool {
    let whole = matches!(
        key,
        UseKey::OtherLeaks
            | UseKey::Ducts
            | UseKey::Walls
            | UseKey::Roof
            | UseKey::Floor
            | UseKey::Windows
            | UseKey::Doors
    );
    !whole || whole_home::is_known(&home.building)
}

/// A gap that may feed a flame has no price: it stays as it is.
fn stays_open(home: &Home, key: UseKey) -> bool {
    match key {
        UseKey::Gap(i) => home.may_feed_a_burner(&home.gaps[i]),
        _ => false,
    }
}

/// What a gap is called: the person's own word for it, or its place.
pub(super) fn gap_name(gap: &Gap) -> Phrase {
    let place = Phrase::new(format!("gap_place.{}", gap.place.word()));
    match &gap.label {
        Some(label) => Phrase::new("use.gap_labelled").with("label", label.as_str()),
        None => Phrase::new("use.gap").with("place", place),
    }
}
