//! How a report becomes an answer.

use super::{
    Answer, Figure, Finding, Material, Phrase, PhraseArg, PlaceUsed, Reminder, SourceNote, Step,
    Stop, Tap, TapRow, TapTime, Use, Warning, Worth,
};
use crate::climate::Place;
use crate::home::Home;
use crate::money::{self, usual_real_rate};
use crate::report::{self, Arg, Report, Shown};
use crate::sources::{Obtained, Source};
use crate::wire::spoken_out::Word;
use crate::words::{Language, render};
use std::collections::BTreeMap;
use uom::si::length::{foot, kilometer};
use uom::si::ratio::ratio;

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
    pub(in crate::wire) fn new(home: &Home, place: Option<&Place>, report: &Report) -> Self {
        let zip = home.building.zip.clone().unwrap_or_default();
        Self {
            version: crate::wire::version().to_owned(),
            today: home.today.to_string(),
            place: place.map(|place| place_used(zip, place)),
            stops: each(&report.stops),
            savings_hidden: report.savings_hidden,
            firsts: each(&report.firsts),
            later: each(&report.later),
            findings: each(&report.findings),
            tap: report.tap.as_ref().map(Tap::from),
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
        lifted_ft: place.lifted.map(|by| by.get::<foot>().round()),
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
        let mut args = BTreeMap::new();
        args.extend(phrase.args.iter().map(arg));
        Self { key: phrase.key.to_string(), args }
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
            life: Figure::from(&step.life),
            worth: step.worth.as_ref().map(Worth::from),
            payback: step.payback.as_ref().map(Phrase::from),
            cautions: warnings(&step.cautions),
            materials: each(&step.materials),
        }
    }
}

impl From<&money::Worth> for Worth {
    fn from(worth: &money::Worth) -> Self {
        Self {
            present_value_usd: worth.present_value.0,
            savings_to_investment: worth.savings_to_investment.map(|x| x.get::<ratio>()),
            discounted_payback_years: worth.discounted_payback.map(|years| years.0),
            adjusted_irr: worth.adjusted_irr.map(|rate| rate.get::<ratio>()),
            real_discount_rate: usual_real_rate().get::<ratio>(),
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

impl From<&report::Tap> for Tap {
    fn from(tap: &report::Tap) -> Self {
        Self {
            reading_f: tap.reading,
            people: each(&tap.people),
            rows: each(&tap.rows),
            ticks: each(&tap.ticks),
            coach: each(&tap.coach),
        }
    }
}

impl From<&report::TapRow> for TapRow {
    fn from(row: &report::TapRow) -> Self {
        let (water_f, across, is_reading) = (row.water, row.across, row.is_reading);
        Self { water_f, across, is_reading, times: each(&row.times) }
    }
}

impl From<&(f64, report::Phrase)> for TapTime {
    fn from((height, text): &(f64, report::Phrase)) -> Self {
        Self { height: *height, text: text.into() }
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
