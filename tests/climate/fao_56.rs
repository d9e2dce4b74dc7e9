//! Sunshine of a day, against the worked examples of the paper.

use crate::harness::Table;
use uom::si::angle::degree;
use uom::si::f64::Angle;
use uom::si::radiant_exposure::joule_per_square_meter;
use winterseam::climate::{Shore, sun_above_air, sun_on_ground};
use winterseam::units::celsius;

#[test]
fn the_sun_shines_as_in_the_worked_examples() {
    Table::read("climate/fao-56-1998__examples").compare(|row| {
        let latitude = Angle::new::<degree>(row.number("latitude_degrees"));
        let day = row.text("day").parse().expect("a day");
        let above = sun_above_air(latitude, day);
        let mut ours = vec![("above_air_mj_m2", above.get::<joule_per_square_meter>() / 1e6)];
        if row.has("max_c") {
            let (max, min) = (celsius(row.number("max_c")), celsius(row.number("min_c")));
            let ground = sun_on_ground(above, max, min, Shore::Inland);
            ours.push(("ground_mj_m2", ground.get::<joule_per_square_meter>() / 1e6));
        }
        ours
    });
}

#[test]
fn the_pole_has_its_night_and_its_day() {
    let pole = |day| sun_above_air(Angle::new::<degree>(90.0), day).value;
    assert!(pole(355).abs() < 1e-6 && pole(172) > 40e6);
}
