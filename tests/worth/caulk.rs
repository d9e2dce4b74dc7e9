//! How far a tube of caulk goes.

use uom::si::f64::Length;
use uom::si::length::{foot, inch};
use winterseam::home::{Gap, GapPlace, LeadsTo};
use winterseam::repairs;
use winterseam::wire::{Tree, home};

/// A tube of 10.1 fl oz, 18.23 in³, makes 24.30 ft of a bead a quarter of an inch square (Python 3.11);
/// with a tenth for waste 22.09 ft.
#[test]
fn a_tube_fills_as_many_feet_as_its_ounces() {
    let tubes = |feet: f64| {
        let mut home =
            home(&Tree::from_json(r#"{"today": "2026-11-25"}"#).expect("JSON")).expect("a walk");
        home.gaps = vec![Gap {
            leads_to: Some(LeadsTo::Outdoors),
            ..Gap::measured(GapPlace::Casing, Length::new::<foot>(feet), Length::new::<inch>(0.25))
        }];
        let casing = repairs::by_id("casing").expect("listed");
        let caulk = (casing.materials)(&home).into_iter().find(|m| m.item == "caulk");
        caulk.expect("caulk").quantity
    };
    assert!((tubes(24.30 / 1.1 - 0.05) - 1.0).abs() < 1e-9);
    assert!((tubes(24.30 / 1.1 + 0.05) - 2.0).abs() < 1e-9);
    assert!((tubes(2.0 * 24.30 / 1.1 + 0.1) - 3.0).abs() < 1e-9);
}
