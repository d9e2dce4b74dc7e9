//! Turns what a person sees and measures in a manufactured home into a safe, ranked, affordable
//! plan.
//!
//! **A repair is a function from one home to another.** [`balance`] computes the year of a home; a
//! saving is the year before less the year after, so nothing is counted twice and a danger that a
//! repair creates shows, because the changed home is assessed like any other.
//!
//! A module uses only what stands above it in this list.

#[macro_use]
extern crate uom;

// The ground floor: knows nothing above it.
pub mod bounds;
pub mod error;
pub mod math;
pub mod money;
pub mod sources;
pub mod units;

// What the world is made of.
pub mod physics;
pub mod properties;
pub mod tables;

// What a person sees, and where.
pub mod climate;
pub mod home;

// Models. They never use each other; `balance` joins them.
pub mod air;
pub mod ducts;
pub mod envelope;
pub mod freeze;
pub mod hot_water;
pub mod moisture;
pub mod windows;

// Decisions.
pub mod balance;
pub mod plan;
pub mod repairs;
pub mod safety;
pub mod uncertainty;

// What is said.
pub mod calendar;
pub mod report;
pub mod words;

// The door.
pub mod wire;

/// The examples of the README are run like any other.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
pub struct Readme;
