//! Whether a card and an idea mean the same thing under another label: “two sprigs of parsley” and “Parsley, one sprig”.
//! Compared by what is left of a name without numbers, sizes, units and ways to prepare it.

use sayso_model::text::unaccented;
use std::collections::BTreeSet;
use std::sync::LazyLock;

/// Words that say how much, how large or how prepared, in English, Spanish, German, French and Portuguese; without marks and the
/// s of a plural.
static ABOUT: LazyLock<BTreeSet<String>> =
    LazyLock::new(|| include_str!("about_words.txt").split_whitespace().map(singular).collect());

/// What a name is about: its words in small letters, without marks, plurals and what [`ABOUT`] holds.
fn core(name: &str) -> BTreeSet<String> {
    let plain = unaccented(name);
    let words = plain.split(|c: char| !c.is_alphabetic()).filter(|w| !w.is_empty()).map(singular);
    words.filter(|w| !ABOUT.contains(w)).collect()
}

fn singular(word: &str) -> String {
    word.strip_suffix('s').filter(|w| w.len() > 2 && !w.ends_with('s')).unwrap_or(word).to_owned()
}

/// Whether a card called `card` is what an idea of the same kind is called, by any of its `names`. What stands after a comma in
/// an idea's name says how it is cut. Of food, “beans” is “green bean”; of a game, “ball” is not “crinkly paper ball”.
pub fn same_thing(card: &str, names: &[String], food: bool) -> bool {
    let card = core(card);
    !card.is_empty()
        && names.iter().any(|name| {
            let idea = core(name.split(',').next().unwrap_or_default());
            !idea.is_empty() && (idea.is_subset(&card) || food && card.is_subset(&idea))
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn same(card: &str, name: &str, food: bool) -> bool {
        same_thing(card, &[name.to_owned()], food)
    }

    #[test]
    fn another_label_is_the_same_thing() {
        for (card, idea) in [
            ("dandelion", "Dandelion leaf, one"),
            ("Dandelion leaves", "Dandelion leaf, one"),
            ("two sprigs of parsley", "Parsley, one sprig"),
            ("Cheese cube", "Cheese, pea-sized"),
            ("green beans", "Green bean, cooked, one"),
            ("Löwenzahnblatt", "Löwenzahnblatt, eins"),
            ("Löwenzahn", "Löwenzahn, ein Blatt"),
            ("pollo", "Pollo cocido, como un guisante"),
            ("haricots", "Haricot vert cuit, un"),
            ("maca", "Maçã sem miolo, um cubinho"),
            ("Oeuf cuit", "Œuf dur, un petit morceau"),
        ] {
            assert!(same(card, idea, true), "{card}: {idea}");
        }
        assert!(same("Tug rope", "Tug", false));
    }

    #[test]
    fn another_thing_is_not() {
        for (card, idea, food) in [
            ("chicken", "Cheese, pea-sized", true),
            ("ball", "Crinkly paper ball", false),
            ("small piece", "Cheese, pea-sized", true),
            ("Chest scratch", "Belly rub", false),
            ("", "Tug", false),
        ] {
            assert!(!same(card, idea, food), "{card}: {idea}");
        }
    }
}
