//! The virtual environment of the outside checks: pinned Python libraries in `tests/.venv`.

use crate::{step, target, tools};
use anyhow::{Context as _, Result, ensure};
use std::fs;
use std::path::PathBuf;
use std::process::Command;

const WANTED: &str = "tests/peers/requirements.txt";
/// Put behind a requirement whose own requirements are not wanted.
const ALONE: &str = "# alone";

/// Its Python, when the environment is there.
pub(crate) fn interpreter() -> Option<PathBuf> {
    let bin = if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" };
    Some(folder().join(bin)).filter(|python| python.exists())
}

/// Makes the environment when it is missing or its list has changed.
pub(crate) fn bring() -> Result<()> {
    let wanted = target::read(WANTED)?;
    let stamp = folder().join("installed.txt");
    if fs::read_to_string(&stamp).is_ok_and(|installed| installed == wanted) {
        return Ok(());
    }
    make()?;
    let (alone, with): (Vec<_>, Vec<_>) =
        wanted.lines().filter(|line| !line.starts_with('#')).partition(|line| line.contains(ALONE));
    install(&[], &with)?;
    install(&["--no-deps"], &alone)?;
    fs::write(&stamp, wanted).context("tests/.venv")
}

fn folder() -> PathBuf {
    target::root().join("tests/.venv")
}

fn make() -> Result<()> {
    let brings = "your system's packages `python3` and `python3-venv`";
    let system = if cfg!(windows) { "python" } else { "python3" };
    tools::version(Command::new(system).arg("--version"), "python3", brings)?;
    let mut venv = Command::new(system);
    step::run(venv.args(["-m", "venv", "--clear"]).arg(folder()))
        .context("Python could not make a virtual environment; get `python3-venv`")
}

fn install(flags: &[&str], lines: &[&str]) -> Result<()> {
    let pins = lines
        .iter()
        .map(|line| line.split('#').next().unwrap_or_default().trim())
        .filter(|pin| !pin.is_empty())
        .collect::<Vec<_>>();
    if pins.is_empty() {
        return Ok(());
    }
    for pin in &pins {
        ensure!(pin.contains("=="), "{WANTED}: `{pin}` is not pinned with ==");
    }
    let python = interpreter().context("tests/.venv has no python")?;
    let mut pip = Command::new(python);
    pip.args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check"]);
    step::run(pip.args(flags).args(pins))
}
