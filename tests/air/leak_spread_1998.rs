//! Walker and Wilson 1998: leaks part by part, and the handbook's tables made of them.

use crate::harness::{Row, Table};
use uom::si::f64::{Area, DynamicViscosity, Length, MassDensity, Ratio, Velocity};
use uom::si::{
    area::square_meter, dynamic_viscosity::pascal_second, length::meter,
    mass_density::kilogram_per_cubic_meter, ratio::ratio, velocity::meter_per_second,
    volume_rate::cubic_meter_per_second,
};
use winterseam::air::enhanced::{Foundation, LeakFlow, usual_exponent};
use winterseam::air::spread::{Flue, Leaks, Spread, Weather, flow};
use winterseam::physics::power_law::PowerLaw;
use winterseam::properties::air::Air;
use winterseam::units::{celsius, kelvins};

/// A home from the shares of its leaks: floor and ceiling together, ceiling less floor, flue.
fn spread([level, uneven, flue]: [f64; 3], ceiling_m: f64, flue_m: f64) -> Spread {
    let area = Area::new::<square_meter>;
    let [height, top] = [ceiling_m, flue_m].map(Length::new::<meter>);
    let leaks = Leaks {
        ceiling: area(0.5 * (level + uneven)),
        floor: area(0.5 * (level - uneven)),
        walls: area(1.0 - level - flue),
        flue: Some(Flue { area: area(flue), top }),
        height,
    };
    Spread::of(&leaks).unwrap()
}

fn weather(apart_k: f64, wind_m_s: f64) -> Weather {
    let density = MassDensity::new::<kilogram_per_cubic_meter>(1.2);
    Weather {
        air: Air::new(density, DynamicViscosity::new::<pascal_second>(1.82e-5)).unwrap(),
        room: celsius(20.0),
        apart: kelvins(apart_k),
        wind: Velocity::new::<meter_per_second>(wind_m_s),
    }
}

fn foundation_of(row: &Row) -> Foundation {
    match row.text("foundation") {
        "slab" => Foundation::Slab,
        "crawl_space" => Foundation::CrawlSpace,
        other => panic!("foundation {other:?}"),
    }
}

/// Source: the equations, in cases computed apart.
#[test]
fn leaks_part_by_part() {
    Table::read("air/leak-spread-1998").compare(|row| {
        let shares = ["level", "uneven", "flue"].map(|column| row.number(column));
        let home = spread(shares, 2.5, 2.5 * row.number("flue_height"));
        let [exponent, walls] =
            ["exponent", "walls_shelter"].map(|column| Ratio::new::<ratio>(row.number(column)));
        let leaks = PowerLaw::new(0.05, exponent).unwrap();
        let shelter = home.shelter(walls, Ratio::new::<ratio>(1.0)).get::<ratio>();
        let foundation = foundation_of(row);
        let hour = weather(row.number("apart_k"), shelter * row.number("eaves_wind_m_s"));
        let air = flow(&leaks, &home, &hour, foundation).unwrap();
        vec![
            ("shelter", shelter),
            ("stack_factor", home.stack_factor(exponent).get::<ratio>()),
            ("wind_factor", home.wind_factor(exponent, foundation).get::<ratio>()),
            ("stack_m3_s", air.stack.get::<cubic_meter_per_second>()),
            ("wind_m3_s", air.wind.get::<cubic_meter_per_second>()),
            ("flow_m3_s", air.flow.best.get::<cubic_meter_per_second>()),
        ]
    });
}

/// Source: ASHRAE Handbook: Fundamentals 2021 (SI), chapter 16, table 7.
#[test]
fn the_coefficients_of_the_enhanced_model() {
    let leaks = PowerLaw::new(1.0, usual_exponent()).unwrap();
    Table::read("air/handbook-2021-ch16__enhanced-coefficients").compare(|row| {
        let (ceiling_m, flue) = (2.5 * row.number("storeys"), row.number("flue"));
        let level = row.number("level") * (1.0 - flue);
        let home = spread([level, 0.0, flue], ceiling_m, ceiling_m + 2.0);
        let one_of_each = |on| flow(&leaks, &home, &weather(1.0, 1.0), on).unwrap();
        let wind = |air: LeakFlow| air.wind.get::<cubic_meter_per_second>();
        let slab = one_of_each(Foundation::Slab);
        vec![
            ("stack", slab.stack.get::<cubic_meter_per_second>()),
            ("wind_slab", wind(slab)),
            ("wind_crawl_space", wind(one_of_each(Foundation::CrawlSpace))),
        ]
    });
}

/// Source: the same, table 9.
#[test]
fn the_shelter_of_homes_with_a_flue() {
    Table::read("air/handbook-2021-ch16__flue-shelter").compare(|row| {
        let home = spread([0.4, 0.0, row.number("flue")], 2.5, 4.5);
        let walls = Ratio::new::<ratio>(row.number("walls"));
        let unsheltered = Ratio::new::<ratio>(1.0);
        vec![("with_flue", home.shelter(walls, unsheltered).get::<ratio>())]
    });
}
