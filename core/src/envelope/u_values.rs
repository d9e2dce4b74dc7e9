//! Heat through the parts of a home for each area and degree, by the years it was built in and by
//! what was seen of it. Each is three numbers, least, usual and most; `off` says where between them
//! a home lies.

use crate::home::{Belly, Building, Panes, Window};
use uom::si::area::square_foot;
use uom::si::f64::{HeatTransfer, Ratio};
use uom::si::heat_transfer::btu_it_per_hour_square_foot_degree_fahrenheit;

/// Least, usual and most.
pub(super) type Three = [f64; 3];

/// The value at a place between the least (−1), the usual (0) and the most (1).
pub(super) fn between([least, usual, most]: Three, off: f64) -> f64 {
    let end = if off < 0.0 { least } else { most };
    usual + (end - usual) * off.abs()
}

/// Btu/(h·ft²·°F) of a number.
pub(super) fn btu(u: f64) -> HeatTransfer {
    HeatTransfer::new::<btu_it_per_hour_square_foot_degree_fahrenheit>(u)
}

/// Walls, roof, floor, windows and doors, Btu/(h·ft²·°F);
/// [`SHELL_BY_YEARS`](crate::sources::envelope::SHELL_BY_YEARS).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Usual {
    pub walls: Three,
    pub roof: Three,
    pub floor: Three,
    pub windows: Three,
    pub doors: Three,
}

const BEFORE_THE_STANDARD: Usual = Usual {
    walls: [0.12, 0.145, 0.18],
    roof: [0.09, 0.125, 0.16],
    floor: [0.08, 0.125, 0.17],
    windows: [0.75, 1.10, 1.27],
    doors: [0.35, 0.50, 0.65],
};
const UNTIL_ITS_REVISION: Usual = Usual {
    walls: [0.08, 0.095, 0.12],
    roof: [0.05, 0.07, 0.10],
    floor: [0.065, 0.085, 0.13],
    windows: [0.50, 0.75, 1.10],
    doors: [0.30, 0.40, 0.50],
};
const SINCE_THEN: Usual = Usual {
    walls: [0.055, 0.08, 0.095],
    roof: [0.035, 0.05, 0.065],
    floor: [0.045, 0.055, 0.085],
    windows: [0.35, 0.50, 0.65],
    doors: [0.20, 0.30, 0.40],
};

impl Usual {
    /// What is usual for the year of a home; a year that nobody knows spans them all.
    pub(super) fn of(building: &Building) -> Self {
        match building.year_built {
            Some(..=1976) => BEFORE_THE_STANDARD,
            Some(1977..=1994) => UNTIL_ITS_REVISION,
            Some(_) => SINCE_THEN,
            None => Self::of_any_year(),
        }
    }

    fn of_any_year() -> Self {
        let span = |part: fn(&Self) -> Three| {
            [part(&SINCE_THEN)[0], part(&UNTIL_ITS_REVISION)[1], part(&BEFORE_THE_STANDARD)[2]]
        };
        Self {
            walls: span(|usual| usual.walls),
            roof: span(|usual| usual.roof),
            floor: span(|usual| usual.floor),
            windows: span(|usual| usual.windows),
            doors: span(|usual| usual.doors),
        }
    }
}

/// The deck and what lies on it, h·ft²·°F/Btu, and the belly below it where it is open, from the
/// best that is left to next to nothing; [`OPEN_BELLY`](crate::sources::envelope::OPEN_BELLY).
pub(super) const DECK_R: f64 = 2.5;
const OPEN_BELLY_R: Three = [4.5, 3.0, 0.7];
/// How far wind reaches past a hole, in areas of the hole; share of the floor where nobody measured
/// the hole, and where nobody looked.
const REACH: Three = [1.0, 4.0, 10.0];
const TORN: Three = [0.02, 0.10, 0.30];
const NOBODY_LOOKED: Three = [0.0, 0.02, 0.10];

/// Share of the floor that has lost its belly.
fn open_share(building: &Building, off: f64) -> f64 {
    let (width, length) = building.size();
    let floor = (width * length).get::<square_foot>();
    let share = match (building.belly, building.belly_hole) {
        (Some(Belly::Sound), _) => 0.0,
        (Some(Belly::Missing), _) => 1.0,
        (Some(Belly::Torn), None) => between(TORN, off),
        (None, None) => between(NOBODY_LOOKED, off),
        (_, Some(hole)) => hole.get::<square_foot>() * between(REACH, off) / floor,
    };
    share.min(1.0)
}

/// The floor, as sound as its belly; an open belly is never better than a sound one.
pub(super) fn floor(building: &Building, off: f64) -> HeatTransfer {
    let sound = between(Usual::of(building).floor, off);
    let open = sound.max(1.0 / (DECK_R + between(OPEN_BELLY_R, off)));
    btu(sound + open_share(building, off) * (open - sound))
}

/// Whole windows with frames of aluminium;
/// [`WINDOW_U_VALUES`](crate::sources::envelope::WINDOW_U_VALUES).
fn window_of(panes: Panes) -> Three {
    match panes {
        Panes::Single => [1.0, 1.10, 1.27],
        Panes::SingleStorm => [0.60, 0.75, 0.90],
        Panes::Double => [0.45, 0.50, 0.65],
    }
}

/// The air behind a film, from the film that saves least to that which saves most, so that the
/// range of what a film saves is as wide as both together;
/// [`AIR_BEHIND_FILM`](crate::sources::envelope::AIR_BEHIND_FILM).
const BEHIND_FILM: Three = [3.3, 1.3, 0.95];

/// A window, with its film where it has one.
pub(super) fn window(window: &Window, building: &Building, off: f64) -> HeatTransfer {
    let bare = between(window.panes.map_or(Usual::of(building).windows, window_of), off);
    if window.film != Some(true) {
        return btu(bare);
    }
    btu(1.0 / (1.0 / bare + 1.0 / between(BEHIND_FILM, off)))
}

/// Share of a window that is glass, and of the sun that falls on glass that gets in, together; what
/// lets in least makes the home need most.
/// [`SUN_THROUGH_GLASS`](crate::sources::envelope::SUN_THROUGH_GLASS).
pub(super) fn sun_let_in(panes: Option<Panes>, film: bool, off: f64) -> Ratio {
    const GLASS_SHARE: Three = [0.80, 0.75, 0.65];
    let glass = match panes {
        Some(Panes::Single) => 0.80,
        Some(Panes::Double) => 0.70,
        Some(Panes::SingleStorm) | None => 0.72,
    };
    let film = if film { 0.9 } else { 1.0 };
    Ratio::new::<uom::si::ratio::ratio>(glass * film * between(GLASS_SHARE, off))
}
