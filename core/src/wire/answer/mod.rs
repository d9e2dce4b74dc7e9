//! What goes out: the report in plain numbers and words of programs.
//!
//! Field names carry no unit here: every figure names its own, shown and SI.

mod made;

use serde::Serialize;
use std::collections::BTreeMap;

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
    /// How long it lasts.
    pub life: Figure,
    /// What the saving is worth at its best value, for staff and developers.
    pub worth: Option<Worth>,
    /// How long it takes to earn its cost.
    pub payback: Option<Phrase>,
    /// Warnings that go with it.
    pub cautions: Vec<Warning>,
    /// What to buy.
    pub materials: Vec<Material>,
}

/// What a saving is worth over the life of a repair.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Worth {
    /// All savings, each brought to today.
    pub present_value_usd: f64,
    /// That over the cost; null where nothing is spent.
    pub savings_to_investment: Option<f64>,
    /// Years until discounted savings have paid the cost; null where they never do.
    pub discounted_payback_years: Option<f64>,
    /// Internal rate of return when savings are invested again at the discount rate.
    pub adjusted_irr: Option<f64>,
    /// The real rate that all of these discount with.
    pub real_discount_rate: f64,
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

/// How soon the water of a tap burns, as points of a picture and rows of a table; and what the coach
/// says.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct Tap {
    /// The reading, °F.
    pub reading_f: f64,
    /// Whose times they are.
    pub people: Vec<Phrase>,
    /// Water from warm to very hot, the reading among it.
    pub rows: Vec<TapRow>,
    /// Lines across the picture.
    pub ticks: Vec<TapTime>,
    /// What to do next, in order.
    pub coach: Vec<Phrase>,
}

/// One temperature of the picture.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct TapRow {
    /// The water, °F.
    pub water_f: f64,
    /// How far to the right it lies, 0 to 1.
    pub across: f64,
    /// Whether it is the reading.
    pub is_reading: bool,
    /// The time of each of the people.
    pub times: Vec<TapTime>,
}

/// One time of the picture.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(JsonSchema))]
pub struct TapTime {
    /// How high it lies, 0 to 1.
    pub height: f64,
    /// The time in words.
    pub text: Phrase,
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
    /// Its elevation, or that of the home where it was told.
    pub elevation_ft: f64,
    /// How much higher the home lies than the station.
    pub lifted_ft: Option<f64>,
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
    /// The picture of the tap; null without a reading, or while someone has to leave.
    pub tap: Option<Tap>,
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
