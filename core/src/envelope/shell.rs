//! Heat through the shell of a home: walls, roof, floor, windows and doors.

use super::u_values::{DECK_R, Three, Usual, between, btu, floor, sun_let_in, window};
use crate::home::{Building, Home, Panes, Window};
use crate::sources::envelope::{
    AIR_BEHIND_FILM, OPEN_BELLY, SHELL_BY_YEARS, SUN_THROUGH_GLASS, USUAL_WINDOWS, WINDOW_U_VALUES,
};
use crate::sources::trade::USUAL_SIZES;
use crate::sources::{Confidence, Figure, Source};
use uom::si::f64::{Area, HeatTransfer, ThermalConductance};
use uom::si::{area::square_foot, ratio::ratio};

/// Glass that nobody listed, as a share of the floor.
const GLASS_OF_FLOOR: Three = [0.08, 0.12, 0.15];
/// Two doors, ft².
const DOORS_FT2: f64 = 40.0;

/// Heat through the shell of a home for each degree between rooms and outdoors.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shell {
    /// Walls without windows and doors.
    pub walls: ThermalConductance,
    /// Ceiling and roof.
    pub roof: ThermalConductance,
    /// From the rooms to the air below the belly.
    pub floor: ThermalConductance,
    /// Windows, with film where they have one.
    pub windows: ThermalConductance,
    /// Outside doors.
    pub doors: ThermalConductance,
    /// The floor.
    pub floor_area: Area,
    /// Glass, as much of it as would let in all sun that falls on it.
    pub solar_aperture: Area,
}

impl Shell {
    /// All of it that meets outdoor air: everything but the floor.
    #[must_use]
    pub fn above_floor(&self) -> ThermalConductance {
        self.walls + self.roof + self.windows + self.doors
    }
}

/// The shell with a range for each part, for answers that say how sure they are.
#[derive(Debug, Clone, PartialEq)]
pub struct ShellSeen {
    /// Walls without windows and doors.
    pub walls: Figure<ThermalConductance>,
    /// Ceiling and roof.
    pub roof: Figure<ThermalConductance>,
    /// From the rooms to the air below the belly.
    pub floor: Figure<ThermalConductance>,
    /// Windows, with film where they have one.
    pub windows: Figure<ThermalConductance>,
    /// Outside doors.
    pub doors: Figure<ThermalConductance>,
    /// Glass, as much of it as would let in all sun that falls on it.
    pub solar_aperture: Figure<Area>,
}

/// Heat through the shell of a home, as it is known or as a draw has set it.
///
/// # Equation
/// ```text
/// K = U · A for each part; walls P · H − windows − doors; a window with film 1 ÷ (1 ÷ U + 1 ÷ h);
/// floor U + s · (1 ÷ (R_d + R_b) − U)
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `K` | heat for each degree | W/K | the parts of [`Shell`] |
/// | `U` | by year of building, panes | W/(m²·K) | `Usual`, `window_of` |
/// | `P`, `H` | round the home, height of its rooms | m | `Building::size`, `Building::wall_height` |
/// | `h` | air behind a film | W/(m²·K) | `BEHIND_FILM` |
/// | `s` | share of the floor without its belly | – | `open_share` |
/// | `R_d`, `R_b` | deck, and what is left of an open belly | m²·K/W | `DECK_R`, `OPEN_BELLY_R` |
///
/// # Source
/// [`SHELL_BY_YEARS`], [`WINDOW_U_VALUES`], [`AIR_BEHIND_FILM`], [`OPEN_BELLY`], [`USUAL_WINDOWS`],
/// [`SUN_THROUGH_GLASS`], [`USUAL_SIZES`]
///
/// # Valid for
/// Manufactured homes. `building.shell_off` says where between least and most all that nobody could
/// see lies together.
///
/// # Leaves out
/// Air, which is counted on its own; rooms built on; nominal widths, which are four to eight inches
/// more than a section has.
///
/// # Examples
/// ```
/// use winterseam::envelope::ShellSeen;
/// use winterseam::home::{Building, Sections};
///
/// let built = |year| Building {
///     sections: Some(Sections::Single),
///     year_built: Some(year),
///     ..Building::default()
/// };
/// let walls = |year| ShellSeen::of(&built(year), &[]).walls.best;
/// assert!(walls(1972) > walls(1988) && walls(1988) > walls(2005));
/// ```
#[must_use]
pub fn shell(home: &Home) -> Shell {
    let off = home.building.shell_off.map_or(0.0, |off| off.get::<ratio>());
    at(&home.building, &home.windows, off)
}

/// The shell at one place between least and most.
fn at(building: &Building, windows: &[Window], off: f64) -> Shell {
    let usual = Usual::of(building);
    let u = |three: Three| btu(between(three, off));
    let (width, length) = building.size();
    let floor_area = width * length;
    let doors = Area::new::<square_foot>(DOORS_FT2);
    let glass = Glass::of(building, windows, floor_area, off);
    let gross = 2.0 * (width + length) * Building::wall_height();
    Shell {
        walls: through(u(usual.walls), (gross - glass.area - doors).max(Area::default())),
        roof: through(u(usual.roof), floor_area),
        floor: through(floor(building, off), floor_area),
        windows: glass.heat,
        doors: through(u(usual.doors), doors),
        floor_area,
        solar_aperture: glass.aperture,
    }
}

fn through(u: HeatTransfer, area: Area) -> ThermalConductance {
    u * area
}

/// All windows together.
struct Glass {
    area: Area,
    heat: ThermalConductance,
    aperture: Area,
}

impl Glass {
    /// Those listed, or as many as are usual.
    fn of(building: &Building, listed: &[Window], floor: Area, off: f64) -> Self {
        if listed.is_empty() {
            let area = floor * between(GLASS_OF_FLOOR, off);
            let u = btu(between(Usual::of(building).windows, off));
            let aperture = area * sun_let_in(None::<Panes>, false, off);
            return Self { area, heat: through(u, area), aperture };
        }
        let sun = |w: &Window| sun_let_in(w.panes, w.film == Some(true), off);
        Self {
            area: listed.iter().map(Window::area).sum(),
            heat: listed.iter().map(|w| through(window(w, building, off), w.area())).sum(),
            aperture: listed.iter().map(|w| w.area() * sun(w)).sum(),
        }
    }
}

impl Shell {
    /// Deck and carpet, between the rooms and the ducts in the belly; never less than the floor as a
    /// whole.
    #[must_use]
    pub fn deck(&self) -> ThermalConductance {
        through(btu(1.0 / DECK_R), self.floor_area).max(self.floor)
    }
}

impl ShellSeen {
    /// The shell at its least, usual and most.
    #[must_use]
    pub fn of(building: &Building, windows: &[Window]) -> Self {
        let [small, usual, large] = building.sizes();
        let [low, best, high] = [(small, -1.0), (usual, 0.0), (large, 1.0)]
            .map(|(size, off)| at(&building.of_size(size), windows, off));
        let years = ["home.year_built", "home.width_ft", "home.length_ft", "home.sections"];
        let of_years = |part: fn(&Shell) -> ThermalConductance| {
            figure(
                part,
                [&low, &best, &high],
                Confidence::Guessed,
                &[&SHELL_BY_YEARS, &USUAL_SIZES],
            )
            .from_inputs(years)
        };
        let listed = |window: &Window| window.panes.is_some() && window.width.is_some();
        let all_listed = !windows.is_empty() && windows.iter().all(listed);
        let glass = if all_listed { Confidence::Seen } else { Confidence::Guessed };
        let glass_inputs = if windows.is_empty() { years.to_vec() } else { vec!["windows"] };
        let of_glass: &[&Source] = &[&WINDOW_U_VALUES, &AIR_BEHIND_FILM, &USUAL_WINDOWS];
        let sun: &[&Source] = &[&SUN_THROUGH_GLASS, &USUAL_WINDOWS];
        let mut below = of_years(|shell| shell.floor);
        below.sources.push(&OPEN_BELLY);
        below.inputs.extend(["home.belly", "home.belly_hole_in2"].map(String::from));
        Self {
            walls: of_years(|shell| shell.walls),
            roof: of_years(|shell| shell.roof),
            floor: below,
            windows: figure(|shell| shell.windows, [&low, &best, &high], glass, of_glass)
                .from_inputs(glass_inputs.clone()),
            doors: of_years(|shell| shell.doors),
            solar_aperture: figure(|shell| shell.solar_aperture, [&low, &best, &high], glass, sun)
                .from_inputs(glass_inputs),
        }
    }
}

/// One part of the shell with its range.
fn figure<Q: Copy + PartialOrd>(
    part: fn(&Shell) -> Q,
    [low, best, high]: [&Shell; 3],
    confidence: Confidence,
    sources: &[&'static Source],
) -> Figure<Q> {
    Figure::exact(part(best), confidence, sources).between(part(low), part(high))
}
