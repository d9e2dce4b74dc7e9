//! An extension guide's watts for bare pipe. It names no wind, so its numbers bound ours.

use super::{FOOT_M, bare, windy};
use crate::harness::{Row, Table, Tally};
use uom::si::linear_power_density::watt_per_meter;
use winterseam::physics::pipe::heat_loss;
use winterseam::units::fahrenheit;

fn watts(row: &Row, wind_mph: f64) -> f64 {
    let around = windy(row.number("air_f"), wind_mph);
    let loss = heat_loss(&bare(row, 0.9), fahrenheit(row.number("pipe_f")), around);
    loss.per_length.get::<watt_per_meter>() * FOOT_M
}

#[test]
fn watts_of_the_guide_lie_between_still_air_and_a_light_wind() {
    let mut tally = Tally::default();
    for row in Table::read("freeze/missouri-g1408__bare-steel").rows() {
        let theirs = row.number("watts_w_ft");
        let (still, windy) = (watts(row, 0.0), watts(row, 5.0));
        let id = row.text("id");
        tally.note(id, "still", (still, theirs), still < theirs, None);
        tally.note(id, "5 mph", (windy, theirs), theirs < windy, None);
    }
    tally.report("freeze/missouri-g1408__bare-steel");
}
