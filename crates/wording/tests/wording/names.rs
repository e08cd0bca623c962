//! One name for each thing, wherever it is said.

use sayso_model::Language;
use sayso_wording::{Locale, by_id};

#[test]
fn edit_and_undo_are_the_two_words_for_mending_in_every_language() {
    for l in Language::ALL.map(Locale::of) {
        let said = |id: &str| by_id(&l, id).unwrap();
        let (edit, undo) = (said("card-edit"), said("board-undo"));
        assert_eq!(said("glossary-edit-undo"), format!("{edit}, {undo}"));
        for id in ["log-edit", "client-recent-edit"] {
            assert_eq!(said(id), edit, "{id}");
        }
        for id in ["log-undo", "client-recent-undo", "client-kit-undo", "checks-undo", "likes-undo"] {
            assert_eq!(said(id), undo, "{id}");
        }
    }
}
