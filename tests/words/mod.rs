//! Sentences: the same keys in every language, plain words, numbers as the Unicode CLDR has them.

mod files;
mod plain;

#[cfg(feature = "peers")]
mod babel;
