//! Checks of winterseam against the outside: one folder a subject, one module a source.

mod air;
mod door;
mod harness;
mod moisture;
mod hot_water;
