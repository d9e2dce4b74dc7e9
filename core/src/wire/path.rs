//! Where in a request a value stands, in the request's own spelling.

use std::fmt::Write as _;

/// A path such as `gaps[2].width_in`, grown on the way in and cut on the way out.
#[derive(Debug, Default)]
pub(super) struct Path {
    text: String,
    ends: Vec<usize>,
}

impl Path {
    /// Steps into a field.
    pub(super) fn push_key(&mut self, key: &str) {
        self.ends.push(self.text.len());
        if !self.text.is_empty() {
            self.text.push('.');
        }
        self.text.push_str(&shortened(key));
    }

    /// Steps into an entry of a list.
    pub(super) fn push_index(&mut self, index: usize) {
        self.ends.push(self.text.len());
        write!(self.text, "[{index}]").expect("writing to a String cannot fail");
    }

    /// Steps out again.
    pub(super) fn pop(&mut self) {
        self.text.truncate(self.ends.pop().unwrap_or(0));
    }

    /// How many steps in it is.
    pub(super) fn depth(&self) -> usize {
        self.ends.len()
    }

    /// Steps out until it is that many steps in.
    pub(super) fn cut(&mut self, depth: usize) {
        while self.depth() > depth {
            self.pop();
        }
    }

    /// The path as text.
    pub(super) fn text(&self) -> String {
        self.text.clone()
    }

    /// The path of a field of the map that this path leads to.
    pub(super) fn of_key(&self, key: &str) -> String {
        let dot = if self.text.is_empty() { "" } else { "." };
        format!("{}{dot}{}", self.text, shortened(key))
    }
}

/// The first forty characters: what was given is shown to people, and may be a novel.
pub(super) fn shortened(text: &str) -> String {
    const MOST: usize = 40;
    match text.char_indices().nth(MOST) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}
