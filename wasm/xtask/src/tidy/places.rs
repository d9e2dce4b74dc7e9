//! No path of anyone's machine, and no host of a package registry, stands in a file.

use super::{File, Findings};

/// Beginnings of paths that exist on one machine only. Written in pieces, so that this file passes.
const FOLDERS: [&str; 7] = [
    concat!("/", "root/"),
    concat!("/", "work/"),
    concat!("/", "tmp/"),
    concat!("/", "home/"),
    concat!("/", "Users/"),
    concat!("/", "opt/"),
    concat!(":", "\\Users\\"),
];

const HOSTS: [&str; 7] = [
    concat!("registry.", "npmjs"),
    concat!("registry.", "yarnpkg"),
    concat!("pypi", ".org"),
    concat!("python", "hosted"),
    concat!("static.", "crates", ".io"),
    concat!("index.", "crates", ".io"),
    concat!("deb.", "debian"),
];

/// A field of npm's list that holds the host packages came from.
const RESOLVED: &str = concat!("\"resolved\"", ": \"http");

pub(super) fn check(files: &[File], found: &mut Findings) {
    for file in files {
        for (number, line) in file.text.lines().enumerate() {
            for word in offending(line) {
                found.broken(format!("{}:{}", file.path, number + 1), format!("names `{word}`"));
            }
        }
    }
}

fn offending(line: &str) -> impl Iterator<Item = &'static str> {
    let folders = FOLDERS.iter().filter(|folder| starts_a_path(line, folder));
    let hosts = HOSTS.iter().chain([&RESOLVED]).filter(|host| line.contains(**host));
    folders.chain(hosts).copied()
}

/// Whether the folder stands at the start of a path: `src/home/mod.rs` is inside the project.
fn starts_a_path(line: &str, folder: &str) -> bool {
    line.match_indices(folder).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        before.is_none_or(|c| {
            folder.starts_with(':') || !(c.is_alphanumeric() || "_.-}*/>)".contains(c))
        })
    })
}

#[cfg(test)]
mod tests {
    use super::offending;

    #[test]
    fn a_path_of_a_machine_is_found_and_one_of_the_project_is_not() {
        assert_eq!(offending(concat!("see \"/", "home/ann/x\"")).count(), 1);
        assert_eq!(offending("core/src/home/mod.rs").count(), 0);
        assert_eq!(offending("https://example.org/home/x").count(), 0);
    }

    #[test]
    fn a_registry_host_is_found() {
        assert_eq!(offending(concat!("from pypi", ".org")).count(), 1);
    }
}
