//! What must hold for every gap, whatever the numbers.

use super::{slit, table_air};
use uom::si::area::square_meter;
use uom::si::f64::{Area, Pressure, Velocity};
use uom::si::{
    pressure::pascal, ratio::ratio, velocity::meter_per_second, volume_rate::liter_per_second,
};
use winterseam::air::infiltration::{Coefficients, Storeys};
use winterseam::home::Shelter;
use winterseam::physics::gap::{Slit, flow, leakage_area, local_exponent};
use winterseam::physics::openings::in_series;
use winterseam::properties::air::Air;
use winterseam::units::kelvins;

const WIDTHS_MM: [f64; 7] = [0.1, 0.5, 1.0, 2.0, 5.0, 12.0, 50.0];
const DEPTHS_MM: [f64; 6] = [0.0, 1.0, 5.0, 20.0, 45.0, 150.0];
const PRESSURES_PA: [f64; 5] = [0.01, 1.0, 4.0, 10.0, 50.0];

fn litres(slit: &Slit, p: f64) -> f64 {
    flow(slit, Pressure::new::<pascal>(p), &table_air()).get::<liter_per_second>()
}

fn rises(values: &[f64]) -> bool {
    values.windows(2).all(|pair| pair[0] < pair[1])
}

#[test]
fn a_wider_gap_leaks_more_and_a_deeper_one_less() {
    for p in PRESSURES_PA {
        for depth in DEPTHS_MM {
            assert!(rises(&WIDTHS_MM.map(|width| litres(&slit(1.0, width, depth, 0), p))));
        }
        // From five widths of depth on; before, the edge that is lost outweighs the friction won.
        for width in [0.1, 0.5, 1.0] {
            assert!(rises(&[150.0, 45.0, 20.0, 5.0].map(|z| litres(&slit(1.0, width, z, 0), p))));
        }
    }
}

#[test]
fn more_pressure_drives_more_air_and_a_corner_less() {
    for width in WIDTHS_MM {
        assert!(rises(&PRESSURES_PA.map(|p| litres(&slit(1.0, width, 45.0, 0), p))));
        let by_bends = [3, 2, 1, 0].map(|bends| litres(&slit(1.0, width, 45.0, bends), 4.0));
        assert!(rises(&by_bends));
    }
}

#[test]
fn the_flow_has_no_jump_where_the_edge_term_ends_or_the_depth_begins() {
    for width in WIDTHS_MM {
        for depth in [0.0, 5.0 * width] {
            let a_little = 1e-6 * width;
            let before = litres(&slit(1.0, width, (depth - a_little).max(0.0), 0), 4.0);
            let after = litres(&slit(1.0, width, depth + a_little, 0), 4.0);
            // A millionth of a width moves edge and friction by a few millionths.
            assert!((before - after).abs() < 1e-5 * before, "{width} {depth}");
        }
    }
}

#[test]
fn the_local_exponent_is_the_slope_of_the_flow() {
    for width in WIDTHS_MM {
        for p in PRESSURES_PA {
            let gap = slit(1.0, width, 45.0, 1);
            let (below, above) = (p * (1.0 - 1e-6), p * (1.0 + 1e-6));
            let slope = (litres(&gap, above) / litres(&gap, below) - 1.0) / (above / below - 1.0);
            let n = local_exponent(&gap, Pressure::new::<pascal>(p), &table_air()).get::<ratio>();
            // A chord over two millionths of the pressure is off by no more than that.
            assert!((n - slope).abs() < 2e-6, "{width} {p}: {n} {slope}");
            assert!((0.5..=1.0).contains(&n));
        }
    }
}

/// The pressure between two sharp openings is where as much air comes in as goes out.
#[test]
fn two_openings_in_series_pass_what_the_pressure_between_them_lets_pass() {
    let air = Air::of_a_room();
    let (first, second) = (slit(1.0, 4.0, 0.0, 0), slit(1.0, 9.0, 0.0, 0));
    let (mut low, mut high) = (0.0, 4.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if litres(&first, middle) < litres(&second, 4.0 - middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    let area = in_series(leakage_area(&first, &air), leakage_area(&second, &air));
    let by_area = area.get::<square_meter>() * (8.0_f64 / 1.204).sqrt() * 1000.0;
    assert!((by_area - litres(&first, low)).abs() < 1e-9 * by_area);
}

#[test]
fn the_order_of_openings_in_series_does_not_matter() {
    let area = Area::new::<square_meter>;
    let (a, b, c) = (area(0.002), area(0.0015), area(0.01));
    let one_way = in_series(in_series(a, b), c);
    let other_way = in_series(a, in_series(c, b));
    assert!((one_way - other_way).abs() < area(1e-15));
    assert!(one_way < b, "a series is narrower than its narrowest opening");
}

#[test]
fn a_home_leaks_less_behind_more_shelter_and_more_in_more_storeys() {
    let speed = |shelter, storeys| {
        let wind = Velocity::new::<meter_per_second>(4.0);
        Coefficients::of(shelter, storeys).speed(kelvins(20.0), wind).get::<meter_per_second>()
    };
    for storeys in [Storeys::One, Storeys::Two, Storeys::Three] {
        let closing_in = [
            Shelter::NeighboursClose,
            Shelter::NeighboursApart,
            Shelter::HomesAcrossRoad,
            Shelter::LoneHome,
            Shelter::OpenGround,
        ];
        assert!(rises(&closing_in.map(|shelter| speed(shelter, storeys))));
    }
    let taller = [Storeys::One, Storeys::Two, Storeys::Three];
    assert!(rises(&taller.map(|storeys| speed(Shelter::LoneHome, storeys))));
}

#[test]
fn neither_wind_nor_warmth_drives_no_air() {
    let still = Coefficients::of(Shelter::OpenGround, Storeys::One)
        .speed(kelvins(0.0), Velocity::new::<meter_per_second>(0.0));
    assert_eq!(still.get::<meter_per_second>().to_bits(), 0);
}
