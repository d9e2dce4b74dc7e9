//! The correlations alone, against a general library and two textbook examples.

use crate::harness::Table;
use winterseam::physics::film::{forced_convection, natural_convection};

fn correlations_agree(table: &str) {
    Table::read(table).compare(|row| {
        let prandtl = row.number("prandtl");
        let number = |column| row.has(column).then(|| row.number(column));
        let natural = number("rayleigh").map(|ra| natural_convection(ra.into(), prandtl.into()));
        let forced = number("reynolds").map(|re| forced_convection(re.into(), prandtl.into()));
        let natural = natural.map(|nu| ("natural", nu.value));
        natural.into_iter().chain(forced.map(|nu| ("forced", nu.value))).collect()
    });
}

#[test]
fn correlations_agree_with_the_library() {
    correlations_agree("freeze/ht-1-2-0__nusselt");
}

#[test]
fn correlations_agree_with_the_textbook() {
    correlations_agree("freeze/incropera-6e");
}
