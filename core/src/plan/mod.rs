//! What to do first: stops, then at most three firsts, then the rest.

mod season;
mod worth;

use crate::balance::{self, Assessment, Weather};
use crate::home::Home;
use crate::money::Dollars;
use crate::repairs::{self, Changes, Order, Repair};
use crate::safety::{self, Lines, NoTightening, Stop};
use uom::si::f64::Energy;

pub use worth::is_worth_it;

/// Nobody does twelve things; three get done.
const FIRSTS: usize = 3;

/// What to do, in order.
pub struct Plan {
    /// Dangers, the worst kind first.
    pub stops: Vec<Stop>,
    /// Repairs that mend a stop, with the rule of the stop; they use up no first.
    pub mends: Vec<(&'static str, Proposal)>,
    /// At most three.
    pub firsts: Vec<Proposal>,
    /// What can wait.
    pub later: Vec<Proposal>,
    /// Why gaps stay open for now.
    pub no_tightening: Option<NoTightening>,
    /// Nothing that is left is worth its price.
    pub little_left: bool,
}

/// A repair that this home could have, and the year it saves.
pub struct Proposal {
    /// The repair.
    pub repair: &'static Repair,
    /// The home that it is done to: all earlier steps of the plan are done.
    pub before: Home,
    /// The year before less the year after; `None` without a known climate.
    pub saving: Option<Saving>,
}

/// What a year before has more than the year after.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Saving {
    /// Energy bought.
    pub energy: Energy,
    /// Dollars, where the price is known.
    pub dollars: Option<Dollars>,
}

impl Saving {
    /// The year before less the year after; a repair changes uses and adds none. No dollars where
    /// the price of a use that changed is not known.
    #[must_use]
    pub fn between(before: &Assessment, after: &Assessment) -> Self {
        let changed = before.uses.iter().zip(&after.uses).filter(|(b, a)| b.bought != a.bought);
        let dollars = changed.map(|(b, a)| Some(b.cost? - a.cost?)).sum();
        Self { energy: before.bought() - after.bought(), dollars }
    }
}

impl Plan {
    /// Every repair of the plan, in the order in which they are done.
    pub fn proposals(&self) -> impl Iterator<Item = &Proposal> {
        self.mends.iter().map(|(_, mend)| mend).chain(&self.firsts).chain(&self.later)
    }
}

/// Repairs that mend a stop of this rule.
fn mends(rule: &str) -> &'static [&'static str] {
    match rule {
        "co_alarm_missing" => &["co_alarm"],
        "smoke_alarm_missing" => &["smoke_alarm"],
        "openings_blocked" => &["clear_openings"],
        "cable_damaged" | "cable_old" => &["replace_cable"],
        "hot_tap" => &["turn_down", "mixing_valve"],
        _ => &[],
    }
}

/// What to do in a home, the worst danger first, then in the order of work, and within one step of
/// that order by what a repair is worth. Each saving is counted on the home that the earlier steps
/// leave behind.
#[must_use]
pub fn plan(home: &Home, weather: Option<&Weather<'_>>, lines: &Lines) -> Plan {
    let stops = safety::stops(home, lines);
    let hot_humid = weather.is_some_and(|w| w.place.zone.is_hot_humid());
    let tightening = safety::may_tighten(home, &stops, hot_humid);
    let mut plan = Plan {
        no_tightening: tightening.err(),
        stops,
        mends: vec![],
        firsts: vec![],
        later: vec![],
        little_left: false,
    };
    if safety::hides_jobs(&plan.stops) {
        return plan;
    }
    let mut walk = Walk { home: home.clone(), weather, lines, tightening: tightening.is_ok() };
    for (rule, id) in plan.stops.iter().flat_map(|s| mends(s.rule).iter().map(|id| (s.rule, id))) {
        let mend = repairs::by_id(id).and_then(|repair| walk.take(repair));
        plan.mends.extend(mend.map(|proposal| (rule, proposal)));
    }
    let mut rest = vec![];
    while let Some(next) = walk.best() {
        rest.extend(walk.take(next));
    }
    let (worth, not): (Vec<_>, Vec<_>) = rest.into_iter().partition(is_worth_it);
    plan.little_left = worth.is_empty() && plan.stops.is_empty() && plan.no_tightening.is_none();
    plan.firsts = worth;
    plan.later = plan.firsts.split_off(FIRSTS.min(plan.firsts.len()));
    plan.later.extend(not);
    plan
}

/// The home on its way through the steps of the plan.
struct Walk<'a> {
    home: Home,
    weather: Option<&'a Weather<'a>>,
    lines: &'a Lines,
    tightening: bool,
}

impl Walk<'_> {
    /// Takes one step: the home becomes the home after the repair.
    fn take(&mut self, repair: &'static Repair) -> Option<Proposal> {
        let proposal = self.propose(repair)?;
        self.home = (repair.apply)(&self.home)?;
        Some(proposal)
    }

    fn propose(&self, repair: &'static Repair) -> Option<Proposal> {
        let after = (repair.apply)(&self.home)?;
        let saving = match self.weather {
            Some(weather) => Some(self.saving(repair, &after, weather)?),
            None => None,
        };
        Some(Proposal { repair, before: self.home.clone(), saving })
    }

    /// What a repair saves; `None` where it saves nothing though it is meant to, or where a pipe
    /// would be in danger of frost for longer than before.
    fn saving(&self, repair: &Repair, after: &Home, weather: &Weather<'_>) -> Option<Saving> {
        let [before, after] = [&self.home, after].map(|home| balance::assess(home, weather));
        let saving = Saving::between(&before, &after);
        let idle = repair.changes != Changes::Safety && saving.energy <= Energy::default();
        let colder = after.freeze_risk > before.freeze_risk;
        let mends = (repair.order)(&self.home) == Order::LifeSafety;
        (mends || !(idle || colder)).then_some(saving)
    }

    /// The repair that comes next: the earliest step of the order, then the one worth most.
    fn best(&self) -> Option<&'static Repair> {
        let open = repairs::ALL.iter().filter(|repair| self.allowed(repair));
        let scored = open.filter_map(|repair| {
            let proposal = self.propose(repair)?;
            Some(((repair.order)(&self.home), worth::score(&proposal), *repair))
        });
        scored.min_by(|a, b| a.0.cmp(&b.0).then(b.1.total_cmp(&a.1))).map(|(_, _, repair)| repair)
    }

    fn allowed(&self, repair: &Repair) -> bool {
        let tightens = matches!(repair.changes, Changes::Gaps(_));
        (self.tightening || !tightens)
            && season::allows(repair, &self.home, self.weather, self.lines)
    }
}
