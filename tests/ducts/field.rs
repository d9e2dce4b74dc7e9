//! Ducts of real homes, before and after they were sealed.

use crate::harness::{Row, Table};
use serde_json::json;
use uom::si::energy::kilowatt_hour;
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;
use winterseam::air::whole_home;
use winterseam::balance::{Assessment, Weather, assess};
use winterseam::climate::{Atlas, Year};
use winterseam::home::Home;
use winterseam::wire::{Tree, home};

fn home_of(row: &Row) -> Home {
    let request = json!({
        "today": "2026-11-25",
        "home": {
            "sections": row.text("sections"), "year_built": row.number("year"),
            "belly": "sound", "skirting_open": false,
        },
        "heating": {"fuel": "electricity", "warm_air": "all"},
    });
    home(&Tree::from_json(&request.to_string()).expect("JSON")).expect("a home")
}

/// The year with these shares lost by the ducts and left of the leaks.
fn year(row: &Row, lost: f64, leaks_left: f64) -> Assessment {
    let mut home = home_of(row);
    home.ducts.lost = Some(Ratio::new::<ratio>(lost));
    let leakage = whole_home::leakage(&home.building).best;
    home.building.leakage = Some(leakage * leaks_left);
    let place = Atlas::embedded().place(row.text("zip")).expect("known");
    let hours = Year::of(&place.station);
    assess(&home, &Weather { place: &place, year: &hours })
}

/// What the furnace gives, kWh, and the share of it that the rooms need.
fn given(year: &Assessment) -> (f64, f64) {
    let kwh = |energy: uom::si::f64::Energy| energy.get::<kilowatt_hour>();
    let need = kwh(year.heating.as_ref().expect("air is known").need.total());
    let lost = kwh(year.ducts.as_ref().expect("warm air").lost.total());
    (need + lost, need / (need + lost))
}

#[test]
fn sealing_saves_what_was_measured_in_the_field() {
    Table::read("ducts/field").compare(|row| {
        let before = given(&year(row, row.number("lost_before"), 1.0));
        let after = given(&year(row, row.number("lost_after"), row.number("leaks_left")));
        let all = [
            ("efficiency_before", before.1),
            ("efficiency_after", after.1),
            ("saved_kwh", before.0 - after.0),
            ("saved_share", 1.0 - after.0 / before.0),
        ];
        all.into_iter().filter(|(column, _)| row.has(column)).collect()
    });
}
