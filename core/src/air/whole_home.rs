//! Size, leakage and need of fresh air of the whole home: leakage from a test with a blower in the door or from what such homes have.

use super::ventilation::need;
use crate::home::{Building, LeakTest};
use crate::physics::power_law::{PowerLaw, Reference};
use crate::sources::air::{HANDBOOK_2021_CH16_LEAKAGE, HANDBOOK_2021_CH17_UNIT_LEAKAGE};
use crate::sources::trade::USUAL_SIZES;
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Area, Length, Pressure, Ratio, VolumeRate};
use uom::si::ratio::ratio;
use uom::si::{area::square_centimeter, area::square_meter, pressure::pascal};

/// Height of the rooms.
#[must_use]
pub fn height() -> Length {
    Building::wall_height()
}

/// What an area at 4 Pa may be off when it was measured at higher pressures;
/// [`HANDBOOK_2021_CH16_LEAKAGE`].
const EXTRAPOLATED: f64 = 0.40;

/// Leakage for each square metre of envelope: low, best and high, cm²/m². The handbook's classes are
/// tight 0.7, good 1.4, average 2.8, leaky 5.6 and very leaky 10.4; which class stands for which
/// years is judgement.
fn unit_leakage(building: &Building) -> [f64; 3] {
    match building.year_built {
        None => [0.7, 2.8, 10.4],
        Some(..=1976) => [2.8, 5.6, 10.4],
        Some(1977..=1994) => [1.4, 2.8, 5.6],
        Some(_) => [0.7, 1.4, 2.8],
    }
}

/// Area of the floor, as measured or as is usual for so many sections.
///
/// # Equation
///
/// F = W · L
///
/// # Symbols
///
/// | symbol | meaning          | unit | in code                             |
/// |--------|------------------|------|-------------------------------------|
/// | F      | area             | m²   | return value                        |
/// | W, L   | width and length | m    | `building.width`, `building.length` |
///
/// # Source
///
/// [`USUAL_SIZES`] where nobody measured.
///
/// # Valid for
///
/// Manufactured homes.
///
/// # Leaves out
///
/// Additions and porches.
///
/// # Examples
///
/// ```
/// use uom::si::area::square_foot;
/// use winterseam::{air::whole_home::floor, home::Building};
///
/// assert!((floor(&Building::default()).get::<square_foot>() - 924.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn floor(building: &Building) -> Area {
    let (width, length) = building.size();
    width * length
}

/// Floor, ceiling and walls: a floor over a crawl space counts.
fn envelope(building: &Building) -> Area {
    let (width, length) = building.size();
    2.0 * width * length + 2.0 * (width + length) * height()
}

/// Effective leakage area of the whole home at 4 Pa.
///
/// # Equation
///
/// A = Q₅₀ · (4 / 50)ⁿ / √(8 / ρ), or A = u · S where nobody tested
///
/// # Symbols
///
/// | symbol | meaning                              | unit   | in code             |
/// |--------|--------------------------------------|--------|---------------------|
/// | A      | effective leakage area               | m²     | return value        |
/// | Q₅₀, n | flow at 50 Pa and its exponent       | m³/s, –| `test`              |
/// | u      | leakage of each square metre         | cm²/m² | by year of building |
/// | S      | floor, ceiling and walls             | m²     | by size or sections |
///
/// # Source
///
/// [`HANDBOOK_2021_CH16_LEAKAGE`] for a test, [`HANDBOOK_2021_CH17_UNIT_LEAKAGE`] without one, and
/// [`USUAL_SIZES`] where nobody measured the home.
///
/// # Valid for
///
/// Manufactured homes. Measured air changes of 93 double-wides lie within the range.
///
/// # Leaves out
///
/// A grille, door or damper that was left open: such a hole is no part of the home's own leakage.
///
/// # Examples
///
/// ```
/// use uom::si::area::square_centimeter;
/// use winterseam::air::whole_home::leakage;
/// use winterseam::home::{Building, Sections};
///
/// let building = Building {
///     sections: Some(Sections::Single),
///     year_built: Some(1988),
///     ..Building::default()
/// };
/// let area = leakage(&building);
/// assert!((700.0..900.0).contains(&area.best.get::<square_centimeter>()));
/// ```
#[must_use]
pub fn leakage(building: &Building) -> Figure<Area> {
    building.leak_test.and_then(tested).unwrap_or_else(|| usual(building))
}

fn tested(test: LeakTest) -> Option<Figure<Area>> {
    let exponent = Ratio::new::<ratio>(PowerLaw::USUAL_EXPONENT);
    let leaks = match test {
        LeakTest::FlowAt50 { flow, exponent: measured } => {
            PowerLaw::through(flow, Pressure::new::<pascal>(50.0), measured.unwrap_or(exponent))
        }
        LeakTest::AreaAt4(area) => PowerLaw::of_area(area, Reference::FOUR_PASCALS, exponent),
        LeakTest::AreaAt10(area) => PowerLaw::of_area(area, Reference::TEN_PASCALS, exponent),
    };
    let area = leaks?.leakage_area(Reference::FOUR_PASCALS);
    let figure = Figure::exact(area, Confidence::Measured, &[&HANDBOOK_2021_CH16_LEAKAGE])
        .from_inputs(["leak_test"]);
    Some(figure.between(area * (1.0 - EXTRAPOLATED), area * (1.0 + EXTRAPOLATED)))
}

fn usual(building: &Building) -> Figure<Area> {
    let surface = envelope(building).get::<square_meter>();
    let [low, best, high] =
        unit_leakage(building).map(|each| Area::new::<square_centimeter>(each * surface));
    Figure::exact(best, Confidence::Guessed, &[&HANDBOOK_2021_CH17_UNIT_LEAKAGE, &USUAL_SIZES])
        .between(low, high)
        .from_inputs(["home.year_built", "home.sections", "home.width_ft", "home.length_ft"])
}

/// Whether enough is known of a home to speak of its whole [`leakage`].
#[must_use]
pub fn is_known(building: &Building) -> bool {
    building.leak_test.is_some() || building.sections.is_some() || building.floor().is_some()
}

/// Fresh air that a home [needs](need), with its usual size and two bedrooms where nobody measured
/// or counted them (common practice).
#[must_use]
pub fn fresh_air_need(building: &Building) -> Figure<VolumeRate> {
    const USUAL_BEDROOMS: u8 = 2;
    need(floor(building), building.bedrooms.unwrap_or(USUAL_BEDROOMS))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn built(year: Option<i16>) -> f64 {
        let building = Building { year_built: year, ..Building::default() };
        leakage(&building).best.get::<square_centimeter>()
    }

    #[test]
    fn newer_homes_leak_less_and_an_unknown_year_spans_them_all() {
        assert!(built(Some(1972)) > built(Some(1985)) && built(Some(1985)) > built(Some(2005)));
        let unknown = leakage(&Building::default());
        for year in [1972, 1985, 2005] {
            let known = leakage(&Building { year_built: Some(year), ..Building::default() });
            assert!(unknown.low <= known.low && known.high <= unknown.high, "{year}");
        }
    }

    #[test]
    fn a_test_replaces_what_is_usual() {
        let test = LeakTest::AreaAt4(Area::new::<square_centimeter>(300.0));
        let building =
            Building { year_built: Some(1972), leak_test: Some(test), ..Building::default() };
        let area = leakage(&building);
        assert_eq!(area.confidence, Confidence::Measured);
        assert!((area.best.get::<square_centimeter>() - 300.0).abs() < 1e-9);
        assert!((height().get::<uom::si::length::meter>() - 2.286).abs() < 1e-9);
    }
}
