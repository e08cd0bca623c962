//! Markup of an exercise: the room, what happens, the board's buttons, what can be done. The script brings it to life.

use super::asked::{address, elsewhere};
use super::captions::{name, word, yours};
use super::drawn::{happens, room};
use super::lessons;
use super::list::simulation;
use super::moments;
use super::stuck;
use crate::layout::{Tab, layout_with};
use crate::page::Page;
use crate::pages::board::label::length;
use maud::{Markup, html};
use sayso_sim::rehearsal::{Character, Exercise, INVITATIONS, Setup, TREATS, Thing, play};
use sayso_wording::{Locale, say};

/// What can be done beside the buttons, at places that never change, with its key.
const ACTS: &[(&str, &str)] = &[
    ("offer", "O"),
    ("again", "R"),
    ("not-now", "N"),
    ("instead", "I"),
    ("call", "C"),
    ("block", "B"),
    ("back", "W"),
    ("end", "E"),
];
/// The same for a likes test: the board is put away.
const LIKES: &[(&str, &str)] =
    &[("two", "T"), ("again", "R"), ("call", "C"), ("block", "B"), ("back", "W"), ("end", "E")];

/// The same for a word that does not get on: what may be tried.
const STUCK: &[(&str, &str)] = &[
    ("offer", "O"),
    ("two", "T"),
    ("ready", "H"),
    ("softer", "S"),
    ("quiet", "Q"),
    ("not-now", "N"),
    ("back", "W"),
    ("end", "E"),
];

/// What can be done in an exercise.
const fn acts_of(exercise: Exercise) -> &'static [(&'static str, &'static str)] {
    match exercise {
        Exercise::Likes => LIKES,
        Exercise::Stuck => STUCK,
        _ => ACTS,
    }
}

pub fn view(page: &Page, setup: Setup) -> Markup {
    let (l, which) = (&page.locale, setup.exercise.name());
    let name = name(l, setup.character);
    let run = play(setup, &[]);
    let begins = run.begins_at;
    let json = serde_json::to_string(&moments::of(l, &run)).unwrap_or_default();
    let likes = setup.exercise == Exercise::Likes;
    let acts = acts_of(setup.exercise);
    let about = setup.hides().map(|hidden| hidden.word);
    let yours = serde_json::to_string(&yours(l, setup.character)).unwrap_or_default();
    let invitations = (setup.exercise == Exercise::Inviting).then_some(INVITATIONS);
    let treats = (setup.exercise == Exercise::Evening).then_some(TREATS);
    layout_with(
        page,
        Tab::Learn,
        &say!(l, rehearse::exercise, which = which),
        &["client/rehearse.js", "client/hand-on.js"],
        html! {
            noscript { p.caution { (say!(l, rehearse::no_script)) } }
            div #rehearse .rehearse data-test="rehearse" data-state="ready" data-exercise=(which) data-moments=(json)
                data-asks=(address(page, setup, "/moments", &[])) data-went=(address(page, setup, "/went", &[]))
                data-name=(name) data-most=(setup.exercise.most_ms()) data-treats=[treats]
                data-invitations=[invitations] data-yours=(yours) {
                (simulation(l))
                @if let Some(about) = about { p.about data-test="about" { (say!(l, rehearse::stuck_word, word = word(l, about))) } }
                section.before-it data-part="before" {
                    p { (say!(l, rehearse::character, who = setup.character.name())) }
                    p { (say!(l, rehearse::how, which = which, name = name.as_str())) }
                    (stuck::before_it(l, setup))
                    (cautions(l, setup))
                    p.hint.for-keys data-test="keys-before" { (keys_before(l, acts)) }
                    button.primary.wide type="button" data-part="start" data-test="start" { (say!(l, rehearse::start)) }
                    (lessons::links(page, setup.exercise))
                }
                (room(l, setup, begins))
                (happens(l, "polite"))
                p.caution data-part="away" data-test="away" role="status" hidden {}
                p.asks.num data-part="line" data-test="line" { span.so-far { span data-part="clock" data-test="clock" {} " " span data-part="count" data-test="invited" {} } " " span data-part="ask" data-test="ask" {} }
                p data-part="over" data-test="over" hidden { a.button.primary.wide data-part="see" data-test="see" href="#" { (say!(l, rehearse::see)) } }
                @if !likes { (pads(l, about)) }
                (actions(l, acts))
                (keys(l, acts))
            }
            (hand_on(l, setup))
            p { a.link href=(page.of_home(super::asked::REHEARSE)) { (say!(l, rehearse::all)) } }
        },
    )
}

/// What would be done otherwise in life, before it begins.
fn cautions(l: &Locale, setup: Setup) -> Markup {
    let guards = setup.character == Character::Guards;
    html! {
        @if guards {
            p.caution data-test="care-guards" {
                @if setup.exercise == Exercise::Likes { strong { (say!(l, rehearse::care_likes)) } " " }
                (say!(l, rehearse::care_guards))
            }
        }
    }
}

/// The buttons, as the board lies.
fn pads(l: &Locale, about: Option<Thing>) -> Markup {
    html! {
        section class="pads cols-2" data-part="pads" data-test="pads" aria-label=(say!(l, rehearse::words)) {
            @for thing in Thing::ALL {
                button.pad.planned[about == Some(thing)] type="button" data-word=(thing.place()) data-test=(format!("pad-{}", thing.name())) data-state="idle" disabled {
                    span class=(format!("face {}", length(&word(l, thing)))) { span.count.num {} span.says { (word(l, thing)) } span.does {} }
                }
            }
        }
    }
}

fn actions(l: &Locale, acts: &[(&str, &str)]) -> Markup {
    html! {
        section.actions data-part="acts" aria-label=(say!(l, rehearse::acts)) {
            @for (does, key) in acts {
                button type="button" data-does=(*does) data-letter=(key.to_lowercase()) data-test=(format!("rehearse-{does}")) disabled { (say!(l, rehearse::act, does = *does)) }
            }
        }
    }
}

/// The keys in a sentence, to be read before it begins.
fn keys_before(l: &Locale, acts: &[(&str, &str)]) -> String {
    let one = |key: &str, does: String| say!(l, rehearse::keys_one, key = key, does = does);
    let words = (acts != LIKES).then(|| one("1 \u{2013} 4", say!(l, rehearse::keys_words)));
    let each = acts.iter().map(|(does, key)| one(key, say!(l, rehearse::act, does = *does)));
    let all: Vec<String> = words.into_iter().chain(each).collect();
    say!(l, rehearse::keys_before, list = l.apart(&all))
}

fn keys(l: &Locale, acts: &[(&str, &str)]) -> Markup {
    html! {
        details.fold.keys {
            summary { (say!(l, board::keys)) }
            dl.facts {
                @if acts != LIKES { dt { kbd { "1 – 4" } } dd { (say!(l, rehearse::keys_words)) } }
                @for (does, key) in acts { dt { kbd { (key) } } dd { (say!(l, rehearse::act, does = *does)) } }
            }
            label.tick { input type="checkbox" data-part="letters" data-test="letters" checked autocomplete="off"; span { (say!(l, rehearse::keys_count)) } }
        }
    }
}

/// The address for somebody else: the same exercise with the same animal.
fn hand_on(l: &Locale, setup: Setup) -> Markup {
    handed(l, &say!(l, rehearse::hand_on), &say!(l, rehearse::hand_on_what), &elsewhere(setup, "", &[]))
}

/// An address to copy or to send; without a script it is the one of the page itself.
pub fn handed(l: &Locale, title: &str, what: &str, link: &str) -> Markup {
    html! {
        details.after data-test="hand-on" {
            summary { (title) }
            p { (what) }
            p.hint data-at-home data-test="at-home" hidden { (say!(l, rehearse::at_home)) }
            div.row data-link=(link) data-copied=(say!(l, rehearse::copied)) {
                button type="button" data-copy data-test="copy" hidden { (say!(l, rehearse::copy)) }
                button type="button" data-send hidden { (say!(l, rehearse::send)) }
                a.link href=(link) { (title) }
            }
        }
    }
}
