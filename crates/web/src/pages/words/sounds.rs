//! Words that sound too much alike to stand on one board.

use sayso_methods::words::{AlikeRule, Likeness, alike};
use sayso_model::{Story, WordCard, WordId};

/// Other active words that sound too much like `says`, with how alike they are.
pub fn too_alike<'a>(story: &'a Story, says: &str, but: Option<WordId>) -> Vec<(&'a WordCard, Likeness)> {
    let others = story.words().into_values().filter(|w| w.active && Some(w.word) != but);
    let language = story.language_of_words();
    others
        .map(|w| (w, alike(says, w.says.as_str(), language, AlikeRule::default())))
        .filter(|(_, likeness)| likeness.too_alike)
        .collect()
}
