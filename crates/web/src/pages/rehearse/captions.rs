//! What can be seen and heard, in words.

use sayso_model::facts;
use sayso_sim::rehearsal::{Character, Does, Exercise, LEANS_AWAY, Over, Run, SignSeen, Thing, What};
use sayso_wording::signs::seen;
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// The animal's name.
pub fn name(l: &Locale, character: Character) -> String {
    say!(l, rehearse::name, who = character.name())
}

/// What a button says.
pub fn word(l: &Locale, thing: Thing) -> String {
    say!(l, rehearse::word, thing = thing.name())
}

/// All that happened, in order. Who has gone hears what is done to bring it back.
pub fn captions(l: &Locale, run: &Run) -> Vec<String> {
    let mut gone = false;
    run.told
        .iter()
        .map(|told| {
            match told.what {
                What::Gone => gone = true,
                What::Comes | What::Joined => gone = false,
                _ => {}
            }
            match told.what {
                What::Person(does @ (Does::Call | Does::Block)) if gone => while_gone(l, run.setup.character, does),
                // There the board is put away.
                What::Joined if run.setup.exercise == Exercise::Likes => {
                    say!(l, rehearse::seen, what = "joined-likes", name = name(l, run.setup.character), word = "")
                }
                what => caption(l, run.setup.character, what),
            }
        })
        .collect()
}

fn while_gone(l: &Locale, character: Character, does: Does) -> String {
    say!(l, rehearse::you_gone, does = does.name(), name = name(l, character))
}

/// What the person does, for a page to say at once: by the name of the act, by the place of its thing where it has one.
pub fn yours(l: &Locale, character: Character) -> BTreeMap<String, Vec<String>> {
    let said = |does| caption(l, character, What::Person(does));
    let mut all = BTreeMap::new();
    for of in [Does::Show, Does::Give, Does::Offer, Does::Instead] {
        all.insert(of(Thing::Treat).name().to_owned(), Thing::ALL.map(|thing| said(of(thing))).to_vec());
    }
    let alone = [Does::Two, Does::Again, Does::NotNow, Does::Ready, Does::Softer, Does::Quiet, Does::Back, Does::End];
    for does in alone.into_iter().chain([Does::Call, Does::Block]) {
        all.insert(does.name().to_owned(), vec![said(does)]);
    }
    for does in [Does::Call, Does::Block] {
        all.insert(format!("{}-gone", does.name()), vec![while_gone(l, character, does)]);
    }
    all
}

/// What happened.
fn caption(l: &Locale, character: Character, what: What) -> String {
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
