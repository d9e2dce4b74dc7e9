//! The fresh air that a home needs, and what its leaks count for.

use crate::sources::air::{HANDBOOK_2021_CH17, INFILTRATION_CREDIT};
use crate::sources::{Confidence, Figure};
use uom::si::f64::{Area, Ratio, Velocity, VolumeRate};
use uom::si::{area::square_meter, volume_rate::liter_per_second};
use uom::si::{ratio::ratio, velocity::meter_per_second};

/// Fresh air that a whole home needs, from leaks and fans together.
///
/// # Equation
///
/// Q = 0.15 · A + 3.5 · (N + 1)
///
/// # Symbols
///
/// | symbol | meaning                    | unit | in code      |
/// |--------|----------------------------|------|--------------|
/// | Q      | fresh air                  | L/s  | return value |
/// | A      | area of the floor          | m²   | `floor`      |
/// | N      | rooms meant for sleeping   | –    | `bedrooms`   |
///
/// # Source
///
/// [`HANDBOOK_2021_CH17`]
///
/// # Valid for
///
/// Homes in which one person more lives than there are bedrooms; the rule since 2013. It is a
/// rule, so it has no range.
///
/// # Leaves out
///
/// More people than that (3.5 L/s each), and fans in kitchen and bath. The form in inches and
/// pounds is rounded apart and asks for 1.4 % more; the rule before 2013 for a third as much for
/// the floor.
///
/// # Examples
///
/// ```
/// use uom::si::{area::square_meter, f64::Area, volume_rate::liter_per_second};
/// use winterseam::air::ventilation::need;
///
/// let fresh = need(Area::new::<square_meter>(80.0), 3);
/// assert!((fresh.best.get::<liter_per_second>() - 26.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn need(floor: Area, bedrooms: u8) -> Figure<VolumeRate> {
    let people = f64::from(bedrooms) + 1.0;
    let flow = 0.15 * floor.get::<square_meter>() + 3.5 * people;
    let flow = VolumeRate::new::<liter_per_second>(flow);
    Figure::exact(flow, Confidence::Measured, &[&HANDBOOK_2021_CH17])
}

/// How strongly the weather of a place drives air through homes: the mean over the year of the flow
/// through each unit of leakage area, as the rule for fresh air counts it.
///
/// # Equation
///
/// w = 1.44 · s
///
/// # Symbols
///
/// | symbol | meaning                                       | unit | in code      |
/// |--------|-----------------------------------------------|------|--------------|
/// | w      | weather and shielding factor                  | –    | return value |
/// | s      | mean flow through each unit of leakage area   | m/s  | `mean`       |
///
/// # Source
///
/// [`INFILTRATION_CREDIT`]; the factor 1.44 from memory. The tables of the standard are not carried
/// here: the models of leakage over the hours of the place stand in.
///
/// # Valid for
///
/// A mean over all hours of a year.
///
/// # Leaves out
///
/// That still hours count for more than windy ones, which takes about a tenth off (judgement).
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Velocity, ratio::ratio, velocity::meter_per_second};
/// use winterseam::air::ventilation::weather_factor;
///
/// let breezy = weather_factor(Velocity::new::<meter_per_second>(0.5));
/// assert!((breezy.get::<ratio>() - 0.72).abs() < 1e-12);
/// ```
#[must_use]
pub fn weather_factor(mean: Velocity) -> Ratio {
    Ratio::new::<ratio>(PER_LEAKAGE * mean.get::<meter_per_second>())
}

/// L/s for each square metre of floor of a home whose leakage and weather factor are both one.
const PER_LEAKAGE: f64 = 1.44;

/// Fresh air that the leaks of a home count for.
///
/// # Equation
///
/// Q = NL · w · F / 1.44
///
/// # Symbols
///
/// | symbol | meaning                      | unit | in code      |
/// |--------|------------------------------|------|--------------|
/// | Q      | air counted                  | L/s  | return value |
/// | NL     | normalized leakage           | –    | `leakage`    |
/// | w      | weather and shielding factor | –    | `weather`    |
/// | F      | area of the floor            | m²   | `floor`      |
///
/// # Source
///
/// [`INFILTRATION_CREDIT`], whose form with the flow at 50 Pa gives the same within 0.2 %.
///
/// # Valid for
///
/// Detached homes by the rule of 2013, which subtracts all of it from [`need`]. The rule of 2010
/// counts less and that since 2016 counts only a share where a fan blows one way (both from memory).
///
/// # Leaves out
///
/// Where the air comes from: a leak from the belly or the roof is no fresh air to wish for.
///
/// # Examples
///
/// ```
/// use uom::si::{area::square_meter, f64::{Area, Ratio}};
/// use uom::si::{ratio::ratio, volume_rate::liter_per_second};
/// use winterseam::air::ventilation::credit;
///
/// let (leakage, weather) = (Ratio::new::<ratio>(0.3869), Ratio::new::<ratio>(0.6));
/// let air = credit(leakage, weather, Area::new::<square_meter>(90.0));
/// assert!((air.best.get::<liter_per_second>() - 14.51).abs() < 0.005);
/// ```
#[must_use]
pub fn credit(leakage: Ratio, weather: Ratio, floor: Area) -> Figure<VolumeRate> {
    let air = (leakage * weather).get::<ratio>() * floor.get::<square_meter>() / PER_LEAKAGE;
    let air = VolumeRate::new::<liter_per_second>(air);
    Figure::exact(air, Confidence::Guessed, &[&INFILTRATION_CREDIT])
}
