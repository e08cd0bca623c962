//! What each page of `docs/methods` is called for its reader; in English, its heading.

use super::method::Said;
use sayso_wording::say;

/// Pages by their name, with their titles.
pub const TITLES: &[(&str, Said)] = &[
    ("agreement", |l| say!(l, methods::title_agreement)),
    ("board", |l| say!(l, methods::title_board)),
    ("demand", |l| say!(l, methods::title_demand)),
    ("exact-tests", |l| say!(l, methods::title_exact_tests)),
    ("first-words", |l| say!(l, methods::title_first_words)),
    ("hearing", |l| say!(l, methods::title_hearing)),
    ("latency", |l| say!(l, methods::title_latency)),
    ("learning", |l| say!(l, methods::title_learning)),
    ("likes", |l| say!(l, methods::title_likes)),
    ("ration", |l| say!(l, methods::title_ration)),
    ("readiness", |l| say!(l, methods::title_readiness)),
    ("rehearsal", |l| say!(l, methods::title_rehearsal)),
    ("simulator", |l| say!(l, methods::title_simulator)),
    ("single-case", |l| say!(l, methods::title_single_case)),
    ("sounds-alike", |l| say!(l, methods::title_sounds_alike)),
    ("understanding", |l| say!(l, methods::title_understanding)),
];
