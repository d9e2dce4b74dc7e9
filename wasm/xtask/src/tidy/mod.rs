//! House rules that no linter knows, one a file.

mod arrows;
mod forbidden;
mod headings;
mod lengths;
mod network;
mod places;
mod tables;
mod words;

pub(crate) use forbidden::forbid;

use crate::{step, target};
use anyhow::{Context as _, Result, bail};
use std::process::Command;

/// A file of the project, as text.
struct File {
    /// Path from the root, with `/`.
    path: String,
    text: String,
}

impl File {
    fn is_below(&self, folder: &str) -> bool {
        self.path.starts_with(folder)
    }

    fn is_rust(&self) -> bool {
        self.ends_with(".rs")
    }

    fn ends_with(&self, ending: &str) -> bool {
        self.path.ends_with(ending)
    }
}

/// What the rules found, as `path:line: what`.
#[derive(Default)]
struct Findings {
    /// Break a rule: these fail.
    broken: Vec<String>,
    /// Worth a look: these are only printed.
    warned: Vec<String>,
}

impl Findings {
    fn broken(&mut self, place: impl std::fmt::Display, what: impl std::fmt::Display) {
        self.broken.push(format!("{place}: {what}"));
    }

    fn warned(&mut self, place: impl std::fmt::Display, what: impl std::fmt::Display) {
        self.warned.push(format!("{place}: {what}"));
    }
}

/// Holds every rule against every file.
pub(crate) fn check() -> Result<()> {
    let files = files()?;
    let mut found = Findings::default();
    arrows::check(&files, &mut found)?;
    forbidden::check(&files, &mut found)?;
    headings::check(&files, &mut found)?;
    lengths::check(&files, &mut found)?;
    network::check(&mut found);
    places::check(&files, &mut found);
    tables::check(&files, &mut found);
    words::check(&files, &mut found)?;
    for line in &found.warned {
        println!("warning: {line}");
    }
    for line in &found.broken {
        println!("{line}");
    }
    println!("{} files, {} warnings", files.len(), found.warned.len());
    match found.broken.len() {
        0 => Ok(()),
        count => bail!("{count} house rules are broken"),
    }
}

/// All text files that are in git or would be added to it.
fn files() -> Result<Vec<File>> {
    let mut git = Command::new("git");
    git.current_dir(target::root());
    git.args(["ls-files", "-z", "--cached", "--others", "--exclude-standard"]);
    let list = step::output(&mut git).context("tidy asks git which files are the project's")?;
    let mut files = Vec::new();
    for path in list.split('\0').filter(|path| !path.is_empty()) {
        // A file that was deleted but not yet committed is still on the list; a file of bytes holds
        // no words.
        if let Ok(text) = std::fs::read_to_string(target::root().join(path)) {
            files.push(File { path: path.to_owned(), text });
        }
    }
    files.sort_by(|a, b| a.path.cmp(&b.path));
    files.dedup_by(|a, b| a.path == b.path);
    Ok(files)
}
