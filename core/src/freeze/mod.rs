//! Pipes in the cold, and the cable that keeps them alive.

mod cable;
mod drip;
mod frost;
mod handbook;
mod left_on;
mod loss_curve;
mod materials;
mod seen;
mod stages;
mod steady;
mod switch;
mod water;

pub use cable::{CableOnPipe, CableYear, cable_year, over_hours};
pub use drip::drip;
pub use frost::FrostFree;
pub use handbook::{FreezeTimes, freeze_times};
pub use left_on::left_on;
pub use materials::{InsulationKind, PipeKind, PipeSize};
pub use seen::CableSeen;
pub use stages::{FreezeStages, freeze_stages};
pub use steady::{plastic_limit, power_needed};
pub use switch::usual_season;
