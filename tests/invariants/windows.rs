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
