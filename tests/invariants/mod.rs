//! What holds for every home there could be: the project's own rules of safety, tried on thousands
//! of random walks. Nothing here has an expected value of its own.

mod answers;
mod energy;
mod gates;
mod random;

use serde_json::Value;
use winterseam::home::Home;
use winterseam::wire::{Tree, home};

/// The typed home of a request.
fn typed(request: &Value) -> Home {
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    home(&tree).unwrap_or_else(|errors| panic!("{request}: {errors:?}"))
}
