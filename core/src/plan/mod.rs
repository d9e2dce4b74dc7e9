//! What to do first: stops, then at most three firsts, then the rest.

mod fresh_air;
mod season;
mod walk;
mod worth;

use crate::balance::{Assessment, Use, Weather};
use crate::home::Home;
use crate::money::Dollars;
use crate::repairs::{self, Repair};
use crate::safety::{self, Kind, Lines, NoTightening, Stop};
use uom::si::f64::Energy;

pub use fresh_air::{by_leaks, is_short};
pub use season::may_be_seasonal;
pub use worth::is_worth_it;

use walk::{Gate, Walk};

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
    /// The year before less the year after. No dollars where the price of a use that changed is not
    /// known.
    #[must_use]
    pub fn between(before: &Assessment, after: &Assessment) -> Self {
        let dollars = cost_of_changed(before, after).zip(cost_of_changed(after, before));
        Self {
            energy: before.bought() - after.bought(),
            dollars: dollars.map(|(before, after)| before - after),
        }
    }
}

/// What those uses of a year cost that another year does not have just like this.
fn cost_of_changed(year: &Assessment, other: &Assessment) -> Option<Dollars> {
    let same = |one: &&Use| other.uses.iter().any(|o| o.key == one.key && o.bought == one.bought);
    year.uses.iter().filter(|one| !same(one)).map(|one| one.cost).sum()
}

impl Plan {
    /// Whether a stop keeps everyone from this repair for now.
    #[must_use]
    pub fn holds_back(&self, repair: &str) -> bool {
        let open = |rule: &&str| self.stops.iter().any(|s| s.kind <= Kind::Off && s.rule == *rule);
        safety::hides_jobs(&self.stops) || waits_for(repair).iter().any(open)
    }

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
        "overheats" | "short_cycles" => {
            &["new_filter", "open_registers", "clear_return", "clean_blower"]
        }
        "cable_damaged" | "cable_old" => &["replace_cable"],
        "hot_tap" => &["turn_down", "mixing_valve", "set_valve"],
        _ => &[],
    }
}

/// Rules of *out* and *off* stops that a repair waits for: nobody touches a tank that overheats or a
/// burner that stays off.
fn waits_for(repair: &str) -> &'static [&'static str] {
    match repair {
        "turn_down" => &["tank_danger", "soot", "openings_blocked"],
        "mixing_valve" | "set_valve" | "tank_jacket" | "pipe_sleeve" | "clear_openings" => {
            &["tank_danger"]
        }
        "new_filter" => &["soot"],
        // What hands do at the furnace waits until a burner that stays off was looked at.
        "clean_blower" | "tape_cabinet" => &["soot", "sucks_near_burner"],
        "seal_ducts" => &["sucks_near_burner", "overheats", "short_cycles"],
        _ => &[],
    }
}

/// What to do in a home, the worst danger first, then in the order of work, and within one step of
/// that order by what a repair is worth. Each saving is counted on the home that the earlier steps
/// leave behind.
#[must_use]
pub fn plan(home: &Home, weather: Option<&Weather<'_>>, lines: &Lines) -> Plan {
    let stops = safety::stops(home, lines);
    // Where nobody said where the home stands, it may be there.
    let hot_humid = weather.is_none_or(|w| w.place.zone.is_hot_humid());
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
    let gate = Gate::new(&plan.stops, tightening.is_ok());
    let mut walk = Walk::new(home, weather, lines, gate);
    for (rule, id) in plan.stops.iter().flat_map(|s| mends(s.rule).iter().map(|id| (s.rule, id))) {
        let mend = repairs::by_id(id).and_then(|repair| walk.take(repair));
        plan.mends.extend(mend.map(|proposal| (rule, proposal)));
    }
    let rest = std::iter::from_fn(|| walk.take_best());
    let (worth, not): (Vec<_>, Vec<_>) = rest.partition(is_worth_it);
    plan.little_left = worth.is_empty() && plan.stops.is_empty() && plan.no_tightening.is_none();
    plan.firsts = worth;
    plan.later = plan.firsts.split_off(FIRSTS.min(plan.firsts.len()));
    plan.later.extend(not);
    plan
}
