//! Closing gaps. Never one that may feed a burner: the home says which those are, and no repair here
//! can touch them.

use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::air::components::left_by_a_seal;
use crate::home::{Gap, GapPlace, Home, LeadsTo, WindowKind};
use uom::si::f64::{Length, Ratio};
use uom::si::length::{foot, inch};
use uom::si::ratio::ratio;

/// Share that a good seal leaves open: of the same part with and without it
/// ([`COMPONENTS`](crate::sources::air::COMPONENTS)), else what caulk leaves of a joint
/// ([`SEALED_PAIRS`](crate::sources::trade::SEALED_PAIRS)). What was measured at a door is the slit
/// that the strip is put on, which it closes better than it does the door as a whole.
fn leaves(gap: &Gap) -> Ratio {
    const STRIP_ON_SLIT: f64 = 0.25;
    const CAULKED: f64 = 0.20;
    let at_door = matches!(gap.place, GapPlace::DoorBottom | GapPlace::DoorSide);
    if at_door && gap.width.is_some() {
        return Ratio::new::<ratio>(STRIP_ON_SLIT);
    }
    left_by_a_seal(gap.place, gap.window).unwrap_or(Ratio::new::<ratio>(CAULKED))
}

/// Whether a gap may be closed at all: one that leads to a room or back to the furnace costs no heat,
/// and is the way of its air.
pub(super) fn may_be_shut(home: &Home, gap: &Gap) -> bool {
    gap.leads_to != Some(LeadsTo::RoomOrReturn) && !home.may_feed_a_burner(gap)
}

fn may_close(home: &Home, place: GapPlace, gap: &Gap) -> bool {
    // Slats close on each other: no strip fits between them.
    let slats = gap.window == Some(WindowKind::Jalousie);
    let done = gap.width.is_none() && gap.sealed == Some(true);
    gap.place == place && !(slats || done) && may_be_shut(home, gap) && gap.open > leaves(gap)
}

fn closable(home: &Home, place: GapPlace) -> impl Iterator<Item = &Gap> {
    home.gaps.iter().filter(move |gap| may_close(home, place, gap))
}

pub(super) fn sealed(home: &Home, place: GapPlace) -> Option<Home> {
    closable(home, place).next()?;
    let mut after = home.clone();
    for gap in after.gaps.iter_mut().filter(|gap| may_close(home, place, gap)) {
        gap.open = gap.seal_leaves.unwrap_or(leaves(gap));
    }
    Some(after)
}

/// Length of a gap; where nobody measured one, that of a door's three sides, of its bottom, of the
/// sashes of a window, or three feet (common practice).
fn length(gap: &Gap) -> Length {
    let usual = match gap.place {
        GapPlace::DoorSide => 17.0,
        GapPlace::WindowSash => 16.0,
        _ => 3.0,
    };
    gap.length.unwrap_or(Length::new::<foot>(usual)) * f64::from(gap.count)
}

/// Width of a gap; an eighth of an inch where nobody measured one.
fn width_in(gap: &Gap) -> f64 {
    gap.width.map_or(0.125, |width| width.get::<inch>())
}

/// A gap at least a quarter of an inch wide and five square inches large is a hole, wherever it is;
/// the rest are small seals: judgement, [`ORDER_OF_WORK`](crate::sources::trade::ORDER_OF_WORK).
pub(super) fn order(home: &Home, place: GapPlace) -> Order {
    let hole = closable(home, place).any(|gap| {
        let width = width_in(gap);
        width >= 0.25 && length(gap).get::<inch>() * width >= 5.0
    });
    match place {
        GapPlace::OutletPlate => Order::Trifles,
        _ if hole => Order::BigHoles,
        _ => Order::SmallSeals,
    }
}

/// Plates of homes before the standard of 1976 may hide aluminium wiring: not for the resident.
fn who(home: &Home, place: GapPlace, usual: Who) -> Who {
    let old_wiring = home.building.before_standard() != Some(false);
    if place == GapPlace::OutletPlate && old_wiring { Who::Qualified } else { usual }
}

/// Length of the gaps at a place, with a tenth for waste, in feet.
pub(super) fn feet(home: &Home, place: GapPlace) -> f64 {
    let length: Length = closable(home, place).map(length).sum();
    length.get::<foot>() * 1.1
}

pub(super) fn count(home: &Home, place: GapPlace) -> f64 {
    closable(home, place).map(|gap| f64::from(gap.count)).sum()
}

/// Wider than this a gap takes a board or mesh, and caulk only round it.
const WIDEST_BEAD_IN: f64 = 0.5;

/// Boards for the gaps that no bead spans.
fn boards(home: &Home, place: GapPlace) -> Option<Material> {
    let wide = |gap: &&Gap| width_in(gap) > WIDEST_BEAD_IN;
    let count: f64 = closable(home, place).filter(wide).map(|gap| f64::from(gap.count)).sum();
    (count > 0.0).then(|| Material::new("patch_board", count))
}

/// Caulk, and boards for what it does not span.
fn caulked(home: &Home, place: GapPlace) -> Vec<Material> {
    [Material::new("caulk", tubes(home, place))].into_iter().chain(boards(home, place)).collect()
}

/// Tubes of 10.1 fl oz for square beads as wide as the gaps, a quarter to half an inch.
pub(super) fn tubes(home: &Home, place: GapPlace) -> f64 {
    const TUBE_IN3: f64 = 10.1 * 1.804_687_5;
    let bead = |gap: &Gap| {
        let width = width_in(gap).clamp(0.25, WIDEST_BEAD_IN);
        length(gap).get::<inch>() * 1.1 * width * width
    };
    closable(home, place).map(bead).sum::<f64>() / TUBE_IN3
}

pub(super) fn tightening(home: &Home) -> Vec<Warning> {
    let pulls = home.fan_may_pull_fumes();
    let mut all = vec![if pulls { Warning::FAN_DRAFT } else { Warning::VENT_AFTER_TIGHT }];
    if home.burner_may_need_air() {
        all.push(Warning::DO_NOT_SEAL_COMBUSTION_AIR);
    }
    all
}

/// Trim and sashes painted before 1978 may hold lead; a year that nobody knows may be before.
fn lead_paint(home: &Home, place: GapPlace) -> Option<Warning> {
    let painted = matches!(place, GapPlace::Casing | GapPlace::WindowSash);
    let old = home.building.year_built.is_none_or(|year| year < 1978);
    (painted && old).then_some(Warning::LEAD_PAINT)
}

macro_rules! seals {
    ($($name:ident: $id:literal, $place:ident, $who:ident, $life:literal,
       $materials:expr, $also:expr;)*) => {
        $(
            pub(super) const $name: Repair = Repair {
                id: $id,
                order: |home| order(home, GapPlace::$place),
                changes: Changes::Gaps(GapPlace::$place),
                who: |home| who(home, GapPlace::$place, Who::$who),
                apply: |home| sealed(home, GapPlace::$place),
                materials: $materials,
                fee: |_| Fee::NONE,
                cautions: |home| {
                    let also: &[Warning] = $also;
                    let all = tightening(home).into_iter().chain(also.iter().copied());
                    all.chain(lead_paint(home, GapPlace::$place)).collect()
                },
                lasts: Life::about($life),
            };
        )*
    };
}

seals! {
    COOLER_COVER: "cooler_cover", CoolerGrille, Resident, 5.0,
        |h| vec![Material::new("cooler_cover", count(h, GapPlace::CoolerGrille))],
        &[Warning::REOPEN_COOLER];
    DOOR_SWEEP: "door_sweep", DoorBottom, Resident, 7.0,
        |h| vec![Material::new("door_sweep_36in", count(h, GapPlace::DoorBottom))], &[];
    DOOR_STRIP: "door_strip", DoorSide, Resident, 7.0,
        |h| vec![Material::new("door_strip_kit_17ft", feet(h, GapPlace::DoorSide) / 17.0)], &[];
    PIPE_HOLES: "pipe_holes", PipeHole, AbleAdult, 12.0,
        |h| vec![
            Material::new("hardware_cloth_piece", count(h, GapPlace::PipeHole)),
            Material::new("caulk", tubes(h, GapPlace::PipeHole)),
        ], &[Warning::BELLY_FREEZE];
    MARRIAGE_LINE: "marriage_line", MarriageLine, AbleAdult, 12.0,
        |h| vec![
            Material::new("backer_rod_20ft", feet(h, GapPlace::MarriageLine) / 20.0),
            Material::new("caulk", tubes(h, GapPlace::MarriageLine)),
        ], &[Warning::BELLY_FREEZE];
    FAN_HOUSING: "fan_housing", BathFanHousing, AbleAdult, 10.0,
        |_| vec![Material::new("foil_tape_roll", 1.0)], &[];
    FAN_DAMPER: "fan_damper", FanDamper, Qualified, 10.0,
        |h| vec![Material::new("bath_fan_damper", count(h, GapPlace::FanDamper))], &[];
    DRYER_FLAP: "dryer_flap", DryerVent, Qualified, 10.0,
        |h| vec![Material::new("dryer_vent_hood", count(h, GapPlace::DryerVent))], &[];
    HOOD_DAMPER: "hood_damper", RangeHood, Qualified, 10.0,
        |h| vec![Material::new("range_hood_damper", count(h, GapPlace::RangeHood))], &[];
    ACCESS_PANEL: "access_panel", AccessPanel, Resident, 7.0,
        |h| vec![Material::new("gasket_tape_17ft", feet(h, GapPlace::AccessPanel) / 17.0)], &[];
    CEILING_JOINT: "ceiling_joint", CeilingJoint, Resident, 10.0,
        |h| caulked(h, GapPlace::CeilingJoint),
        &[Warning::MOISTURE_FIRST];
    CASING: "casing", Casing, Resident, 10.0,
        |h| caulked(h, GapPlace::Casing), &[];
    WINDOW_SASH: "window_sash", WindowSash, Resident, 5.0,
        |h| vec![Material::new("window_strip_17ft", feet(h, GapPlace::WindowSash) / 17.0)],
        &[Warning::EGRESS_WINDOW];
    OUTLET_PLATES: "outlet_plates", OutletPlate, Resident, 10.0,
        |h| vec![Material::new("outlet_gasket", count(h, GapPlace::OutletPlate))],
        &[Warning::BREAKER];
    ELSEWHERE: "elsewhere", Elsewhere, Resident, 8.0,
        |h| caulked(h, GapPlace::Elsewhere), &[];
}
