//! What to be reminded of, and when.

use super::Phrase;
use crate::climate::{Place, Station};
use crate::freeze::FrostFree;
use crate::home::{CableControl, Cooling, Home};
use crate::math::put_in_order;
use crate::plan::{self, Plan};
use crate::safety::{self, Lines};
use crate::units::fahrenheit;
use jiff::civil::{Date, date};
use jiff::{Span, ToSpan};

/// How often a reminder comes back.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Every {
    /// Each month.
    Month,
    /// Each year.
    Year,
}

/// Something to be reminded of.
#[derive(Debug, Clone, PartialEq)]
pub struct Reminder {
    /// Stable name; its words stand under `reminder.<name>.title` and `.detail`.
    pub name: &'static str,
    /// The first time.
    pub date: Date,
    /// How often it comes back.
    pub every: Option<Every>,
    /// Days before the date on which the alarm sounds.
    pub alarm_days_before: u16,
    /// Days after the date on which it sounds again.
    pub second_alarm_days_after: Option<u16>,
}

impl Reminder {
    fn new(name: &'static str, date: Date, every: Option<Every>) -> Self {
        Self { name, date, every, alarm_days_before: 0, second_alarm_days_after: None }
    }

    /// What stands in the calendar: nothing personal, nothing of health.
    #[must_use]
    pub fn title(&self) -> Phrase {
        Phrase::new(format!("reminder.{}.title", self.name))
    }

    /// What to do then.
    #[must_use]
    pub fn detail(&self) -> Phrase {
        Phrase::new(format!("reminder.{}.detail", self.name))
    }
}

/// Every reminder of a plan, in order of time.
pub(super) fn reminders(
    home: &Home,
    place: Option<&Place>,
    plan: &Plan,
    lines: &Lines,
) -> Vec<Reminder> {
    let today = home.today;
    let again =
        Reminder::new("walk_again", next(today, date(today.year(), 9, 15)), Some(Every::Year));
    if safety::hides_jobs(&plan.stops) {
        return vec![again];
    }
    let stopped = |rule| plan.stops.iter().any(|stop| stop.rule == rule);
    let soon = || plan.mends.iter().map(|(_, mend)| mend).chain(&plan.firsts);
    let has = |id| soon().chain(&plan.later).any(|step| step.repair.id == id);
    let mut all = vec![Reminder::new("alarms", after(today, 14.days()), Some(Every::Month)), again];
    // Its words end with "power on", which no one is to do while a burner stays off.
    if !stopped("soot") {
        all.push(Reminder::new("filter", after(today, 30.days()), Some(Every::Month)));
    }
    if has("turn_down") || has("mixing_valve") {
        all.push(Reminder::new("tap_tomorrow", after(today, 1.day()), None));
        all.push(Reminder::new("tap_month", after(today, 1.month()), None));
    }
    if has("cooler_cover") {
        let day =
            place.and_then(|place| FrostFree::of(&place.station)).map_or(121, |days| days.from);
        let off = next(today, day_of_year(today.year(), day));
        all.push(Reminder::new("cooler", off, Some(Every::Year)));
    }
    if home.building.cooling == Some(Cooling::Evaporative) {
        all.extend(place.and_then(|place| cooler_closed(today, &place.station)));
    }
    all.extend(place.and_then(|place| hoses(today, &place.station)));
    if !stopped("cable_damaged") {
        all.extend(cable(home, place, lines));
    }
    if has("window_film") {
        all.extend(place.map_or(vec![], |place| film(today, &place.station)));
    }
    put_in_order(&mut all, |a, b| (a.date, a.name) < (b.date, b.name));
    all
}

/// The cable goes in two weeks before frost is likely, with a second alarm a week later. It comes
/// out only where no thermostat switches it and it may have a season at all; where that is not known, the
/// question is whether it is in.
fn cable(home: &Home, place: Option<&Place>, lines: &Lines) -> Vec<Reminder> {
    let Some(cable) = home.cable.as_ref().filter(|cable| cable.present) else { return vec![] };
    let by_hand = matches!(cable.control, Some(CableControl::Seasonal) | None);
    let now = by_hand.then(|| Reminder::new("cable_now", after(home.today, 1.day()), None));
    let Some(station) = place.map(|place| &place.station) else { return now.into_iter().collect() };
    match FrostFree::of(station) {
        Some(days) => seasonal(home, (station, days), lines, now),
        None if station.freeze.is_some() => now.into_iter().collect(),
        None => vec![],
    }
}

fn seasonal(
    home: &Home,
    (station, days): (&Station, FrostFree),
    lines: &Lines,
    now: Option<Reminder>,
) -> Vec<Reminder> {
    let on = |day: u16| next(home.today, day_of_year(home.today.year(), day));
    let today = home.today.day_of_year().unsigned_abs();
    let frosty = today >= days.plug_in_day() || today < days.from;
    let mut plug_in = Reminder::new("cable_in", on(days.plug_in_day()), Some(Every::Year));
    plug_in.second_alarm_days_after = Some(7);
    let switched = home.cable.as_ref().and_then(|cable| cable.control);
    let by_hand = switched != Some(CableControl::Thermostat);
    let comes_out = by_hand && plan::may_be_seasonal(home, station, lines);
    let out = comes_out.then(|| Reminder::new("cable_out", on(days.from), Some(Every::Year)));
    now.filter(|_| frosty).into_iter().chain([plug_in]).chain(out).collect()
}

/// Film goes up when the days fall below 50 °F on their mean and comes off when they rise above it:
/// colder, and a furnace runs most of the day (common practice).
fn film(today: Date, station: &Station) -> Vec<Reminder> {
    let Some((up, off)) = station.normals.days_colder_than(fahrenheit(50.0)) else { return vec![] };
    [("film_up", up), ("film_off", off)]
        .map(|(name, day)| {
            Reminder::new(name, next(today, day_of_year(today.year(), day)), Some(Every::Year))
        })
        .into()
}

/// A swamp cooler is closed for the winter when the days fall below 60 °F on their mean (common
/// practice).
fn cooler_closed(today: Date, station: &Station) -> Option<Reminder> {
    let (from, _) = station.normals.days_colder_than(fahrenheit(60.0))?;
    let day = next(today, day_of_year(today.year(), from));
    Some(Reminder::new("cooler_closed", day, Some(Every::Year)))
}

/// Hoses come off the taps outside on the day that a cable would go in.
fn hoses(today: Date, station: &Station) -> Option<Reminder> {
    let day = day_of_year(today.year(), FrostFree::of(station)?.plug_in_day());
    Some(Reminder::new("hoses", next(today, day), Some(Every::Year)))
}

fn after(today: Date, span: Span) -> Date {
    today.saturating_add(span)
}

/// The day itself, or a year later when it has passed.
fn next(today: Date, day: Date) -> Date {
    if day > today { day } else { after(day, 1.year()) }
}

fn day_of_year(year: i16, day: u16) -> Date {
    after(date(year, 1, 1), i32::from(day - 1).days())
}
