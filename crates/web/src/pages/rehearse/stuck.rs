//! Markup of a word that does not get on: what the notebook has beforehand, the question what holds it up, and what was true.

use super::asked::{Asked, REHEARSE, cause_name};
use super::captions::{name, word};
use super::line::line;
use super::list::simulation;
use crate::layout::{Tab, layout};
use crate::page::{HOME_QUERY, Page};
use maud::{Markup, html};
use sayso_advisor::stuck::Cause;
use sayso_model::Label;
use sayso_rehearse::{Found, NAMEABLE, Shown, before, found, shown_before};
use sayso_sim::rehearsal::{Run, Setup, Thing, Weeks, written};
use sayso_wording::advice::{bearing, because, cause};
use sayso_wording::figures::{counted, finding};
use sayso_wording::{Locale, say};

/// The records of the weeks before, in the reader's words.
fn weeks(l: &Locale, setup: Setup) -> Option<Weeks> {
    let label = |text: &str| Label::new(text).ok();
    let [treat, ball, out, company] = Thing::ALL.map(|thing| label(&word(l, thing)));
    before(setup, &label(&name(l, setup.character))?, &[treat?, ball?, out?, company?])
}

/// What the notebook has of the weeks before.
pub fn before_it(l: &Locale, setup: Setup) -> Markup {
    let Some(shown) = weeks(l, setup).as_ref().map(shown_before) else { return html! {} };
    let list: Vec<String> = Thing::ALL
        .into_iter()
        .map(|thing| say!(l, rehearse::count, word = word(l, thing), times = shown[thing.place()].to_string()))
        .collect();
    html! { p data-test="before-shown" { (say!(l, rehearse::before_shown, list = l.and(&list))) } }
}

/// The question, before anything is told.
pub fn question(page: &Page, asked: &Asked) -> Markup {
    let (l, setup, run) = (&page.locale, asked.setup, asked.run());
    let name = name(l, setup.character);
    let of = setup.hides().map_or_else(String::new, |hidden| word(l, hidden.word));
    layout(
        page,
        Tab::Learn,
        &say!(l, rehearse::went),
        html! {
            p.lead { (say!(l, rehearse::exercise, which = setup.exercise.name())) " · " (say!(l, rehearse::character, who = setup.character.name())) }
            (simulation(l))
            form.card method="get" action=(format!("{REHEARSE}/{}/went", setup.exercise.name())) data-test="question" {
                @if page.names_home() { input type="hidden" name=(HOME_QUERY) value=(page.home); }
                @for (field, value) in [("character", setup.character.name().to_owned()), ("seed", setup.seed.to_string()), ("acts", written(&asked.acts))] {
                    input type="hidden" name=(field) value=(value);
                }
                fieldset #named {
                    legend { (say!(l, rehearse::name_it, word = of.as_str())) }
                    p.hint { (say!(l, rehearse::name_help)) }
                    @for one in NAMEABLE {
                        label { input type="radio" name="named" value=(cause_name(one)) required data-test=(format!("named-{}", cause_name(one))); span { (cause(l, &name, one)) } }
                    }
                }
                button.primary.wide data-test="name-it" { (say!(l, rehearse::name_button)) }
            }
            (line(l, &run))
        },
    )
}

/// What held a word up, how it showed, and what the notebook would have said; none where nothing was hidden.
pub fn held_up(l: &Locale, run: &Run) -> Option<Found> {
    weeks(l, run.setup).and_then(|weeks| found(run, &weeks))
}

/// What was true, and how it showed.
pub fn answer(l: &Locale, run: &Run, found: &Found, named: Option<Cause>) -> Markup {
    let name = name(l, run.setup.character);
    let called = |of| cause(l, &name, of);
    let hit = if named == Some(found.cause) { "yes" } else { "no" };
    let said = named.map_or_else(String::new, called);
    html! {
        section.card.advice data-test="held-up" data-cause=(cause_name(found.cause)) data-hit=(hit) {
            h2.first { (say!(l, rehearse::name_it, word = word(l, found.word))) }
            p.act { (say!(l, rehearse::held_up, hit = hit, cause = called(found.cause), said = said)) }
            p data-test="showed" { (showed(l, &name, found)) }
        }
    }
}

/// What the notebook would have said, for whoever wants to read it: the one thing for next time stands before it.
pub fn notebook(l: &Locale, run: &Run, found: &Found) -> Markup {
    let name = name(l, run.setup.character);
    html! {
        details.fold data-test="notebook-fold" {
            summary { (say!(l, rehearse::notebook)) }
            p.quiet { (say!(l, rehearse::notebook_what)) }
            ul data-test="notebook" {
                @for weighed in &found.said {
                    li data-cause=(cause_name(weighed.cause)) data-suspected=(weighed.suspected()) {
                        (say!(l, rehearse::advisor, cause = cause(l, &name, weighed.cause), bearing = bearing(l, weighed.bearing)))
                        @for fact in &weighed.evidence { " " (because(l, &name, fact)) }
                    }
                }
            }
            p.quiet { (say!(l, rehearse::three_more)) }
        }
    }
}

/// How it showed here, or what would have shown it.
fn showed(l: &Locale, name: &str, found: &Found) -> String {
    if found.put_right {
        return say!(l, rehearse::put_right, cause = cause_name(found.cause));
    }
    if !found.shown.is_seen() {
        return say!(l, rehearse::unseen, cause = cause_name(found.cause), name = name);
    }
    let figure = match &found.shown {
        Shown::Share(share) => counted(l, share),
        Shown::Seconds(seconds) => finding(l, seconds),
        Shown::Showings { before, here } => say!(l, rehearse::showings, before = *before, here = *here),
    };
    say!(l, rehearse::showed, cause = cause_name(found.cause), figure = figure)
}
