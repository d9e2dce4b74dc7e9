//! From a phrase and a language to text.
