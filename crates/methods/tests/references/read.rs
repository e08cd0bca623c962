//! Reads what the maths is held against: the files of `tests/reference/`, each with its sources.

use serde_json::Value;

/// A file, whole.
pub fn file(name: &str) -> Value {
    let path = format!("{}/../../tests/reference/{name}", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{path}: {e}"));
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{path}: {e}"))
}

/// The cases of a file; there are some.
pub fn cases(name: &str) -> Vec<Value> {
    let cases = file(name)["cases"].as_array().unwrap().clone();
    assert!(!cases.is_empty(), "{name}");
    cases
}
