//! A range is many homes: what nobody measured is drawn low and high, what was measured is drawn
//! within the error of the tool, and each draw is assessed like any other home.

mod draw;
mod range;
mod roof;

pub use draw::{Draw, draw};
pub use range::{Amount, Ranges, ranges};
pub use roof::{RoofWater, roof_water};
