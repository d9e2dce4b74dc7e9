//! Checks of winterseam against the outside: one folder a subject, one module a source.

mod air;
mod balance;
mod calendar;
mod climate;
mod door;
mod ducts;
mod envelope;
mod freeze;
mod harness;
mod hot_water;
mod invariants;
mod moisture;
mod scenarios;
mod windows;
mod words;
mod worth;
