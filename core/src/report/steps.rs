//! Steps of a plan in words and figures.

use super::shown::{Scale, Shown};
use super::{Phrase, dangers, energy, roof};
use crate::balance;
use crate::home::{Fuel, HeaterPlace, Home};
use crate::money::Dollars;
use crate::money::{Spending, Worth, Years, usual_real_rate, worth};
use crate::plan::Proposal;
use crate::repairs::{Changes, Material, Order, Repair, Warning, Who};
use crate::sources::Figure;
use crate::uncertainty::Ranges;
use uom::si::f64::Energy;

/// One step, with all that a person needs to take it.
#[derive(Debug, Clone, PartialEq)]
pub struct Step {
    /// Name of the repair.
    pub id: &'static str,
    /// What to do.
    pub text: Phrase,
    /// Why.
    pub why: Phrase,
    /// By when.
    pub when: Phrase,
    /// Who may do it.
    pub who: Who,
    /// What it costs.
    pub cost: Shown,
    /// Dollars saved in a year.
    pub saving: Option<Shown>,
    /// Energy saved in a year.
    pub saving_energy: Option<Shown>,
    /// How long it lasts.
    pub life: Shown,
    /// What the saving is worth, at the best value of everything; for staff and developers.
    pub worth: Option<Worth>,
    /// How long it takes to earn its cost.
    pub payback: Option<Phrase>,
    /// Warnings that go with it.
    pub cautions: Vec<(Warning, Phrase)>,
    /// What to buy.
    pub materials: Vec<Material>,
}

pub(super) fn step(home: &Home, proposal: &Proposal, ranges: &Ranges) -> Step {
    let repair = proposal.repair;
    let before = &proposal.before;
    // What keeps people safe may take more than before: then there is no saving to tell of.
    let saved =
        ranges.savings.get(repair.id).filter(|amount| amount.energy.best >= Energy::default());
    let (cost, life) = (repair.cost(before), repair.life(before));
    let dollars = saved.and_then(|amount| amount.dollars.as_ref());
    let fuel = match repair.changes {
        Changes::Cable => Some(Fuel::Electricity),
        Changes::Tap | Changes::HotWater => fuel_of_hot_water(before),
        _ => home.heating.fuel,
    };
    Step {
        id: repair.id,
        text: Phrase::new(format!("step.{}.do", repair.id)),
        why: why(before, repair, ranges),
        when: when((repair.order)(before)),
        who: (repair.who)(before),
        payback: saved.map(|_| payback(&cost, dollars)),
        cost: Shown::dollars(&cost),
        life: Shown::new(&life, &LIFE),
        worth: dollars.map(|saved| {
            worth(&Spending {
                cost: cost.best,
                saving_per_year: saved.best,
                life: life.best,
                real_rate: usual_real_rate(),
            })
        }),
        saving: dollars.map(Shown::dollars_a_year),
        saving_energy: saved.map(|amount| energy::a_year(&amount.energy, fuel)),
        cautions: (repair.cautions)(before).into_iter().map(|c| (c, dangers::warning(c))).collect(),
        materials: (repair.materials)(before),
    }
}

const LIFE: Scale<Years> =
    Scale { unit: "years", si_unit: "a", shown: |years| years.0, si: |years| years.0 };

/// The fuel that a change of the hot water shows in; none where a tank in a room trades one fuel for
/// another.
fn fuel_of_hot_water(home: &Home) -> Option<Fuel> {
    let heater = balance::heater_fuel(home);
    let in_room = home.water_heater.place == Some(HeaterPlace::Room);
    heater.filter(|_| !in_room || heater == home.heating.fuel)
}

fn why(before: &Home, repair: &Repair, ranges: &Ranges) -> Phrase {
    let why = Phrase::new(format!("step.{}.why", repair.id));
    let why = match named(before, repair) {
        Some(names) => Phrase::new("why.gaps").with("why", why).with("names", names),
        None => why,
    };
    match (&ranges.roof, repair.changes) {
        (Some(water), Changes::Gaps(place)) if roof::is_below(before, place) => {
            roof::why(why, water)
        }
        _ => why,
    }
}

/// What people called the windows that a repair covers, where each has a name; or the gaps that it
/// closes, and no others.
fn named(before: &Home, repair: &Repair) -> Option<String> {
    let after = (repair.apply)(before)?;
    if repair.changes == Changes::Windows {
        let pairs = before.windows.iter().zip(&after.windows).filter(|(was, is)| was != is);
        let names: Option<Vec<&str>> = pairs.map(|(was, _)| was.label.as_deref()).collect();
        return names.map(|names| names.join(", "));
    }
    let pairs = before.gaps.iter().zip(&after.gaps);
    let closed = pairs.filter(|(was, is)| was.open != is.open);
    let names: Vec<&str> = closed.filter_map(|(was, _)| was.label.as_deref()).collect();
    (!names.is_empty()).then(|| names.join(", "))
}

fn when(order: Order) -> Phrase {
    Phrase::new(match order {
        Order::LifeSafety => "when.today",
        Order::HeatAndPipes | Order::Airflow => "when.this_week",
        _ => "when.this_month",
    })
}

/// Months or years until the savings have paid the cost, from the best to the worst case.
fn payback(cost: &Figure<Dollars>, saved: Option<&Figure<Dollars>>) -> Phrase {
    let Some(saved) = saved else { return Phrase::new("payback.no_price") };
    if cost.high.0 <= 0.0 {
        return Phrase::new("payback.free");
    }
    if saved.best.0 <= 0.0 {
        return Phrase::new("payback.never");
    }
    let fast = cost.low.0 / saved.high.0;
    let slow = cost.high.0 / saved.low.0.max(0.01);
    let range = |key: &'static str, low: f64, high: f64| {
        Phrase::new(key).with("low", low.round().max(1.0)).with("high", high.round().max(1.0))
    };
    match (fast, slow) {
        (_, slow) if slow < 1.0 => Phrase::new("payback.under_a_year"),
        (fast, _) if fast > 30.0 => Phrase::new("payback.over_years").with("low", 30.0),
        (fast, slow) if slow > 30.0 => {
            Phrase::new("payback.perhaps_never").with("low", fast.ceil())
        }
        (fast, slow) if slow < 2.0 => range("payback.months", fast * 12.0, slow * 12.0),
        (fast, slow) if fast.round() >= slow.round() => {
            Phrase::new("payback.about_years").with("value", slow.round())
        }
        (fast, slow) => range("payback.years", fast, slow),
    }
}
