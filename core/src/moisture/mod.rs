//! Water in the air of a home: what a leak carries into the roof, what wets a window.

mod cavity;
mod ceiling;
mod indoors;
mod roof_year;
mod surface;

pub use cavity::mixed_with_outdoor_air;
pub use ceiling::{Carried, CeilingLeak, carried};
pub use indoors::{Dampness, IndoorVapour};
pub use roof_year::{Roof, RoofGrade, RoofMonth, RoofYear, roof_year};
pub use surface::{
    CRITICAL_HUMIDITY, SurfaceGrade, highest_humidity, least_temperature_factor, surface_humidity,
    surface_temperature, temperature_factor,
};
