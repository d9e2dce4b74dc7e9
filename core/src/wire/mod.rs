//! The door: requests in, answers out. The only place that knows `serde`, field names and plain
//! numbers.

mod answer;
mod assess;
mod check;
mod measure;
mod near;
mod path;
mod phrase;
mod probe;
mod problem;
mod read;
mod request;
#[cfg(feature = "schema")]
mod schema;
mod shape;
mod spoken_out;
mod tree;

pub use answer::{
    Answer, Figure, Finding, Material, Phrase, PhraseArg, PlaceUsed, Reminder, SourceNote, Step,
    Stop, Use, Warning,
};
pub use assess::{assess, calendar};
pub use measure::{Measured, measure};
pub use phrase::phrase;
pub use probe::{Gives, QUESTIONS, Question, ask, ask_for};
pub use problem::{Problem, problem};
pub use read::{MOST_CHARACTERS, MOST_LEVELS, MOST_VALUES};
pub use request::{REQUEST, home};
#[cfg(feature = "schema")]
pub use schema::made_schema;
pub use shape::{Field, Shape};
pub use tree::Tree;

/// JSON Schema of everything that goes through the door, by the name of the type; made by
/// `cargo xtask types`.
#[must_use]
pub fn schema() -> &'static str {
    include_str!("schema.json")
}

/// Version of the library.
#[must_use]
pub fn version() -> &'static str {
    env!("CARGO_PKG_VERSION")
}
