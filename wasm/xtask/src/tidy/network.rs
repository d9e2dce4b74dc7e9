//! The page, once built, names no network address.

use super::Findings;
use crate::target;

const PAGE: &str = "www/dist/index.html";

/// Names of XML vocabularies look like addresses; nothing is fetched from them.
const VOCABULARIES: [&str; 3] =
    ["www.w3.org/2000/svg", "www.w3.org/1999/xhtml", "www.w3.org/1999/xlink"];

pub(super) fn check(found: &mut Findings) {
    match std::fs::read_to_string(target::root().join(PAGE)) {
        Ok(page) => {
            for address in addresses(&page) {
                found.broken(PAGE, format!("names the address {address}"));
            }
        }
        Err(_) => found.warned(PAGE, "not built, so not looked at"),
    }
}

fn addresses(page: &str) -> Vec<&str> {
    page.match_indices("://")
        .map(|(at, _)| {
            let start = page[..at].rfind(|c: char| !c.is_ascii_alphanumeric()).map_or(0, |i| i + 1);
            let length = page[at + 3..].find(|c: char| c.is_whitespace() || "\"'`<>)".contains(c));
            &page[start..length.map_or(page.len(), |length| at + 3 + length)]
        })
        .filter(|address| ["http:", "https:", "ws:", "wss:"].iter().any(|s| address.starts_with(s)))
        .filter(|address| !VOCABULARIES.iter().any(|known| address.ends_with(known)))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::addresses;

    #[test]
    fn an_address_is_found_and_the_name_of_a_vocabulary_is_none() {
        let page = "<svg xmlns='http://www.w3.org/2000/svg'> fetch(\"https://example.org/x\")";
        assert_eq!(addresses(page), ["https://example.org/x"]);
    }
}
