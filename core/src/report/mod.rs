//! What is said, as data: phrases and figures, no language and no page.

mod airflow;
mod below;
mod burner_air;
mod coach;
mod dangers;
mod energy;
mod errors;
mod findings;
mod keep;
mod look_next;
mod notes;
mod phrase;
mod pipe;
mod reminders;
mod roof;
mod shopping;
mod shown;
mod steps;
mod tap;
mod uses;
mod warnings;

pub use dangers::Danger;
pub use errors::problem;
pub use findings::Finding;
pub use phrase::{Arg, Phrase};
pub use reminders::{Every, Reminder};
pub use shown::Shown;
pub use steps::Step;
pub use tap::{Tap, TapRow};
pub use uses::UseLine;

use crate::balance::Weather;
use crate::home::Home;
use crate::plan::{self, Plan, Proposal};
use crate::repairs::{Material, Warning};
use crate::safety::{self, Lines};
use crate::sources::Source;
use crate::uncertainty::{self, Ranges};
use std::collections::BTreeSet;

/// Everything that a home's plan says.
#[derive(Debug, Clone, PartialEq)]
pub struct Report {
    /// Dangers, the worst kind first.
    pub stops: Vec<Danger>,
    /// Whether savings stay hidden while a stop is open.
    pub savings_hidden: bool,
    /// At most three steps.
    pub firsts: Vec<Step>,
    /// Steps that can wait.
    pub later: Vec<Step>,
    /// What was found.
    pub findings: Vec<Finding>,
    /// The picture of the tap and what the coach says; none without a reading, or while someone has
    /// to leave.
    pub tap: Option<Tap>,
    /// At most three things whose answer could change the plan.
    pub look_next: Vec<Phrase>,
    /// What not to touch.
    pub do_not_touch: Vec<Phrase>,
    /// Warnings that no stop shows already.
    pub warnings: Vec<(Warning, Phrase)>,
    /// What takes energy, the largest first.
    pub uses: Vec<UseLine>,
    /// What to buy for the stops and the firsts.
    pub shopping: Vec<Material>,
    /// What to be reminded of.
    pub reminders: Vec<Reminder>,
    /// What has to be known to read the plan rightly.
    pub notes: Vec<Phrase>,
    /// What the figures rest on.
    pub sources: Vec<&'static Source>,
}

/// What there is to say about a home.
#[must_use]
pub fn report(home: &Home, weather: Option<&Weather<'_>>, lines: &Lines) -> Report {
    let plan = plan::plan(home, weather, lines);
    let place = weather.map(|weather| weather.place);
    let hidden = safety::hides_savings(&plan.stops);
    let ranges = weather
        .filter(|_| !hidden)
        .map(|weather| uncertainty::ranges(home, weather, &plan))
        .unwrap_or_default();
    let step = |p: &Proposal| steps::step(home, p, &ranges);
    let mends: Vec<(&str, Step)> = plan
        .mends
        .iter()
        .map(|(rule, p)| (*rule, Step { when: dangers::by_when(&plan.stops, rule), ..step(p) }))
        .collect();
    let stops = dangers::dangers(home, &plan.stops, &mends);
    let firsts: Vec<Step> = plan.firsts.iter().map(step).collect();
    let later: Vec<Step> = plan.later.iter().map(step).collect();
    let mending = || mends.iter().map(|(_, step)| step);
    let leave = safety::hides_jobs(&plan.stops);
    let mut report = Report {
        savings_hidden: hidden,
        findings: if leave { vec![] } else { findings::findings(home, weather, &ranges, lines) },
        tap: if leave { None } else { tap::tap(home, weather, &plan) },
        look_next: if leave { vec![] } else { look_next::look_next(home, lines) },
        do_not_touch: keep::do_not_touch(home),
        warnings: warnings::warnings(home, place, &stops, mending().chain(&firsts).chain(&later)),
        uses: uses::uses(home, &ranges),
        shopping: shopping::merged(mending().chain(&firsts).flat_map(|s| &s.materials)),
        reminders: reminders::reminders(home, place, &plan, lines),
        notes: notes::notes(home, place, &plan),
        sources: vec![],
        stops,
        firsts,
        later,
    };
    report.sources = sources(&report, &ranges, &plan);
    report
}

/// Each source once, by its key.
fn sources(report: &Report, ranges: &Ranges, plan: &Plan) -> Vec<&'static Source> {
    let mends = report.stops.iter().flat_map(|stop| &stop.mends);
    let steps = mends.chain(&report.firsts).chain(&report.later);
    let figures = steps
        .flat_map(|step| [Some(&step.cost), step.saving.as_ref(), step.saving_energy.as_ref()])
        .flatten()
        .chain(report.findings.iter().filter_map(|finding| finding.figure.as_ref()));
    let mut all: BTreeSet<&'static Source> = BTreeSet::new();
    all.extend(figures.flat_map(|figure| figure.sources.iter().copied()));
    all.extend(ranges.uses.values().flat_map(|amount| amount.energy.sources.iter().copied()));
    if !plan.stops.is_empty() {
        all.insert(Lines::SOURCE);
    }
    all.into_iter().collect()
}
