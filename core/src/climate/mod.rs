//! From a ZIP code to the hours of a year.
//!
//! An [`Atlas`] knows for each ZIP code the nearest [`Station`] with clean records and the climate
//! [`Zone`]. A [`Year`] makes 8,760 hours from the station's [`Normals`]: air temperature, dew
//! point and wind. The same station gives the same hours on every machine.
//!
//! ```
//! # #[cfg(feature = "atlas")] {
//! use winterseam::climate::{Atlas, Year};
//! use winterseam::units::celsius;
//!
//! let missoula = Atlas::embedded().place("59801").expect("a ZIP area of the tables");
//! assert_eq!(missoula.zone.to_string(), "6B");
//! let year = Year::of(&missoula.station);
//! assert!(year.hours_below(celsius(0.0)) > 1500);
//! # }
//! ```
//!
//! Whatever is shown of these tables carries the credit line of
//! [`sources::climate`](crate::sources::climate).

mod atlas;
mod closed_form;
mod curve;
mod decode;
mod elevation;
mod file;
mod reader;
mod sequence;
mod series;
mod station;
mod sun;
mod year;
mod zone;

pub use atlas::{Atlas, Place};
pub(crate) use curve::DAYS_IN;
pub use file::{BadWeather, Column, Repair, WeatherFile};
pub use reader::BadAtlas;
pub use sequence::Sequence;
pub use station::{DegreeDays, FreezeDates, FrostBasis, Normals, Station, TemperatureBasis};
pub(crate) use sun::SunPath;
pub use sun::{Shore, sun_above_air, sun_on_ground};
pub use year::{Hour, Year};
pub use zone::{Moisture, Zone};
