//! The same work in Rust, Python and JavaScript, one after the other in one run:
//! `cargo bench -p bench --bench peers`.

use bench::Work;
use serde_json::Value;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, Instant};

/// How far the sum of a peer may lie from ours before it is no longer the same work. Peers use
/// other formulas for moist air, whose published difference is a few hundredths of a kelvin.
const SAME_WORK: f64 = 1e-3;

/// One time of one peer.
struct Time {
    work: String,
    peer: String,
    /// Nanoseconds for each thing counted.
    each: f64,
    sum: f64,
}

fn main() {
    println!("{:<32}{:<20}{:>12}{:>9}", "", "", "ns each", "times");
    let peers = python().into_iter().chain(node()).collect::<Vec<_>>();
    for work in bench::works() {
        let ours = time(&work);
        row(work.name, "rust", ours, 1.0);
        for peer in peers.iter().filter(|time| time.work == work.name) {
            row("", &peer.peer, peer.each, peer.each / ours);
            let sum = (work.run)();
            assert!(
                (peer.sum / sum - 1.0).abs() < SAME_WORK,
                "{}: {} and {sum}",
                peer.peer,
                peer.sum
            );
        }
    }
}

fn row(work: &str, who: &str, each: f64, times: f64) {
    println!("{work:<32}{who:<20}{each:>12.1}{times:>9.1}");
}

/// The median of several runs of at least a tenth of a second each.
fn time(work: &Work) -> f64 {
    let mut times = (0..7).map(|_| once(work)).collect::<Vec<_>>();
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn once(work: &Work) -> f64 {
    let start = Instant::now();
    let mut runs = 0.0;
    while start.elapsed() < Duration::from_millis(100) {
        std::hint::black_box((work.run)());
        runs += 1.0;
    }
    start.elapsed().as_secs_f64() * 1e9 / runs / f64::from(work.count)
}

fn here(path: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(path)
}

/// Python with the libraries of the outside checks.
fn python() -> Vec<Time> {
    let python = here("../tests/.venv/bin/python");
    if !python.exists() {
        println!("no tests/.venv, so no Python; `cargo verify` makes it");
        return Vec::new();
    }
    ask(Command::new(python).arg(here("peers.py")))
}

fn node() -> Vec<Time> {
    ask(Command::new("node").arg(here("peers.mjs")))
}

/// Runs a peer, which prints one JSON line a time.
fn ask(peer: &mut Command) -> Vec<Time> {
    match peer.output() {
        Ok(out) if out.status.success() => {
            String::from_utf8_lossy(&out.stdout).lines().filter_map(read).collect()
        }
        Ok(out) => {
            println!("{peer:?} failed: {}", String::from_utf8_lossy(&out.stderr));
            Vec::new()
        }
        Err(why) => {
            println!("{peer:?}: {why}");
            Vec::new()
        }
    }
}

fn read(line: &str) -> Option<Time> {
    let time: Value = serde_json::from_str(line).ok()?;
    Some(Time {
        work: time["work"].as_str()?.to_owned(),
        peer: time["peer"].as_str()?.to_owned(),
        each: time["each"].as_f64()?,
        sum: time["sum"].as_f64()?,
    })
}
