//! A model says its equation, symbols, source, bounds and what it leaves out, in this order.
//!
//! In the model folders every public free function that takes something and gives a quantity is a
//! model. So is, anywhere in them, whatever has one of the headings: who begins must end. Makers
//! (`-> Self`) and methods that hand out what was made are none.

use super::{File, Findings};
use anyhow::{Context as _, Result};
use std::collections::BTreeSet;
use syn::visit::{self, Visit};
use syn::{Attribute, Expr, Ident, ImplItemFn, ItemFn, ItemUse, Lit, Meta, Signature, Visibility};

const FOLDERS: [&str; 7] = [
    "core/src/air/",
    "core/src/hot_water/",
    "core/src/freeze/",
    "core/src/ducts/",
    "core/src/physics/",
    "core/src/climate/",
    "core/src/money",
];

const HEADINGS: [&str; 6] =
    ["# Equation", "# Symbols", "# Source", "# Valid for", "# Leaves out", "# Examples"];

pub(super) fn check(files: &[File], found: &mut Findings) -> Result<()> {
    let in_models = |file: &&File| FOLDERS.iter().any(|folder| file.is_below(folder));
    for file in files.iter().filter(|file| file.is_rust()).filter(in_models) {
        let tree = syn::parse_file(&file.text).with_context(|| file.path.clone())?;
        let mut names = Quantities::default();
        names.visit_file(&tree);
        Models { path: &file.path, quantities: names, found }.visit_file(&tree);
    }
    Ok(())
}

/// Names of quantities in one file: what it brings in from `uom`, and those of our own.
struct Quantities(BTreeSet<String>);

impl Default for Quantities {
    fn default() -> Self {
        Self(["Figure", "Dollars", "f64"].map(str::to_owned).into())
    }
}

impl<'ast> Visit<'ast> for Quantities {
    fn visit_item_use(&mut self, item: &'ast ItemUse) {
        let mut names = Names::default();
        names.visit_item_use(item);
        if names.0.starts_with(&["uom", "si", "f64"].map(str::to_owned)) {
            self.0.extend(names.0.into_iter().skip(3));
        }
    }
}

/// All names below some piece of code.
#[derive(Default)]
struct Names(Vec<String>);

impl<'ast> Visit<'ast> for Names {
    fn visit_ident(&mut self, name: &'ast Ident) {
        self.0.push(name.to_string());
    }
}

struct Models<'a> {
    path: &'a str,
    quantities: Quantities,
    found: &'a mut Findings,
}

impl<'ast> Visit<'ast> for Models<'_> {
    fn visit_item_fn(&mut self, item: &'ast ItemFn) {
        let is_model = matches!(item.vis, Visibility::Public(_))
            && !item.sig.inputs.is_empty()
            && self.gives_quantity(&item.sig);
        self.hold(&item.sig, &item.attrs, is_model);
        visit::visit_item_fn(self, item);
    }

    fn visit_impl_item_fn(&mut self, item: &'ast ImplItemFn) {
        self.hold(&item.sig, &item.attrs, false);
        visit::visit_impl_item_fn(self, item);
    }
}

impl Models<'_> {
    fn gives_quantity(&self, signature: &Signature) -> bool {
        let mut names = Names::default();
        names.visit_return_type(&signature.output);
        names.0.iter().any(|name| self.quantities.0.contains(name))
    }

    fn hold(&mut self, signature: &Signature, attributes: &[Attribute], is_model: bool) {
        let docs = docs(attributes);
        let place = format!("{}:{}", self.path, signature.ident.span().start().line);
        let here = headings(&docs);
        if (is_model || !here.is_empty()) && here != HEADINGS {
            let wanted = HEADINGS.join(", ");
            let what =
                format!("the model `{}` has not just these headings: {wanted}", signature.ident);
            self.found.broken(place, what);
        } else if !here.is_empty() {
            self.hold_parts(&docs, &place);
        }
    }

    fn hold_parts(&mut self, docs: &str, place: &str) {
        if !part(docs, "# Symbols").contains('|') {
            self.found.broken(place, "`# Symbols` has no table");
        }
        if !part(docs, "# Source").contains("](") && !part(docs, "# Source").contains("[`") {
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
    use super::{Findings, Models, Quantities, Visit as _};

    fn broken(text: &str) -> usize {
        let tree = syn::parse_file(text).unwrap();
        let mut quantities = Quantities::default();
        quantities.visit_file(&tree);
        let mut found = Findings::default();
        Models { path: "p", quantities, found: &mut found }.visit_file(&tree);
        found.broken.len()
    }

    const DOCS: &str = "/// A.\n/// # Equation\n/// x\n/// # Symbols\n/// | a |\n/// # Source\n\
        /// [`A`]\n/// # Valid for\n/// x\n/// # Leaves out\n/// x\n/// # Examples\n/// ```\n/// ```\n";
    const MODEL: &str = "pub fn f(a: Length) -> Option<Length> { a }";
    const USE: &str = "use uom::si::f64::{Length, Time};\n";

    #[test]
    fn a_model_with_all_headings_passes_and_one_without_a_heading_does_not() {
        assert_eq!(broken(&format!("{USE}{DOCS}{MODEL}")), 0);
        assert_eq!(broken(&format!("{USE}{}{MODEL}", DOCS.replace("/// # Source\n", ""))), 1);
        assert_eq!(broken(&format!("{USE}{MODEL}")), 1);
    }

    #[test]
    fn a_maker_and_a_private_function_are_no_models() {
        assert_eq!(broken("impl A { pub fn new(a: f64) -> Self { A } }"), 0);
        assert_eq!(broken(&format!("{USE}fn f(a: Length) -> Length {{ a }}")), 0);
    }

    #[test]
    fn a_source_must_be_a_link() {
        assert_eq!(broken(&format!("{USE}{}{MODEL}", DOCS.replace("[`A`]", "A"))), 1);
    }
}
