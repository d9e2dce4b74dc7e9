//! The year of a whole home against other ways to count it.

mod archetypes;
#[cfg(feature = "peers")]
mod two_nodes;
