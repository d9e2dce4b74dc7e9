//! A sentence before it is in any language.

use std::borrow::Cow;
use std::collections::BTreeMap;

/// A sentence as data: the key of its message and what stands in the message's places.
///
/// ```
/// use winterseam::report::Phrase;
///
/// let what = Phrase::new("field.gap_width");
/// let wrong = Phrase::new("error.out_of_range").with("what", what).with("got", 99.0);
/// assert_eq!(wrong.args.len(), 2);
/// ```
#[derive(Debug, Clone, PartialEq)]
pub struct Phrase {
    /// Key of the message in the word files.
    pub key: Cow<'static, str>,
    /// What stands in the message's places, by name.
    pub args: BTreeMap<Cow<'static, str>, Arg>,
}

/// What stands in one place of a message.
#[derive(Debug, Clone, PartialEq)]
pub enum Arg {
    /// A number, which the message rounds.
    Number(f64),
    /// A text that is the same in every language: what was typed, a name, a date.
    Text(String),
    /// Another sentence, in the language of the whole.
    Phrase(Box<Phrase>),
}

impl Phrase {
    /// A phrase without arguments.
    #[must_use]
    pub fn new(key: impl Into<Cow<'static, str>>) -> Self {
        Self { key: key.into(), args: BTreeMap::new() }
    }

    /// The phrase with one more argument; the last of a name stands.
    #[must_use]
    pub fn with(mut self, name: impl Into<Cow<'static, str>>, arg: impl Into<Arg>) -> Self {
        self.args.insert(name.into(), arg.into());
        self
    }
}

impl From<f64> for Arg {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl From<u32> for Arg {
    fn from(number: u32) -> Self {
        Self::Number(number.into())
    }
}

impl From<&str> for Arg {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<String> for Arg {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<Phrase> for Arg {
    fn from(phrase: Phrase) -> Self {
        Self::Phrase(Box::new(phrase))
    }
}
