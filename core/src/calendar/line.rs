//! Lines of an iCalendar file: escaped, folded, ended.

/// Longest line in octets, without its end (RFC 5545 3.1).
const LONGEST: usize = 75;

/// Lines as they collect.
#[derive(Default)]
pub(super) struct Lines {
    text: String,
}

impl Lines {
    /// Adds a content line. One that is too long is folded between characters; the space that
    /// starts the rest counts.
    pub(super) fn add(&mut self, line: &str) {
        let mut used = 0;
        for c in line.chars() {
            if used + c.len_utf8() > LONGEST {
                self.text.push_str("\r\n ");
                used = 1;
            }
            self.text.push(c);
            used += c.len_utf8();
        }
        self.text.push_str("\r\n");
    }

    /// All lines.
    pub(super) fn text(self) -> String {
        self.text
    }
}

/// A value of type TEXT (RFC 5545 3.3.11): no line can be smuggled in by a title. Control
/// characters other than tab and line ends have no place in it and are dropped.
pub(super) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.replace("\r\n", "\n").chars() {
        match c {
            '\\' | ';' | ',' => out.extend(['\\', c]),
            '\n' | '\r' => out.push_str("\\n"),
            '\t' => out.push(c),
            c if c.is_control() => {}
            c => out.push(c),
        }
    }
    out
}
