//! Heat through the parts of a home, and how warm it is below.

use super::{btu_h_f, typed};
use crate::harness::Table;
use serde_json::json;
use uom::si::f64::{Length, Power, Velocity};
use uom::si::length::foot;
use uom::si::power::watt;
use uom::si::temperature_interval::degree_fahrenheit;
use uom::si::velocity::meter_per_second;
use winterseam::envelope::{Below, ShellSeen, Temperatures};
use winterseam::home::{Belly, Building, Home, SkirtingVents};
use winterseam::units::{fahrenheit, warmer_by};

fn building(width: f64, length: f64, year: i16) -> Building {
    Building {
        width: Some(Length::new::<foot>(width)),
        length: Some(Length::new::<foot>(length)),
        year_built: Some(year),
        belly: Some(Belly::Sound),
        ..Building::default()
    }
}

#[test]
fn a_shell_loses_the_sum_of_its_areas() {
    Table::read("envelope/shell-by-years").compare(|row| {
        let year = row.text("year").parse().expect("a year");
        let building = building(row.number("width_ft"), row.number("length_ft"), year);
        let seen = ShellSeen::of(&building, &[]);
        let parts = [
            ("walls", seen.walls.best),
            ("roof", seen.roof.best),
            ("floor", seen.floor.best),
            ("windows", seen.windows.best),
            ("doors", seen.doors.best),
        ];
        let all = btu_h_f(parts.iter().map(|(_, part)| *part).sum());
        parts.map(|(name, part)| (name, btu_h_f(part))).into_iter().chain([("all", all)]).collect()
    });
}

/// A home of 1985 whose space below is closed all round.
fn closed(insulated: bool) -> Home {
    let mut home = typed(&json!({"today": "2026-11-25"}));
    home.building = Building {
        skirting_open: Some(false),
        skirting_insulated: Some(insulated),
        skirting_vents: Some(SkirtingVents::None),
        ..building(14.0, 66.0, 1985)
    };
    home
}

#[test]
fn closed_skirting_keeps_the_space_below_as_warm_as_by_hand() {
    let between = Temperatures {
        indoor: fahrenheit(70.0),
        ground: fahrenheit(45.0),
        outdoor: fahrenheit(10.0),
    };
    Table::read("envelope/crawl-cases").compare(|row| {
        let ducts = Power::new::<watt>(row.number("ducts_btu_h") * 0.293_071_07);
        let below = Below::of(&closed(row.text("insulated") == "yes"));
        let still = Velocity::new::<meter_per_second>(0.0);
        let air = below.temperature(between, still, ducts);
        vec![("crawl_f", warmer_by(air, fahrenheit(0.0)).get::<degree_fahrenheit>())]
    });
}
