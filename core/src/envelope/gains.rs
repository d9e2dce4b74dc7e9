//! Heat that people, appliances and the sun bring a home for nothing.

use super::shell::shell;
use super::sun_on_walls::sun_on_walls;
use super::u_values::{Three, between};
use crate::climate::{Normals, Shore, sun_above_air, sun_on_ground};
use crate::home::Home;
use crate::units::power::btu_per_hour;
use uom::si::area::square_foot;
use uom::si::f64::{Angle, Power, Time};
use uom::si::{ratio::ratio, time::day};

/// Btu a day; [`INTERNAL_GAINS`](crate::sources::envelope::INTERNAL_GAINS).
const EACH_HOME: f64 = 17_900.0;
const EACH_FT2: f64 = 23.8;
const EACH_BEDROOM: f64 = 4_104.0;
/// What homes differ by: the more a home is given, the less it has to buy.
const SPREAD: Three = [1.33, 1.0, 0.67];
/// Share of the sun that reaches the glass; [`SHADE`](crate::sources::envelope::SHADE).
const UNSHADED: Three = [0.9, 0.7, 0.5];
/// As in the need of fresh air, where nobody counted.
const USUAL_BEDROOMS: u8 = 2;

/// Heat that people and appliances give off, as a mean over day and night.
///
/// # Equation
/// ```text
/// P = 17 900 + 23.8 · A + 4 104 · n
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `P` | heat | Btu/day | returned |
/// | `A` | floor | ft² | `building.size` |
/// | `n` | bedrooms, two where nobody counted | – | `building.bedrooms` |
///
/// # Source
/// [`INTERNAL_GAINS`](crate::sources::envelope::INTERNAL_GAINS)
///
/// # Valid for
/// People as many as the bedrooms and one.
///
/// # Leaves out
/// Homes with much idle equipment. Hot water and its tank are counted where they are heated.
///
/// # Examples
/// ```
/// # use winterseam::home::Building;
/// use winterseam::envelope::internal_gains;
/// use winterseam::units::power::btu_per_hour;
///
/// let single = Building { bedrooms: Some(2), ..Building::default() };
/// assert!((internal_gains(&single).get::<btu_per_hour>() - 2004.0).abs() < 1.0);
/// ```
#[must_use]
pub fn internal_gains(building: &crate::home::Building) -> Power {
    let (width, length) = building.size();
    let bedrooms = f64::from(building.bedrooms.unwrap_or(USUAL_BEDROOMS));
    let a_day =
        EACH_HOME + EACH_FT2 * (width * length).get::<square_foot>() + EACH_BEDROOM * bedrooms;
    let off = building.shell_off.map_or(0.0, |off| off.get::<ratio>());
    Power::new::<btu_per_hour>(a_day / 24.0) * between(SPREAD, off)
}

/// Heat that the sun brings through the windows, as a mean over day and night of each month.
///
/// # Equation
/// ```text
/// P = F · A · S ÷ 1 day
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `P` | heat | W | returned |
/// | `A` | glass that would let in all sun | m² | `Shell::solar_aperture` |
/// | `S` | [`sun_on_walls`] of an ordinary day, in the middle of the month | J/m² | `sun` |
/// | `F` | what shade leaves of it | – | `UNSHADED` |
///
/// # Source
/// [`SHADE`](crate::sources::envelope::SHADE),
/// [`SUN_THROUGH_GLASS`](crate::sources::envelope::SUN_THROUGH_GLASS), [`sun_on_walls`]
///
/// # Valid for
/// Windows to all four sides.
///
/// # Leaves out
/// Glass that faces mostly south or north: up to twice or half as much in winter. Sun on opaque
/// walls and roof.
///
/// # Examples
/// ```
/// # #[cfg(feature = "atlas")] {
/// use winterseam::climate::{Atlas, Shore};
/// use winterseam::envelope::solar_gains;
/// use winterseam::wire::{Tree, home};
///
/// let walk = Tree::from_json(r#"{"today": "2026-11-25"}"#).unwrap();
/// let home = home(&walk).unwrap();
/// let station = Atlas::embedded().place("59801").expect("a ZIP area of the tables").station;
/// let sun = solar_gains(&home, &station.normals, station.latitude, Shore::Inland);
/// assert!(sun[6] > sun[11]);
/// # }
/// ```
#[must_use]
pub fn solar_gains(home: &Home, normals: &Normals, latitude: Angle, shore: Shore) -> [Power; 12] {
    let off = home.building.shell_off.map_or(0.0, |off| off.get::<ratio>());
    let takes = shell(home).solar_aperture * between(UNSHADED, off);
    std::array::from_fn(|month| {
        let day_of_year = middle(month);
        let above = sun_above_air(latitude, day_of_year);
        let ground = sun_on_ground(above, normals.max[month], normals.min[month], shore);
        takes * sun_on_walls(above, ground, latitude, day_of_year) / Time::new::<day>(1.0)
    })
}

/// Day of the year in the middle of a month: 30.4 days for each, less 15, by
/// [`FAO_56`](crate::sources::climate::FAO_56).
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "15 to 349")]
fn middle(month: usize) -> u16 {
    let month = u8::try_from(month).unwrap_or(0) + 1;
    (30.4 * f64::from(month) - 15.0) as u16
}
