//! The home on its way through the steps of a plan: each repair is tried on the home that the
//! earlier ones leave behind.

use super::{Proposal, Saving, is_short, season, waits_for, worth};
use crate::balance::{self, Assessment, Weather};
use crate::home::Home;
use crate::repairs::{self, Changes, Order, Repair};
use crate::safety::{Kind, Lines, Stop};
use uom::si::f64::{Area, Energy};

/// What the stops leave allowed.
pub(super) struct Gate {
    rules: Vec<&'static str>,
    tightening: bool,
}

impl Gate {
    pub(super) fn new(stops: &[Stop], tightening: bool) -> Self {
        Self {
            rules: stops.iter().filter(|s| s.kind <= Kind::Off).map(|s| s.rule).collect(),
            tightening,
        }
    }

    fn allows(&self, repair: &Repair) -> bool {
        let tightens = matches!(repair.changes, Changes::Gaps(_) | Changes::Windows);
        let waits = waits_for(repair.id).iter().any(|rule| self.rules.contains(rule));
        !waits && (self.tightening || !tightens)
    }
}

/// The home as it is now, and its year.
pub(super) struct Walk<'a> {
    home: Home,
    year: Option<Assessment>,
    weather: Option<&'a Weather<'a>>,
    lines: &'a Lines,
    gate: Gate,
    leakage_at_first: Option<Area>,
}

/// A repair that was tried: what it proposes, and the home and year it would leave.
struct Tried {
    proposal: Proposal,
    home: Home,
    year: Option<Assessment>,
}

impl<'a> Walk<'a> {
    pub(super) fn new(
        home: &Home,
        weather: Option<&'a Weather<'a>>,
        lines: &'a Lines,
        gate: Gate,
    ) -> Self {
        let year = weather.map(|weather| balance::assess(home, weather));
        let leakage_at_first = year.as_ref().and_then(|year| year.leakage);
        Self { home: home.clone(), year, weather, lines, gate, leakage_at_first }
    }

    /// Does this repair, where it can and may be done.
    pub(super) fn take(&mut self, repair: &'static Repair) -> Option<Proposal> {
        let tried = self.gate.allows(repair).then(|| self.tried(repair))??;
        Some(self.done(tried))
    }

    /// Does the repair that comes next: the earliest step of the order, then the one worth most.
    pub(super) fn take_best(&mut self) -> Option<Proposal> {
        let open = repairs::ALL.iter().filter(|repair| self.allowed(repair));
        let best = open
            .filter_map(|repair| {
                let tried = self.tried(repair)?;
                Some(((repair.order)(&self.home), worth::score(&tried.proposal), tried))
            })
            .min_by(|a, b| a.0.cmp(&b.0).then(b.1.total_cmp(&a.1)))?;
        Some(self.done(best.2))
    }

    fn done(&mut self, tried: Tried) -> Proposal {
        self.home = tried.home;
        self.year = tried.year;
        tried.proposal
    }

    /// `None` where there is nothing to do, where a repair saves nothing though it is meant to, or
    /// where a pipe would be in danger of frost for longer than before.
    fn tried(&self, repair: &'static Repair) -> Option<Tried> {
        let home = (repair.apply)(&self.home)?;
        let year = self.weather.zip(self.year.as_ref());
        let year = year.map(|(weather, before)| balance::assess_again(&home, weather, before));
        let saving = match self.year.as_ref().zip(year.as_ref()) {
            Some((before, after)) if !self.serves(repair, before, after) => return None,
            years => years.map(|(before, after)| Saving::between(before, after)),
        };
        let proposal = Proposal { repair, before: self.home.clone(), saving };
        Some(Tried { proposal, home, year })
    }

    fn serves(&self, repair: &Repair, before: &Assessment, after: &Assessment) -> bool {
        let saved = Saving::between(before, after).energy;
        let for_safety = matches!(repair.changes, Changes::Safety | Changes::Tap);
        let idle = !for_safety && saved <= Energy::default();
        let colder = after.freeze_risk > before.freeze_risk;
        let mends = (repair.order)(&self.home) <= Order::HeatAndPipes;
        mends || !(idle || colder)
    }

    fn allowed(&self, repair: &Repair) -> bool {
        let uncalled = repair.id == "ventilate" && !self.has_become_too_tight();
        let in_season = season::allows(repair, &self.home, self.weather, self.lines);
        !uncalled && in_season && self.gate.allows(repair)
    }

    /// Whether the steps so far have closed leaks, and those that are left bring too little air.
    fn has_become_too_tight(&self) -> bool {
        self.year
            .as_ref()
            .is_some_and(|year| year.leakage < self.leakage_at_first && is_short(&self.home, year))
    }
}
