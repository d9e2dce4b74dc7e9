//! Heat through the parts of a shell: limits of the standard, film, storm windows, belly.

use super::{btu_h_f, typed};
use crate::harness::Table;
use serde_json::{Value, json};
use uom::si::f64::Ratio;
use uom::si::heat_transfer::btu_it_per_hour_square_foot_degree_fahrenheit;
use uom::si::ratio::ratio;
use winterseam::envelope::{Shell, shell};
use winterseam::home::Home;

fn at(home: &Home, off: f64) -> Shell {
    let mut drawn = home.clone();
    drawn.building.shell_off = Some(Ratio::new::<ratio>(off));
    shell(&drawn)
}

fn all(shell: &Shell) -> f64 {
    btu_h_f(shell.above_floor() + shell.floor)
}

/// Most heat through a shell in the zones of the South, the middle and the North,
/// Btu/(h·ft²·°F): 24 CFR 3280.506(b), read; before October 1994 from memory.
const LIMITS: [(i16, [f64; 3]); 2] = [(2005, [0.116, 0.096, 0.079]), (1988, [0.157, 0.126, 0.104])];

/// Nobody says for which zone a home was built: the usual one must meet the limit of the South, and
/// the best that is possible that of the North.
#[test]
fn homes_could_have_been_built_to_the_federal_limits() {
    for ((year, [south, _, north]), (width, length)) in
        LIMITS.into_iter().flat_map(|limit| [(limit, (14.0, 66.0)), (limit, (28.0, 56.0))])
    {
        let home = typed(&json!({"today": "2026-11-25", "home": {
            "year_built": year, "width_ft": width, "length_ft": length, "belly": "sound",
        }}));
        let feet2 = 2.0 * width * length + 2.0 * (width + length) * 7.5;
        let u = |off| all(&at(&home, off)) / feet2;
        assert!(u(0.0) <= south && u(-1.0) <= north, "{year}: {} {}", u(0.0), u(-1.0));
        // Nor is the usual home better than anybody had to build.
        assert!(u(0.0) > north, "{year}: {}", u(0.0));
    }
}

fn with_window(window: &Value) -> Home {
    typed(&json!({"today": "2026-11-25", "windows": [window]}))
}

/// Heat through each area of the one window of a home.
fn u(window: &Value) -> f64 {
    let home = with_window(window);
    let u = shell(&home).windows / home.windows[0].area();
    u.get::<btu_it_per_hour_square_foot_degree_fahrenheit>()
}

#[test]
fn a_window_with_film_loses_what_the_handbook_says() {
    Table::read("envelope/handbook-fenestration__film").compare(|row| {
        let glazing = row.text("glazing");
        let film = row.text("film") == "yes";
        vec![("u", u(&json!({"glazing": glazing, "film": film})))]
    });
}

#[test]
fn a_storm_window_saves_what_storm_windows_are_said_to_save() {
    let saved = 1.0 - u(&json!({"glazing": "single_storm"})) / u(&json!({"glazing": "single"}));
    assert!((0.25..=0.50).contains(&saved), "{saved}");
}

/// An inner film on a single pane: from a quarter, which is the least that is said of storm windows,
/// to little more than the half that EN 673 gives a pane without a frame.
#[test]
fn the_range_of_what_film_saves_is_as_wide_as_the_sources_say() {
    let window = |film| json!({"glazing": "single", "width_in": 30, "height_in": 40, "film": film});
    let (bare, filmed) = (with_window(&window(false)), with_window(&window(true)));
    let saved = [-1.0, 0.0, 1.0]
        .map(|off| 1.0 - (at(&filmed, off).windows / at(&bare, off).windows).get::<ratio>());
    assert!(saved[0] < saved[1] && saved[1] < saved[2], "{saved:?}");
    assert!((0.20..=0.27).contains(&saved[0]) && saved[2] <= 0.58, "{saved:?}");
}

#[test]
fn a_torn_belly_lets_more_heat_out_and_a_missing_one_most() {
    let floor = |belly: Value| {
        let mut home = json!({"year_built": 1988, "sections": "single"});
        for (key, value) in belly.as_object().expect("fields") {
            home[key] = value.clone();
        }
        btu_h_f(shell(&typed(&json!({"today": "2026-11-25", "home": home}))).floor)
    };
    let sound = floor(json!({"belly": "sound"}));
    let small = floor(json!({"belly": "torn", "belly_hole_in2": 36}));
    let large = floor(json!({"belly": "torn", "belly_hole_in2": 1152}));
    let missing = floor(json!({"belly": "missing"}));
    assert!(sound < small && small < large && large < missing);
}
