//! Reading: limits hold while reading, numbers keep their bits, nothing is read twice.
//!
//! Outside: the grammar of RFC 8259 and the limits that `DEVELOPERS.md` promises.

use winterseam::error::Reason;
use winterseam::wire::{MOST_CHARACTERS, MOST_LEVELS, MOST_VALUES, Tree};

fn first_reason(text: &str) -> Reason {
    Tree::from_json(text).expect_err("should be refused")[0].reason.clone()
}

fn nested(levels: usize) -> String {
    "[".repeat(levels) + &"]".repeat(levels)
}

#[test]
fn a_request_is_as_deep_as_the_limit_and_no_deeper() {
    assert!(Tree::from_json(&nested(MOST_LEVELS)).is_ok());
    let too_deep = Reason::TooLarge { of: "levels", limit: MOST_LEVELS };
    assert_eq!(first_reason(&nested(MOST_LEVELS + 1)), too_deep);
    assert_eq!(first_reason(&nested(2_000_000)), too_deep);
    assert_eq!(first_reason(&r#"{"a":"#.repeat(20_000)), too_deep);
}

#[test]
fn a_request_holds_as_many_values_as_the_limit_and_no_more() {
    let list = |n: usize| format!("[{}0]", "0,".repeat(n - 2)); // the list is a value too
    assert!(Tree::from_json(&list(MOST_VALUES)).is_ok());
    let too_many = Reason::TooLarge { of: "values", limit: MOST_VALUES };
    assert_eq!(first_reason(&list(MOST_VALUES + 1)), too_many);
}

#[test]
fn a_long_text_is_refused_at_its_place_and_so_is_a_long_sum_of_texts() {
    let text = |n: usize| "é".repeat(n);
    assert!(Tree::from_json(&format!(r#"["{}"]"#, text(MOST_CHARACTERS))).is_ok());
    let long = format!(r#"{{"a": ["", "{}"]}}"#, text(MOST_CHARACTERS + 1));
    assert_eq!(Tree::from_json(&long).unwrap_err()[0].path, "a[1]");
    let many = vec![format!("\"{}\"", text(MOST_CHARACTERS)); 90].join(",");
    assert!(matches!(
        first_reason(&format!("[{many}]")),
        Reason::TooLarge { of: "characters", .. }
    ));
}

#[test]
fn a_field_that_stands_twice_is_named_and_the_rest_is_still_read() {
    let problems = Tree::from_json(r#"{"a": {"b": 1, "b": 1}, "c": 1, "c": null}"#).unwrap_err();
    let paths: Vec<&str> = problems.iter().map(|error| error.path.as_str()).collect();
    assert_eq!(paths, ["a.b", "c"]);
    assert!(problems.iter().all(|error| error.reason == Reason::Twice));
}

#[test]
fn what_is_no_json_is_refused_with_its_place() {
    let cases = [
        ("", 1, 0),
        ("{\n  \"a\": nan\n}", 2, 9),
        ("[1, Infinity]", 1, 5),
        ("[1] [2]", 1, 5),
        ("{\"a\": 1,}", 1, 9),
        ("[01]", 1, 3),
        ("[+1]", 1, 2),
        ("[.5]", 1, 2),
        ("[1.]", 1, 4),
        ("{'a': 1}", 1, 2),
        ("[\"\\ud800\"]", 1, 10),
        ("[1e999]", 1, 6),
    ];
    for (text, line, column) in cases {
        match first_reason(text) {
            Reason::NotJson { line: l, column: c } => {
                assert_eq!(l, line, "{text}");
                assert!(c.abs_diff(column) <= 1, "{text}: column {c}, expected about {column}");
            }
            other => panic!("{text}: {other:?}"),
        }
    }
}

#[test]
fn numbers_are_the_nearest_double_as_in_a_browser() {
    // The standard library parses to the nearest double (its documentation says so).
    let mut mantissa = 1_u64;
    for step in 0..20_000_i32 {
        mantissa = mantissa.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
        let text = format!("{}e{}", mantissa, step % 40 - 30);
        let ours = Tree::from_json(&text).expect("a number").number().expect("a number");
        let theirs: f64 = text.parse().expect("a number");
        assert_eq!(ours.to_bits(), theirs.to_bits(), "{text}");
    }
}

#[test]
fn minus_zero_is_zero_and_large_whole_numbers_are_doubles() {
    for text in ["-0", "-0.0", "-0e5"] {
        let zero = Tree::from_json(text).expect("a number").number().expect("a number");
        assert_eq!(zero.to_bits(), 0, "{text}");
    }
    assert_eq!(Tree::from_json("9007199254740993").unwrap(), Tree::Number(9_007_199_254_740_992.0));
    assert_eq!(
        Tree::from_json("18446744073709551616").unwrap(),
        Tree::Number(18_446_744_073_709_551_616.0)
    );
}
