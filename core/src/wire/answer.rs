//! What goes out: the report in plain numbers and words of programs.
//!
//! Field names carry no unit here: every figure names its own, shown and SI.

use super::spoken_out::Word;
use crate::climate::Place;
use crate::home::Home;
use crate::report::{self, Arg, Report, Shown};
use crate::sources::{Obtained, Source};
use crate::words::{Language, render};
use serde::Serialize;
use std::collections::BTreeMap;
use uom::si::length::{foot, kilometer};

#[cfg(feature = "schema")]
use schemars::JsonSchema;

/// A sentence as data; `words` turns it into text.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Phrase {
    /// Key in the word files.
    pub key: String,
    /// What stands in the message's places.
    pub args: BTreeMap<String, PhraseArg>,
}

/// What stands in one place of a message.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
#[serde(untagged)]
pub enum PhraseArg {
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
    /// Another sentence.
    Phrase(Box<Phrase>),
}

/// A value with its range, in the unit people use and in SI.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Figure {
    /// Best value in the shown unit.
    pub value: f64,
    /// Lower end in the shown unit.
    pub low: f64,
    /// Upper end in the shown unit.
    pub high: f64,
    /// The shown unit.
    pub unit: String,
    /// Best value in the SI unit.
    pub si_value: f64,
    /// Lower end in the SI unit.
    pub si_low: f64,
    /// Upper end in the SI unit.
    pub si_high: f64,
    /// The SI unit.
    pub si_unit: String,
    /// How it is known: `billed`, `measured`, `seen` or `guessed`.
    pub confidence: String,
    /// Fields of the request that it was made from.
    pub inputs: Vec<String>,
    /// Keys of its sources.
    pub sources: Vec<String>,
    /// The rounded range in words.
    pub text: Phrase,
}

/// A warning of the core.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Warning {
    /// Its code.
    pub code: String,
    /// Its words.
    pub text: Phrase,
}

/// A danger.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Stop {
    /// Code of its warning.
    pub code: String,
    /// How it is met: `out`, `off`, `today` or `soon`.
    pub kind: String,
    /// The warning.
    pub text: Phrase,
    /// What was seen.
    pub because: Phrase,
    /// What to do until it is mended, in order.
    pub meanwhile: Vec<Phrase>,
    /// What mends it.
    pub mends: Vec<Step>,
    /// The next twenty-four hours, where heat, gas, water or power is lost.
    pub card: Vec<Phrase>,
}

/// Something to buy.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Material {
    /// What.
    pub item: Phrase,
    /// How much.
    pub quantity: f64,
    /// What that is counted in.
    pub unit: Phrase,
}

/// One step of the plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Step {
    /// Name of the repair.
    pub id: String,
    /// What to do.
    pub text: Phrase,
    /// Why.
    pub why: Phrase,
    /// By when.
    pub when: Phrase,
    /// Who may do it: `resident`, `able_adult` or `qualified`.
    pub who: String,
    /// What it costs.
    pub cost: Figure,
    /// Dollars saved in a year.
    pub saving: Option<Figure>,
    /// Energy saved in a year.
    pub saving_energy: Option<Figure>,
    /// How long it takes to earn its cost.
    pub payback: Option<Phrase>,
    /// Warnings that go with it.
    pub cautions: Vec<Warning>,
    /// What to buy.
    pub materials: Vec<Material>,
}

/// Something that was found.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Finding {
    /// What it is about.
    pub item: String,
    /// What it says.
    pub text: Phrase,
    /// The figure behind it.
    pub figure: Option<Figure>,
}

/// What takes energy in a year.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Use {
    /// Stable name.
    pub key: String,
    /// What people call it.
    pub name: Phrase,
    /// Energy.
    pub energy: Figure,
    /// Dollars, where the price is known.
    pub cost: Option<Figure>,
}

/// Something to be reminded of.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Reminder {
    /// Stable identity in a calendar.
    pub uid: String,
    /// The first time, as `2026-11-25`.
    pub date: String,
    /// Title in a calendar: nothing personal.
    pub title: Phrase,
    /// What to do.
    pub detail: Phrase,
    /// How often it comes back: `month`, `year`; null is once.
    pub repeat: Option<String>,
}

/// Where the climate comes from.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct PlaceUsed {
    /// The ZIP code asked for.
    pub zip: String,
    /// Number of the weather station.
    pub station: String,
    /// Name of the weather station.
    pub name: String,
    /// Its state.
    pub state: String,
    /// How far it is from the ZIP area.
    pub distance_km: Option<f64>,
    /// Its elevation.
    pub elevation_ft: f64,
    /// Climate zone.
    pub zone: String,
    /// Only the first three digits were known.
    pub by_area: bool,
}

/// What a figure rests on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct SourceNote {
    /// Its key.
    pub key: String,
    /// Author, title, year, or the kind of document.
    pub cite: String,
    /// Where in it.
    pub place: String,
    /// How it was had: `read`, `quoted`, `computed by …`, `from memory`, `common practice`.
    pub obtained: String,
}

/// The answer to a request.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Answer {
    /// Version of the library.
    pub version: String,
    /// Day of the walk.
    pub today: String,
    /// Where the climate comes from; null without a ZIP code.
    pub place: Option<PlaceUsed>,
    /// Dangers, the worst kind first.
    pub stops: Vec<Stop>,
    /// Whether savings stay hidden while a stop is open.
    pub savings_hidden: bool,
    /// At most three steps.
    pub firsts: Vec<Step>,
    /// Steps that can wait.
    pub later: Vec<Step>,
    /// What was found.
    pub findings: Vec<Finding>,
    /// At most three things whose answer could change the plan.
    pub look_next: Vec<Phrase>,
    /// What not to touch.
    pub do_not_touch: Vec<Phrase>,
    /// Warnings that no stop shows already.
    pub warnings: Vec<Warning>,
    /// What takes energy, the largest first.
    pub uses: Vec<Use>,
    /// What to buy for the stops and the firsts.
    pub shopping: Vec<Material>,
    /// What to be reminded of.
    pub reminders: Vec<Reminder>,
    /// What has to be known to read the plan rightly.
    pub notes: Vec<Phrase>,
    /// What the figures rest on.
    pub sources: Vec<SourceNote>,
    /// Credit line of the climate tables.
    pub credit: Phrase,
}

impl Phrase {
    /// A phrase without arguments.
    #[must_use]
    pub fn of_key(key: &str) -> Self {
        Self { key: key.to_owned(), args: BTreeMap::new() }
    }

    /// The text of the phrase.
    #[must_use]
    pub fn text(&self, language: Language) -> String {
        render(&self.told(), language)
    }

    fn told(&self) -> report::Phrase {
        let arg = |arg: &PhraseArg| match arg {
            PhraseArg::Number(number) => Arg::Number(*number),
            PhraseArg::Text(text) => Arg::Text(text.clone()),
            PhraseArg::Phrase(phrase) => Arg::from(phrase.told()),
        };
        let empty = report::Phrase::new(self.key.clone());
        self.args.iter().fold(empty, |told, (name, value)| told.with(name.clone(), arg(value)))
    }
}

impl Answer {
    pub(super) fn new(home: &Home, place: Option<&Place>, report: &Report) -> Self {
        let zip = home.building.zip.clone().unwrap_or_default();
        Self {
            version: super::version().to_owned(),
            today: home.today.to_string(),
            place: place.map(|place| place_used(zip, place)),
            stops: each(&report.stops),
            savings_hidden: report.savings_hidden,
            firsts: each(&report.firsts),
            later: each(&report.later),
            findings: each(&report.findings),
            look_next: each(&report.look_next),
            do_not_touch: each(&report.do_not_touch),
            warnings: warnings(&report.warnings),
            uses: each(&report.uses),
            shopping: each(&report.shopping),
            reminders: each(&report.reminders),
            notes: each(&report.notes),
            sources: report.sources.iter().map(|source| SourceNote::from(*source)).collect(),
            credit: Phrase::from(&report::Phrase::new("credit.climate")),
        }
    }
}

/// Each of a list in its outgoing form.
fn each<'a, A, B: From<&'a A>>(list: &'a [A]) -> Vec<B> {
    list.iter().map(B::from).collect()
}

fn warnings(list: &[(crate::repairs::Warning, report::Phrase)]) -> Vec<Warning> {
    list.iter().map(|(code, text)| Warning { code: code.0.to_owned(), text: text.into() }).collect()
}

fn place_used(zip: String, place: &Place) -> PlaceUsed {
    let station = &place.station;
    PlaceUsed {
        zip,
        station: station.usaf.clone(),
        name: station.name.clone(),
        state: station.state.clone(),
        distance_km: place.distance.map(|d| d.get::<kilometer>().round()),
        elevation_ft: station.elevation.get::<foot>().round(),
        zone: place.zone.to_string(),
        by_area: place.by_area,
    }
}

impl From<&report::Phrase> for Phrase {
    fn from(phrase: &report::Phrase) -> Self {
        let arg = |(name, arg): (&std::borrow::Cow<'static, str>, &Arg)| {
            let arg = match arg {
                Arg::Number(number) => PhraseArg::Number(*number),
                Arg::Text(text) => PhraseArg::Text(text.clone()),
                Arg::Phrase(phrase) => PhraseArg::Phrase(Box::new(Self::from(&**phrase))),
            };
            (name.to_string(), arg)
        };
        Self { key: phrase.key.to_string(), args: phrase.args.iter().map(arg).collect() }
    }
}

impl From<&Shown> for Figure {
    fn from(shown: &Shown) -> Self {
        let [value, low, high] = shown.shown;
        let [si_value, si_low, si_high] = shown.si;
        Self {
            value,
            low,
            high,
            unit: shown.unit.to_owned(),
            si_value,
            si_low,
            si_high,
            si_unit: shown.si_unit.to_owned(),
            confidence: shown.confidence.word().to_owned(),
            inputs: shown.inputs.clone(),
            sources: shown.sources.iter().map(|source| source.key.to_owned()).collect(),
            text: (&shown.text).into(),
        }
    }
}

impl From<&report::Danger> for Stop {
    fn from(danger: &report::Danger) -> Self {
        Self {
            code: danger.code.0.to_owned(),
            kind: danger.kind.word().to_owned(),
            text: (&danger.text).into(),
            because: (&danger.because).into(),
            meanwhile: each(&danger.meanwhile),
            mends: each(&danger.mends),
            card: each(&danger.card),
        }
    }
}

impl From<&crate::repairs::Material> for Material {
    fn from(material: &crate::repairs::Material) -> Self {
        let unit = report::Phrase::new(format!("unit.{}", material.unit.word()))
            .with("n", material.quantity);
        Self {
            item: (&report::Phrase::new(format!("material.{}", material.item))).into(),
            quantity: material.quantity,
            unit: (&unit).into(),
        }
    }
}

impl From<&report::Step> for Step {
    fn from(step: &report::Step) -> Self {
        Self {
            id: step.id.to_owned(),
            text: (&step.text).into(),
            why: (&step.why).into(),
            when: (&step.when).into(),
            who: step.who.word().to_owned(),
            cost: (&step.cost).into(),
            saving: step.saving.as_ref().map(Figure::from),
            saving_energy: step.saving_energy.as_ref().map(Figure::from),
            payback: step.payback.as_ref().map(Phrase::from),
            cautions: warnings(&step.cautions),
            materials: each(&step.materials),
        }
    }
}

impl From<&report::Finding> for Finding {
    fn from(finding: &report::Finding) -> Self {
        Self {
            item: finding.item.to_owned(),
            text: (&finding.text).into(),
            figure: finding.figure.as_ref().map(Figure::from),
        }
    }
}

impl From<&report::UseLine> for Use {
    fn from(line: &report::UseLine) -> Self {
        Self {
            key: line.key.clone(),
            name: (&line.name).into(),
            energy: (&line.energy).into(),
            cost: line.cost.as_ref().map(Figure::from),
        }
    }
}

impl From<&report::Reminder> for Reminder {
    fn from(reminder: &report::Reminder) -> Self {
        Self {
            uid: crate::calendar::uid(reminder.name, reminder.date),
            date: reminder.date.to_string(),
            title: (&reminder.title()).into(),
            detail: (&reminder.detail()).into(),
            repeat: reminder.every.map(|every| every.word().to_owned()),
        }
    }
}

impl From<&Source> for SourceNote {
    fn from(source: &Source) -> Self {
        Self {
            key: source.key.to_owned(),
            cite: source.cite.to_owned(),
            place: source.place.to_owned(),
            obtained: match source.obtained {
                Obtained::Read => "read".to_owned(),
                Obtained::Quoted => "quoted".to_owned(),
                Obtained::Computed(by) => format!("computed by {by}"),
                Obtained::FromMemory => "from memory".to_owned(),
                Obtained::CommonPractice => "common practice".to_owned(),
            },
        }
    }
}
