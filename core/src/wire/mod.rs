//! The door: requests in, answers out. The only place that knows `serde`, field names and plain
//! numbers.

mod check;
mod measure;
mod near;
mod path;
mod read;
mod request;
mod shape;
mod spoken;
mod tree;

pub use measure::{Measured, measure};
pub use read::{MOST_CHARACTERS, MOST_LEVELS, MOST_VALUES};
pub use request::{REQUEST, home};
pub use shape::{Field, Shape};
pub use tree::Tree;
