//! Furnace airflow and ducts: how much air moves, where it is lost, what arrives, and what that does
//! to furnace and heat pump.

pub mod bag;
mod blower;
mod cooling;
mod cycle;
mod delivery;
mod diagnosis;
mod equipment;
mod filter;
mod leak;
mod rise;
mod seen;
mod system;

pub use blower::{Blower, Tap, moved};
pub use cooling::{Coil, cooling};
pub use cycle::{Asked, Belly, Cycle, cycle};
pub use delivery::{Delivery, Ducts, LeaksAt, Side, heating};
pub use diagnosis::{Diagnosis, Next, diagnosis, rise_found};
pub use equipment::{Does, OfLabel, at_flow, heat_pump_at, with_auxiliary};
pub use filter::FilterInPlace;
pub use leak::{GoesTo, goes_to};
pub use rise::{Derating, flow_of_rise, kept_at, rise};
pub use seen::lost;
pub(crate) use seen::{AirMoved, air_moved, capacity, walls, warm_air_share};
pub use system::{Running, System};
