//! The known name that a mistyped one resembles.

/// The nearest of the known names, if one is near enough to be meant.
pub(super) fn nearest(
    got: &str,
    known: impl Iterator<Item = &'static str>,
) -> Option<&'static str> {
    const LONGEST: usize = 40;
    if got.len() > LONGEST {
        return None;
    }
    let got = got.to_ascii_lowercase();
    let slips = 1 + got.len() / 4;
    known
        .map(|name| (apart(&got, name), name))
        .filter(|(apart, name)| *apart <= slips || begins_like(&got, name))
        .min()
        .map(|(_, name)| name)
}

/// `width` for `width_in`: the unit was left out.
fn begins_like(got: &str, name: &str) -> bool {
    got.len() >= 3 && (name.starts_with(got) || got.starts_with(name))
}

/// Least number of letters to put in, take out or change.
fn apart(one: &str, other: &str) -> usize {
    let other: Vec<char> = other.chars().collect();
    let mut row: Vec<usize> = (0..=other.len()).collect();
    for (i, letter) in one.chars().enumerate() {
        let mut diagonal = std::mem::replace(&mut row[0], i + 1);
        for (j, against) in other.iter().enumerate() {
            let change = diagonal + usize::from(letter != *against);
            diagonal = row[j + 1];
            row[j + 1] = change.min(row[j] + 1).min(diagonal + 1);
        }
    }
    row[other.len()]
}

#[cfg(test)]
mod tests {
    use super::nearest;

    const KNOWN: [&str; 4] = ["width_in", "length_in", "depth_in", "place"];

    fn near(got: &str) -> Option<&'static str> {
        nearest(got, KNOWN.into_iter())
    }

    #[test]
    fn a_slip_or_a_missing_unit_finds_the_name_that_was_meant() {
        assert_eq!(near("widht_in"), Some("width_in"));
        assert_eq!(near("Width"), Some("width_in"));
        assert_eq!(near("plaze"), Some("place"));
    }

    #[test]
    fn a_word_of_its_own_finds_none() {
        assert_eq!(near("colour"), None);
        assert_eq!(near(&"width_in".repeat(1000)), None);
    }
}
