//! What is said, as data.

mod phrase;
pub use phrase::{Arg, Phrase};
