//! What is said, as data.

mod errors;
mod phrase;
pub use errors::problem;
pub use phrase::{Arg, Phrase};
