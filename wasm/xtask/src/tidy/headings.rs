//! A model says its equation, symbols, source, bounds and what it leaves out, in this order.
//!
//! In the model folders every public free function that takes something and reckons with it (`+`,
//! `−`, `·`, `/`) is a model. So is whatever has one of the headings: who begins must end. A public
//! function that reckons nothing, because it chooses or passes on, links to the source of its
//! choice or to the model it passes on to. Methods that make a thing or hand out what was made are
//! free.

use super::{File, Findings};
use anyhow::{Context as _, Result};
use syn::visit::{self, Visit};
use syn::{Attribute, BinOp, Expr, ImplItemFn, ItemFn, Lit, Meta, Signature, Visibility};

const FOLDERS: [&str; 10] = [
    "core/src/air/",
    "core/src/hot_water/",
    "core/src/freeze/",
    "core/src/ducts/",
    "core/src/moisture/",
    "core/src/physics/",
    "core/src/climate/",
    "core/src/money",
    "core/src/windows/",
    "core/src/envelope/",
];

const HEADINGS: [&str; 6] =
    ["# Equation", "# Symbols", "# Source", "# Valid for", "# Leaves out", "# Examples"];

pub(super) fn check(files: &[File], found: &mut Findings) -> Result<()> {
    let in_models = |file: &&File| FOLDERS.iter().any(|folder| file.is_below(folder));
    for file in files.iter().filter(|file| file.is_rust()).filter(in_models) {
        let tree = syn::parse_file(&file.text).with_context(|| file.path.clone())?;
        Models { path: &file.path, found }.visit_file(&tree);
    }
    Ok(())
}

/// What a function is to this rule.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Model,
    Choice,
    Other,
}

/// Whether the body has a sum, a difference, a product or a quotient.
fn reckons(item: &ItemFn) -> bool {
    struct Reckoning(bool);
    impl<'ast> Visit<'ast> for Reckoning {
        fn visit_bin_op(&mut self, sign: &'ast BinOp) {
            self.0 |= matches!(sign, BinOp::Add(_) | BinOp::Sub(_) | BinOp::Mul(_) | BinOp::Div(_));
        }
    }
    let mut reckoning = Reckoning(false);
    reckoning.visit_block(&item.block);
    reckoning.0
}

fn has_link(docs: &str) -> bool {
    docs.contains("](") || docs.contains("[`")
}

struct Models<'a> {
    path: &'a str,
    found: &'a mut Findings,
}

impl<'ast> Visit<'ast> for Models<'_> {
    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        let is_public = matches!(item.vis, Visibility::Public(_));
        let kind = match is_public && !item.sig.inputs.is_empty() {
            true if reckons(item) => Kind::Model,
            true => Kind::Choice,
            false => Kind::Other,
        };
        self.hold(&item.sig, &item.attrs, kind);
        visit::visit_item_fn(self, item);
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        self.hold(&item.sig, &item.attrs, Kind::Other);
        visit::visit_impl_item_fn(self, item);
    }
}

impl Models<'_> {
    fn hold(&mut self, signature: &Signature, attributes: &[Attribute], kind: Kind) {
        let docs = docs(attributes);
        let here = headings(&docs);
        let place = format!("{}:{}", self.path, signature.ident.span().start().line);
        if kind != Kind::Model && here.is_empty() {
            if kind == Kind::Choice && !has_link(&docs) {
                let what = format!("`{}` links to no source and no model", signature.ident);
                self.found.broken(place, what);
            }
            return;
        }
        let missing = HEADINGS.iter().filter(|heading| !here.contains(heading));
        let missing = missing.copied().collect::<Vec<_>>().join(", ");
        if !missing.is_empty() {
            self.found.broken(&place, format!("the model `{}` lacks {missing}", signature.ident));
        } else if here != HEADINGS {
            self.found.broken(&place, "the headings stand in another order, or twice");
        } else {
            self.hold_parts(&docs, &place);
        }
    }

    fn hold_parts(&mut self, docs: &str, place: &str) {
        if !part(docs, "# Symbols").contains('|') {
            self.found.broken(place, "`# Symbols` has no table");
        }
        if !has_link(part(docs, "# Source")) {
            self.found.broken(place, "`# Source` links to no source");
        }
        if !part(docs, "# Examples").contains("```") {
            self.found.broken(place, "`# Examples` has no code");
        }
    }
}

/// The doc comment, a line for each of its lines.
fn docs(attributes: &[Attribute]) -> String {
    let lines = attributes.iter().filter_map(|attribute| {
        let Meta::NameValue(pair) = &attribute.meta else { return None };
        let Expr::Lit(literal) = &pair.value else { return None };
        match &literal.lit {
            Lit::Str(text) if pair.path.is_ident("doc") => Some(text.value()),
            _ => None,
        }
    });
    lines.map(|line| line.trim().to_owned() + "\n").collect()
}

/// Which of the headings stand there, as they come; those of other docs, such as `# Errors`, stand
/// freely. Examples alone make no model.
fn headings(docs: &str) -> Vec<&str> {
    let here: Vec<_> = docs.lines().filter(|line| HEADINGS.contains(line)).collect();
    if here == ["# Examples"] { Vec::new() } else { here }
}

fn part<'a>(docs: &'a str, heading: &str) -> &'a str {
    let after = docs.split_once(&format!("{heading}\n")).map_or("", |(_, after)| after);
    after.split_once("\n# ").map_or(after, |(part, _)| part)
}

#[cfg(test)]
mod tests {
    use super::{Findings, Models, Visit as _};

    fn broken(text: &str) -> usize {
        let tree = syn::parse_file(text).unwrap();
        let mut found = Findings::default();
        Models { path: "p", found: &mut found }.visit_file(&tree);
        found.broken.len()
    }

    const DOCS: &str = "/// A.\n/// # Equation\n/// x\n/// # Symbols\n/// | a |\n/// # Source\n\
        /// [`A`]\n/// # Valid for\n/// x\n/// # Leaves out\n/// x\n/// # Examples\n/// ```\n/// ```\n";
    const MODEL: &str = "pub fn f(a: Length) -> Option<Length> { Some(a + a) }";

    #[test]
    fn a_model_with_all_headings_passes_and_one_without_a_heading_does_not() {
        assert_eq!(broken(&format!("{DOCS}{MODEL}")), 0);
        assert_eq!(broken(&format!("{}{MODEL}", DOCS.replace("/// # Source\n", ""))), 1);
        assert_eq!(broken(MODEL), 1);
    }

    #[test]
    fn a_choice_needs_a_link_and_no_headings() {
        assert_eq!(broken("pub fn f(a: Length) -> bool { a > B }"), 1);
        assert_eq!(broken("/// From [`B`].\npub fn f(a: Length) -> bool { a > B }"), 0);
    }

    #[test]
    fn a_maker_and_a_private_function_are_no_models() {
        assert_eq!(broken("impl A { pub fn new(a: f64) -> Self { A } }"), 0);
        assert_eq!(broken("fn f(a: Length) -> Length { a + a }"), 0);
    }

    #[test]
    fn a_source_must_be_a_link() {
        assert_eq!(broken(&format!("{}{MODEL}", DOCS.replace("[`A`]", "A"))), 1);
    }
}
