//! Tables made from `core/data` by `cargo xtask data`; never edited by hand.
