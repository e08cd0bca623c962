//! A check in progress: what the setter lays out, and what the presenter sees, which is never the answer.

use super::{address, health, known, says, thing, whose_left};
use crate::cautions::for_animal;
use crate::error::Error;
use crate::fields::{number, summary, tick};
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::picture;
use crate::rich;
use crate::typed::Typed;
use axum::extract::{Path, Query};
use maud::{Markup, html};
use sayso_advisor::checks::{Next, PER_SITTING, PlannedTrial, next_trial, order, trials};
use sayso_advisor::welfare::rest_today;
use sayso_model::facts::held_up;
use sayso_model::{PictureOf, ProbeDesign, ProbePlan, ProbeResponse, ProbeTrial, RewardCard, WordId};
use sayso_people::Capability;
use sayso_wording::checks::{design, place};
use sayso_wording::say;
use sayso_wording::{Locale, Message};
use serde::Deserialize;

#[derive(Deserialize)]
pub struct Asked {
    #[serde(default)]
    twice: String,
}

/// What stops a check for today, whatever is planned.
pub(super) fn stops(page: &AnimalPage) -> Markup {
    html! {
        @if rest_today(&page.case()) {
            p.stop role="alert" { (say!(&page.locale, checks::stop_here, name = &page.card.name)) }
        }
    }
}

/// The trials of today where they make a whole sitting.
fn sitting_of(page: &AnimalPage, plan: &ProbePlan) -> Option<usize> {
    let today = page.now.day(&page.zone);
    let n = trials(&page.story, page.id, plan.probe).iter().filter(|t| t.at().day(&page.zone) == today).count();
    (n > 0 && n % PER_SITTING == 0).then_some(n)
}

/// The trials of today, for short sittings.
pub(super) fn enough(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    html! {
        @if let Some(n) = sitting_of(page, plan) { p.caution { (say!(&page.locale, checks::sitting_done, trials = n)) } }
    }
}

pub async fn setter(page: AnimalPage, Path((_, id)): Path<(String, String)>) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    let next = next_trial(&page.story, page.id, plan.probe).unwrap_or(Ok(Next::Done));
    let l = &page.locale;
    Ok(layout(
        &page,
        Tab::Evidence,
        &say!(l, checks::setter),
        html! {
            p.quiet { (say!(l, checks::setter_only)) }
            (stops(&page))
            (enough(&page, plan))
            @match next {
                Err(why) => p { (say!(l, checks::cannot_run, why = why.say(l))) },
                Ok(Next::Done) => p { strong { (say!(l, checks::all_done, trials = plan.trials)) } },
                Ok(Next::Trial(_)) if plan.design == ProbeDesign::WrongDelivery => p { (say!(l, checks::at_board)) },
                Ok(Next::Trial(trial)) => (lay(&page, plan, &trial, false)),
            }
            p { a href=(address(&page, plan.probe)) { (say!(l, checks::back_to_one)) } }
        },
    ))
}

/// What to lay out, hide or play. `alone`: by whoever then notes what comes, too.
pub(super) fn lay(page: &AnimalPage, plan: &ProbePlan, trial: &PlannedTrial, alone: bool) -> Markup {
    let picks = plan.design == ProbeDesign::PickForWord;
    let covered = plan.design == ProbeDesign::PressUnderCovers;
    let rewards = page.story.rewards();
    let words = page.story.words();
    let card = |w: &WordId| words.get(w).and_then(|c| c.reward).and_then(|r| rewards.get(&r).copied());
    let (l, name) = (&page.locale, page.card.name.as_str());
    let asked = trial.right_place + 1;
    let quoted = |w: WordId| say!(l, checks::quoted, word = says(page, w));
    html! {
        p.num { strong { (say!(l, checks::trial_of, number = trial.number, trials = plan.trials)) } }
        (health(page))
        @if picks {
            h2 { (say!(l, checks::lay_out, name = name)) }
            p.quiet { (whose_left(l, name)) }
            ol.lay { @for (at, w) in trial.laid_out.iter().enumerate() {
                li { (picture::of(&page.story, PictureOf::Word { word: *w })) " " strong { (thing(page, *w)) } (shown_as(page, card(w))) @if at == trial.right_place { " " span.quiet { (say!(l, checks::asked_for)) } } @if let Some(r) = card(w) { (for_animal(&page.locale, &page.card, r)) } }
            } }
            @let word = html! { strong { (quoted(trial.word)) } };
            p { @if alone { (rich!(l, checks::then_play_alone, word = word)) } @else { (rich!(l, checks::then_play, word = word)) } }
        } @else if covered {
            h2 { (say!(l, checks::under_covers, name = name)) }
            p.quiet { (whose_left(l, name)) }
            ol.lay { @for w in &trial.laid_out { li { strong { (quoted(*w)) } } } }
            h2 { (say!(l, checks::show_thing, thing = thing(page, trial.word))) }
            @if let Some(r) = card(&trial.word) { (for_animal(&page.locale, &page.card, r)) }
            p { @if alone { (say!(l, checks::lies_in_alone, place = asked)) } @else { (say!(l, checks::lies_in, place = asked)) } }
        } @else {
            h2 { (say!(l, checks::show_thing, thing = thing(page, trial.word))) }
            @if let Some(r) = card(&trial.word) { (for_animal(&page.locale, &page.card, r)) }
            p { @if alone { (say!(l, checks::its_number_alone, place = asked)) } @else { (say!(l, checks::its_number, place = asked)) } }
            details { summary { (say!(l, checks::numbers)) }
                p.quiet { (say!(l, checks::numbers_how)) }
                ol { @for w in &trial.laid_out { li { (says(page, *w)) } } } }
        }
        @if alone {
            a.button.primary.wide href=(format!("{}/alone?laid={}", address(page, plan.probe), trial.number)) { (say!(l, checks::laid, name = name)) }
        } @else {
            a.button.primary.wide href=(format!("{}/setter?after={}", address(page, plan.probe), trial.number)) { (say!(l, checks::next)) }
            p.quiet { (say!(l, checks::next_how)) }
        }
    }
}

/// How a thing that cannot be laid out is: by what stands for it, the same as in a likes test.
fn shown_as(page: &AnimalPage, reward: Option<&RewardCard>) -> Markup {
    let l = &page.locale;
    let Some(reward) = reward.filter(|r| !held_up(r)) else { return html! {} };
    html! {
        @match &reward.stand_in {
            Some(stand_in) => { " " span.quiet data-test="shown-as" { (say!(l, likes::shown_as, stand_in = stand_in)) } }
            None => {
                span.hint data-test="no-stand-in" { (say!(l, likes::no_stand_in, thing = &reward.name, kind = reward.kind.name())) }
                @if page.may(Capability::Plan) { " " a href=(format!("/people/reward/{}", reward.reward)) { (say!(l, likes::name_stand_in)) } }
            }
        }
    }
}

pub async fn presenter(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Error> {
    let plan = known(&page, &id)?.part;
    Ok(presenter_view(&page, plan, &Typed::default(), !asked.twice.is_empty()))
}

/// The presenter's page. No word, no thing and no word's id may stand here.
pub fn presenter_view(page: &AnimalPage, plan: &ProbePlan, typed: &Typed, twice: bool) -> Markup {
    let l = &page.locale;
    layout(
        page,
        Tab::Evidence,
        &say!(l, checks::presenter),
        html! {
            (summary(typed))
            @if twice { p.caution role="status" { (say!(l, checks::noted_already)) } }
            (stops(page))
            (last(page, plan))
            (enough(page, plan))
            (comes(page, plan, |trial| taps(page, plan, trial.number, trial.laid_out.len(), None, typed)))
            (stop_for_now(page, plan))
        },
    )
}

/// The trial that comes next, shown so; or why there is none, and where to see what came of them.
pub(super) fn comes(page: &AnimalPage, plan: &ProbePlan, shown: impl FnOnce(&PlannedTrial) -> Markup) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        @match next_trial(&page.story, page.id, plan.probe).unwrap_or(Ok(Next::Done)) {
            Err(why) => p { (say!(l, checks::cannot_run, why = why.say(l))) },
            Ok(Next::Done) => {
                p { strong { (say!(l, checks::all_done, trials = plan.trials)) } " " (say!(l, checks::thanks, name = name)) }
                @if page.may(Capability::SeeFigures) { a.button.primary.wide href=(address(page, plan.probe)) { (say!(l, checks::see)) } }
            }
            Ok(Next::Trial(_)) if plan.design == ProbeDesign::WrongDelivery => p { (say!(l, checks::at_board)) },
            // After a sitting the way out comes first; whoever goes on all the same says so.
            Ok(Next::Trial(trial)) if sitting_of(page, plan).is_some() => {
                p { a.button.primary.wide href=(away(page, plan)) data-test="rest" { (say!(l, checks::stop_for_now)) } }
                details.after data-test="go-on" { summary { (say!(l, checks::go_on)) } (shown(&trial)) }
            }
            Ok(Next::Trial(trial)) => (shown(&trial)),
        }
    }
}

/// Where one goes from a check that rests.
fn away(page: &AnimalPage, plan: &ProbePlan) -> String {
    if page.may(Capability::SeeFigures) { address(page, plan.probe) } else { Tab::Board.href(Some(page.id)) }
}

/// The way out, to go on another time.
pub(super) fn stop_for_now(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    let l = &page.locale;
    html! {
        p { a.link href=(Tab::Board.href(Some(page.id))) data-test="note-sign" { (say!(l, checks::note_sign, name = &page.card.name)) } }
        p { a href=(away(page, plan)) { (say!(l, checks::stop_for_now)) } " " span.quiet { (say!(l, checks::stop_for_now_kept)) } }
    }
}

/// What came, to be tapped. `laid`: what lies where, for one who knows it anyway, so that left and right are not mistaken.
pub(super) fn taps(
    page: &AnimalPage,
    plan: &ProbePlan,
    trial: u16,
    places: usize,
    laid: Option<&[WordId]>,
    typed: &Typed,
) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let drawn = plan.design.places_drawn();
    let kind = match plan.design {
        ProbeDesign::PickForWord => "picks",
        _ if drawn => "place",
        _ => "button",
    };
    html! {
        p.num { strong { (say!(l, checks::trial_of, number = trial, trials = plan.trials)) } span.quiet { " · " (design(l, plan.design)) } }
        form method="post" action={ (address(page, plan.probe)) "/trial" } {
            input type="hidden" name="number" value=(trial);
            h2 #what { (say!(l, checks::which, kind = kind, name = name)) }
            div .offer .two[places == 2 || places == 4] role="group" aria-labelledby="what" {
                @for at in 1..=places {
                    button.pick name="answer" value=(at) {
                        strong { (place(l, plan.design, at)) }
                        @if let Some(word) = laid.and_then(|laid| laid.get(at - 1)) {
                            span data-test="lies-there" { @if plan.design == ProbeDesign::PickForWord { (thing(page, *word)) } @else { (says(page, *word)) } }
                        }
                        @if drawn && at == 1 { span.quiet { (say!(l, checks::left, name = name)) } }
                        @if drawn && at == places { span.quiet { (say!(l, checks::right, name = name)) } }
                    }
                }
            }
            @if drawn { p.quiet { (whose_left(l, name)) } }
            div.row.even {
                button name="answer" value="nothing" { (say!(l, checks::nothing)) }
                button name="answer" value="left" { (say!(l, checks::away)) }
            }
            details open[typed.problem("after_s").is_some()] {
                summary { (say!(l, checks::before_tap, blind = if plan.blind { "yes" } else { "no" })) }
                (number(typed, "after_s", &say!(l, checks::field_seconds), &say!(l, checks::field_seconds_hint)))
                @if plan.blind { (tick(typed, "knew", &say!(l, checks::field_knew))) }
            }
        }
        p.quiet { (say!(l, checks::how_to_note, name = name)) }
        @if plan.blind { p.quiet { (say!(l, checks::stop_and_cautions)) } }
    }
}

/// An answer as it was tapped: by its place, so that no word stands there.
pub fn answered(l: &Locale, plan: &ProbePlan, trial: &ProbeTrial) -> String {
    match trial.response {
        ProbeResponse::Chose { word, .. } => {
            let drawn = order(plan).ok().and_then(|all| all.into_iter().find(|t| t.number == trial.trial));
            let at = drawn.and_then(|t| t.laid_out.iter().position(|w| *w == word));
            at.map_or_else(|| say!(l, checks::a_choice), |at| place(l, plan.design, at + 1))
        }
        ProbeResponse::Nothing => say!(l, checks::nothing),
        ProbeResponse::Left => say!(l, checks::away),
    }
}

/// The last answer as it was tapped, with undo: where it is for whoever asks to see.
pub(super) fn last(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let run = trials(&page.story, page.id, plan.probe);
    html! {
        @if let Some(t) = run.last().filter(|t| page.may_see_score(t.person())) {
            form.last method="post" action={ (address(page, plan.probe)) "/undo" } {
                input type="hidden" name="trial" value=(t.id());
                span { span.quiet { (say!(l, checks::last_trial, number = t.part.trial)) " " } (answered(l, plan, t.part)) }
                button { (say!(l, checks::undo)) }
            }
            @if matches!(t.part.response, ProbeResponse::Chose { .. }) {
                p.quiet { (say!(l, checks::undo_counts)) }
            }
            @if t.part.response == ProbeResponse::Left {
                p.caution { (say!(l, checks::went_away, name = name)) }
            }
        }
    }
}
