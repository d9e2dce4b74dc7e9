//! ISO 13788: the check of an inside surface.

use super::moist_air;
use crate::harness::Table;
use uom::si::{ratio::ratio, thermodynamic_temperature::degree_celsius};
use winterseam::moisture::{
    SurfaceGrade, highest_humidity, least_temperature_factor, surface_temperature,
    temperature_factor,
};
use winterseam::units::{celsius, insulance};

const SEA_LEVEL: f64 = 101_325.0;

/// Source: dew point, and the least factor that keeps a surface below 80 %.
#[test]
fn a_surface_must_be_so_warm() {
    Table::read("moisture/iso-13788__least-factor").compare(|row| {
        let room = moist_air(row.number("indoor_c"), row.number("indoor_rh"), SEA_LEVEL);
        let least = |outdoors| least_temperature_factor(&room, celsius(outdoors)).unwrap();
        let in_frost = row.number("indoor_c") * least(0.0).get::<ratio>();
        vec![
            ("surface_c", in_frost),
            ("dew_point_c", room.dew_point().unwrap().get::<degree_celsius>()),
            ("factor_at_0_c", least(0.0).get::<ratio>()),
            ("factor_at_minus_10_c", least(-10.0).get::<ratio>()),
        ]
    });
}

/// Source: a wall and a window between two films of air.
#[test]
fn a_surface_lies_between_the_films() {
    Table::read("moisture/iso-6946__surface").compare(|row| {
        let (indoors, outdoors) =
            (celsius(row.number("indoor_c")), celsius(row.number("outdoor_c")));
        let film = row.number("film_m2_k_w");
        let whole = insulance(film + row.number("wall_m2_k_w") + 0.04);
        let surface = surface_temperature(indoors, outdoors, insulance(film), whole);
        vec![
            ("surface_c", surface.get::<degree_celsius>()),
            ("factor", temperature_factor(surface, indoors, outdoors).unwrap().get::<ratio>()),
        ]
    });
}

/// A room at the highest humidity of a surface is at the end of dry, whatever the surface.
#[test]
fn the_highest_humidity_ends_where_water_begins() {
    for surface in [-15.0, -1.0, 0.5, 12.0, 19.0].map(celsius) {
        let most = highest_humidity(celsius(21.0), surface).unwrap().get::<ratio>();
        let grade = |share| SurfaceGrade::of(&moist_air(21.0, share, SEA_LEVEL), surface).unwrap();
        assert_eq!(grade(most * 1.001), SurfaceGrade::Wet);
        assert_eq!(grade(most * 0.999), SurfaceGrade::MouldMayGrow);
        assert_eq!(grade(most * 0.799), SurfaceGrade::Dry);
    }
}
