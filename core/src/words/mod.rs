//! From a phrase and a language to text.
//!
//! Every sentence for people stands in `core/words/{en,es}.json`, one message a key, the same
//! keys in both; `cargo xtask data` makes the tables that are searched here. What a message may
//! hold is described in `message.rs`. Numbers stand as people in the United States write them in
//! either language: `1,234.5`.

mod fault;
mod message;
mod number;

pub use fault::Fault;

use crate::report::{Arg, Phrase};
use crate::tables::{words_en, words_es};
use message::{Form, Key, Message, Part, Place};
use number::Style;
use std::borrow::Cow;

/// A language that every sentence exists in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub enum Language {
    /// American English.
    #[default]
    English,
    /// Spanish as spoken in the United States.
    Spanish,
}

impl Language {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The language of a tag such as `es`, `es-US` or `EN_us`; `None` for one that is not here.
    ///
    /// ```
    /// use winterseam::words::Language;
    ///
    /// assert_eq!(Language::from_tag("es-US"), Some(Language::Spanish));
    /// assert_eq!(Language::from_tag("fr"), None);
    /// ```
    #[must_use]
    pub fn from_tag(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next()?.to_ascii_lowercase();
        Self::ALL.into_iter().find(|language| language.tag() == primary)
    }

    /// Its tag.
    #[must_use]
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
}

/// All messages of a language, sorted by key.
#[must_use]
pub fn messages(language: Language) -> &'static [(&'static str, &'static str)] {
    match language {
        Language::English => words_en::MESSAGES,
        Language::Spanish => words_es::MESSAGES,
    }
}

/// The text of a phrase.
///
/// Always gives a text, so that a plan is never lost for a word. What is missing is named by
/// [`faults`] and shows as the standard has it: an unknown key or a message that cannot be read
/// stands in braces, an argument that is missing or of the wrong kind as `{$name}`. A key that
/// only English has is given in English.
///
/// ```
/// use winterseam::report::Phrase;
/// use winterseam::words::{Language, render};
///
/// let alarm = Phrase::new("warning.W-CO");
/// assert!(render(&alarm, Language::English).contains("carbon monoxide"));
/// assert!(render(&alarm, Language::Spanish).contains("monóxido de carbono"));
/// ```
#[must_use]
pub fn render(phrase: &Phrase, language: Language) -> String {
    let mut sheet = Sheet { language, text: String::new(), faults: Vec::new() };
    sheet.phrase(phrase);
    sheet.text
}

/// What [`render`] lacks to give the text of a phrase.
///
/// ```
/// use winterseam::report::Phrase;
/// use winterseam::words::{Fault, Language, faults};
///
/// let unknown = Phrase::new("no.such.key");
/// let lacks = faults(&unknown, Language::English);
/// assert_eq!(lacks, [Fault::NoMessage { key: "no.such.key".to_owned() }]);
/// ```
#[must_use]
pub fn faults(phrase: &Phrase, language: Language) -> Vec<Fault> {
    let mut sheet = Sheet { language, text: String::new(), faults: Vec::new() };
    sheet.phrase(phrase);
    sheet.faults
}

/// The names of the arguments that a message of a key asks for.
///
/// # Errors
///
/// When the language has no such key, or its message cannot be read.
pub fn arguments(key: &str, language: Language) -> Result<Vec<&'static str>, Fault> {
    let text = lookup(key, language).ok_or_else(|| Fault::NoMessage { key: key.to_owned() })?;
    let message =
        Message::parse(text).map_err(|why| Fault::BadMessage { key: key.to_owned(), why })?;
    let mut names: Vec<_> = message.places().map(|place| place.name).collect();
    names.sort_unstable();
    names.dedup();
    Ok(names)
}

fn lookup(key: &str, language: Language) -> Option<&'static str> {
    let all = messages(language);
    all.binary_search_by_key(&key, |(key, _)| key).ok().map(|at| all[at].1)
}

/// A text that is being written, and what it lacks.
struct Sheet {
    language: Language,
    text: String,
    faults: Vec<Fault>,
}

impl Sheet {
    fn phrase(&mut self, phrase: &Phrase) {
        let key = || phrase.key.clone().into_owned();
        let own = lookup(&phrase.key, self.language);
        let Some(text) = own.or_else(|| lookup(&phrase.key, Language::English)) else {
            self.faults.push(Fault::NoMessage { key: key() });
            return self.braced(&phrase.key);
        };
        if own.is_none() {
            self.faults.push(Fault::NotTranslated { key: key() });
        }
        match Message::parse(text) {
            Ok(message) => self.message(&message, phrase),
            Err(why) => {
                self.faults.push(Fault::BadMessage { key: key(), why });
                self.braced(&phrase.key);
            }
        }
    }

    fn message(&mut self, message: &Message<'_>, phrase: &Phrase) {
        for part in self.case(message, phrase) {
            match part {
                Part::Text(text) => self.text.push_str(text),
                Part::Place(place) => {
                    let input = message.input.filter(|input| input.name == place.name);
                    let form = place.form.or(input.and_then(|input| input.form));
                    self.place(Place { form, ..*place }, phrase);
                }
            }
        }
    }

    /// The pattern of the case that holds; an exact key before a category, `*` last.
    fn case<'m>(&self, message: &'m Message<'_>, phrase: &Phrase) -> &'m [Part<'m>] {
        let find = |wanted: Key<'_>| {
            message.cases.iter().find(|(key, _)| *key == wanted).map(|(_, pattern)| &pattern[..])
        };
        let arg = message.input.and_then(|input| Some((input.form?, phrase.args.get(input.name)?)));
        let chosen = match arg {
            Some((Form::Number(style), Arg::Number(number))) => {
                let exact = style.rounded(*number).and_then(|rounded| find(Key::Exactly(rounded)));
                exact.or_else(|| find(Key::Plural(style.plural(*number, self.language)?)))
            }
            Some((Form::String, arg)) => find(Key::Text(&self.aside(arg))),
            _ => None,
        };
        chosen.or_else(|| find(Key::Any)).unwrap_or_default()
    }

    /// The text of an argument, for choosing by it.
    fn aside<'p>(&self, arg: &'p Arg) -> Cow<'p, str> {
        match arg {
            Arg::Text(text) => Cow::Borrowed(text),
            Arg::Number(number) => Style::default().write(*number).unwrap_or_default().into(),
            Arg::Phrase(phrase) => render(phrase, self.language).into(),
        }
    }

    fn place(&mut self, place: Place<'_>, phrase: &Phrase) {
        let key = || phrase.key.clone().into_owned();
        let name = || place.name.to_owned();
        let style = if let Some(Form::Number(style)) = place.form { Some(style) } else { None };
        match (phrase.args.get(place.name), style) {
            (Some(Arg::Number(number)), _) => {
                if let Some(text) = style.unwrap_or_default().write(*number) {
                    return self.text.push_str(&text);
                }
                self.faults.push(Fault::NoNumber { key: key(), name: name() });
            }
            (Some(Arg::Text(text)), None) => return self.text.push_str(text),
            (Some(Arg::Phrase(inner)), None) => return self.phrase(inner),
            (Some(_), Some(_)) => self.faults.push(Fault::NoNumber { key: key(), name: name() }),
            (None, _) => self.faults.push(Fault::NoArgument { key: key(), name: name() }),
        }
        self.braced(&format!("${}", place.name));
    }

    fn braced(&mut self, what: &str) {
        self.text.extend(["{", what, "}"]);
    }
}

#[cfg(test)]
mod tests {
    use super::{Fault, Language, faults, render};
    use crate::report::Phrase;

    fn english(phrase: &Phrase) -> String {
        render(phrase, Language::English)
    }

    #[test]
    fn a_wrong_field_is_told_with_its_range_and_unit() {
        let phrase = Phrase::new("error.out_of_range")
            .with("what", Phrase::new("field.gap_width"))
            .with("min", 0.01)
            .with("max", 12.0)
            .with("unit", Phrase::new("unit.in"))
            .with("got", 99.0);
        assert_eq!(english(&phrase), "gap width must be between 0.01 and 12 in, not 99");
        assert_eq!(
            render(&phrase, Language::Spanish),
            "ancho de la rendija: debe estar entre 0.01 y 12 pulgadas, no 99"
        );
        let year = phrase.with("unit", "").with("min", 1930.0).with("max", 2026.0);
        assert!(english(&year).contains("between 1930 and 2026, not"));
    }

    #[test]
    fn one_is_singular_as_it_is_written() {
        let minutes = |n: f64| english(&Phrase::new("time.about_minutes").with("n", n));
        assert_eq!(minutes(1.2), "in about 1 minute");
        assert_eq!(minutes(1.6), "in about 2 minutes");
    }

    #[test]
    fn what_is_missing_shows_and_is_named() {
        let no_key = Phrase::new("no.such");
        assert_eq!(english(&no_key), "{no.such}");
        let no_argument = Phrase::new("error.missing");
        assert_eq!(english(&no_argument), "{$what} is needed");
        let lacks = faults(&no_argument, Language::English);
        let key = || "error.missing".to_owned();
        assert_eq!(lacks, [Fault::NoArgument { key: key(), name: "what".to_owned() }]);
        let no_number = Phrase::new("time.about_minutes").with("n", f64::NAN);
        assert_eq!(english(&no_number), "in about {$n} minutes");
        assert!(matches!(faults(&no_number, Language::English)[..], [Fault::NoNumber { .. }]));
    }

    #[test]
    fn braces_in_an_argument_are_only_text() {
        let phrase = Phrase::new("error.missing").with("what", "{$got} \\");
        assert_eq!(english(&phrase), "{$got} \\ is needed");
    }
}
