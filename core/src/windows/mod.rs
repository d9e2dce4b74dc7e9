//! Heat through windows, and what a film or a second pane changes.

mod gap;
mod glazing;

pub use gap::gap_conductance;
pub use glazing::{Faces, Glazing, faces, u_value};
