//! Laws that more than one model needs and that know no home.

pub mod film;
pub mod pipe;
