//! `cargo xtask <job>`: everything that `cargo` alone does not do. See DEVELOPERS.md.

fn main() {}
