//! Energy of one piece, as typed or worked out from its weight.

use crate::typed::Typed;
use sayso_methods::ration::{FOODS, food_energy, kcal_per_piece};
use sayso_model::{Grams, Kcal};
use sayso_wording::{Locale, say};

/// Names of the fields read here.
pub const FIELDS: [&str; 4] = ["kcal_per_piece", "grams_per_piece", "kcal_per_100g", "food"];

/// Foods with a figure by weight, for a list to choose from: key and words.
pub fn foods(l: &Locale) -> Vec<(String, String)> {
    let none = (String::new(), say!(l, reward::none_of_these));
    let all = FOODS.iter().map(|f| {
        let food = say!(l, reward::food_name, food = f.name);
        (f.name.to_owned(), say!(l, reward::food_line, food = food, kcal = l.number(100.0 * f.kcal_per_gram, 0)))
    });
    std::iter::once(none).chain(all).collect()
}

/// Energy and weight of a piece. What was typed for the piece itself wins, then the package, then the table.
pub fn read(l: &Locale, typed: &mut Typed) -> (Option<Kcal>, Option<Grams>) {
    let grams = typed.quantity("grams_per_piece", Grams::new);
    let package = typed.number("kcal_per_100g").map(|k| ("kcal_per_100g", k / 100.0));
    let table = match typed.text("food").to_owned() {
        key if key.is_empty() => None,
        key => {
            let food = food_energy(&key);
            if food.is_none() {
                typed.wrong("food", say!(l, reward::not_in_list));
            }
            food.map(|f| ("food", f.kcal_per_gram))
        }
    };
    if !typed.text("kcal_per_piece").is_empty() {
        let kcal = typed.quantity("kcal_per_piece", Kcal::new);
        if kcal.is_some_and(|k| k.get() <= 0.0) {
            typed.wrong("kcal_per_piece", say!(l, reward::kcal_more));
        }
        return (kcal, grams);
    }
    let kcal = match (grams, package.or(table)) {
        (Some(grams), Some((field, per_gram))) => typed.checked(field, kcal_per_piece(grams, per_gram)),
        (None, Some(_)) => {
            if typed.problem("grams_per_piece").is_none() {
                typed.wrong("grams_per_piece", say!(l, reward::grams_missing));
            }
            None
        }
        (_, None) => {
            if typed.right() {
                typed.wrong("kcal_per_piece", say!(l, reward::kcal_missing));
            }
            None
        }
    };
    // Two decimals are more than any package knows.
    (kcal.map(|k| Kcal::clamped(((k.get() * 100.0).round() / 100.0).max(0.01))), grams)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn typed(pairs: &[(&str, &str)]) -> Typed {
        pairs.iter().fold(Typed::default(), |t, (n, v)| t.with(n, v))
    }

    #[test]
    fn the_piece_itself_wins_over_the_package_and_the_package_over_the_table() {
        let mut all =
            typed(&[("kcal_per_piece", "3"), ("grams_per_piece", "2"), ("kcal_per_100g", "400"), ("food", "cheddar")]);
        assert_eq!(read(&Locale::ENGLISH, &mut all).0.map(Kcal::get), Some(3.0));
        let mut package = typed(&[("grams_per_piece", "2"), ("kcal_per_100g", "400"), ("food", "cheddar")]);
        assert_eq!(read(&Locale::ENGLISH, &mut package).0.map(Kcal::get), Some(8.0));
        let mut table = typed(&[("grams_per_piece", "2"), ("food", "cheddar")]);
        assert_eq!(read(&Locale::ENGLISH, &mut table).0.map(Kcal::get), Some(8.06));
    }

    #[test]
    fn what_is_missing_or_impossible_is_named() {
        for (pairs, field) in [
            (&[][..], "kcal_per_piece"),
            (&[("food", "cheddar")][..], "grams_per_piece"),
            (&[("grams_per_piece", "2"), ("kcal_per_100g", "1000")][..], "kcal_per_100g"),
            (&[("grams_per_piece", "2"), ("food", "moon dust")][..], "food"),
            (&[("kcal_per_piece", "0")][..], "kcal_per_piece"),
        ] {
            let mut t = typed(pairs);
            assert!(read(&Locale::ENGLISH, &mut t).0.is_none_or(|k| k.get() <= 0.0), "{pairs:?}");
            assert!(t.problem(field).is_some(), "{pairs:?}: {:?}", t.problems());
        }
    }
}
