//! Behind every table stands its source.

use super::{File, Findings};

const FOLDERS: [&str; 2] = ["core/data/", "tests/reference/"];

pub(super) fn check(files: &[File], found: &mut Findings) {
    let is_table =
        |file: &&File| file.ends_with(".csv") && FOLDERS.iter().any(|folder| file.is_below(folder));
    for file in files.iter().filter(is_table) {
        for note in ["source", "obtained"] {
            if !has_note(&file.text, note) {
                found.broken(&file.path, format!("no `# {note}:` line at its head"));
            }
        }
    }
}

/// Whether one of the first lines, those that start with `#`, is `# note: something`.
fn has_note(text: &str, note: &str) -> bool {
    text.lines()
        .take_while(|line| line.starts_with('#'))
        .filter_map(|line| line.strip_prefix(&format!("# {note}:")))
        .any(|rest| !rest.trim().is_empty())
}

#[cfg(test)]
mod tests {
    use super::has_note;

    #[test]
    fn a_note_must_say_something_and_stand_at_the_head() {
        assert!(has_note("# source: a-2021\nid,x\n", "source"));
        assert!(!has_note("# source:\nid,x\n", "source"));
        assert!(!has_note("id,x\n# source: a\n", "source"));
    }
}
