//! How fast hot water burns, and the temperature to aim for.

mod target;

pub use target::{Target, target};
