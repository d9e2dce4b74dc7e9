//! Pipes in the cold, and the cable that keeps them alive.

mod basis;
mod cable;
mod loss_curve;
mod seen;
mod switch;

pub use cable::{CableOnPipe, CableYear, over_hours};
pub use seen::{CableFigures, CableSeen};
pub use switch::usual_season;
