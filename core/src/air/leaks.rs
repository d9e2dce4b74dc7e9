//! All leaks of a home: the gaps that were found, and the rest that the home has.

use super::components::usual_leakage;
use super::usual::usual;
use super::whole_home;
use crate::home::{Gap, GapPlace, Home, LeadsTo};
use crate::physics::gap::{Slit, leakage_area};
use crate::physics::openings::in_series;
use crate::properties::air::Air;
use uom::si::f64::{Area, Ratio};
use uom::si::ratio::ratio;

/// Outlet and switch plates together are no more of a home than this:
/// [`LINES`](crate::sources::safety::LINES).
const MOST_OF_PLATES: f64 = 0.03;

/// Leakage areas of a home, as the whole home feels them.
#[derive(Debug, Clone, PartialEq)]
pub struct Leaks {
    /// What is open of each gap, in the order of the home's gaps.
    pub gaps: Vec<Area>,
    /// Leaks of the home that are none of these gaps.
    pub others: Area,
    /// Enough is known of the home to speak of them.
    pub known: bool,
}

impl Leaks {
    /// All of them together, known or as is usual.
    #[must_use]
    pub fn total(&self) -> Area {
        self.others + self.gaps.iter().copied().sum::<Area>()
    }

    /// All of them together; `None` where too little is known of the home.
    #[must_use]
    pub fn all(&self) -> Option<Area> {
        self.known.then(|| self.total())
    }
}

/// The leaks of a home. What was found is part of what the home has, and can never be more: neither
/// more than a test found, nor more than the leakiest home of its kind. A grille left open is a hole
/// of its own.
///
/// # Equation
///
/// f = min(1, M / Σ Aᵢ);  others = max(0, H − f · Σ Aᵢ)
///
/// # Symbols
///
/// | symbol | meaning                                            | unit | in code              |
/// |--------|----------------------------------------------------|------|----------------------|
/// | Aᵢ     | each gap as it was found, [`through`]              | m²   | `home.gaps`          |
/// | f      | share of them that the home can have               | –    | –                    |
/// | M      | most that the home has: a test, or the leakiest    | m²   | `home.building`      |
/// | H      | what the home has, [`whole_home::leakage`]         | m²   | `home.building`      |
///
/// # Source
///
/// [`HANDBOOK_2021_CH17_UNIT_LEAKAGE`](crate::sources::air::HANDBOOK_2021_CH17_UNIT_LEAKAGE) for the
/// home, [`LINES`](crate::sources::safety::LINES) for the share of outlet and switch plates.
///
/// # Valid for
///
/// Any home; to be told only where its size, its sections or a test are known.
///
/// # Leaves out
///
/// That gaps low and high in a home see other pressures than those halfway up.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Length, length::inch};
/// use winterseam::air::leaks::leaks;
/// use winterseam::home::{Gap, GapPlace};
/// use winterseam::properties::air::Air;
/// use winterseam::wire::{Tree, home};
///
/// let walk = r#"{"today": "2026-11-25", "home": {"sections": "single", "year_built": 1988}}"#;
/// let mut home = home(&Tree::from_json(walk).unwrap()).unwrap();
/// let before = leaks(&home, &Air::of_a_room()).all().unwrap();
/// let inches = Length::new::<inch>;
/// home.gaps = vec![Gap::measured(GapPlace::DoorBottom, inches(36.0), inches(0.375))];
/// // A gap that is found is part of the home: the sum stays.
/// let after = leaks(&home, &Air::of_a_room()).all().unwrap();
/// assert!((after - before).abs() < before * 1e-12);
/// ```
#[must_use]
pub fn leaks(home: &Home, air: &Air) -> Leaks {
    let all = whole_home::leakage(&home.building);
    let drawn = home.building.leakage.unwrap_or(all.best);
    let most = if home.building.leak_test.is_some() { drawn } else { all.high };
    let found: Vec<Area> = home.gaps.iter().map(|gap| through(gap, air, full())).collect();
    let plates = share(found_at(home, &found, is_plate), drawn * MOST_OF_PLATES);
    let capped = |(gap, area): (&Gap, &Area)| if is_plate(gap) { *area * plates } else { *area };
    let found: Vec<Area> = home.gaps.iter().zip(&found).map(capped).collect();
    let parts = found_at(home, &found, |gap| !is_forgotten(gap));
    let fits = share(parts, most);
    let open = |gap: &Gap| {
        let plate = if is_plate(gap) { plates } else { full() };
        let part = if is_forgotten(gap) { full() } else { fits };
        through(gap, air, gap.open) * plate * part
    };
    let others = (drawn - parts * fits).max(Area::default());
    Leaks {
        gaps: home.gaps.iter().map(open).collect(),
        others,
        known: whole_home::is_known(&home.building),
    }
}

fn full() -> Ratio {
    Ratio::new::<ratio>(1.0)
}

fn is_plate(gap: &Gap) -> bool {
    gap.place == GapPlace::OutletPlate
}

/// A hole that somebody forgot to close for the winter.
fn is_forgotten(gap: &Gap) -> bool {
    gap.place == GapPlace::CoolerGrille
}

fn found_at(home: &Home, found: &[Area], which: impl Fn(&Gap) -> bool) -> Area {
    home.gaps.iter().zip(found).filter(|(gap, _)| which(gap)).map(|(_, area)| *area).sum()
}

/// The share of an area that fits under a limit.
fn share(area: Area, limit: Area) -> Ratio {
    if area > limit { limit / area } else { full() }
}

/// What lies behind a gap, as seen or as is usual at its place: [`Usual`](super::usual::Usual).
#[must_use]
pub fn leads_to(gap: &Gap) -> LeadsTo {
    gap.leads_to.unwrap_or(usual(gap.place).leads_to)
}

/// Leakage area of all gaps like this one with a share of them open.
///
/// # Equation
///
/// A = n · a · s outdoors; 0 into a room; else n · a · s [in series](in_series) with k · n · a
///
/// # Symbols
///
/// | symbol | meaning                                     | unit | in code           |
/// |--------|---------------------------------------------|------|-------------------|
/// | A      | leakage area as the whole home feels it     | m²   | return value      |
/// | a      | that of one gap, by tape or by its row      | m²   | –                 |
/// | n      | gaps like it                                | –    | `gap.count`       |
/// | s      | share that is open                          | –    | `open`            |
/// | k      | leakage of the next skin over the gap's own | –    | `gap.next_skin`   |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_ORIFICE`](crate::sources::air::HANDBOOK_2021_CH16_ORIFICE) for the series;
/// [`leakage_area`] and [`usual_leakage`] for one gap.
///
/// # Valid for
///
/// Every gap; the next skin of an unknown one is as leaky as the gap itself.
///
/// # Leaves out
///
/// More than one skin behind.
///
/// # Examples
///
/// A hole into a belly that leaks as much lets through 0.71 of what it would outdoors:
///
/// ```
/// use uom::si::{f64::{Length, Ratio}, length::inch, ratio::ratio};
/// use winterseam::air::leaks::through;
/// use winterseam::home::{Gap, GapPlace, LeadsTo};
/// use winterseam::properties::air::Air;
///
/// let inches = Length::new::<inch>;
/// let mut hole = Gap::measured(GapPlace::PipeHole, inches(14.0), inches(0.5));
/// let (air, all) = (Air::of_a_room(), Ratio::new::<ratio>(1.0));
/// let into_belly = through(&hole, &air, all);
/// hole.leads_to = Some(LeadsTo::Outdoors);
/// let share = into_belly / through(&hole, &air, all);
/// assert!((share.get::<ratio>() - 0.5_f64.sqrt()).abs() < 1e-9);
/// ```
#[must_use]
pub fn through(gap: &Gap, air: &Air, open: Ratio) -> Area {
    let whole = alone(gap, air) * f64::from(gap.count);
    match leads_to(gap) {
        LeadsTo::Outdoors => whole * open,
        LeadsTo::RoomOrReturn => Area::default(),
        LeadsTo::Belly | LeadsTo::RoofCavity | LeadsTo::ClosetWithOutsideAir | LeadsTo::Wall => {
            in_series(whole * open, whole * gap.next_skin.unwrap_or(full()))
        }
    }
}

/// Leakage area of one gap by itself: by the tape where it was measured, else by its row.
fn alone(gap: &Gap, air: &Air) -> Area {
    if let (Some(length), Some(width)) = (gap.length, gap.width) {
        let usual = usual(gap.place);
        let depth = gap.depth.unwrap_or(usual.depth);
        let slit = Slit::new(length, width, depth, gap.bends.unwrap_or(usual.bends));
        return slit.map_or(Area::default(), |slit| leakage_area(&slit, air));
    }
    let row = || usual_leakage(gap).map_or(Area::default(), |figure| figure.best);
    gap.leakage.unwrap_or_else(row)
}
