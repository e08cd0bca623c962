//! What can hurt, in words. The words of a fact stand in the catalogues under its id; a test holds that each has them.

use crate::catalogue::by_id;
use crate::{Locale, say};
use sayso_advisor::ration::FoodCaution;
use sayso_model::Species;
use sayso_model::facts::OtherHazard;

/// The message of a fact in a catalogue. A fact without one, which a test keeps from being, is told in English, not left out.
pub(crate) fn of_fact(l: &Locale, kind: &str, id: &str, english: &str) -> String {
    by_id(l, &format!("{kind}-{id}")).unwrap_or_else(|| english.to_owned())
}

/// Where a fact is from. Titles stay as published; that there is no source, and remarks beside a title, are said.
pub(crate) fn source(l: &Locale, kind: &str, id: &str, published: &str) -> String {
    if published == NO_SOURCE {
        return say!(l, hazards::no_source);
    }
    of_fact(l, &format!("{kind}-source"), id, published)
}

/// How the facts mark what has no source.
const NO_SOURCE: &str = "common practice, no source";

/// For an animal of a species, as it stands after a level: "for a dog".
pub(crate) fn whom(l: &Locale, species: Species) -> String {
    say!(l, cautions::whom, species = species.name())
}

/// One caution about a food: what, how bad for whom, why, and where the fact is from.
#[must_use]
pub fn food(l: &Locale, caution: &FoodCaution) -> String {
    let (fact, level) = (caution.fact, caution.level.name());
    let item = of_fact(l, "hazards-food", &fact.id, &fact.item);
    let why = of_fact(l, "hazards-why", &fact.id, &fact.why);
    let (whom, source) = (whom(l, caution.species), source(l, "hazards", &fact.id, &fact.source));
    if caution.certain {
        say!(l, cautions::food, level = level, item = item, whom = whom, why = why, source = source)
    } else {
        say!(l, cautions::may_hold, level = level, item = item, whom = whom, why = why, source = source)
    }
}

/// Several cautions about a food, in one line.
#[must_use]
pub fn foods(l: &Locale, cautions: &[FoodCaution]) -> String {
    l.apart(&cautions.iter().map(|c| food(l, c)).collect::<Vec<_>>())
}

/// The same short, under the name that the home has for the thing: to stand where it is given. The whole stands where it was typed.
#[must_use]
pub fn briefly(l: &Locale, thing: &str, cautions: &[FoodCaution]) -> String {
    let one = |c: &FoodCaution| {
        by_id(l, &format!("hazards-brief-{}", c.fact.id)).unwrap_or_else(|| {
            let why = of_fact(l, "hazards-why", &c.fact.id, &c.fact.why);
            say!(l, cautions::brief, level = c.level.name(), sure = if c.certain { "yes" } else { "no" }, why = why)
        })
    };
    l.colon(thing, &l.apart(&cautions.iter().map(one).collect::<Vec<_>>()))
}

/// A danger that is no food: what, what to do, why, and where the fact is from.
#[must_use]
pub fn other(l: &Locale, hazard: &OtherHazard) -> String {
    let of = |kind: &str, english: &str| of_fact(l, kind, &hazard.id, english);
    say!(
        l,
        hazards::whole,
        hazard = of("hazards-other", &hazard.hazard),
        act = of("hazards-act", &hazard.act),
        why = of("hazards-harm", &hazard.why),
        source = source(l, "hazards", &hazard.id, &hazard.source)
    )
}
