//! What the word files lack.

use std::fmt;

/// What a phrase asks for and the word files do not give. Tests hold every phrase to none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// No language has the key.
    NoMessage {
        /// The key.
        key: String,
    },
    /// Only English has the key.
    NotTranslated {
        /// The key.
        key: String,
    },
    /// The message cannot be read.
    BadMessage {
        /// The key.
        key: String,
        /// What is wrong with it.
        why: &'static str,
    },
    /// The message names an argument that the phrase lacks.
    NoArgument {
        /// The key.
        key: String,
        /// The argument.
        name: String,
    },
    /// The message wants a number, and the argument is none, or not finite.
    NoNumber {
        /// The key.
        key: String,
        /// The argument.
        name: String,
    },
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoMessage { key } => write!(f, "{key}: no message"),
            Self::NotTranslated { key } => write!(f, "{key}: not translated"),
            Self::BadMessage { key, why } => write!(f, "{key}: {why}"),
            Self::NoArgument { key, name } => write!(f, "{key}: no argument {name}"),
            Self::NoNumber { key, name } => write!(f, "{key}: {name} is no finite number"),
        }
    }
}

impl std::error::Error for Fault {}
