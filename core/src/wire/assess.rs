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

/// The plan for the home that a request describes.
///
/// # Errors
///
/// Everything that is wrong with the request, all at once.
pub fn assess(request: &Tree, atlas: &Atlas) -> Result<Answer, Vec<FieldError>> {
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
    atlas: &Atlas,
    language: Language,
) -> Result<String, Vec<FieldError>> {
    let (home, _, report) = told(request, atlas)?;
    let events: Vec<Event> =
        report.reminders.iter().map(|reminder| event(reminder, language)).collect();
    Ok(calendar::file(home.today, &events).expect("every plan has reminders"))
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

fn told(request: &Tree, atlas: &Atlas) -> Result<(Home, Option<Place>, Report), Vec<FieldError>> {
    let home = home(request)?;
    let place = match home.building.zip.as_deref() {
        Some(zip) => Some(atlas.place(zip).ok_or_else(|| vec![no_such_place(zip)])?),
        None => None,
    };
    let year = place.as_ref().map(|place| Year::of(&place.station));
    let weather = place.as_ref().zip(year.as_ref()).map(|(place, year)| Weather { place, year });
    let report = report(&home, weather.as_ref(), &Lines::default());
    Ok((home, place, report))
}

fn no_such_place(zip: &str) -> FieldError {
    FieldError::at("home.zip", Reason::NoSuchPlace { got: zip.to_owned() })
}
