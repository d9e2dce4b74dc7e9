//! A sentence that comes back in, to be put into words.

use super::path::Path;
use super::tree::Tree;
use crate::error::{FieldError, Reason};
use crate::report::{Arg, Phrase};

/// The phrase that a tree spells: `{ key, args }`, each argument a number, a text or a phrase.
///
/// ```
/// use winterseam::wire::{Tree, phrase};
/// use winterseam::words::{Language, render};
///
/// let tree = Tree::from_json(r#"{"key": "fuel.wood", "args": {}}"#)?;
/// assert_eq!(render(&phrase(&tree)?, Language::English), "wood");
/// # Ok::<(), Vec<winterseam::error::FieldError>>(())
/// ```
///
/// # Errors
///
/// Everything that is no phrase.
pub fn phrase(tree: &Tree) -> Result<Phrase, Vec<FieldError>> {
    let mut reading = Reading::default();
    let phrase = reading.phrase(tree);
    if reading.problems.is_empty() { Ok(phrase) } else { Err(reading.problems) }
}

#[derive(Default)]
struct Reading {
    path: Path,
    problems: Vec<FieldError>,
}

impl Reading {
    fn refuse(&mut self, want: &'static str, got: &Tree) {
        let reason = match got {
            Tree::Null => Reason::Missing,
            _ => Reason::WrongType { want, got: got.shown() },
        };
        self.problems.push(FieldError::at(self.path.text(), reason));
    }

    fn phrase(&mut self, tree: &Tree) -> Phrase {
        if !matches!(tree, Tree::Map(_)) {
            self.refuse("map", tree);
        }
        let mut phrase = Phrase::new(self.at("key", |reading| reading.key(tree.get("key"))));
        self.at("args", |reading| reading.args(tree.get("args"), &mut phrase));
        phrase
    }

    fn key(&mut self, tree: &Tree) -> String {
        if tree.text().is_none() {
            self.refuse("text", tree);
        }
        tree.text().unwrap_or_default().to_owned()
    }

    fn args(&mut self, tree: &Tree, phrase: &mut Phrase) {
        match tree {
            Tree::Null => {}
            Tree::Map(args) => {
                for (name, arg) in args {
                    if let Some(arg) = self.at(name, |reading| reading.arg(arg)) {
                        phrase.args.insert(name.clone().into(), arg);
                    }
                }
            }
            other => self.refuse("map", other),
        }
    }

    fn arg(&mut self, tree: &Tree) -> Option<Arg> {
        match tree {
            Tree::Number(number) => Some((*number).into()),
            Tree::Text(text) => Some(text.as_str().into()),
            Tree::Map(_) => Some(self.phrase(tree).into()),
            Tree::Null => None,
            other => {
                self.refuse("text", other);
                None
            }
        }
    }

    fn at<T>(&mut self, key: &str, inside: impl FnOnce(&mut Self) -> T) -> T {
        self.path.push_key(key);
        let found = inside(self);
        self.path.pop();
        found
    }
}
