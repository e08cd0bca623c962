//! What can be seen and heard, in words.

use sayso_model::facts;
use sayso_sim::rehearsal::{Character, LEANS_AWAY, Over, SignSeen, Thing, What};
use sayso_wording::signs::seen;
use sayso_wording::{Locale, say};

/// The animal's name.
pub fn name(l: &Locale, character: Character) -> String {
    say!(l, rehearse::name, who = character.name())
}

/// What a button says.
pub fn word(l: &Locale, thing: Thing) -> String {
    say!(l, rehearse::word, thing = thing.name())
}

/// What happened.
pub fn caption(l: &Locale, character: Character, what: What) -> String {
    let (name, word) = (name(l, character), what.thing().map_or_else(String::new, |thing| word(l, thing)));
    match what {
        What::Person(does) => say!(l, rehearse::you, does = does.name(), name = name, word = word),
        What::Held(left, right) => {
            say!(l, rehearse::held, left = self::word(l, left), right = self::word(l, right))
        }
        What::Sign(sign) => {
            say!(l, rehearse::sign, level = sign.level.name(), name = name, sign = sign_seen(l, character, sign))
        }
        other => say!(l, rehearse::seen, what = other.name(), name = name, word = word),
    }
}

fn sign_seen(l: &Locale, character: Character, sign: SignSeen) -> String {
    if sign.id == LEANS_AWAY {
        return say!(l, rehearse::leans_away);
    }
    let fact = facts::signs(character.species()).into_iter().find(|fact| fact.id == sign.id);
    fact.map_or_else(|| sign.id.to_owned(), |fact| seen(l, fact))
}

/// Why it is over.
pub fn over(l: &Locale, why: Over) -> String {
    say!(l, rehearse::over, why = why.name())
}
