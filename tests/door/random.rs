//! Whatever comes, the door stands: it answers or refuses, and never panics.

use super::chance::Chance;
use winterseam::wire::{Tree, home, measure, problem};

const KEYS: [&str; 22] = [
    "today",
    "home",
    "people",
    "heating",
    "gaps",
    "heat_cable",
    "width_ft",
    "zip",
    "fuel",
    "price_usd",
    "price_per",
    "place",
    "length_in",
    "width_in",
    "present",
    "on_day",
    "off_day",
    "year_built",
    "",
    "a.b[0]",
    "ñ",
    "electricity_usd_per_kwh",
];
const TEXTS: [&str; 8] =
    ["2026-11-25", "59801", "propane", "gal", "door_side", "single", "9999-99-99", ""];

fn tree(chance: &mut Chance, depth: usize) -> Tree {
    match chance.below(if depth > 4 { 5 } else { 9 }) {
        0 => Tree::Null,
        1 => Tree::Bool(chance.below(2) == 0),
        2 => Tree::Number(chance.number()),
        3 => Tree::Text((*chance.pick(&TEXTS)).to_owned()),
        4 => Tree::Text(chance.text()),
        5 => Tree::List((0..chance.below(4)).map(|_| tree(chance, depth + 1)).collect()),
        _ => {
            let field =
                |chance: &mut Chance| ((*chance.pick(&KEYS)).to_owned(), tree(chance, depth + 1));
            Tree::Map((0..chance.below(7)).map(|_| field(chance)).collect())
        }
    }
}

/// Half of them with a day, so that more than the day is looked at.
fn request(chance: &mut Chance) -> Tree {
    let mut tree = tree(chance, 0);
    if let Tree::Map(fields) = &mut tree
        && chance.below(2) == 0
    {
        fields.insert("today".to_owned(), Tree::Text("2026-11-25".to_owned()));
    }
    tree
}

#[test]
fn random_trees_are_understood_or_refused() {
    let mut chance = Chance::new(1);
    let (mut taken, mut refused) = (0, 0);
    for _ in 0..50_000 {
        match home(&request(&mut chance)) {
            Ok(_) => taken += 1,
            Err(problems) => {
                assert!(!problems.is_empty());
                refused += 1;
                let words = problems.iter().map(|error| problem(error, |p| p.key.to_string()));
                assert!(words.into_iter().all(|p| !p.message.is_empty()));
            }
        }
    }
    assert!(taken > 0 && refused > 1000, "{taken} taken, {refused} refused: no test of either");
}

#[test]
fn a_good_request_with_broken_letters_never_breaks_the_reader() {
    let good = r#"{"today":"2026-11-25","home":{"zip":"59801","width_ft":14.5e0},"gaps":[{"place":"casing","length_in":36,"width_in":0.125}]}"#;
    let mut chance = Chance::new(2);
    for _ in 0..50_000 {
        let mut text: Vec<char> = good.chars().collect();
        for _ in 0..=chance.below(3) {
            let at = chance.below(text.len());
            let odd = *chance
                .pick(&['"', '{', '}', '[', ']', ':', ',', '\\', '9', 'e', '-', '\u{0}', 'é']);
            match chance.below(3) {
                0 => text[at] = odd,
                1 => text.insert(at, odd),
                _ => drop(text.remove(at)),
            }
        }
        let text: String = text.into_iter().collect();
        if let Err(problems) = Tree::from_json(&text).and_then(|tree| home(&tree)) {
            assert!(!problems.is_empty(), "{text}");
        }
    }
}

#[test]
fn any_text_is_a_reading_or_is_refused() {
    let mut chance = Chance::new(3);
    let mut read = 0;
    for _ in 0..100_000 {
        let text = chance.text();
        for unit in ["in", "ft", "f", "s", "days", "usd", "w_per_ft", "x"] {
            if let Ok(measured) = measure(&text, unit) {
                read += 1;
                assert!(measured.value.is_finite(), "{text:?}");
                assert!(unit == "f" || measured.value >= 0.0, "{text:?} in {unit}");
            }
        }
    }
    assert!(read > 1000, "{read} read: no test");
}
