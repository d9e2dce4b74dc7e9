//! `www/dist/index.html`: one file, opened with a double click, no server and no network.

use crate::step::step;
use crate::{step, target, tools, wasm};
use anyhow::{Context as _, Result, bail, ensure};
use base64::{Engine as _, prelude::BASE64_STANDARD};
use flate2::Compression;
use flate2::write::GzEncoder;
use sha2::{Digest as _, Sha256};
use std::fs;
use std::io::Write as _;
use std::path::{Path, PathBuf};

/// The climate blob that the page carries.
const CLIMATE: &str = "core/data/climate/atlas.bin";

/// The home that is shown in the terminal.
const DEMO: &str = "core/examples/homes/demo.json";

/// What goes into the page.
struct Parts {
    module: Vec<u8>,
    climate: Vec<u8>,
    script: String,
    style: String,
}

/// Builds the page, says how to open it and how large it is, and shows the demo home.
pub(crate) fn build(demo: bool) -> Result<()> {
    tools::need_node()?;
    let module = step("the wasm module and its bindings", wasm::build)?;
    step("npm packages", packages)?;
    step("types of the page's TypeScript", || {
        step::run(&mut tools::npm(["run", "--silent", "check"]))
    })?;
    step("the page's script and style", || {
        step::run(&mut tools::npm(["run", "--silent", "bundle"]))
    })?;
    let parts = Parts {
        module,
        climate: fs::read(target::root().join(CLIMATE)).context(CLIMATE)?,
        script: target::read("www/dist/bundle.js")?,
        style: target::read("www/dist/bundle.css")?,
    };
    let page = step("one file of it all", || write(&parts))?;
    tell(&page, &parts)?;
    if demo { show_demo() } else { Ok(()) }
}

/// `npm ci`, when the packages are missing or older than the list.
pub(crate) fn packages() -> Result<()> {
    let www = target::root().join("www");
    // npm writes this file last, so a broken install is done again.
    let installed = modified(&www.join("node_modules/.package-lock.json"));
    let wanted = modified(&www.join("package-lock.json"));
    ensure!(wanted.is_some(), "www/package-lock.json is missing");
    if installed >= wanted {
        return Ok(());
    }
    step::run(&mut tools::npm(["ci", "--no-audit", "--no-fund", "--loglevel=error"]))
}

fn modified(path: &Path) -> Option<std::time::SystemTime> {
    fs::metadata(path).and_then(|file| file.modified()).ok()
}

fn write(parts: &Parts) -> Result<PathBuf> {
    let html = fill(&target::read("www/index.html")?, parts)?;
    let path = target::root().join("www/dist/index.html");
    fs::write(&path, html).with_context(|| path.display().to_string())?;
    Ok(path)
}

/// Puts the parts where the template wants them.
fn fill(template: &str, parts: &Parts) -> Result<String> {
    ensure!(!parts.script.contains("</script"), "the script would end itself");
    ensure!(!parts.style.contains("</style"), "the style would end itself");
    let places = [
        ("{{CSP}}", policy(&parts.script, &parts.style)),
        ("{{WASM}}", packed(&parts.module)?),
        ("{{CLIMATE}}", packed(&parts.climate)?),
        ("{{STYLE}}", parts.style.clone()),
        ("{{SCRIPT}}", parts.script.clone()),
    ];
    let mut html = String::new();
    let mut rest = template;
    for _ in &places {
        let Some(at) = rest.find("{{") else { bail!("www/index.html lacks one of its places") };
        let (place, text) = places
            .iter()
            .find(|(place, _)| rest[at..].starts_with(place))
            .context("www/index.html has an unknown place in {{…}}")?;
        ensure!(template.matches(place).count() == 1, "www/index.html has {place} more than once");
        html.push_str(&rest[..at]);
        html.push_str(text);
        rest = &rest[at + place.len()..];
    }
    ensure!(!rest.contains("{{"), "www/index.html has an unknown place in {{…}}");
    Ok(html + rest)
}

/// Nothing may run, look or connect but what stands in the file.
fn policy(script: &str, style: &str) -> String {
    format!(
        "default-src 'none'; script-src {} 'wasm-unsafe-eval'; style-src {}; img-src data:; \
         connect-src 'none'; base-uri 'none'; form-action 'none'",
        hash(script),
        hash(style)
    )
}

fn hash(text: &str) -> String {
    format!("'sha256-{}'", BASE64_STANDARD.encode(Sha256::digest(text)))
}

/// Deflated (RFC 1951, `deflate-raw` of `DecompressionStream`), then base64. Looking for the
/// shortest stream takes a few seconds, which saves a fifteenth of the page.
fn packed(bytes: &[u8]) -> Result<String> {
    let mut deflated = Vec::new();
    zopfli::compress(zopfli::Options::default(), zopfli::Format::Deflate, bytes, &mut deflated)?;
    Ok(BASE64_STANDARD.encode(deflated))
}

fn gzipped(bytes: &[u8]) -> Result<usize> {
    let mut pack = GzEncoder::new(Vec::new(), Compression::best());
    pack.write_all(bytes)?;
    Ok(pack.finish()?.len())
}

/// Sizes beside their targets; a miss is said, and fails nothing.
fn tell(path: &Path, parts: &Parts) -> Result<()> {
    let page = fs::read(path)?;
    println!("\n{:<10}{:>12}{:>12}", "bytes", "raw", "gzip");
    let sizes: [(&str, &[u8], Option<usize>); 5] = [
        ("page", &page, Some(350_000)),
        ("climate", &parts.climate, Some(125_000)),
        ("wasm", &parts.module, Some(130_000)),
        ("script", parts.script.as_bytes(), None),
        ("style", parts.style.as_bytes(), None),
    ];
    for (name, bytes, most) in sizes {
        let gzip = gzipped(bytes)?;
        let verdict = most.map_or(String::new(), |most| {
            let word = if gzip <= most { "within" } else { "MISSES" };
            format!("   {word} {most}")
        });
        println!("{name:<10}{:>12}{gzip:>12}{verdict}", bytes.len());
    }
    println!("\n{}\nOpen it with a double click, or drag it into a browser.", path.display());
    Ok(())
}

fn show_demo() -> Result<()> {
    println!("\nThe demo home, {DEMO}:\n");
    let mut demo =
        target::cargo(["run", "--release", "--quiet", "--locked", "--package=winterseam"]);
    step::run(demo.args(["--example", "assess", "--", "--text", DEMO]))
}

#[cfg(test)]
mod tests {
    use super::{Parts, fill};

    fn parts(script: &str) -> Parts {
        let (module, climate) = (vec![0; 9], vec![1; 9]);
        Parts { module, climate, script: script.to_owned(), style: "p{}".to_owned() }
    }

    const TEMPLATE: &str = "a{{CSP}}b{{STYLE}}c{{WASM}}d{{CLIMATE}}e{{SCRIPT}}f";

    #[test]
    fn every_place_is_filled_once_and_parts_are_left_as_they_are() {
        let page = fill(TEMPLATE, &parts("f('{{CSP}}')")).unwrap();
        assert!(page.starts_with("adefault-src 'none'; script-src 'sha256-"));
        assert!(page.ends_with("ef('{{CSP}}')f"));
    }

    #[test]
    fn a_template_without_a_place_is_refused() {
        assert!(fill(&TEMPLATE.replace("{{WASM}}", ""), &parts("")).is_err());
    }

    #[test]
    fn a_script_that_would_end_itself_is_refused() {
        assert!(fill(TEMPLATE, &parts("'</script>'")).is_err());
    }
}
