//! Walks a tree against a shape and collects everything that is wrong with it.

use super::near::nearest;
use super::path::{Path, shortened};
use super::shape::{Field, Shape};
use super::tree::Tree;
use crate::bounds::Bounds;
use crate::error::{FieldError, Reason};
use jiff::civil::Date;
use std::collections::BTreeMap;

/// Everything in which a tree departs from a shape; empty when it fits.
pub(super) fn check(tree: &Tree, shape: &Shape) -> Vec<FieldError> {
    let mut check = Check::default();
    check.value(tree, shape);
    check.problems
}

#[derive(Default)]
struct Check {
    path: Path,
    problems: Vec<FieldError>,
}

impl Check {
    fn refuse(&mut self, reason: Reason) {
        self.problems.push(FieldError::at(self.path.text(), reason));
    }

    fn value(&mut self, tree: &Tree, shape: &Shape) {
        let reason = match (shape, tree) {
            (Shape::Map(fields), Tree::Map(given)) => return self.map(given, fields),
            (Shape::List { of, max, .. }, Tree::List(entries)) => {
                return self.list(entries, of, *max);
            }
            (Shape::Number(allowed), Tree::Number(got)) => wrong_number(*got, allowed),
            (Shape::Whole(allowed), Tree::Number(got)) => wrong_whole(*got, allowed),
            (Shape::Word(allowed), Tree::Text(got)) => wrong_word(got, allowed),
            (Shape::Text { max }, Tree::Text(got)) => wrong_length(got, *max),
            (Shape::Date, Tree::Text(got)) => wrong_date(got),
            (Shape::Zip, Tree::Text(got)) => wrong_zip(got),
            (Shape::Flag, Tree::Bool(_)) => None,
            _ => Some(Reason::WrongType { want: kind(shape), got: tree.shown() }),
        };
        if let Some(reason) = reason {
            self.refuse(reason);
        }
    }

    fn list(&mut self, entries: &[Tree], of: &Shape, max: usize) {
        if entries.len() > max {
            return self.refuse(Reason::TooLarge { of: "entries", limit: max });
        }
        for (index, entry) in entries.iter().enumerate() {
            self.path.push_index(index);
            self.value(entry, of);
            self.path.pop();
        }
    }

    fn map(&mut self, given: &BTreeMap<String, Tree>, fields: &'static [Field]) {
        for key in given.keys().filter(|key| !fields.iter().any(|f| f.key == *key)) {
            let near = nearest(key, fields.iter().map(|f| f.key));
            let reason = Reason::Unknown { got: shortened(key), near };
            self.problems.push(FieldError::at(self.path.of_key(key), reason));
        }
        for field in fields {
            self.path.push_key(field.key);
            match given.get(field.key).unwrap_or(&Tree::Null) {
                Tree::Null if field.required => self.refuse(Reason::Missing),
                Tree::Null => {}
                seen => self.value(seen, &field.shape),
            }
            self.path.pop();
        }
    }
}

/// Key of the word for what a shape wants.
fn kind(shape: &Shape) -> &'static str {
    match shape {
        Shape::Map(_) => "map",
        Shape::List { .. } => "list",
        Shape::Number(_) => "number",
        Shape::Whole(_) => "whole",
        Shape::Flag => "flag",
        Shape::Word(_) | Shape::Text { .. } => "text",
        Shape::Date => "date",
        Shape::Zip => "zip",
    }
}

fn wrong_number(got: f64, allowed: &'static Bounds) -> Option<Reason> {
    if !got.is_finite() {
        Some(Reason::NotANumber)
    } else if !allowed.allow(got) {
        Some(Reason::OutOfRange { got, allowed })
    } else {
        None
    }
}

fn wrong_whole(got: f64, allowed: &'static Bounds) -> Option<Reason> {
    let broken = || Reason::WrongType { want: "whole", got: got.to_string() };
    wrong_number(got, allowed).or_else(|| (got.fract() != 0.0).then(broken))
}

fn wrong_word(got: &str, allowed: &'static [&'static str]) -> Option<Reason> {
    let unknown = || Reason::NotOneOf { got: shortened(got), allowed };
    (!allowed.contains(&got)).then(unknown)
}

fn wrong_length(got: &str, max: usize) -> Option<Reason> {
    let long = got.chars().nth(max).is_some();
    long.then_some(Reason::TooLarge { of: "characters", limit: max })
}

fn wrong_date(got: &str) -> Option<Reason> {
    let malformed = || Reason::Malformed { want: "date", got: shortened(got) };
    date(got).is_none().then(malformed)
}

fn wrong_zip(got: &str) -> Option<Reason> {
    let digits = got.len() == 5 && got.bytes().all(|b| b.is_ascii_digit());
    let malformed = || Reason::Malformed { want: "zip", got: shortened(got) };
    (!digits).then(malformed)
}

/// A day written as `2026-11-25` and in no other way. Taken apart here and not by `jiff`, whose
/// parser for all that may stand in a date was a fifth of the module when measured.
pub(super) fn date(text: &str) -> Option<Date> {
    let mut parts = text.split('-');
    let mut digits = |count: usize| {
        let part = parts.next()?;
        let plain = part.len() == count && part.bytes().all(|b| b.is_ascii_digit());
        if plain { part.parse::<i16>().ok() } else { None }
    };
    let (year, month, day) = (digits(4)?, digits(2)?, digits(2)?);
    let ends = parts.next().is_none();
    let date = Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?);
    date.ok().filter(|_| ends)
}
