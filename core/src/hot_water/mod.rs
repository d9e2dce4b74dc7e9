//! How fast hot water burns, the temperature to aim for and the way there, and what it all takes.
//!
//! [`burn_time`] is one door: a tap reading and a [`Person`] in, a [`BurnTime`] out.
//! [`WordedTime`] is the form in which a time may be told. Behind it, [`skin`] says how skin warms
//! and [`damage`] how warm skin is injured. [`target`] says where the tap should be, [`coach`] how
//! to turn a dial there.
//!
//! [`mod@year`] is the other: a [`heater`] with the losses of its [`rating`], its [`tank`], the
//! [`draws`] of a day and the water of the mains. [`HeaterSeen`] fills what nobody saw.

pub mod burn;
pub mod coach;
pub mod damage;
pub mod draws;
pub mod heater;
mod mains;
pub mod mixing;
mod person;
pub mod rating;
mod seen;
pub mod skin;
pub mod tank;
mod target;
mod worded;
pub mod year;

pub use burn::{BurnTime, burn_time, thermometer_error};
pub use damage::LONGEST_S;
pub use mains::mains_water;
pub use person::Person;
pub use seen::HeaterSeen;
pub use target::{Scald, Target, scald, target};
pub use worded::WordedTime;
