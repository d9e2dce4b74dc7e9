//! Where every number of the trade comes from, and the [`Figure`] that carries it along.

pub mod air;
pub mod climate;
pub mod conduction;
pub mod ducts;
pub mod envelope;
mod figure;
pub mod freeze;
pub mod fuel;
pub mod hot_water;
pub mod moisture;
pub mod money;
pub mod pipes;
pub mod safety;
pub mod trade;
pub mod water_heater;
pub mod windows;

pub use figure::{Confidence, Figure};

/// A document, a computation or a practice that a number rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Source {
    /// Short name: `publisher-year-part`. The same key names tables and outside checks.
    pub key: &'static str,
    /// Author, title and year; the kind of document where its title is a maker's name.
    pub cite: &'static str,
    /// Chapter, table, page or equation.
    pub place: &'static str,
    /// How the number was had.
    pub obtained: Obtained,
}

/// How a number was had from its source.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Obtained {
    /// Read in the document named.
    Read,
    /// Read as a quotation in another document.
    Quoted,
    /// Computed by the named program and version.
    Computed(&'static str),
    /// Remembered; not read again.
    FromMemory,
    /// What people of the trade do; no single document.
    CommonPractice,
}
