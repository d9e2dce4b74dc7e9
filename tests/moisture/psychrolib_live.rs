//! `PsychroLib` asked live: the same equations from other hands, on many points.

use super::moist_air;
use crate::harness::{Tally, numbers, peer};
use uom::si::{
    available_energy::joule_per_kilogram, mass_density::kilogram_per_cubic_meter, pressure::pascal,
    ratio::ratio, thermodynamic_temperature::degree_celsius,
};

/// Both write the handbook's equations with the handbook's constants in double precision, so only
/// rounding parts them: some ulps of an exponential of numbers near 30.
const SAME_EQUATIONS: f64 = 1e-12;

/// `PsychroLib` ends its search for the dew point at steps of 0.001 K.
const DEW_POINT_K: f64 = 0.001;

/// The fewest points that make the check worth its name.
const POINTS: usize = 500;

#[test]
fn moist_air_is_that_of_psychrolib() {
    let mut tally = Tally::default();
    let rows = peer("moist_air.py");
    assert!(rows.len() >= POINTS, "only {} points", rows.len());
    for row in &rows {
        compare(numbers(row), &mut tally);
    }
    tally.report("moisture/psychrolib-live");
}

/// Temperature, humidity, pressure; then saturation pressure, humidity ratio, dew point, enthalpy,
/// density.
fn compare(row: [f64; 8], tally: &mut Tally) {
    let [t, share, p, saturation, humidity, dew, enthalpy, density] = row;
    let air = moist_air(t, share, p);
    let near = SAME_EQUATIONS;
    // Enthalpy passes through zero: its terms, not their sum, set the scale of the rounding.
    let heat = 1006.0 * t.abs() + 2.5e6 * humidity;
    let id = format!("{t} °C {share} {p} Pa");
    let mut note = |column: &str, ours: f64, theirs: f64, by: f64| {
        tally.note(&id, column, (ours, theirs), (ours - theirs).abs() <= by, None);
    };
    let our_dew = air.dew_point().expect("vapour").get::<degree_celsius>();
    note("saturation", air.saturation_pressure().get::<pascal>(), saturation, near * saturation);
    note("humidity", air.humidity_ratio().get::<ratio>(), humidity, near * humidity);
    note("dew point", our_dew, dew, DEW_POINT_K);
    note("enthalpy", air.enthalpy().get::<joule_per_kilogram>(), enthalpy, near * heat);
    note("density", air.density().get::<kilogram_per_cubic_meter>(), density, near * density);
}
