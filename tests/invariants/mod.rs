//! What holds for every home there could be: the project's own rules of safety, tried on thousands
//! of random walks. Nothing here has an expected value of its own.

mod airflow;
mod answers;
mod closet;
mod dangers;
mod energy;
mod gates;
mod heat;
mod random;
mod registers;
mod season;
mod unknown;
mod windows;

use serde_json::Value;
use winterseam::climate::Atlas;
use winterseam::home::Home;
use winterseam::wire::{Tree, assess, home};

/// The typed home of a request.
fn typed(request: &Value) -> Home {
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    home(&tree).unwrap_or_else(|errors| panic!("{request}: {errors:?}"))
}

/// The whole answer to a request, as it goes out of the door.
fn answered(request: &Value) -> Value {
    let tree = Tree::from_json(&request.to_string()).expect("JSON");
    let answer = assess(&tree, Some(Atlas::embedded()))
        .unwrap_or_else(|errors| panic!("{request}: {errors:?}"));
    serde_json::to_value(answer).expect("plain data")
}
