//! What a sentence for a resident must be: short, plain, blaming nobody. The rules are the
//! project's own (the house rules in DEVELOPERS.md).

use winterseam::report::Phrase;
use winterseam::words::{Language, arguments, messages, render};

/// A message as it reads, each argument standing for one word.
fn read(key: &'static str, language: Language) -> String {
    let names = arguments(key, language).expect("a message");
    let filled = |phrase: Phrase, name: &&'static str| phrase.with(*name, 2.0);
    render(&names.iter().fold(Phrase::new(key), filled), language)
}

fn words(text: &str) -> usize {
    text.split_whitespace().filter(|word| word.chars().any(char::is_alphanumeric)).count()
}

/// Whole words, in small letters.
fn has_word(text: &str, word: &str) -> bool {
    let text = text.to_lowercase();
    text.split(|c: char| !c.is_alphanumeric()).any(|seen| seen == word)
}

fn of(language: Language, start: &str) -> Vec<(&'static str, String)> {
    let keys = messages(language).iter().map(|(key, _)| *key);
    keys.filter(|key| key.starts_with(start)).map(|key| (key, read(key, language))).collect()
}

#[test]
fn a_warning_takes_at_most_25_english_words() {
    let warnings = of(Language::English, "warning.");
    assert!(warnings.len() >= 41, "only {} warnings", warnings.len());
    for (key, text) in warnings {
        assert!(words(&text) <= 25, "{key}: {} words", words(&text));
    }
}

#[test]
fn other_sentences_take_at_most_15_words() {
    for language in Language::ALL {
        for (key, text) in of(language, "") {
            if key.starts_with("warning.") || key.starts_with("credit.") {
                continue;
            }
            for sentence in text.split_inclusive(['.', ';', '?', ':']) {
                assert!(words(sentence) <= 15, "{key}: {sentence}");
            }
        }
    }
}

#[test]
fn no_time_is_called_safe_and_no_one_is_blamed() {
    let [english, spanish] = [
        ["safe", "safely", "invalid", "error", "fault"],
        ["seguro", "segura", "inválido", "inválida", "error"],
    ];
    for (language, shunned) in Language::ALL.into_iter().zip([english, spanish]) {
        for (key, text) in of(language, "") {
            for word in shunned {
                assert!(!has_word(&text, word), "{key} says {word}: {text}");
            }
        }
    }
}

#[test]
fn spanish_words_with_two_meanings_never_stand_alone() {
    for (key, text) in of(Language::Spanish, "") {
        let text = text.to_lowercase();
        for word in ["estufa", "fuga", "fugas"] {
            let bare = text
                .split(word)
                .skip(1)
                .any(|rest| !rest.starts_with(" de ") && !rest.starts_with(char::is_alphanumeric));
            assert!(!bare, "{key}: {word} alone: {text}");
        }
        assert!(!has_word(&text, "chicas"), "{key}: pequeñas");
    }
}

#[test]
fn the_english_trade_word_stands_in_brackets() {
    let pairs = [
        ("cable calefactor", "(heat tape)"),
        ("forro de abajo", "(belly)"),
        ("retorno", "(return)"),
        ("enfriador evaporativo", "(swamp cooler)"),
    ];
    for (spanish, trade) in pairs {
        let mut seen = 0;
        for (key, text) in of(Language::Spanish, "") {
            if text.to_lowercase().contains(spanish) {
                seen += 1;
                assert!(text.contains(trade), "{key}: {trade} is missing: {text}");
            }
        }
        assert!(seen > 0, "{spanish} is said nowhere");
    }
}
