//! The furnace filter, and the flow at a register.

pub mod bag;
