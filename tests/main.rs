//! Checks of winterseam against the outside: one folder a subject, one module a source.

mod climate;
mod harness;
