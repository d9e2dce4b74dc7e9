//! Tables made from `core/data` by `cargo xtask data`; never edited by hand.

pub(crate) mod words_en;
pub(crate) mod words_es;
