//! One request, one answer.

use super::{Answer, Tree, home};
use crate::balance::Weather;
use crate::calendar::{self, Event, Repeat};
use crate::climate::{Atlas, Place, Year};
use crate::error::{FieldError, Reason};
use crate::home::Home;
use crate::report::{Every, Reminder, Report, report};
use crate::safety::Lines;
use crate::words::{Language, render};
use uom::si::f64::Length;

/// The plan for the home that a request describes. Without climate tables a request with a ZIP code
/// is refused; one without is answered, as nothing is worked out over a year.
///
/// # Errors
///
/// Everything that is wrong with the request, all at once.
pub fn assess(request: &Tree, atlas: Option<&Atlas>) -> Result<Answer, Vec<FieldError>> {
    let (home, place, report) = told(request, atlas)?;
    Ok(Answer::new(&home, place.as_ref(), &report))
}

/// The reminders of the same plan as an iCalendar file.
///
/// # Errors
///
/// Everything that is wrong with the request, all at once.
pub fn calendar(
    request: &Tree,
    atlas: Option<&Atlas>,
    language: Language,
) -> Result<String, Vec<FieldError>> {
    let (home, _, report) = told(request, atlas)?;
    let events: Vec<Event> =
        report.reminders.iter().map(|reminder| event(reminder, language)).collect();
    // Every plan has reminders, so the file is never empty.
    Ok(calendar::file(home.today, &events).unwrap_or_default())
}

/// One reminder as an event; words are filled in here, as a calendar knows no phrases.
fn event(reminder: &Reminder, language: Language) -> Event {
    Event {
        uid: calendar::uid(reminder.name, reminder.date),
        date: reminder.date,
        title: render(&reminder.title(), language),
        detail: render(&reminder.detail(), language),
        repeat: reminder.every.map(|every| match every {
            Every::Month => Repeat::Monthly { every: 1 },
            Every::Year => Repeat::Yearly,
        }),
        alarm_days_before: reminder.alarm_days_before,
        second_alarm_days_after: reminder.second_alarm_days_after,
    }
}

type Told = (Home, Option<Place>, Report);

fn told(request: &Tree, atlas: Option<&Atlas>) -> Result<Told, Vec<FieldError>> {
    let home = home(request)?;
    let zip = home.building.zip.as_deref();
    let place = zip.map(|zip| place("home.zip", zip, atlas)).transpose()?;
    let other = home.building.weather_zip.as_deref();
    let other = other.map(|zip| self::place("home.weather_zip", zip, atlas)).transpose()?;
    let place = place.map(|place| with_weather(place, other, home.building.elevation));
    let year = place.as_ref().map(|place| Year::of(&place.station));
    let weather = place.as_ref().zip(year.as_ref()).map(|(place, year)| Weather { place, year });
    let report = report(&home, weather.as_ref(), &Lines::default());
    Ok((home, place, report))
}

/// The home's own weather: that of another place where somebody chose it, at its own height.
fn with_weather(place: Place, other: Option<Place>, elevation: Option<Length>) -> Place {
    let place = match other {
        Some(other) => place.with_weather_of(other),
        None => place,
    };
    match elevation {
        Some(elevation) => place.at(elevation),
        None => place,
    }
}

fn place(path: &str, zip: &str, atlas: Option<&Atlas>) -> Result<Place, Vec<FieldError>> {
    let wrong = |reason| vec![FieldError::at(path, reason)];
    let atlas = atlas.ok_or_else(|| wrong(Reason::NoClimate))?;
    atlas.place(zip).ok_or_else(|| wrong(Reason::NoSuchPlace { got: zip.to_owned() }))
}
