//! What is no ZIP code, no station and no atlas is refused, never guessed and never a panic.

use std::path::Path;
use winterseam::climate::{Atlas, BadAtlas, Zone};

fn bytes() -> Vec<u8> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/data/climate/atlas.bin");
    std::fs::read(path).expect("the atlas")
}

/// Places without chance: all of the head, then one in a thousand.
fn some_places(length: usize) -> impl Iterator<Item = usize> {
    (0..length.min(400)).chain((400..length).step_by(997))
}

#[test]
fn no_zip_code_is_guessed() {
    for zip in ["", "0000", "5980", "598011", "5980a", "ABCDE", "59 01", "-5980", "+5980", "٥٩٨٠١"]
    {
        assert_eq!(Atlas::embedded().place(zip), None, "{zip:?}");
    }
}

#[test]
fn a_code_where_nobody_lives_is_unknown() {
    for zip in ["00000", "00099", "99999"] {
        let place = Atlas::embedded().place(zip);
        assert!(place.is_none_or(|place| place.by_area), "{zip:?}");
    }
    assert_eq!(Atlas::embedded().place("00000"), None);
}

#[test]
fn no_station_is_guessed() {
    for usaf in ["", "72530", "7253000", "72530O", "000000", "999999"] {
        assert_eq!(Atlas::embedded().station(usaf), None, "{usaf:?}");
    }
}

#[test]
fn a_zone_has_a_letter_below_seven_only() {
    for text in ["", "A", "0A", "3", "3D", "7A", "9", "3AA", "é"] {
        assert_eq!(Zone::parse(text), None, "{text:?}");
    }
    assert!(["1A", "2A", "3A"].iter().all(|z| Zone::parse(z).is_some_and(Zone::is_hot_humid)));
    assert!(
        ["4A", "2B", "3C", "8"].iter().all(|z| !Zone::parse(z).is_some_and(Zone::is_hot_humid))
    );
}

#[test]
fn an_atlas_cut_anywhere_is_refused() {
    let whole = bytes();
    for length in some_places(whole.len()) {
        assert!(Atlas::from_bytes(&whole[..length]).is_err(), "{length} bytes");
    }
    assert!(Atlas::from_bytes(&[whole.as_slice(), &[0]].concat()).is_err(), "a byte too many");
}

#[test]
fn an_atlas_with_a_changed_byte_is_refused() {
    let mut changed = bytes();
    for at in some_places(changed.len()) {
        for flip in [0x01, 0x80, 0xff] {
            changed[at] ^= flip;
            assert!(Atlas::from_bytes(&changed).is_err(), "byte {at}");
            changed[at] ^= flip;
        }
    }
}

#[test]
fn an_atlas_of_another_version_says_so() {
    let mut other = bytes();
    other[7] = 1;
    assert!(matches!(Atlas::from_bytes(&other), Err(BadAtlas::UnknownVersion(1))));
}
