//! The two sides of the water heater's closet. Which of them may be closed at all, the home says:
//! [`Home::may_feed_a_burner`]. Both leave the closet colder, so both look after its pipes.

use super::seal::{count, feet, order, sealed, tightening, tubes};
use super::{Changes, Fee, Life, Material, Repair, Warning, Who};
use crate::home::{GapPlace, Home};

/// From the room: with any burner by a qualified person, in sheet metal.
pub(super) const INNER_PANEL: Repair = Repair {
    id: "closet_inner_panel",
    order: |home| order(home, GapPlace::ClosetInnerPanel),
    changes: Changes::Gaps(GapPlace::ClosetInnerPanel),
    who: |home| if home.burner_at_closet() { Who::Qualified } else { Who::AbleAdult },
    apply: |home| sealed(home, GapPlace::ClosetInnerPanel),
    materials: |home| {
        let place = GapPlace::ClosetInnerPanel;
        with_wrapped_pipes([
            Material::new("sheet_metal_piece", count(home, place)),
            Material::new("sealant_listed", tubes(home, place)),
        ])
    },
    fee: |home| if home.burner_at_closet() { Fee::VISIT } else { Fee::NONE },
    cautions,
    lasts: Life::about(15.0),
};

/// From outside, where nothing burns.
pub(super) const OUTER_DOOR: Repair = Repair {
    id: "closet_outer_door",
    order: |home| order(home, GapPlace::ClosetOuterDoor),
    changes: Changes::Gaps(GapPlace::ClosetOuterDoor),
    who: |_| Who::Resident,
    apply: |home| sealed(home, GapPlace::ClosetOuterDoor),
    materials: |home| {
        let kits = feet(home, GapPlace::ClosetOuterDoor) / 17.0;
        with_wrapped_pipes([Material::new("door_strip_kit_17ft", kits)])
    },
    fee: |_| Fee::NONE,
    cautions,
    lasts: Life::about(7.0),
};

/// Cold and hot pipe of a tank, from floor to top.
const PIPES: f64 = 2.0;

fn with_wrapped_pipes<const N: usize>(seal: [Material; N]) -> Vec<Material> {
    seal.into_iter().chain([Material::new("pipe_sleeve_6ft", PIPES)]).collect()
}

/// The warning about burners is never left out here: a burner may move in later.
fn cautions(home: &Home) -> Vec<Warning> {
    let mut all = tightening(home);
    if !all.contains(&Warning::DO_NOT_SEAL_COMBUSTION_AIR) {
        all.push(Warning::DO_NOT_SEAL_COMBUSTION_AIR);
    }
    all.push(Warning::CLOSET_FREEZE);
    all
}
