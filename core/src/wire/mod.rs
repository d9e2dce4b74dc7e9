//! The door: requests in, answers out. The only place that knows `serde`, field names and plain
//! numbers.

mod check;
mod measure;
mod near;
mod path;
mod phrase;
mod probe;
mod problem;
mod read;
mod request;
mod schema;
mod shape;
mod spoken;
mod tree;

pub use measure::{Measured, measure};
pub use phrase::phrase;
pub use probe::{Gives, QUESTIONS, Question, ask, ask_for};
pub use problem::{Problem, problem};
pub use read::{MOST_CHARACTERS, MOST_LEVELS, MOST_VALUES};
pub use request::{REQUEST, home};
pub use schema::{request_schema, schemas};
pub use shape::{Field, Shape};
pub use tree::Tree;
