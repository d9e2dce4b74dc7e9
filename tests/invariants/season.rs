//! A heat cable is pulled only when frost is far and somebody is sure to plug it in again. Source:
//! the project's own safety rules, lines of the heat cable.

use super::{answered, typed};
use serde_json::{Value, json};
use winterseam::climate::Atlas;

/// Very cold, cold, hot and humid, hot and dry, mild; where summers are short; where it never freezes.
const ZIPS: [&str; 8] = ["56649", "59801", "70560", "85283", "30901", "99701", "99723", "96813"];
const FLAGS: [Value; 3] = [Value::Null, Value::Bool(false), Value::Bool(true)];

/// Every way in which a sound cable may be known, on the first and the fifteenth of each month.
fn each(mut see: impl FnMut(&Value)) {
    for zip in ZIPS {
        for control in [json!("always_on"), json!("seasonal"), Value::Null] {
            for plugs_in in FLAGS {
                for proved in FLAGS {
                    see(&json!({
                        "today": "2026-07-01", "home": {"zip": zip},
                        "heat_cable": {"present": true, "control": control,
                            "someone_plugs_in": plugs_in, "thermostat_proved": proved},
                    }));
                }
            }
        }
    }
}

/// Days between the median freezes, and both days; from the climate table itself.
fn frost_free(request: &Value) -> Option<(u16, u16)> {
    let zip = request["home"]["zip"].as_str().expect("a ZIP");
    let dates = Atlas::embedded().place(zip).expect("known").station.freeze?;
    (dates.first >= dates.last + 90).then_some((dates.last, dates.first))
}

fn sure(request: &Value) -> bool {
    let cable = &request["heat_cable"];
    cable["someone_plugs_in"] == true && cable["thermostat_proved"] != true
}

fn offers(answer: &Value) -> bool {
    let steps = ["firsts", "later"].map(|list| answer[list].as_array().expect("a list").iter());
    steps.into_iter().flatten().any(|step| step["id"] == "cable_season")
}

fn reminds(answer: &Value, name: &str) -> bool {
    let title = format!("reminder.{name}.title");
    answer["reminders"].as_array().expect("a list").iter().any(|r| r["title"]["key"] == *title)
}

#[test]
fn neither_step_nor_calendar_asks_to_unplug_where_nobody_is_sure_to_plug_in() {
    let (mut steps, mut entries) = (0, 0);
    each(|request| {
        let answer = answered(request);
        let allowed = sure(request) && frost_free(request).is_some();
        assert!(allowed || !offers(&answer), "step: {request}");
        assert!(allowed || !reminds(&answer, "cable_out"), "calendar: {request}");
        steps += usize::from(offers(&answer));
        entries += usize::from(reminds(&answer, "cable_out"));
    });
    assert!(steps >= 4 && entries >= 4, "{steps} {entries}");
}

#[test]
fn unplugging_is_offered_only_between_the_last_frost_and_the_first() {
    let mut offered = 0;
    for zip in ZIPS {
        for (month, day) in (1..=12).flat_map(|m| [(m, 1), (m, 15)]) {
            let request = json!({
                "today": format!("2026-{month:02}-{day:02}"), "home": {"zip": zip},
                "heat_cable": {"present": true, "control": "always_on", "someone_plugs_in": true},
            });
            if offers(&answered(&request)) {
                offered += 1;
                let today = typed(&request).today.day_of_year().unsigned_abs();
                let (last, first) = frost_free(&request).expect("a long summer");
                assert!(last < today && today < first, "{request}");
            }
        }
    }
    assert!(offered >= 10, "{offered}");
}

/// A cable that is off because it is charred or wet is not plugged in again, by no calendar.
#[test]
fn nobody_is_reminded_tomorrow_to_plug_in_a_cable_that_has_to_stay_off() {
    for sign in ["damaged", "wet"] {
        for control in [json!("seasonal"), Value::Null] {
            let request = |bad: bool| {
                json!({
                    "today": "2026-01-18", "home": {"zip": "59801"},
                    "heat_cable": {"present": true, "control": control, sign: bad},
                })
            };
            assert!(reminds(&answered(&request(false)), "cable_now"), "{sign}");
            assert!(!reminds(&answered(&request(true)), "cable_now"), "{sign}");
        }
    }
}
