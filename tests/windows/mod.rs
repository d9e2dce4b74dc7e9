//! Heat through windows and film.

use crate::harness::Table;
use serde_json::json;
use uom::si::f64::Length;
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::millimeter;
use winterseam::units::kelvins;
use winterseam::windows::{Glazing, gap_conductance, u_value};
use winterseam::wire::{Tree, ask_for};

fn millimetres(mm: f64) -> Length {
    Length::new::<millimeter>(mm)
}

#[test]
fn gaps_conduct_as_the_standard_says() {
    Table::read("windows/en-673__gaps").compare(|row| {
        let h = gap_conductance(millimetres(row.number("gap_mm")), kelvins(15.0));
        vec![("conductance_w_m2_k", h.get::<watt_per_square_meter_kelvin>())]
    });
}

#[test]
fn gaps_conduct_nearly_as_another_standard_says() {
    Table::read("windows/iso-15099__gaps").compare(|row| {
        let h = gap_conductance(millimetres(row.number("gap_mm")), kelvins(15.0));
        vec![("conductance_w_m2_k", h.get::<watt_per_square_meter_kelvin>())]
    });
}

#[test]
fn windows_lose_what_the_standard_says() {
    Table::read("windows/en-673__windows").compare(|row| {
        let gap = |column| row.has(column).then(|| millimetres(row.number(column)));
        let glass = millimetres(row.number("glass_mm"));
        let window = Glazing { glass, pane_gap: gap("pane_gap_mm"), film_gap: gap("film_gap_mm") };
        let u = u_value(&window);
        let saved = 1.0 - (u / u_value(&Glazing { film_gap: None, ..window })).value;
        let u = u.get::<watt_per_square_meter_kelvin>();
        vec![("u_w_m2_k", u), ("saved_percent", saved * 100.0), ("printed", u)]
    });
}

fn asked(question: &serde_json::Value) -> Result<serde_json::Value, Vec<String>> {
    let fields = Tree::from_json(&question.to_string()).expect("fields");
    ask_for("window_u", &fields, None)
        .map_err(|all| all.iter().map(|e| format!("{} {}", e.path, e.reason.code())).collect())
}

#[test]
fn the_face_toward_the_room_follows_from_the_standards_film() {
    let question = json!({"layers": "double_film", "gap_m": 0.025, "glass_m": 0.004,
        "pane_gap_m": 0.012});
    let answer = asked(&question).expect("an answer");
    let (u, face) = (answer["u_w_m2_k"].as_f64().unwrap(), answer["inside_surface_c"].as_f64());
    assert!((face.unwrap() - (21.0 - u * 28.0 / 7.7)).abs() < 1e-9);
    assert!(u < 2.0, "a film over double glass: {u}");
}

#[test]
fn a_gap_that_the_layers_have_must_be_told_and_another_is_passed_over() {
    let mut question = json!({"layers": "double_film", "glass_m": 0.004, "pane_gap_m": 0.012});
    assert_eq!(asked(&question), Err(vec!["gap_m missing".to_owned()]));
    question["layers"] = json!("single_film");
    question["gap_m"] = json!(0.02);
    let with = asked(&question);
    question.as_object_mut().unwrap().remove("pane_gap_m");
    assert_eq!(with, asked(&question));
}
