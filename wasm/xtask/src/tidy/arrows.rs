//! A module of the core uses only what stands to its left in the list of the house.

use super::{File, Findings};
use anyhow::{Context as _, Result};
use proc_macro2::{Delimiter, TokenStream, TokenTree};
use std::str::FromStr as _;

/// The modules of `core/src` from the ground up. Those of one row never use each other.
const ROWS: [&[&str]; 25] = [
    &["units"],
    &["math"],
    &["money"],
    &["sources"],
    &["bounds"],
    &["error"],
    &["tables"],
    &["properties"],
    &["physics"],
    &["home"],
    &["climate"],
    &["air", "ducts", "hot_water", "freeze", "windows", "moisture", "envelope"],
    &["balance"],
    &["bills"],
    &["repairs"],
    &["safety"],
    &["plan"],
    &["uncertainty"],
    &["report"],
    &["words"],
    &["calendar"],
    &["record"],
    &["summary"],
    &["wire"],
    &["lib"],
];

pub(super) fn check(files: &[File], found: &mut Findings) -> Result<()> {
    for file in files.iter().filter(|file| file.is_rust()) {
        let Some(path) = file.path.strip_prefix("core/src/") else { continue };
        let path = path.trim_end_matches(".rs").trim_end_matches("/mod");
        let module = path.split('/').next().unwrap_or(path);
        let Some(row) = row(module) else {
            found.broken(&file.path, format!("`{module}` has no place in the list of the house"));
            continue;
        };
        for (used, line) in uses(&file.text, path).with_context(|| file.path.clone())? {
            if used == module || module == "lib" {
                continue;
            }
            if row <= self::row(&used).unwrap_or(ROWS.len()) {
                let place = format!("{}:{line}", file.path);
                found.broken(place, format!("`{module}` may not use `{used}`"));
            }
        }
    }
    Ok(())
}

fn row(module: &str) -> Option<usize> {
    ROWS.iter().position(|row| row.contains(&module))
}

/// The top modules that a file names by `crate::…` or `super::…`, inside macros too.
fn uses(text: &str, path: &str) -> Result<Vec<(String, usize)>> {
    let tokens = TokenStream::from_str(text).map_err(|why| anyhow::anyhow!("{why}"))?;
    let mut found = Vec::new();
    let depth = if path == "lib" { 0 } else { path.split('/').count() };
    walk(tokens, depth, &mut found);
    Ok(found)
}

fn walk(tokens: TokenStream, depth: usize, found: &mut Vec<(String, usize)>) {
    let tokens: Vec<_> = tokens.into_iter().collect();
    for (at, token) in tokens.iter().enumerate() {
        match token {
            TokenTree::Group(group) => {
                let inside = depth + usize::from(is_module(&tokens[..at], group.delimiter()));
                walk(group.stream(), inside, found);
            }
            TokenTree::Ident(word) if word == "crate" => first_names(&tokens[at + 1..], found),
            TokenTree::Ident(word) if word == "super" && !after_path(&tokens[..at]) => {
                climb(&tokens[at..], depth, found);
            }
            _ => {}
        }
    }
}

/// Whether a brace that follows these tokens opens `mod name { … }`.
fn is_module(before: &[TokenTree], delimiter: Delimiter) -> bool {
    let [.., TokenTree::Ident(word), TokenTree::Ident(_)] = before else { return false };
    delimiter == Delimiter::Brace && word == "mod"
}

fn after_path(before: &[TokenTree]) -> bool {
    matches!(before, [.., TokenTree::Punct(colon)] if colon.as_char() == ':')
}

/// `super::super::name` reaches a top module when it climbs out of all that encloses it.
fn climb(tokens: &[TokenTree], depth: usize, found: &mut Vec<(String, usize)>) {
    let climbs = tokens
        .chunks(3)
        .take_while(|chunk| matches!(chunk, [TokenTree::Ident(word), _, _] if word == "super"))
        .count();
    if climbs >= depth && climbs > 0 {
        first_names(&tokens[3 * climbs - 2..], found);
    }
}

/// The names that follow `::`, one or a braced list.
fn first_names(after: &[TokenTree], found: &mut Vec<(String, usize)>) {
    let [TokenTree::Punct(a), TokenTree::Punct(b), next, ..] = after else { return };
    if a.as_char() != ':' || b.as_char() != ':' {
        return;
    }
    match next {
        TokenTree::Ident(name) => found.push((name.to_string(), name.span().start().line)),
        TokenTree::Group(group) => list_names(group.stream(), found),
        _ => {}
    }
}

fn list_names(list: TokenStream, found: &mut Vec<(String, usize)>) {
    let mut starts = true;
    for token in list {
        match token {
            TokenTree::Ident(name) if starts => {
                found.push((name.to_string(), name.span().start().line));
                starts = false;
            }
            TokenTree::Punct(mark) => starts = mark.as_char() == ',',
            _ => starts = false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::uses;

    fn names(text: &str, path: &str) -> Vec<String> {
        uses(text, path).unwrap().into_iter().map(|(name, _)| name).collect()
    }

    #[test]
    fn plain_listed_and_inline_paths_are_seen() {
        let text = "use crate::{units::cfm, math}; fn f() { assert!(crate::plan::go()) }";
        assert_eq!(names(text, "air/gap"), ["units", "math", "plan"]);
    }

    #[test]
    fn a_climb_out_of_the_module_is_seen_and_one_inside_is_not() {
        assert_eq!(names("use super::balance::year;", "money"), ["balance"]);
        assert_eq!(names("use super::super::balance;", "air/gap"), ["balance"]);
        assert!(names("use super::slit; mod tests { use super::slit; }", "air/gap").is_empty());
    }
}
