//! Texts and numbers written in this crate's own source. The tests run every function that uses them.

use sayso_model::{Label, Note, Zone};

/// A name written in our own source.
#[expect(clippy::expect_used, reason = "the texts are constants of this crate")]
pub(crate) fn label(text: &str) -> Label {
    Label::new(text).expect("a constant label is valid")
}

/// A remark written in our own source.
#[expect(clippy::expect_used, reason = "the texts are constants of this crate")]
pub(crate) fn note(text: &str) -> Note {
    Note::new(text).expect("a constant note is valid")
}

/// A zone named in our own source.
#[expect(clippy::expect_used, reason = "the names are constants of this crate")]
pub(crate) fn zone(name: &str) -> Zone {
    Zone::new(name).expect("a constant zone is in the bundled database")
}
