//! `cargo verify`: all that is checked before a change lands. Every step runs, also after one that
//! failed; what a step prints goes to a file and is shown when it fails.

use crate::{python, step, target, tools};
use anyhow::{Context as _, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};
use std::time::Instant;

/// A step: a name and the command that does it.
struct Step {
    name: &'static str,
    command: Command,
}

/// Tests of a step; a step without tests of its own counts as one.
#[derive(Debug, Default, Clone, Copy, PartialEq, Eq)]
struct Count {
    passed: usize,
    failed: usize,
}

/// Runs everything; `install` lets it bring system packages too, as `CI=true` does.
pub(crate) fn run(install: bool) -> Result<ExitCode> {
    let start = Instant::now();
    let myself = std::env::current_exe().context("this program does not know where it lies")?;
    let logs = target::folder().join("verify");
    fs::create_dir_all(&logs).with_context(|| logs.display().to_string())?;
    let mut total = Count::default();
    for (name, work) in preparations(install) {
        total.add(prepare(name, work));
    }
    for step in steps(&myself) {
        total.add(perform(step, &logs)?);
    }
    println!("{} in all; logs in {}", step::seconds(start.elapsed()), logs.display());
    println!("{} passed, {} failed", total.passed, total.failed);
    Ok(if total.failed == 0 { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

type Work = Box<dyn FnOnce() -> Result<()>>;

/// What the checks need on the machine.
fn preparations(install: bool) -> Vec<(&'static str, Work)> {
    let install = install || std::env::var("CI").is_ok_and(|ci| ci == "true");
    vec![
        ("node and npm", Box::new(tools::need_node)),
        ("wasm target", Box::new(tools::need_wasm_target)),
        ("npm packages", Box::new(crate::page::packages)),
        ("python packages", Box::new(python::bring)),
        ("browser", Box::new(move || tools::need_browser(install))),
    ]
}

fn steps(myself: &Path) -> Vec<Step> {
    let own = |words: &[&str]| {
        let mut command = Command::new(myself);
        command.current_dir(target::root()).args(words);
        command
    };
    let npm = |script| tools::npm(["run", "--silent", script]);
    [
        ("formatting", target::cargo(["fmt", "--all", "--check"])),
        ("clippy", clippy(&[])),
        (
            "clippy for wasm",
            clippy(&["--package=winterseam-wasm", "--target=wasm32-unknown-unknown"]),
        ),
        ("Rust tests", tests()),
        ("Rust documentation", documentation()),
        ("generated tables", own(&["data", "--check"])),
        ("generated types", own(&["types", "--check"])),
        ("licences", own(&["licences"])),
        ("page", own(&["page", "--no-demo"])),
        ("tidy", own(&["tidy"])),
        ("native and wasm agree", own(&["parity"])),
        ("TypeScript lint", npm("lint")),
        ("TypeScript tests", npm("test")),
        ("browser tests", browser_tests()),
    ]
    .into_iter()
    .map(|(name, command)| Step { name, command })
    .collect()
}

fn clippy(narrowed: &[&str]) -> Command {
    let mut command = target::cargo(["clippy", "--quiet", "--locked"]);
    if narrowed.is_empty() {
        command.args(["--workspace", "--all-targets", "--all-features"]);
    }
    command.args(narrowed).args(["--", "-D", "warnings"]);
    command
}

/// All tests and doctests, with the checks that ask a living peer.
fn tests() -> Command {
    let mut command = target::cargo(["test", "--locked", "--no-fail-fast", "--workspace"]);
    command.args(["--exclude=winterseam-wasm", "--features=conformance/peers"]);
    if let Some(python) = python::interpreter() {
        command.env("WINTERSEAM_PYTHON", python);
    }
    command
}

fn browser_tests() -> Command {
    let mut command = tools::npm(["run", "--silent", "test:browser"]);
    if let Some(browser) = tools::browser() {
        command.env("WINTERSEAM_CHROMIUM", browser);
    }
    command
}

fn documentation() -> Command {
    let mut command = target::cargo(["doc", "--quiet", "--locked", "--workspace", "--no-deps"]);
    command.env("RUSTDOCFLAGS", "-D warnings");
    command
}

fn prepare(name: &str, work: Work) -> Count {
    let start = Instant::now();
    let done = work();
    tell(name, start, done.is_ok());
    if let Err(why) = &done {
        println!("    {why:#}");
    }
    Count { passed: usize::from(done.is_ok()), failed: usize::from(done.is_err()) }
}

fn perform(mut step: Step, logs: &Path) -> Result<Count> {
    let start = Instant::now();
    let path = logs.join(format!("{}.log", step.name.replace(' ', "-")));
    let succeeded = logged(&mut step.command, &path)?;
    let log = fs::read_to_string(&path).unwrap_or_default();
    let count = Count::of(&log, succeeded);
    tell(step.name, start, count.failed == 0);
    if count.failed > 0 {
        println!("{log}\n    {} failed: `{}`", step.name, step::name(&step.command));
    }
    Ok(count)
}

/// Runs a command with all it prints in a file; one that can't be started has failed.
fn logged(command: &mut Command, path: &PathBuf) -> Result<bool> {
    let log = fs::File::create(path).with_context(|| path.display().to_string())?;
    command.stdin(std::process::Stdio::null()).stdout(log.try_clone()?).stderr(log);
    match step::start(command) {
        Ok(status) => Ok(status.success()),
        Err(why) => {
            fs::write(path, format!("{why:#}\n"))?;
            Ok(false)
        }
    }
}

fn tell(name: &str, start: Instant, well: bool) {
    let word = if well { "ok" } else { "FAILED" };
    println!("{name:<24}{word:<8}{:>9}", step::seconds(start.elapsed()));
}

impl Count {
    fn add(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
    }

    /// Adds up the closing lines of Rust's and of Node's test runner. A program that failed without
    /// a failed test, such as one that did not compile, is one failure; so is a runner without a
    /// test. A program that runs no tests counts as one.
    fn of(log: &str, succeeded: bool) -> Self {
        let counts = log.lines().filter_map(|line| rust_tests(line).or_else(|| node_tests(line)));
        let counts = counts.collect::<Vec<_>>();
        let mut total = Self::default();
        for count in &counts {
            total.add(*count);
        }
        if total.failed == 0 && (!succeeded || (total.passed == 0 && !counts.is_empty())) {
            total.failed = 1;
        } else if counts.is_empty() {
            total.passed = 1;
        }
        total
    }
}

/// `test result: ok. 12 passed; 0 failed; …`
fn rust_tests(line: &str) -> Option<Count> {
    let (_, counts) = line.strip_prefix("test result: ")?.split_once(". ")?;
    let mut counts = counts.split("; ");
    let mut next = |word| counts.next()?.strip_suffix(word)?.trim().parse().ok();
    Some(Count { passed: next("passed")?, failed: next("failed")? })
}

/// `# pass 12` or `ℹ pass 12`, and the same with `fail`.
fn node_tests(line: &str) -> Option<Count> {
    let words = line.strip_prefix("# ").or_else(|| line.strip_prefix("ℹ "))?;
    let (word, number) = words.split_once(' ')?;
    let number = number.parse().ok()?;
    match word {
        "pass" => Some(Count { passed: number, failed: 0 }),
        "fail" => Some(Count { passed: 0, failed: number }),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::Count;

    #[test]
    fn closing_lines_of_both_runners_are_added_up() {
        let log = "test result: ok. 12 passed; 0 failed; 1 ignored\n# pass 3\n# fail 0\nℹ pass 4\n";
        assert_eq!(Count::of(log, true), Count { passed: 19, failed: 0 });
    }

    #[test]
    fn a_step_without_tests_counts_as_one() {
        assert_eq!(Count::of("done", true), Count { passed: 1, failed: 0 });
        assert_eq!(Count::of("does not compile", false), Count { passed: 0, failed: 1 });
    }

    #[test]
    fn a_runner_that_found_no_test_is_a_failure() {
        assert_eq!(Count::of("# pass 0\n# fail 0\n", true), Count { passed: 0, failed: 1 });
    }

    #[test]
    fn a_program_that_fails_after_its_tests_passed_is_a_failure() {
        let log = "test result: ok. 2 passed; 0 failed; 0 ignored\n";
        assert_eq!(Count::of(log, false), Count { passed: 2, failed: 1 });
    }
}
