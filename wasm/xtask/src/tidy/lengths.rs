//! Long files and long functions are worth a look; they break nothing.

use super::{File, Findings};
use anyhow::{Context as _, Result};
use proc_macro2::extra::DelimSpan;
use syn::visit::{self, Visit};
use syn::{Ident, ImplItemFn, ItemFn};

const FILE_LINES: usize = 400;
const FUNCTION_LINES: usize = 40;

/// Code, and nothing that is made.
const CODE: [&str; 6] = [".rs", ".ts", ".mjs", ".py", ".css", ".html"];
const MADE: [&str; 2] = ["core/src/tables/", "www/src/wire.ts"];

pub(super) fn check(files: &[File], found: &mut Findings) -> Result<()> {
    let is_code = |file: &&File| CODE.iter().any(|ending| file.ends_with(ending));
    let is_made = |file: &&File| MADE.iter().any(|place| file.is_below(place));
    for file in files.iter().filter(is_code).filter(|file| !is_made(file)) {
        let lines = file.text.lines().count();
        if lines > FILE_LINES {
            found.warned(&file.path, format!("{lines} lines, more than {FILE_LINES}"));
        }
        if file.is_rust() {
            let tree = syn::parse_file(&file.text).with_context(|| file.path.clone())?;
            Functions { path: &file.path, found }.visit_file(&tree);
        }
    }
    Ok(())
}

struct Functions<'a> {
    path: &'a str,
    found: &'a mut Findings,
}

impl<'ast> Visit<'ast> for Functions<'_> {
    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        self.hold(&item.sig.ident, item.block.brace_token.span);
        visit::visit_item_fn(self, item);
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        self.hold(&item.sig.ident, item.block.brace_token.span);
        visit::visit_impl_item_fn(self, item);
    }
}

impl Functions<'_> {
    fn hold(&mut self, name: &Ident, body: DelimSpan) {
        let start = name.span().start().line;
        let lines = body.close().end().line + 1 - start;
        if lines > FUNCTION_LINES {
            let place = format!("{}:{start}", self.path);
            self.found
                .warned(place, format!("`{name}` has {lines} lines, more than {FUNCTION_LINES}"));
        }
    }
}
