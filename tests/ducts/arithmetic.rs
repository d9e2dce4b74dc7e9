//! Small sums of the trade that the models must keep.

use uom::si::area::square_centimeter;
use uom::si::f64::{Area, Length, MassDensity, Pressure, Ratio, VolumeRate};
use uom::si::length::foot;
use uom::si::mass_density::kilogram_per_cubic_meter;
use uom::si::pressure::pascal;
use uom::si::ratio::ratio;
use uom::si::volume_rate::{cubic_foot_per_minute, cubic_meter_per_second, liter_per_second};
use winterseam::physics::openings::through;
use winterseam::physics::power_law::PowerLaw;
use winterseam::properties::air::{Air, heat_capacity, standard_pressure};
use winterseam::units::{carried, fahrenheit, kelvins, pressure::inch_of_water};

fn cfm(flow: f64) -> VolumeRate {
    VolumeRate::new::<cubic_foot_per_minute>(flow)
}

/// Dry air of 70 °F at the sea carries 1.0802 Btu/(h·°F) for each cfm (`CoolProp`), within 0.002; 1.2072
/// W for each L/s and kelvin by 0.075 lb/ft³ and 0.24 Btu/(lb·°F).
#[test]
fn air_carries_what_everyone_multiplies_with() {
    let air = Air::dry(fahrenheit(70.0), Pressure::new::<pascal>(101_325.0)).expect("air");
    let watts = carried(cfm(1.0), air.density(), heat_capacity(), kelvins(1.0 / 1.8));
    assert!((watts.value / 0.293_071 - 1.0802).abs() < 0.002, "{}", watts.value);
    let flow = VolumeRate::new::<liter_per_second>(1.0);
    let si = carried(flow, super::density(), heat_capacity(), kelvins(1.0)).value;
    assert!((si - 1.2072).abs() < 0.002, "{si}");
}

/// Standard atmosphere by `PsychroLib` 2.5.0: 0.8320 at 5,000 ft, 0.6877 at 10,000 ft, within 0.0005.
#[test]
fn air_thins_with_height() {
    let sea = standard_pressure(Length::new::<foot>(0.0)).expect("the sea");
    for (feet, share) in [(5_000.0, 0.8320), (10_000.0, 0.6877)] {
        let there = standard_pressure(Length::new::<foot>(feet)).expect("a height");
        assert!(((there / sea).get::<ratio>() - share).abs() < 0.000_5, "{feet}");
    }
}

/// 25 Pa drive air at 6.455 m/s (Python 3.11, 1.2 kg/m³); a square centimetre lets 0.387 L/s pass.
#[test]
fn a_jet_is_as_fast_as_its_pressure() {
    let area = Area::new::<square_centimeter>(1.0);
    let density = MassDensity::new::<kilogram_per_cubic_meter>(1.2);
    let flow = through(area, Pressure::new::<pascal>(25.0), density);
    let speed = flow.get::<cubic_meter_per_second>() / 0.6 / 1e-4;
    assert!((speed - 6.455).abs() < 0.005, "{speed}");
    assert!((flow.get::<liter_per_second>() - 0.3873).abs() < 0.000_5);
}

/// 100 cfm at 25 Pa are 151.57 at 50 Pa and 57.71 at 10 Pa with the power 0.6; 1,000 cfm at 50 Pa with
/// 0.65 let 100 cfm press a home by 1.447 Pa (Python 3.11).
#[test]
fn leaks_follow_their_power() {
    let pascals = Pressure::new::<pascal>;
    let ducts =
        PowerLaw::through(cfm(100.0), pascals(25.0), Ratio::new::<ratio>(0.6)).expect("a law");
    let at = |pa| ducts.flow(pascals(pa)).get::<cubic_foot_per_minute>();
    assert!((at(50.0) - 151.57).abs() < 0.01 && (at(10.0) - 57.71).abs() < 0.01);
    let home =
        PowerLaw::through(cfm(1000.0), pascals(50.0), Ratio::new::<ratio>(0.65)).expect("a law");
    let fan = home.flow(pascals(1.447)).get::<cubic_foot_per_minute>();
    // Half of the last digit of the pressure.
    assert!((fan - 100.0).abs() < 0.05, "{fan}");
}

/// 0.3 inches of water are 74.73 Pa, 0.05 are 12.45 Pa: within 0.02.
#[test]
fn inches_of_water_are_pascals() {
    for (inches, pa) in [(0.3, 74.73), (0.27, 67.25), (0.05, 12.45)] {
        let pressure = Pressure::new::<inch_of_water>(inches).get::<pascal>();
        assert!((pressure - pa).abs() < 0.02, "{pressure}");
    }
}
