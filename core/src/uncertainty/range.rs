//! Ranges of a plan and of the uses of a year, from the draws of a home.

use super::draw::SOURCES;
use super::{Draw, RoofWater, draw, roof_water};
use crate::air::whole_home;
use crate::balance::{self, Assessment, UseKey, Weather};
use crate::home::Home;
use crate::money::Dollars;
use crate::plan::{Plan, Proposal, Saving, by_leaks};
use crate::repairs::Changes;
use crate::sources::{Confidence, Figure, Source};
use std::collections::BTreeMap;
use uom::si::f64::{Area, Energy, Ratio, Time, VolumeRate};

/// An amount of energy and what it costs.
#[derive(Debug, Clone)]
pub struct Amount {
    /// Energy bought in a year.
    pub energy: Figure<Energy>,
    /// Dollars in a year, where the price is known.
    pub dollars: Option<Figure<Dollars>>,
}

/// Ranges of everything that a plan shows.
#[derive(Debug, Clone, Default)]
pub struct Ranges {
    /// What each use takes in a year.
    pub uses: BTreeMap<UseKey, Amount>,
    /// Time in which the pipe with a heat cable may freeze, at best guess.
    pub freeze_risk: Option<Time>,
    /// Water that gaps can bring into the roof, where one is known to lead there.
    pub roof: Option<RoofWater>,
    /// Humidity from which on a window gets wet, where windows are said to be.
    pub wet_windows: Option<Figure<Ratio>>,
    /// Leakage area of the whole home, where enough is known of it.
    pub leakage: Option<Figure<Area>>,
    /// Fresh air that its leaks bring.
    pub fresh_by_leaks: Option<Figure<VolumeRate>>,
    /// What each repair of the plan saves in a year, by its name.
    pub savings: BTreeMap<&'static str, Amount>,
}

/// Assesses each draw of a home, walks it through the plan, and keeps the ends.
#[must_use]
pub fn ranges(home: &Home, weather: &Weather<'_>, plan: &Plan) -> Ranges {
    let draws = Draw::ALL.map(|end| draw(home, end));
    let years = draws.each_ref().map(|home| balance::assess(home, weather));
    let freeze_risk = years[1].freeze_risk;
    let mut found = Ranges {
        uses: uses(home, &years),
        leakage: leakage(home, &years),
        fresh_by_leaks: fresh_by_leaks(home, &draws, &years),
        freeze_risk,
        roof: roof_water(home, weather),
        wet_windows: balance::wet_window_humidity(home, weather),
        savings: BTreeMap::new(),
    };
    let steps: Vec<&Proposal> = plan.proposals().collect();
    let walks: Vec<Vec<Saving>> =
        draws.into_iter().zip(years).map(|drawn| savings(drawn, weather, &steps)).collect();
    for (i, step) in steps.iter().enumerate() {
        let three = [walks[0][i], walks[1][i], walks[2][i]];
        let inputs = match step.repair.changes {
            Changes::Gaps(place) => balance::gap_inputs(home, |_, gap| gap.place == place),
            Changes::Cable => balance::cable_inputs(home),
            Changes::Windows => balance::use_inputs(home, UseKey::Windows),
            // Of a home whose size nobody knows no saving of the whole is told.
            Changes::Ducts | Changes::Floor if !whole_home::is_known(&home.building) => continue,
            Changes::Ducts => balance::duct_inputs(home),
            Changes::Floor => balance::use_inputs(home, UseKey::Floor),
            Changes::Tap | Changes::HotWater => balance::heater_inputs(home),
            Changes::Safety => continue,
        };
        found.savings.insert(step.repair.id, amount(&three, inputs));
    }
    found
}

fn leakage(home: &Home, years: &[Assessment; 3]) -> Option<Figure<Area>> {
    let whole = whole_home::leakage(&home.building);
    let inputs = whole.inputs.into_iter().chain(["gaps".to_owned()]);
    let figure = Figure::exact(years[1].leakage?, whole.confidence, &whole.sources);
    Some(figure.between(years[0].leakage?, years[2].leakage?).from_inputs(inputs))
}

fn fresh_by_leaks(
    home: &Home,
    draws: &[Home; 3],
    years: &[Assessment; 3],
) -> Option<Figure<VolumeRate>> {
    let of = |end: usize| by_leaks(&draws[end], &years[end]);
    let inputs = balance::use_inputs(home, UseKey::OtherLeaks);
    let best = of(1)?;
    let sources = [best.sources, inputs.sources].concat();
    let figure = Figure::exact(best.best, Confidence::Guessed, &sources);
    Some(figure.between(of(0)?.best, of(2)?.best).from_inputs(inputs.fields))
}

fn uses(home: &Home, years: &[Assessment; 3]) -> BTreeMap<UseKey, Amount> {
    let of = |year: &Assessment, key| {
        year.uses
            .iter()
            .find(|one| one.key == key)
            .map(|one| Saving { energy: one.bought, dollars: one.cost })
    };
    let mut found = BTreeMap::new();
    found.extend(years[1].uses.iter().filter_map(|one| {
        let three = [of(&years[0], one.key)?, of(&years[1], one.key)?, of(&years[2], one.key)?];
        Some((one.key, amount(&three, balance::use_inputs(home, one.key))))
    }));
    found
}

/// What each step saves on one draw, from its year as it is; nothing where it has no need of it.
fn savings(
    (mut home, mut before): (Home, Assessment),
    weather: &Weather<'_>,
    steps: &[&Proposal],
) -> Vec<Saving> {
    steps
        .iter()
        .map(|step| {
            if let Some(after) = (step.repair.apply)(&home) {
                home = after;
            }
            let after = balance::assess_again(&home, weather, &before);
            let saving = Saving::between(&before, &after);
            before = after;
            saving
        })
        .collect()
}

fn amount(three: &[Saving; 3], inputs: balance::Inputs) -> Amount {
    let sources: Vec<&'static Source> = inputs.sources.iter().chain(SOURCES).copied().collect();
    let confidence = inputs.confidence;
    let [low, best, high] = three;
    let energy = Figure::exact(best.energy, confidence, &sources)
        .between(low.energy, high.energy)
        .from_inputs(inputs.fields.clone());
    let dollars = low.dollars.zip(best.dollars).zip(high.dollars).map(|((low, best), high)| {
        Figure::exact(best, confidence, &sources).between(low, high).from_inputs(inputs.fields)
    });
    Amount { energy, dollars }
}
