//! Reads a [`Tree`] and refuses what is too deep, too large or twice while it is being read, before
//! it can fill the memory or the stack.

use super::path::{Path, shortened};
use super::tree::Tree;
use crate::error::{FieldError, Reason};
use serde::de::{DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};
use std::collections::BTreeMap;
use std::fmt;

/// Lists and maps within each other.
pub const MOST_LEVELS: usize = 32;
/// Values of any kind.
pub const MOST_VALUES: usize = 10_000;
/// Characters of one text.
pub const MOST_CHARACTERS: usize = 10_000;
/// Bytes of all texts and keys together.
const MOST_BYTES: usize = 1_000_000;

impl Tree {
    /// Reads JSON text.
    ///
    /// # Errors
    ///
    /// When the text is no JSON, with the position; when it is too large; when a key stands twice
    /// in a map.
    pub fn from_json(text: &str) -> Result<Self, Vec<FieldError>> {
        let mut reading = Reading::new(AfterError::Stop);
        let mut json = serde_json::Deserializer::from_str(text);
        let read = Seed(&mut reading).deserialize(&mut json).and_then(|tree| {
            json.end()?;
            Ok(tree)
        });
        if let (Err(error), false) = (&read, reading.full) {
            let reason = Reason::NotJson { line: error.line(), column: error.column() };
            reading.problems.push(FieldError::at("", reason));
        }
        reading.finish(read.unwrap_or_default())
    }

    /// Reads a value that stands in memory, such as one of JavaScript. What the deserializer
    /// cannot give is named with its path, and reading goes on beside it; the text of its error is
    /// taken as the kind of the value.
    ///
    /// # Errors
    ///
    /// When a part of the value is of a kind that JSON cannot hold, or it is too large.
    pub fn read<'de, D: Deserializer<'de>>(value: D) -> Result<Self, Vec<FieldError>> {
        let mut reading = Reading::new(AfterError::GoOn);
        let tree = Seed(&mut reading).deserialize(value).unwrap_or_default();
        reading.finish(tree)
    }
}

/// What to do when a part cannot be read. A parser has lost its place by then; a value has not.
#[derive(Clone, Copy, PartialEq)]
enum AfterError {
    Stop,
    GoOn,
}

/// How far the reading has come.
struct Reading {
    after_error: AfterError,
    path: Path,
    problems: Vec<FieldError>,
    levels: usize,
    values: usize,
    bytes: usize,
    full: bool,
}

impl Reading {
    fn new(after_error: AfterError) -> Self {
        let path = Path::default();
        Self { after_error, path, problems: vec![], levels: 0, values: 0, bytes: 0, full: false }
    }

    fn finish(self, tree: Tree) -> Result<Tree, Vec<FieldError>> {
        if self.problems.is_empty() { Ok(tree) } else { Err(self.problems) }
    }

    fn refuse(&mut self, reason: Reason) {
        self.problems.push(FieldError::at(self.path.text(), reason));
    }

    /// Ends the reading when `count` has passed `limit`.
    fn hold<E: serde::de::Error>(
        &mut self,
        count: usize,
        limit: usize,
        of: &'static str,
    ) -> Result<(), E> {
        if count <= limit {
            return Ok(());
        }
        self.full = true;
        self.refuse(Reason::TooLarge { of, limit });
        Err(E::custom("too large"))
    }

    fn count_value<E: serde::de::Error>(&mut self) -> Result<(), E> {
        self.values += 1;
        self.hold(self.values, MOST_VALUES, "values")
    }

    fn count_bytes<E: serde::de::Error>(&mut self, text: &str) -> Result<(), E> {
        self.bytes += text.len();
        self.hold(self.bytes, MOST_BYTES, "characters")
    }

    fn step_in<E: serde::de::Error>(&mut self) -> Result<(), E> {
        self.levels += 1;
        self.hold(self.levels, MOST_LEVELS, "levels")
    }

    fn step_out(&mut self) {
        self.levels -= 1;
    }
}

/// Reads one value at the path where the reading stands.
struct Seed<'a>(&'a mut Reading);

impl<'de> DeserializeSeed<'de> for Seed<'_> {
    type Value = Tree;

    fn deserialize<D: Deserializer<'de>>(self, value: D) -> Result<Tree, D::Error> {
        let Self(reading) = self;
        reading.count_value()?;
        let (levels, depth) = (reading.levels, reading.path.depth());
        match value.deserialize_any(Growing(&mut *reading)) {
            Err(error) if reading.after_error == AfterError::GoOn && !reading.full => {
                reading.levels = levels;
                reading.path.cut(depth);
                let got = shortened(&error.to_string());
                reading.refuse(Reason::WrongType { want: "plain", got });
                Ok(Tree::Null)
            }
            read => read,
        }
    }
}

/// Grows a tree out of whatever comes.
struct Growing<'a>(&'a mut Reading);

impl<'de> Visitor<'de> for Growing<'_> {
    type Value = Tree;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value that JSON can hold")
    }

    fn visit_unit<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }

    fn visit_bool<E>(self, flag: bool) -> Result<Tree, E> {
        Ok(Tree::Bool(flag))
    }

    fn visit_f64<E>(self, number: f64) -> Result<Tree, E> {
        Ok(Tree::Number(number + 0.0)) // minus zero becomes zero
    }

    #[expect(clippy::cast_precision_loss, reason = "a double is what JavaScript would hold")]
    fn visit_i64<E>(self, number: i64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }

    #[expect(clippy::cast_precision_loss, reason = "a double is what JavaScript would hold")]
    fn visit_u64<E>(self, number: u64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }

    fn visit_str<E: serde::de::Error>(self, text: &str) -> Result<Tree, E> {
        let Self(reading) = self;
        reading.count_bytes(text)?;
        if text.chars().nth(MOST_CHARACTERS).is_some() {
            reading.refuse(Reason::TooLarge { of: "characters", limit: MOST_CHARACTERS });
            return Ok(Tree::Null);
        }
        Ok(Tree::Text(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Tree, A::Error> {
        let Self(reading) = self;
        reading.step_in()?;
        let mut entries = vec![];
        loop {
            reading.path.push_index(entries.len());
            let entry = list.next_element_seed(Seed(&mut *reading))?;
            reading.path.pop();
            let Some(entry) = entry else { break };
            entries.push(entry);
        }
        reading.step_out();
        Ok(Tree::List(entries))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Tree, A::Error> {
        let Self(reading) = self;
        reading.step_in()?;
        let mut fields = BTreeMap::new();
        while let Some(key) = map.next_key::<String>()? {
            reading.count_bytes(&key)?;
            reading.path.push_key(&key);
            let value = map.next_value_seed(Seed(&mut *reading))?;
            if fields.contains_key(&key) {
                reading.refuse(Reason::Twice);
            }
            reading.path.pop();
            fields.insert(key, value);
        }
        reading.step_out();
        Ok(Tree::Map(fields))
    }
}
