//! What came in, before anything is believed of it: JSON text and JavaScript values alike.

use super::path::shortened;
use crate::home::Spoken;
use std::collections::BTreeMap;

/// A value as it was given. Unlike JSON it can hold NaN and infinity, so that these are refused by
/// name and do not turn into "not seen" on the way.
#[derive(Debug, Clone, PartialEq, Default)]
pub enum Tree {
    /// Nothing: absent, null and undefined mean the same.
    #[default]
    Null,
    /// Yes or no.
    Bool(bool),
    /// Any double; minus zero is read as zero.
    Number(f64),
    /// Text.
    Text(String),
    /// A list.
    List(Vec<Tree>),
    /// A map; each key once.
    Map(BTreeMap<String, Tree>),
}

impl Tree {
    /// The value of a field; [`Tree::Null`] when this is no map or has no such field.
    #[must_use]
    pub fn get(&self, key: &str) -> &Self {
        match self {
            Self::Map(fields) => fields.get(key).unwrap_or(&Self::Null),
            _ => &Self::Null,
        }
    }

    /// Whether anything was given.
    #[must_use]
    pub fn is_seen(&self) -> bool {
        *self != Self::Null
    }

    /// A number, when it is one.
    #[must_use]
    pub fn number(&self) -> Option<f64> {
        match self {
            Self::Number(number) => Some(*number),
            _ => None,
        }
    }

    /// Yes or no, when it is that.
    #[must_use]
    pub fn flag(&self) -> Option<bool> {
        match self {
            Self::Bool(flag) => Some(*flag),
            _ => None,
        }
    }

    /// A text, when it is one.
    #[must_use]
    pub fn text(&self) -> Option<&str> {
        match self {
            Self::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The entries of a list; none when it is no list.
    #[must_use]
    pub fn entries(&self) -> &[Self] {
        match self {
            Self::List(entries) => entries,
            _ => &[],
        }
    }

    /// The choice that the word of a field stands for.
    pub(super) fn choice<C: Spoken>(&self, key: &str) -> Option<C> {
        self.get(key).text().and_then(C::of_word)
    }

    /// A whole number of a field, when its type holds it.
    #[expect(clippy::cast_possible_truncation, reason = "checked to be whole and in its range")]
    pub(super) fn whole<N: TryFrom<i64>>(&self, key: &str) -> Option<N> {
        self.get(key).number().and_then(|number| N::try_from(number as i64).ok())
    }

    /// The value as it is shown in a message: short, and never a whole list or map.
    pub(super) fn shown(&self) -> String {
        match self {
            Self::Null => "null".to_owned(),
            Self::Bool(flag) => flag.to_string(),
            Self::Number(number) => number.to_string(),
            Self::Text(text) => shortened(text),
            Self::List(_) => "[…]".to_owned(),
            Self::Map(_) => "{…}".to_owned(),
        }
    }
}
