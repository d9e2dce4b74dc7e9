//! Programs that must be on the machine, and the command that brings each.

use anyhow::{Context as _, Result, bail};
use std::path::{Path, PathBuf};
use std::process::Command;

const NODE: &str =
    "https://nodejs.org, or your system's package `nodejs` if it is version 20 or newer";

/// `npm` in the folder of the page.
pub(crate) fn npm<'a>(words: impl IntoIterator<Item = &'a str>) -> Command {
    let mut command = Command::new(if cfg!(windows) { "npm.cmd" } else { "npm" });
    command.current_dir(crate::target::root().join("www")).args(words);
    command
}

/// `node` at the root.
pub(crate) fn node<'a>(words: impl IntoIterator<Item = &'a str>) -> Command {
    let mut command = Command::new("node");
    command.current_dir(crate::target::root()).args(words);
    command
}

/// Node 20 or newer, and npm.
pub(crate) fn need_node() -> Result<()> {
    let version = version(&mut node(["--version"]), "node", NODE)?;
    let major = version.trim_start_matches('v').split('.').next().and_then(|n| n.parse().ok());
    if major.is_none_or(|n: u32| n < 20) {
        bail!("node is {version}, and 20 or newer is needed; get it from {NODE}");
    }
    let mut npm = Command::new(if cfg!(windows) { "npm.cmd" } else { "npm" });
    self::version(npm.arg("--version"), "npm", NODE)?;
    Ok(())
}

/// The wasm target, added when it is missing.
pub(crate) fn need_wasm_target() -> Result<()> {
    let sysroot = sysroot()?;
    if Path::new(&sysroot).join("lib/rustlib/wasm32-unknown-unknown/lib").exists() {
        return Ok(());
    }
    let mut add = Command::new("rustup");
    add.current_dir(crate::target::root()).args(["target", "add", "wasm32-unknown-unknown"]);
    crate::step::run(&mut add).context(
        "this toolchain has no wasm target; `rustup target add wasm32-unknown-unknown` brings it",
    )
}

/// Where the toolchain lies.
pub(crate) fn sysroot() -> Result<String> {
    let mut rustc = Command::new(std::env::var_os("RUSTC").unwrap_or_else(|| "rustc".into()));
    rustc.current_dir(crate::target::root()).args(["--print", "sysroot"]);
    version(&mut rustc, "rustc", "https://rustup.rs")
}

/// What a program prints of itself; a missing one is named with what brings it.
pub(crate) fn version(command: &mut Command, program: &str, brings: &str) -> Result<String> {
    match command.output() {
        Ok(out) if out.status.success() => {
            Ok(String::from_utf8_lossy(&out.stdout).trim().to_owned())
        }
        Ok(_) => bail!("`{}` failed", crate::step::name(command)),
        Err(_) => bail!("{program} is missing; get it from {brings}"),
    }
}

/// A Chromium: the one that was named, or the first on the search path.
pub(crate) fn browser() -> Option<PathBuf> {
    let named = std::env::var_os("WINTERSEAM_CHROMIUM").map(PathBuf::from);
    named
        .or_else(|| ["chromium", "chromium-browser", "google-chrome"].into_iter().find_map(on_path))
}

fn on_path(program: &str) -> Option<PathBuf> {
    let folders = std::env::var_os("PATH")?;
    std::env::split_paths(&folders).map(|folder| folder.join(program)).find(|path| path.is_file())
}

/// A Chromium for the browser tests; brought by apt when that is allowed.
pub(crate) fn need_browser(install: bool) -> Result<()> {
    const BRINGS: &str = "apt-get install --yes --no-install-recommends chromium fonts-dejavu-core";
    if browser().is_some() {
        return Ok(());
    }
    if !install {
        bail!("no Chromium for the browser tests; as root, `{BRINGS}` brings it");
    }
    let apt = |words: &str| {
        let mut apt = Command::new("apt-get");
        apt.args(words.split(' ').skip(1)).env("DEBIAN_FRONTEND", "noninteractive");
        apt
    };
    crate::step::run(&mut apt("apt-get update --quiet"))?;
    crate::step::run(&mut apt(BRINGS))
}
