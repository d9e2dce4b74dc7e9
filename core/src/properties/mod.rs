//! What air and water are like.

pub mod air;
