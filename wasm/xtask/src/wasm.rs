//! The wasm module and its JavaScript bindings: in `www/pkg` with all that it can be asked, in
//! `www/pkg/page` with what the page asks.

use crate::{step, target, tools};
use anyhow::{Context as _, Result, bail, ensure};
use std::path::{Path, PathBuf};
use wasm_bindgen_cli_support::Bindgen;
use wasmparser::{CustomSectionReader, Parser, Payload};

/// What a browser must be able to do. No SIMD, threads or tail calls: phones of 2020 have none of
/// them or not all.
const FEATURES: [&str; 8] = [
    "bulk-memory",
    "bulk-memory-opt",
    "call-indirect-overlong",
    "multivalue",
    "mutable-globals",
    "nontrapping-fptoint",
    "reference-types",
    "sign-ext",
];

/// Builds both modules and writes `winterseam{.js,.d.ts,_bg.wasm}` of each; gives the page's.
pub(crate) fn build() -> Result<Vec<u8>> {
    tools::need_wasm_target()?;
    package("www/pkg", &[])?;
    package("www/pkg/page", &["--no-default-features"])
}

fn package(folder: &str, features: &[&str]) -> Result<Vec<u8>> {
    let built = compile(features)?;
    let raw = std::fs::read(&built).with_context(|| built.display().to_string())?;
    check_features(&raw)?;
    let package = target::root().join(folder);
    bind(&built, &package)?;
    let module = std::fs::read(package.join("winterseam_bg.wasm")).context(folder.to_owned())?;
    check_paths(&module)?;
    Ok(module)
}

fn compile(features: &[&str]) -> Result<PathBuf> {
    const TARGET: &str = "wasm32-unknown-unknown";
    let mut build = target::cargo([
        "build",
        "--profile=page",
        "--locked",
        "--package=winterseam-wasm",
        "--target",
        TARGET,
    ]);
    build.args(features);
    // Unit separators, because a path may hold a space.
    build.env("CARGO_ENCODED_RUSTFLAGS", remaps()?.join("\x1f"));
    step::run(&mut build)?;
    Ok(target::folder().join(TARGET).join("page/winterseam_wasm.wasm"))
}

/// Flags that keep the paths of this machine out of the module. The last that fits wins.
fn remaps() -> Result<Vec<String>> {
    let places = private_places()?;
    Ok(places.iter().map(|(from, to)| format!("--remap-path-prefix={from}={to}")).collect())
}

fn private_places() -> Result<Vec<(String, &'static str)>> {
    let cargo_home = std::env::var("CARGO_HOME").ok().or_else(|| {
        std::env::home_dir().map(|home| home.join(".cargo").to_string_lossy().into_owned())
    });
    let mut places = vec![(target::root().to_string_lossy().into_owned(), "winterseam")];
    places.push((target::folder().to_string_lossy().into_owned(), "target"));
    places.push((format!("{}/lib/rustlib/src/rust", tools::sysroot()?), "rust"));
    places.extend(cargo_home.map(|home| (home, "cargo")));
    Ok(places)
}

fn check_paths(module: &[u8]) -> Result<()> {
    for (place, _) in private_places()? {
        ensure!(
            !contains(module, place.as_bytes()),
            "the wasm module names a path of this machine"
        );
    }
    Ok(())
}

fn contains(text: &[u8], part: &[u8]) -> bool {
    text.windows(part.len()).any(|here| here == part)
}

fn check_features(module: &[u8]) -> Result<()> {
    let mut found = features(module)?;
    found.sort_unstable();
    if found != FEATURES {
        bail!("the module asks for {}; the pinned list is {}", found.join(" "), FEATURES.join(" "));
    }
    Ok(())
}

/// The names in the section `target_features`: a count, then for each a `+` and a name.
fn features(module: &[u8]) -> Result<Vec<String>> {
    for payload in Parser::new(0).parse_all(module) {
        if let Payload::CustomSection(section) = payload?
            && section.name() == "target_features"
        {
            return read_features(&section);
        }
    }
    bail!("the module does not say which features it asks for")
}

fn read_features(section: &CustomSectionReader) -> Result<Vec<String>> {
    let mut reader = wasmparser::BinaryReader::new(section.data(), section.data_offset());
    let mut names = Vec::new();
    for _ in 0..reader.read_var_u32()? {
        ensure!(reader.read_u8()? == b'+', "a target feature is not plainly on");
        names.push(reader.read_string()?.to_owned());
    }
    Ok(names)
}

/// Bindings as an ES module that is handed its bytes: the one form that works from a file, from a
/// bundler and in Node.
fn bind(module: &Path, package: &Path) -> Result<()> {
    Bindgen::new()
        .input_path(module)
        .out_name("winterseam")
        .web(true)?
        .omit_default_module_path(true)
        .typescript(true)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate(package)
        .context("the bindings could not be made")
}
