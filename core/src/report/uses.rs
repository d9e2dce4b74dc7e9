//! What takes energy in a year, the largest first.

use super::shown::Shown;
use super::{Phrase, energy};
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
        .filter(|(key, _)| !stays_open(home, **key))
        .filter_map(|(key, amount)| {
            let heater = |name: &'static str| {
                let label = Phrase::new(format!("use.{name}"));
                (name.to_owned(), label, balance::heater_fuel(home))
            };
            let (name, label, fuel) = match key {
                UseKey::HotWater => heater("hot_water"),
                UseKey::HotTank => heater("hot_tank"),
                // Less than nothing of the furnace: a note tells of it.
                UseKey::TankInRoom => return None,
                UseKey::Gap(i) => (format!("gap.{i}"), gap_name(&home.gaps[*i]), home.heating.fuel),
                UseKey::OtherLeaks => {
                    ("other_leaks".to_owned(), Phrase::new("use.other_leaks"), home.heating.fuel)
                }
                UseKey::SteadyFan => {
                    ("steady_fan".to_owned(), Phrase::new("use.steady_fan"), home.heating.fuel)
                }
                UseKey::HeatCable => (
                    "heat_cable".to_owned(),
                    Phrase::new("use.heat_cable"),
                    Some(Fuel::Electricity),
                ),
            };
            Some(UseLine {
                key: name,
                name: label,
                energy: energy::a_year(&amount.energy, fuel),
                cost: amount.dollars.as_ref().map(Shown::dollars_a_year),
            })
        })
        .collect();
    put_in_order(&mut lines, |a, b| a.energy.si[0] > b.energy.si[0]);
    lines
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
