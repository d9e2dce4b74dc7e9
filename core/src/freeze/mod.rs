//! Pipes in the cold, and the cable that keeps them alive.

mod cable;
mod frost;
mod loss_curve;
mod seen;
mod switch;

pub use cable::{CableOnPipe, CableYear, cable_year, over_hours};
pub use frost::FrostFree;
pub use seen::CableSeen;
pub use switch::usual_season;
