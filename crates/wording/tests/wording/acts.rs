//! Buttons that stand on the Board at the same moment: none reads like another, in any language.

use sayso_model::Language;
use sayso_wording::{Locale, by_id};

/// What can be noted at any time of a session.
const ALWAYS: [&str; 8] = [
    "board-joined",
    "board-looked",
    "board-brushed",
    "board-pressed",
    "board-left",
    "board-sign",
    "board-end",
    "board-undo",
];

/// What is asked beside it.
const ASKED: [(&str, &[&str]); 6] = [
    (
        "after it was given",
        &[
            "client-board-took",
            "client-board-ignored",
            "client-board-without-it",
            "client-board-one-more",
            "client-board-pressed-again",
        ],
    ),
    ("after not now", &["client-board-let-it-be", "client-board-without-it", "client-board-pressed-again"]),
    (
        "while an invitation waits",
        &["client-board-nothing-came", "client-board-own-way", "client-board-left-offer", "client-board-cancel-one"],
    ),
    ("after an invitation", &["client-board-took", "client-board-did-not-take", "client-board-did-not-see"]),
    (
        "how a press is answered",
        &[
            "client-board-given",
            "client-board-stumble-short",
            "client-board-partly",
            "client-board-not-now",
            "client-board-else-instead",
            "client-board-missed",
        ],
    ),
    ("which sign was seen", &["client-board-other-strong", "client-board-other-mild", "client-board-other-joining"]),
];

#[test]
fn each_act_has_a_label_of_its_own() {
    for language in Language::ALL {
        let locale = Locale::of(language);
        for (when, asked) in ASKED {
            let mut said: Vec<String> = ALWAYS.iter().chain(asked).map(|id| by_id(&locale, id).expect(id)).collect();
            // A dot, a gap or a capital more is not what tells two buttons apart.
            for one in &mut said {
                *one = one.trim_end_matches(['…', ' ', '.', '\u{202f}', '\u{a0}']).to_lowercase();
            }
            said.sort();
            let twice: Vec<_> = said.windows(2).filter(|w| w[0] == w[1]).collect();
            assert!(twice.is_empty(), "{language:?}, {when}: {twice:?}");
        }
    }
}
