//! Reads one message.
//!
//! The syntax is a part of Unicode `MessageFormat` 2, so that translators know it and their tools
//! read it:
//!
//! ```text
//! Text with {$name} and {$share :number maximumFractionDigits=1}.
//! .input {$n :number} .match $n 0 {{none}} one {{{$n} day}} * {{{$n} days}}
//! .input {$unit :string} .match $unit || {{…}} * {{…}}
//! ```
//!
//! - `:number` takes `minimumFractionDigits`, `maximumFractionDigits` and `useGrouping`.
//! - A message chooses by at most one argument; a number first by its exact value, then by its
//!   plural category; a text by its letters, in bars. `*` is required.
//! - `\{`, `\}`, `\\` and `\|` stand for the character itself.

use super::number::Style;

/// A message: one pattern for each case of the argument that it chooses by.
#[derive(Debug, PartialEq)]
pub(super) struct Message<'a> {
    /// What it chooses by; a message with one case chooses by nothing.
    pub(super) input: Option<Place<'a>>,
    /// The cases, in the order written.
    pub(super) cases: Vec<(Key<'a>, Vec<Part<'a>>)>,
}

/// When a case holds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Key<'a> {
    /// Otherwise.
    Any,
    /// For exactly this number.
    Exactly(f64),
    /// For numbers of this plural category.
    Plural(&'a str),
    /// For exactly this text.
    Text(&'a str),
}

/// A piece of a pattern.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Part<'a> {
    /// Text as it stands.
    Text(&'a str),
    /// An argument.
    Place(Place<'a>),
}

/// An argument and how it is written.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Place<'a> {
    /// Its name.
    pub(super) name: &'a str,
    /// How it is written; `None` leaves it to the argument.
    pub(super) form: Option<Form>,
}

/// How an argument is written and chosen by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Form {
    /// As a number.
    Number(Style),
    /// As a text.
    String,
}

impl<'a> Message<'a> {
    /// Reads a message.
    ///
    /// # Errors
    ///
    /// What is wrong, in words for whoever edits the word files.
    pub(super) fn parse(text: &'a str) -> Result<Self, &'static str> {
        let mut cursor = Cursor { rest: text };
        if text.trim_start().starts_with('.') {
            return cursor.choice();
        }
        if text.starts_with("{{") {
            return Err("a plain message needs no double braces");
        }
        let pattern = cursor.pattern(false)?;
        Ok(Self { input: None, cases: vec![(Key::Any, pattern)] })
    }

    /// The arguments it names, in any case.
    pub(super) fn places(&self) -> impl Iterator<Item = Place<'a>> {
        let parts = self.cases.iter().flat_map(|(_, pattern)| pattern);
        let inside = parts.filter_map(|part| match part {
            Part::Place(place) => Some(*place),
            Part::Text(_) => None,
        });
        self.input.into_iter().chain(inside)
    }
}

/// What is left to read.
struct Cursor<'a> {
    rest: &'a str,
}

impl<'a> Cursor<'a> {
    fn choice(&mut self) -> Result<Message<'a>, &'static str> {
        self.expect(".input", "a message that starts with a dot starts with .input")?;
        self.expect("{", "after .input comes an argument in braces")?;
        let input = self.place()?;
        let form = input.form.ok_or("the argument of .input needs :number or :string")?;
        self.expect(".match", "after .input comes .match")?;
        self.expect("$", "after .match comes the argument")?;
        if self.word() != input.name {
            return Err(".match names another argument than .input");
        }
        let mut cases = Vec::new();
        while !self.done() {
            let key = self.key(form)?;
            self.expect("{{", "after a key comes a pattern in double braces")?;
            cases.push((key, self.pattern(true)?));
        }
        if cases.iter().any(|(key, _)| *key == Key::Any) {
            Ok(Message { input: Some(input), cases })
        } else {
            Err("the case * is missing")
        }
    }

    fn key(&mut self, form: Form) -> Result<Key<'a>, &'static str> {
        if self.eat("*") {
            return Ok(Key::Any);
        }
        if self.eat("|") {
            let (text, rest) = self.rest.split_once('|').ok_or("a bar is not closed")?;
            self.rest = rest;
            return if form == Form::String { Ok(Key::Text(text)) } else { Err("not a number") };
        }
        let word = self.word();
        match (form, word) {
            (Form::String, _) => Err("the key of a text stands in bars"),
            (_, "one" | "other") => Ok(Key::Plural(word)),
            _ => word.parse().map(Key::Exactly).map_err(|_| "neither a number, one, other nor *"),
        }
    }

    /// Reads text and places up to the end, or up to the closing double brace.
    fn pattern(&mut self, quoted: bool) -> Result<Vec<Part<'a>>, &'static str> {
        let mut parts = Vec::new();
        loop {
            let stop = self.rest.find(['\\', '{', '}']).unwrap_or(self.rest.len());
            let (text, rest) = self.rest.split_at(stop);
            if !text.is_empty() {
                parts.push(Part::Text(text));
            }
            self.rest = rest;
            match rest.chars().next() {
                None if quoted => return Err("a pattern is not closed"),
                None => return Ok(parts),
                Some('\\') => parts.push(Part::Text(self.escaped()?)),
                Some('{') => {
                    self.rest = &rest[1..];
                    parts.push(Part::Place(self.place()?));
                }
                Some(_) => {
                    let closed = rest.strip_prefix("}}").filter(|_| quoted);
                    self.rest = closed.ok_or("a lone }")?;
                    return Ok(parts);
                }
            }
        }
    }

    /// Reads a character behind its backslash.
    fn escaped(&mut self) -> Result<&'a str, &'static str> {
        let rest = &self.rest[1..];
        if !rest.starts_with(['\\', '{', '}', '|']) {
            return Err(r"after \ comes one of \ { } |");
        }
        self.rest = &rest[1..];
        Ok(&rest[..1])
    }

    /// Reads an argument after its opening brace.
    fn place(&mut self) -> Result<Place<'a>, &'static str> {
        self.expect("$", "in braces stands an argument with its $")?;
        let name = self.word();
        if name.is_empty() {
            return Err("an argument has no name");
        }
        let form = if self.eat(":") { Some(self.form()?) } else { None };
        self.expect("}", "an argument is not closed")?;
        Ok(Place { name, form })
    }

    fn form(&mut self) -> Result<Form, &'static str> {
        match self.word() {
            "string" => Ok(Form::String),
            "number" => self.style().map(Form::Number),
            _ => Err("neither :number nor :string"),
        }
    }

    fn style(&mut self) -> Result<Style, &'static str> {
        let mut style = Style::default();
        let (mut least, mut most) = (None, None);
        loop {
            self.space();
            let option = self.word();
            if option.is_empty() {
                break;
            }
            self.expect("=", "an option needs a value")?;
            self.space();
            let value = self.word();
            let count = || value.parse().map_err(|_| "not a number of digits");
            match option {
                "minimumFractionDigits" => least = Some(count()?),
                "maximumFractionDigits" => most = Some(count()?),
                "useGrouping" if value == "never" => style.grouped = false,
                _ => return Err("an option that is not known"),
            }
        }
        style.least = least.unwrap_or(0);
        style.most = most.unwrap_or(style.most.max(style.least));
        if style.least <= style.most {
            Ok(style)
        } else {
            Err("fewer digits at most than at least")
        }
    }

    /// Letters, digits, `_`, `-` and `.`.
    fn word(&mut self) -> &'a str {
        let inside = |c: char| c.is_ascii_alphanumeric() || matches!(c, '_' | '-' | '.');
        let stop = self.rest.find(|c| !inside(c)).unwrap_or(self.rest.len());
        let (word, rest) = self.rest.split_at(stop);
        self.rest = rest;
        word
    }

    fn space(&mut self) {
        self.rest = self.rest.trim_start();
    }

    fn done(&mut self) -> bool {
        self.space();
        self.rest.is_empty()
    }

    fn eat(&mut self, token: &str) -> bool {
        self.space();
        let rest = self.rest.strip_prefix(token);
        self.rest = rest.unwrap_or(self.rest);
        rest.is_some()
    }

    fn expect(&mut self, token: &str, why: &'static str) -> Result<(), &'static str> {
        if self.eat(token) { Ok(()) } else { Err(why) }
    }
}

#[cfg(test)]
mod tests {
    use super::{Form, Key, Message, Part, Place};

    #[test]
    fn a_plain_message_is_text_and_places() {
        let message = Message::parse(r"from {$low} \{to\} { $high :string }").unwrap();
        let place = |name, form| Part::Place(Place { name, form });
        let expected = [
            Part::Text("from "),
            place("low", None),
            Part::Text(" "),
            Part::Text("{"),
            Part::Text("to"),
            Part::Text("}"),
            Part::Text(" "),
            place("high", Some(Form::String)),
        ];
        assert_eq!(message.cases, [(Key::Any, expected.to_vec())]);
    }

    #[test]
    fn a_message_that_chooses_keeps_its_cases_in_order() {
        let text = ".input {$n :number}\n.match $n\n0 {{none}}\none {{one}}\n* {{}}";
        let keys: Vec<_> = Message::parse(text).unwrap().cases.iter().map(|case| case.0).collect();
        assert_eq!(keys, [Key::Exactly(0.0), Key::Plural("one"), Key::Any]);
    }

    #[test]
    fn what_cannot_be_read_is_refused_with_a_reason() {
        let bad = [
            "{name}",
            "{$}",
            "{$name",
            "{$name :date}",
            "{$n :number maximumFractionDigits=two}",
            "{$n :number minimumFractionDigits=3 maximumFractionDigits=1}",
            "{$n :number style=percent}",
            "a } b",
            r"a \n b",
            "a \\",
            "{{quoted}}",
            ".local $x = {1} {{x}}",
            ".input {$n} .match $n * {{x}}",
            ".input {$n :number} .match $m * {{x}}",
            ".input {$n :number} .match $n one {{x}}",
            ".input {$n :number} .match $n few {{x}} * {{x}}",
            ".input {$n :number} .match $n |a| {{x}} * {{x}}",
            ".input {$s :string} .match $s a {{x}} * {{x}}",
            ".input {$n :number} .match $n * {{x",
            ".input {$n :number} .match $n * x",
        ];
        for text in bad {
            assert!(Message::parse(text).is_err(), "{text}");
        }
    }
}
