//! Ducts: what they bring to the rooms, and the flow at a register.

pub mod bag;
mod cooling;
mod cycle;
mod delivery;

pub use cooling::{Coil, cooling};
pub use cycle::{Asked, Belly, Cycle, cycle};
pub use delivery::{Delivery, Ducts, LeaksAt, Side, heating};
