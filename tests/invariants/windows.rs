//! Nothing is fastened over a window that someone may have to leave by, and film only keeps heat in.

use super::random::{Luck, request};
use super::typed;
use winterseam::envelope::shell;
use winterseam::repairs;

#[test]
fn no_film_and_no_storm_window_where_someone_may_have_to_leave() {
    let mut changed = 0;
    for seed in 0..3_000 {
        let home = typed(&request(&mut Luck::new(seed), false));
        for repair in repairs::ALL {
            let Some(after) = (repair.apply)(&home) else { continue };
            for (was, is) in home.windows.iter().zip(&after.windows) {
                let touched = was.film != is.film || was.panes != is.panes;
                assert!(!(touched && was.may_be_way_out()), "{} in home {seed}", repair.id);
                changed += usize::from(touched);
            }
            assert!(shell(&after).windows <= shell(&home).windows, "{}", repair.id);
        }
    }
    assert!(changed > 100, "{changed}");
}

/// A film closes a gap that is called by the name of its window, but none that may belong to a way
/// out.
#[test]
fn a_film_closes_no_gap_that_is_called_like_a_way_out() {
    let film = repairs::by_id("window_film").expect("listed");
    let mut closed = 0;
    for seed in 0..3_000 {
        let home = typed(&request(&mut Luck::new(seed), false));
        let Some(after) = (film.apply)(&home) else { continue };
        for (was, is) in home.gaps.iter().zip(&after.gaps).filter(|(was, is)| was.open != is.open) {
            let mut called = home.windows.iter().filter(|window| window.label == was.label);
            assert!(is.label.is_some() && is.open < was.open, "home {seed}");
            assert!(!called.any(winterseam::home::Window::may_be_way_out), "home {seed}");
            closed += 1;
        }
    }
    assert!(closed > 5, "{closed}");
}

/// No repair ever says that vents are closed, and none takes the heat cable away.
#[test]
fn skirting_keeps_its_vents_and_the_cable_stays() {
    use winterseam::home::SkirtingVents;
    for seed in 0..3_000 {
        let home = typed(&request(&mut Luck::new(seed), false));
        for id in ["skirting", "belly_patch", "belly_insulation", "seal_ducts"] {
            let repair = repairs::by_id(id).expect("listed");
            let Some(after) = (repair.apply)(&home) else { continue };
            let closed = after.building.skirting_vents != home.building.skirting_vents
                && after.building.skirting_vents != Some(SkirtingVents::Open);
            assert!(!closed && after.cable == home.cable, "{id} in home {seed}");
        }
    }
}

/// A step says which windows it covers by the names they were given.
#[test]
fn film_is_named_for_its_windows() {
    let request = serde_json::json!({
        "today": "2026-10-03", "home": {"zip": "55401", "sections": "single"},
        "people": {"oxygen": false}, "heating": {"fuel": "electricity"},
        "first_look": {"co_alarm": "working", "smoke_alarm": "working", "other_burner": false},
        "water_heater": {"kind": "electric"}, "electricity_usd_per_kwh": 0.15,
        "windows": [
            {"label": "kitchen", "count": 2, "glazing": "single", "film": false, "escape": false},
            {"label": "bedroom", "count": 2, "glazing": "single", "film": false, "escape": true},
        ],
    });
    let answer = super::answered(&request);
    let steps = ["firsts", "later"].map(|list| answer[list].as_array().expect("a list").clone());
    let film = steps.concat().into_iter().find(|step| step["id"] == "window_film");
    let why = film.expect("film")["why"].to_string();
    assert!(why.contains("kitchen") && !why.contains("bedroom"), "{why}");
}
