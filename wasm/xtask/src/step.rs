//! Running other programs: what is being done, how long it took, and one line when it fails.

use anyhow::{Context as _, Result, bail};
use std::process::{Command, ExitStatus};
use std::time::{Duration, Instant};

/// Says what is being done, does it, and says how long it took.
pub(crate) fn step<T>(name: &str, work: impl FnOnce() -> Result<T>) -> Result<T> {
    eprintln!("· {name}");
    let start = Instant::now();
    let done = work()?;
    eprintln!("  {}", seconds(start.elapsed()));
    Ok(done)
}

/// Runs a command whose output the person sees.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let status = start(command)?;
    if !status.success() {
        bail!("`{}` failed", name(command));
    }
    Ok(())
}

/// Runs a command for what it prints; its errors stay visible.
pub(crate) fn output(command: &mut Command) -> Result<String> {
    let out = command
        .stderr(std::process::Stdio::inherit())
        .output()
        .with_context(|| format!("could not start `{}`", name(command)))?;
    if !out.status.success() {
        bail!("`{}` failed", name(command));
    }
    String::from_utf8(out.stdout).with_context(|| format!("`{}` printed no text", name(command)))
}

/// Runs a command and hands back how it ended.
pub(crate) fn start(command: &mut Command) -> Result<ExitStatus> {
    command.status().with_context(|| format!("could not start `{}`", name(command)))
}

/// A command as a person would type it.
pub(crate) fn name(command: &Command) -> String {
    let program = std::path::Path::new(command.get_program());
    let program = program.file_name().unwrap_or(command.get_program());
    std::iter::once(program)
        .chain(command.get_args())
        .map(|word| word.to_string_lossy())
        .collect::<Vec<_>>()
        .join(" ")
}

/// A time as it is printed beside a step.
pub(crate) fn seconds(time: Duration) -> String {
    format!("{:.1} s", time.as_secs_f64())
}
