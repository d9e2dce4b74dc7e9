//! Leaks that were found, leaks that are usual, and the home that has them all.

use crate::harness::Table;
use std::collections::BTreeMap;
use uom::si::f64::{Area, Length};
use uom::si::{
    area::square_centimeter, length::inch, length::meter, ratio::ratio, velocity::meter_per_second,
    volume::cubic_meter,
};
use winterseam::air::components::usual_leakage;
use winterseam::air::leaks::{Leaks, leaks};
use winterseam::air::whole_home;
use winterseam::balance::{Weather, assess};
use winterseam::climate::{Atlas, Year};
use winterseam::home::{
    Building, Gap, GapPlace, Home, LeadsTo, LeakTest, Sections, Shelter, WidthClass,
};
use winterseam::properties::air::Air;
use winterseam::wire::{Tree, home};

fn cm2(area: Area) -> f64 {
    area.get::<square_centimeter>()
}

fn inches(value: f64) -> Length {
    Length::new::<inch>(value)
}

/// A single section of 1988 with these gaps.
fn home_with(gaps: Vec<Gap>) -> Home {
    let nothing = Tree::from_json(r#"{"today": "2026-11-25"}"#).unwrap();
    let mut one = home(&nothing).unwrap();
    one.building.sections = Some(Sections::Single);
    one.building.year_built = Some(1988);
    one.gaps = gaps;
    one
}

fn leaks_of(home: &Home) -> Leaks {
    leaks(home, &Air::of_a_room())
}

/// Source: a national laboratory's list.
#[test]
fn parts_leak_as_the_laboratory_lists_them() {
    let places = BTreeMap::from([
        ("door_side", GapPlace::DoorSide),
        ("ceiling_joint", GapPlace::CeilingJoint),
        ("fan_damper", GapPlace::FanDamper),
        ("range_hood", GapPlace::RangeHood),
    ]);
    Table::read("air/multizone-residential-leakage").compare(|row| {
        let mut gap = Gap::seen(places[row.text("place")]);
        gap.sealed = Some(row.text("sealed") == "yes");
        gap.length = row.has("length_m").then(|| Length::new::<meter>(row.number("length_m")));
        let usual = usual_leakage(&gap).unwrap();
        vec![
            ("typical_cm2", cm2(usual.best)),
            ("least_cm2", cm2(usual.low)),
            ("most_cm2", cm2(usual.high)),
        ]
    });
}

/// Source: air changes measured in 93 double-wides; the mean over the year of a home in town.
#[test]
fn a_double_wide_of_the_eighties_changes_its_air_as_measured_ones_did() {
    let table = Table::read("air/ek-1990-double-wides");
    table.compare(|row| {
        let mut home = home_with(vec![]);
        home.building = Building {
            sections: Some(Sections::Double),
            year_built: Some(row.text("year_built").parse().unwrap()),
            shelter: Some(Shelter::NeighboursApart),
            ..Building::default()
        };
        let place = Atlas::embedded().place(row.text("zip")).unwrap();
        let year = assess(&home, &Weather { place: &place, year: &Year::of(&place.station) });
        let speed = year.air.unwrap().speed().get::<meter_per_second>();
        let flow_m3_s = cm2(year.leakage.unwrap()) / 1e4 * speed;
        let volume = whole_home::floor(&home.building) * whole_home::height();
        let volume = volume.get::<cubic_meter>();
        vec![("air_changes_h", flow_m3_s * 3600.0 / volume)]
    });
}

#[test]
fn gaps_that_were_found_are_part_of_the_home() {
    let none = leaks_of(&home_with(vec![]));
    let door = Gap::measured(GapPlace::DoorBottom, inches(36.0), inches(0.375));
    let one = leaks_of(&home_with(vec![door]));
    let (all, same) = (none.all().unwrap(), one.all().unwrap());
    assert!((cm2(all) - cm2(same)).abs() < 1e-9 && one.gaps[0] > Area::default());
}

#[test]
fn a_test_of_the_whole_home_is_never_outdone_by_a_tape() {
    let wide = || Gap::measured(GapPlace::DoorSide, inches(200.0), inches(1.0));
    let mut home = home_with(vec![wide(), wide()]);
    let tested = Area::new::<square_centimeter>(300.0);
    home.building.leak_test = Some(LeakTest::AreaAt4(tested));
    let found = leaks_of(&home);
    assert!((cm2(found.all().unwrap()) - 300.0).abs() < 1e-6, "{found:?}");
    assert_eq!(found.others, Area::default());
    // A seal takes away what it closes, and nothing comes in its place.
    home.gaps[0].open = uom::si::f64::Ratio::new::<ratio>(0.0);
    assert!((cm2(leaks_of(&home).all().unwrap()) - 150.0).abs() < 1e-6);
}

#[test]
fn a_forgotten_grille_is_a_hole_of_its_own() {
    let grille = Gap::measured(GapPlace::CoolerGrille, inches(20.0), inches(12.0));
    let without = leaks_of(&home_with(vec![])).all().unwrap();
    let with = leaks_of(&home_with(vec![grille]));
    assert!(cm2(with.gaps[0]) > 500.0, "{with:?}");
    assert!((cm2(with.all().unwrap() - without) - cm2(with.gaps[0])).abs() < 1e-6);
}

#[test]
fn plates_together_are_three_per_cent_of_a_home_at_most() {
    let mut plates = Gap::seen(GapPlace::OutletPlate);
    plates.count = 100;
    plates.leads_to = Some(LeadsTo::Outdoors);
    let found = leaks_of(&home_with(vec![plates]));
    let share = found.gaps[0] / found.all().unwrap();
    assert!((share.get::<ratio>() - 0.03).abs() < 1e-9, "{share:?}");
}

#[test]
fn what_leads_to_a_room_costs_nothing() {
    let mut panel = Gap::measured(GapPlace::AccessPanel, inches(40.0), inches(1.0));
    panel.leads_to = Some(LeadsTo::RoomOrReturn);
    assert_eq!(leaks_of(&home_with(vec![panel])).gaps[0], Area::default());
}

#[test]
fn classes_of_width_follow_each_other() {
    let classes = [WidthClass::Card, WidthClass::Dime, WidthClass::TwoCoins, WidthClass::Pencil];
    let ends: Vec<_> = classes.iter().map(|class| class.within().unwrap()).collect();
    assert!(ends.iter().all(|(least, most)| least < most));
    assert!(ends.windows(2).all(|pair| pair[0].1 == pair[1].0));
    assert_eq!(WidthClass::NotMeasured.within(), None);
}
