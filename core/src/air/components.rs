//! Leakage areas of parts that nobody measured: what the handbooks once printed.

use crate::home::{Gap, GapPlace, WindowKind};
use crate::sources::air::{COMPONENTS, COMPONENTS_QUOTED};
use crate::sources::{Confidence, Figure, Source};
use uom::si::f64::{Area, Length, Ratio};
use uom::si::{area::square_centimeter, length::meter, ratio::ratio};

/// What a row counts by.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Per {
    /// Each of them.
    Each,
    /// Each metre of crack or joint; the length where nobody measured one.
    Metre(f64),
}

/// Best, least and most leakage area, cm² at 4 Pa.
type Range = [f64; 3];

/// One part of a home, without and with its seal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Component {
    /// Name of the row.
    pub name: &'static str,
    per: Per,
    open: Range,
    sealed: Option<Range>,
    sources: &'static [&'static Source],
}

const fn each(name: &'static str, open: Range, sealed: Range) -> Component {
    Component { name, per: Per::Each, open, sealed: Some(sealed), sources: &[&COMPONENTS] }
}

const fn metre(name: &'static str, usual: f64, open: Range, sealed: Range) -> Component {
    Component { name, per: Per::Metre(usual), open, sealed: Some(sealed), sources: &[&COMPONENTS] }
}

impl Component {
    /// A laboratory prints the same row.
    const fn quoted(self) -> Self {
        Self { sources: &[&COMPONENTS_QUOTED], ..self }
    }

    /// A laboratory prints the same best values; the ends are from memory.
    const fn half_quoted(self) -> Self {
        Self { sources: &[&COMPONENTS_QUOTED, &COMPONENTS], ..self }
    }

    const fn without_seal(self) -> Self {
        Self { sealed: None, ..self }
    }
}

/// Three feet of threshold; a caulked joint stands in for a sweep, of which there is no row.
const THRESHOLD: Component = metre("door threshold", 0.91, [2.0, 1.2, 24.0], [0.8, 0.075, 1.2]);
const DOOR: Component =
    each("outside door, weatherstrip", [21.0, 12.0, 53.0], [12.0, 4.0, 27.0]).quoted();
/// Sealed: the share that a caulked wooden frame keeps of an uncaulked one, 0.3 of 1.7.
const DOOR_FRAME: Component = each("frame of a door", [12.0, 2.4, 25.0], [2.1, 0.7, 4.4]);
const HUNG_WINDOW: Component =
    metre("single- or double-hung window", 5.0, [2.5, 0.86, 6.1], [0.65, 0.2, 1.9]);
const SLIDING_WINDOW: Component =
    metre("horizontal sliding window", 5.0, [1.1, 0.019, 3.4], [0.67, 0.2, 2.06]);
/// By the square metre of a window of 1 m².
const AWNING_WINDOW: Component = each("awning window", [1.6, 0.8, 2.4], [0.8, 0.4, 1.2]);
/// A single value; the tenfold scatter of such rows stands for its range.
const LOUVRE: Component = each("louvre of a jalousie", [3.38, 1.07, 10.7], [0.0; 3]).without_seal();
const OUTLET: Component = each("outlet or switch", [2.5, 0.5, 6.2], [0.15, 0.08, 3.5]);
const PENETRATION: Component =
    each("pipe or wire through a skin", [6.0, 2.0, 24.0], [2.0, 1.0, 2.0]);
const CEILING_JOINT: Component =
    metre("joint of ceiling and wall", 4.0, [1.5, 0.16, 2.5], [0.5, 0.16, 0.5]).half_quoted();
const BATH_VENT: Component =
    each("bath vent, damper", [20.0, 6.1, 22.0], [10.0, 2.5, 20.0]).half_quoted();
const DRYER_VENT: Component = each("dryer vent, damper", [15.0, 12.0, 34.0], [3.0, 2.9, 7.0]);
const KITCHEN_VENT: Component =
    each("kitchen vent, damper", [40.0, 14.0, 72.0], [5.0, 1.0, 7.0]).half_quoted();

/// Every row, for tests and for those who want the table.
pub const ALL: &[Component] = &[
    THRESHOLD,
    DOOR,
    DOOR_FRAME,
    HUNG_WINDOW,
    SLIDING_WINDOW,
    AWNING_WINDOW,
    LOUVRE,
    OUTLET,
    PENETRATION,
    CEILING_JOINT,
    BATH_VENT,
    DRYER_VENT,
    KITCHEN_VENT,
];

/// The row of a place in [`COMPONENTS`]; `None` where no such area was ever published, so that only
/// a tape can tell.
#[must_use]
pub fn component(place: GapPlace, window: Option<WindowKind>) -> Option<&'static Component> {
    Some(match place {
        GapPlace::DoorBottom => &THRESHOLD,
        GapPlace::DoorSide => &DOOR,
        GapPlace::Casing => &DOOR_FRAME,
        GapPlace::WindowSash => match window {
            Some(WindowKind::Sliding) => &SLIDING_WINDOW,
            Some(WindowKind::Awning) => &AWNING_WINDOW,
            Some(WindowKind::Jalousie) => &LOUVRE,
            Some(WindowKind::Hung) | None => &HUNG_WINDOW,
        },
        GapPlace::OutletPlate => &OUTLET,
        GapPlace::PipeHole => &PENETRATION,
        GapPlace::CeilingJoint => &CEILING_JOINT,
        GapPlace::FanDamper => &BATH_VENT,
        GapPlace::DryerVent => &DRYER_VENT,
        GapPlace::RangeHood => &KITCHEN_VENT,
        _ => return None,
    })
}

/// Leakage area of one gap that was seen and not measured.
///
/// # Equation
///
/// A = a · n, with n the length for rows by the metre and 1 for the rest
///
/// # Symbols
///
/// | symbol | meaning                              | unit       | in code                    |
/// |--------|--------------------------------------|------------|----------------------------|
/// | A      | effective leakage area at 4 Pa       | cm²        | return value               |
/// | a      | row of the table                     | cm², cm²/m | [`component`]              |
/// | n      | length along the gap                 | m          | `gap.length`               |
///
/// # Source
///
/// [`COMPONENTS`] from memory, [`COMPONENTS_QUOTED`] where a laboratory prints the same figures.
///
/// # Valid for
///
/// One part of an ordinary home; a single part varies tenfold, so the range is what is told.
/// `None` where there is no row.
///
/// # Leaves out
///
/// Everything that a tape would have found: what is measured replaces the row.
///
/// # Examples
///
/// An outside door without weatherstrip:
///
/// ```
/// use uom::si::area::square_centimeter;
/// use winterseam::air::components::usual_leakage;
/// use winterseam::home::{Gap, GapPlace};
///
/// let door = usual_leakage(&Gap::seen(GapPlace::DoorSide)).unwrap();
/// assert!((door.best.get::<square_centimeter>() - 21.0).abs() < 1e-9);
/// assert!((door.high.get::<square_centimeter>() - 53.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn usual_leakage(gap: &Gap) -> Option<Figure<Area>> {
    let row = component(gap.place, gap.window)?;
    let [best, low, high] = match (gap.sealed, row.sealed) {
        (Some(true), Some(sealed)) => sealed,
        _ => row.open,
    };
    let count = match row.per {
        Per::Each => 1.0,
        Per::Metre(usual) => gap.length.map_or(usual, |length: Length| length.get::<meter>()),
    };
    let area = |each: f64| Area::new::<square_centimeter>(each * count);
    let figure = Figure::exact(area(best), Confidence::Guessed, row.sources);
    Some(figure.between(area(low), area(high)))
}

/// Share of a gap that its seal leaves.
///
/// # Equation
///
/// s = a₁ / a₀
///
/// # Symbols
///
/// | symbol | meaning                    | unit       | in code       |
/// |--------|----------------------------|------------|---------------|
/// | s      | share left                 | –          | return value  |
/// | a₁     | row with the seal, best    | cm², cm²/m | [`component`] |
/// | a₀     | row without it, best       | cm², cm²/m | [`component`] |
///
/// # Source
///
/// [`COMPONENTS`]
///
/// # Valid for
///
/// Parts of which both rows are known; `None` for the rest.
///
/// # Leaves out
///
/// How well the work is done: the draws run from 5 % to half.
///
/// # Examples
///
/// ```
/// use uom::si::ratio::ratio;
/// use winterseam::{air::components::left_by_a_seal, home::GapPlace};
///
/// let hole = left_by_a_seal(GapPlace::PipeHole, None).unwrap();
/// assert!((hole.get::<ratio>() - 2.0 / 6.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn left_by_a_seal(place: GapPlace, window: Option<WindowKind>) -> Option<Ratio> {
    let row = component(place, window)?;
    Some(Ratio::new::<ratio>(row.sealed?[0] / row.open[0]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_in_order_and_a_seal_never_leaks_more() {
        for row in ALL {
            let [best, low, high] = row.open;
            assert!(low <= best && best <= high, "{}", row.name);
            if let Some([best_sealed, low_sealed, high_sealed]) = row.sealed {
                let ordered = low_sealed <= best_sealed && best_sealed <= high_sealed;
                assert!(ordered && best_sealed < best && high_sealed <= high, "{}", row.name);
            }
        }
    }

    #[test]
    fn what_was_never_published_has_no_row() {
        for place in [GapPlace::MarriageLine, GapPlace::CoilCabinet, GapPlace::AccessPanel] {
            assert_eq!(usual_leakage(&Gap::seen(place)), None);
        }
    }
}
