//! Heat through panes and film, and how warm their faces are.

use super::gap::gap_conductance;
use crate::units::{celsius, in_celsius, kelvins};
use uom::si::f64::{HeatTransfer, Length, ThermodynamicTemperature};
use uom::si::heat_transfer::watt_per_square_meter_kelvin;
use uom::si::length::meter;

/// Film of the room, W/(m²·K).
const INSIDE: f64 = 7.7;
/// Film outdoors in wind, W/(m²·K).
const OUTSIDE: f64 = 25.0;
/// Conductivity of glass, W/(m·K).
const GLASS: f64 = 1.0;
/// Difference across all gaps together, K.
const ACROSS_GAPS_K: f64 = 15.0;

/// The middle of a window: one or two panes, with or without a film on the room side.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Glazing {
    /// Thickness of each pane.
    pub glass: Length,
    /// Between two panes, or pane and storm window; `None` is a single pane.
    pub pane_gap: Option<Length>,
    /// Between the innermost pane and a film; `None` is no film.
    pub film_gap: Option<Length>,
}

/// Temperatures of a window.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Faces {
    /// The face toward the room: of the film where there is one.
    pub room: ThermodynamicTemperature,
    /// The room-side face of the innermost pane. A film makes it colder: room air that gets behind
    /// the tape leaves frost there.
    pub glass: ThermodynamicTemperature,
}

/// Heat through the middle of a window for each area and kelvin.
///
/// # Equation
/// ```text
/// 1 ÷ U = 1 ÷ h_e + Σ d ÷ λ + Σ 1 ÷ h + 1 ÷ h_i
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `U` | heat for each area and kelvin | W/(m²·K) | returned |
/// | `h_e`, `h_i` | films outdoors and indoors, 25 and 7.7 | W/(m²·K) | `OUTSIDE`, `INSIDE` |
/// | `d`, `λ` | thickness and conductivity of glass | m, W/(m·K) | `glazing.glass`, `GLASS` |
/// | `h` | each gap, [`gap_conductance`]; two gaps share 15 K as they resist | W/(m²·K) | `gaps` |
///
/// # Source
/// [`EN_673`](crate::sources::windows::EN_673),
/// [`FILM_AS_PANE`](crate::sources::windows::FILM_AS_PANE)
///
/// # Valid for
/// Upright windows without coating.
///
/// # Leaves out
/// The frame, through which much of an old aluminium window's heat goes; leaks of the sash.
///
/// # Examples
/// ```
/// use winterseam::windows::{Glazing, u_value};
/// use uom::si::{f64::Length, length::millimeter, heat_transfer::watt_per_square_meter_kelvin};
///
/// let millimetres = |mm| Length::new::<millimeter>(mm);
/// let single = Glazing { glass: millimetres(3.0), pane_gap: None, film_gap: None };
/// let film = Glazing { film_gap: Some(millimetres(25.0)), ..single };
/// let cut = 1.0 - (u_value(&film) / u_value(&single)).value;
/// assert!((cut - 0.516).abs() < 0.003);
/// ```
#[must_use]
pub fn u_value(glazing: &Glazing) -> HeatTransfer {
    let resistance = 1.0 / OUTSIDE + behind_outdoor_film(glazing) + 1.0 / INSIDE;
    HeatTransfer::new::<watt_per_square_meter_kelvin>(1.0 / resistance)
}

/// How warm the faces of a window are.
///
/// # Equation
/// ```text
/// T_room = T_i − U · (T_i − T_o) ÷ h_i, T_glass = T_room − U · (T_i − T_o) ÷ h_film
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | `T_room`, `T_glass` | faces | °C | `Faces` |
/// | `T_i`, `T_o` | room and outdoor air | °C | `indoor`, `outdoor` |
/// | `U` | of [`u_value`] | W/(m²·K) | `u` |
/// | `h_i` | film of the room, 7.7 | W/(m²·K) | `INSIDE` |
/// | `h_film` | gap behind a film; without one both faces are the same | W/(m²·K) | `film` |
///
/// # Source
/// [`EN_673`](crate::sources::windows::EN_673)
///
/// # Valid for
/// The middle of the window.
///
/// # Leaves out
/// The foot of the pane and the frame, which are colder and sweat first.
///
/// # Examples
/// ```
/// use winterseam::windows::{Glazing, faces};
/// use winterseam::units::fahrenheit;
/// use uom::si::{f64::Length, length::millimeter};
///
/// let millimetres = |mm| Length::new::<millimeter>(mm);
/// let glass = millimetres(3.0);
/// let film = Glazing { glass, pane_gap: None, film_gap: Some(millimetres(25.0)) };
/// let cold = faces(&film, fahrenheit(70.0), fahrenheit(0.0));
/// assert!(cold.room > fahrenheit(40.0) && cold.glass < fahrenheit(20.0));
/// ```
#[must_use]
pub fn faces(
    glazing: &Glazing,
    indoor: ThermodynamicTemperature,
    outdoor: ThermodynamicTemperature,
) -> Faces {
    let u = u_value(glazing).get::<watt_per_square_meter_kelvin>();
    let flow = u * (in_celsius(indoor) - in_celsius(outdoor));
    let room = in_celsius(indoor) - flow / INSIDE;
    let film = gaps(glazing)[1].map_or(0.0, |conducts| flow / conducts);
    Faces { room: celsius(room), glass: celsius(room - film) }
}

/// Panes and gaps, m²·K/W.
fn behind_outdoor_film(glazing: &Glazing) -> f64 {
    let panes = if glazing.pane_gap.is_some() { 2.0 } else { 1.0 };
    let glass = panes * glazing.glass.get::<meter>() / GLASS;
    glass + gaps(glazing).into_iter().flatten().map(|conducts| 1.0 / conducts).sum::<f64>()
}

/// Conductance of the gap between panes and of that behind a film, W/(m²·K).
///
/// Two gaps share the difference as they resist; each turn puts the shares of the last one in. What
/// is left after ten turns is below rounding.
fn gaps(glazing: &Glazing) -> [Option<f64>; 2] {
    const TURNS: u8 = 10;
    let widths = [glazing.pane_gap, glazing.film_gap];
    let count = widths.iter().flatten().count().max(1);
    let mut shares = [1.0 / f64::from(u8::try_from(count).unwrap_or(1)); 2];
    let mut conducts = [None; 2];
    for _ in 0..TURNS {
        for at in 0..2 {
            let apart = kelvins(ACROSS_GAPS_K * shares[at]);
            conducts[at] = widths[at]
                .map(|width| gap_conductance(width, apart).get::<watt_per_square_meter_kelvin>());
        }
        let resists = conducts.map(|conducts| conducts.map_or(0.0, |h: f64| 1.0 / h));
        let whole = resists[0] + resists[1];
        if whole > 0.0 {
            shares = resists.map(|resists| resists / whole);
        }
    }
    conducts
}
