//! How fast hot water burns, and the temperature to aim for.
//!
//! [`burn_time`] is the door: a tap reading and a [`Person`] in, a [`BurnTime`] out.
//! [`WordedTime`] is the form in which a time may be told. Behind it, [`skin`] says how skin warms
//! and [`damage`] how warm skin is injured. [`target`] says where the tap should be.

pub mod burn;
pub mod damage;
mod person;
pub mod skin;
mod target;
mod worded;

pub use burn::{BurnTime, burn_time, thermometer_error};
pub use damage::LONGEST_S;
pub use person::Person;
pub use target::{Scald, Target, scald, target};
pub use worded::WordedTime;
