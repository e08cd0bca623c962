//! Body language in words. The log holds the English text of a sign of the list, whatever the language of who noted it.

use crate::hazards::of_fact;
use crate::{Locale, say};
use sayso_model::Species;
use sayso_model::facts::{SignFact, Tells, known_sign, signs};

/// A sign of the list, as it is seen.
#[must_use]
pub fn seen(l: &Locale, sign: &SignFact) -> String {
    of_fact(l, "signs-see", &sign.id, &sign.sign)
}

/// A sign as it was noted: one of the list in the reader's language, one in a person's own words as it stands.
#[must_use]
pub fn noted(l: &Locale, text: &str) -> String {
    known_sign(text).map_or_else(|| text.to_owned(), |sign| seen(l, sign))
}

/// What to do at a sign.
#[must_use]
pub fn act(l: &Locale, sign: &SignFact) -> String {
    of_fact(l, "signs-act", &sign.act_id, &sign.act)
}

/// Signs of stress by species, the mild told apart from the strong. What was swallowed is no sign of the body.
#[must_use]
pub fn levels(l: &Locale) -> Vec<String> {
    let told = |species: Species| {
        let of = |level: &str| -> Vec<String> {
            let stress = signs(species).into_iter().filter(|s| s.kind == "stress" && s.level == level);
            stress.filter(|s| s.tells != Some(Tells::Swallowing)).map(|s| seen(l, s)).collect()
        };
        let whose = say!(l, signs::whose, species = species.name());
        match (of("mild"), of("strong")) {
            (_, strong) if strong.is_empty() => None,
            (mild, strong) if mild.is_empty() => {
                Some(say!(l, signs::only_strong, whose = whose, strong = l.apart(&strong)))
            }
            (mild, strong) => {
                Some(say!(l, signs::levels, whose = whose, mild = l.apart(&mild), strong = l.apart(&strong)))
            }
        }
    };
    Species::ALL.into_iter().filter_map(told).collect()
}

/// Of each level, so many signs in a caution; all of them stand on the Board.
const MOST: usize = 3;

/// Signs of stress of a species, some mild and some strong, those that threaten first among the strong.
#[must_use]
pub fn stress(l: &Locale, species: Species) -> String {
    let of = |level: &str, threat: bool| {
        signs(species)
            .into_iter()
            .filter(|s| s.kind == "stress" && s.level == level)
            .filter(|s| s.tells.is_none_or(|tells| tells == Tells::Threat) && s.tells.is_some() == threat)
            .collect::<Vec<_>>()
    };
    let (mild, strong) = (of("mild", false), [of("strong", true), of("strong", false)].concat());
    let said: Vec<String> =
        mild.into_iter().take(MOST).chain(strong.into_iter().take(MOST)).map(|s| seen(l, s)).collect();
    if said.is_empty() { say!(l, signs::of_any) } else { l.apart(&said) }
}
