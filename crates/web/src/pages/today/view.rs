//! Markup of Today: welfare if there is any, one next thing, a line a word, what the week holds, what can wait.

use super::advice::{button, caution, cautions, helps_only, of_cards, reasons};
use super::coach;
use super::ration::ration;
use super::rows::words;
use super::trial;
use crate::news;
use crate::page::AnimalPage;
use crate::pages::learn::for_next;
use crate::pages::log;
use crate::pages::others;
use crate::pages::people::steps::{left_for_later, next as next_step, steps as set_up};
use maud::{Markup, html};
use sayso_advisor::advice::{Act, Because, Reason};
use sayso_advisor::agreed::{Stands, stands};
use sayso_advisor::hint::Hint;
use sayso_advisor::plan::{Plan, Planned};
use sayso_advisor::today::{Next, Today};
use sayso_advisor::{Advice, Sure, Topic};
use sayso_model::{Moment, PlanLine, WordId};
use sayso_people::Capability;
use sayso_wording::advice as words_of;
use sayso_wording::figures::finding;
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// Facts told of the last seven days.
const FACTS: usize = 2;

/// The page below its heading.
pub fn page(page: &AnimalPage, today: &Today) -> Markup {
    let l = &page.locale;
    // The way to the first words has its own next step; a second one beside it would say something else.
    let on_the_way = today.steps.is_empty() && matches!(today.next, Next::SetUp { .. } | Next::TestLikes { .. });
    let helps = helps_only(page);
    // What the way tells is not told again below it; what is a keeper's to fill in is asked of nobody else.
    let left_out = |a: &Advice| (on_the_way && a.topic == Topic::SetUp) || (helps && of_cards(&a.act));
    let later: Vec<&Advice> = today.later.iter().filter(|a| !left_out(a)).collect();
    let ask_food = helps && today.ration.refusal.is_some();
    let nothing_yet = on_the_way && today.ration.refusal.is_some() && today.ration.feeds == 0;
    let food = !ask_food && !nothing_yet;
    let usual = others::usual(page);
    // While something concerns its wellbeing, recordings can wait.
    let recording = || left_for_later(page, &page.card).filter(|_| today.welfare.is_empty());
    let open_step = next_step(page, &page.card, None).or_else(recording);
    let open_step = open_step.filter(|_| page.may(Capability::ChangeCards) && !on_the_way);
    let (agreed, by_word) = (coach::line(page, today), coach::agreed(page, today));
    html! {
        (news::told(page))
        (log::ahead(page))
        (welfare(page, &today.welfare))
        (agreed.lines)
        (trial::now(page))
        @if on_the_way && helps { (ask_keeper(page)) } @else if on_the_way {
            div data-test="next" { (set_up(page, &page.card)) }
        } @else {
            @if let Some(since) = today.running { (running(page, since)) } @else { (next(page, today, &by_word)) }
            // What the way there left open, such as where the buttons are.
            @if let Some(step) = &open_step { p data-test="open-step" { a.link href=(step.to) { (step.what) } } }
        }
        (for_next(page, today))
        (words(page, today, usize::from(open_step.is_some()) + agreed.further, &by_word))
        (lately(page, today))
        @if ask_food { p.note data-test="ask-food" { (say!(l, today::ask_food, name = page.card.name.as_str())) } }
        @if food || !later.is_empty() || usual.is_some() {
            section data-test="later" {
                h2 { (say!(l, today::later)) }
                @for a in later { (self::later(page, a)) }
                @if let Some(usual) = usual { (usual) }
                @if food { (ration(page, &today.ration)) }
            }
        }
    }
}

/// For whoever may not set it up.
fn ask_keeper(page: &AnimalPage) -> Markup {
    let l = &page.locale;
    html! {
        section.card.advice data-test="next" aria-label=(say!(l, today::now)) {
            p.act data-test="ask-keeper" { (say!(l, today::ask_keeper, name = page.card.name.as_str())) }
        }
    }
}

/// Facts of the last seven days; where something concerns its wellbeing, behind a tap.
fn lately(page: &AnimalPage, today: &Today) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let facts = html! {
        ul.short { @for fact in today.lately.iter().take(FACTS) { li { (words_of::lately(l, name, fact)) } } }
    };
    html! {
        @if !today.lately.is_empty() {
            section data-test="lately" {
                @if today.welfare.is_empty() { h2 { (say!(l, today::lately)) } (facts) }
                @else { details { summary { (say!(l, today::lately)) } (facts) } }
            }
        }
    }
}

/// What concerns its wellbeing, in one card: what to do now and whom to ask in the open, what else holds as lines of it, why
/// behind the tap.
fn welfare(page: &AnimalPage, all: &[Advice]) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let Some((first, others)) = all.split_first() else { return html! {} };
    html! {
        section.stop.advice data-test="advice" data-topic=(format!("{:?}", Topic::Welfare)) {
            p.act { (words_of::act(l, name, &first.act)) }
            (in_sight(page, first))
            @if !others.is_empty() {
                ul.plain.also data-test="also" { @for a in others { li { p { (words_of::act(l, name, &a.act)) } (further(page, a)) } } }
            }
            details {
                summary { (say!(l, today::why, sure = words_of::sure(l, first.sure))) }
                @for a in all {
                    @if !others.is_empty() { p { strong { (words_of::act(l, name, &a.act)) } } }
                    @if !asks(a) { (cautions(page, a)) }
                    (reasons(page, a))
                }
            }
        }
    }
}

/// Whether whom to ask stands in the open: where the act does not name them, its caution does.
fn asks(a: &Advice) -> bool {
    a.act == Act::GiveSpace
}

/// What of a thing about welfare is in sight. What does not vanish with the day is named: what it was, when last, and whether it
/// comes back.
fn in_sight(page: &AnimalPage, a: &Advice) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let lasts = |why: &&Reason| matches!(why.fact, Because::LastingSigns { .. } | Because::Recurring { .. });
    let seen: Vec<String> = a.because.iter().filter(lasts).map(|why| words_of::because(l, name, &why.fact)).collect();
    html! {
        @for seen in &seen { p.hint { (seen) } }
        (further(page, a))
    }
}

/// What of a further thing is in sight beside what to do: whom to ask, and until when sessions rest.
fn further(page: &AnimalPage, a: &Advice) -> Markup {
    let l = &page.locale;
    let until = a.because.iter().find_map(|why| match &why.fact {
        Because::RestsUntil { until, zone } => Some(l.weekday_date_time(*until, zone)),
        _ => None,
    });
    html! {
        @if asks(a) { (cautions(page, a)) }
        @if let Some(until) = until { p.hint data-test="rests-until" { (say!(l, today::rests_until, until = until)) } }
    }
}

/// While a session runs, that is what there is to do; what comes after it is told once it is over.
fn running(page: &AnimalPage, since: Moment) -> Markup {
    let l = &page.locale;
    html! {
        section.card.advice data-test="next" aria-label=(say!(l, today::now)) {
            p.act data-test="running" { (words_of::running(l, &page.zone, since)) }
            @if page.may(Capability::Record) { p { a.button.primary.wide href=(format!("/a/{}/board", page.id)) data-test="do" { (say!(l, today::do_board)) } } }
        }
    }
}

/// The one next thing.
fn next(page: &AnimalPage, today: &Today, agreed: &BTreeMap<WordId, PlanLine>) -> Markup {
    let next = &today.next;
    let (l, name) = (&page.locale, page.card.name.as_str());
    if let Next::SetUp { advice } | Next::TestLikes { advice } = next
        && helps_only(page)
        && of_cards(&advice.act)
    {
        return ask_keeper(page);
    }
    html! {
        section.card.advice data-test="next" aria-label=(say!(l, today::now)) {
            p.act { @match next {
                Next::Session { plan } => (say!(l, today::session, minutes = plan.minutes)),
                // That there is no session is said above, with why.
                Next::Rest if !today.welfare.is_empty() => (say!(l, today::answer_only, name = name)),
                _ => (words_of::next(l, name, &page.zone, next)),
            } }
            // Beside what concerns its wellbeing a session that is planned takes the room; what was held is told behind the tap.
            @if let Some(held) = today.held.filter(|_| !held_behind(today)) { p.hint data-test="held" { (words_of::held(l, &page.zone, &held)) } }
            @match next {
                Next::Session { plan } => { (session(page, plan, today, agreed)) }
                Next::SetUp { advice } | Next::TestLikes { advice } | Next::Mend { advice } => {
                    (cautions(page, advice))
                    (button(page, &advice.act, true))
                    details { summary { (say!(l, today::why, sure = words_of::sure(l, advice.sure))) } (reasons(page, advice)) }
                }
                Next::Rest | Next::Answer { .. } | Next::Pause { .. } => {
                    @if page.may(Capability::Record) { p { a.button.wide href=(format!("/a/{}/board#answer", page.id)) data-test="do" { (say!(l, today::do_board)) } } }
                    @if let Next::Pause { plan, .. } = next {
                        details {
                            summary { (say!(l, today::why, sure = words_of::sure(l, Sure::Little))) }
                            ul {
                                li { (say!(l, today::pause_why, a_day = plan.a_day)) }
                                (best_time(l, plan))
                            }
                        }
                    }
                }
            }
        }
    }
}

fn held_behind(today: &Today) -> bool {
    matches!(today.next, Next::Session { .. }) && !today.welfare.is_empty()
}

fn session(page: &AnimalPage, plan: &Plan, today: &Today, agreed: &BTreeMap<WordId, PlanLine>) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let of = |hint: &Hint| -> Vec<&str> {
        plan.words.iter().filter(|w| w.hint.as_ref() == Some(hint)).map(|w| w.word.says.as_str()).collect()
    };
    html! {
        ul.short {
            @for w in &plan.words {
                li {
                    @let agreed = agreed.get(&w.word.word).filter(|agreed| agreed.way.is_some());
                    @let agreed = agreed.and_then(|agreed| Some((today.steps.iter().find(|of| of.word == w.word)?, agreed)));
                    @let only_shown = agreed.is_some_and(|(of, agreed)| !agreed.invites() && matches!(stands(of, agreed), Stands::Instead { .. }));
                    @let invitations = if only_shown { 0 } else { w.invitations };
                    @let planned = words_of::planned(l, &Planned { invitations, ..w.clone() });
                    @match w.hint.as_ref().filter(|hint| of(hint).len() == 1) {
                        Some(hint) => (say!(l, today::planned, planned = planned, hint = words_of::hint(l, name, hint))),
                        None => (planned),
                    }
                    @if let Some((of, agreed)) = agreed { " " (coach::beside(l, of, agreed)) }
                }
            }
        }
        // What several words share is said once.
        @for (i, hint) in plan.words.iter().enumerate().filter_map(|(i, w)| Some((i, w.hint.as_ref()?))) {
            @let words = of(hint);
            @if words.len() > 1 && plan.words[..i].iter().all(|w| w.hint.as_ref() != Some(hint)) {
                p.hint data-test="shared-hint" { (say!(l, today::hint_for, words = l.names(&words), hint = words_of::hint(l, name, hint))) }
            }
        }
        @if page.may(Capability::Record) { p { a.button.primary.wide href=(format!("/a/{}/board#show", page.id)) data-test="do" { (say!(l, today::start)) } } }
        details {
            summary { (say!(l, today::why_plan)) }
            ul {
                @if let Some(held) = today.held.filter(|_| held_behind(today)) { li data-test="held" { (words_of::held(l, &page.zone, &held)) } }
                li { (words_of::length(l, &plan.minutes_from)) }
                (best_time(l, plan))
                li { (l.colon(&say!(l, today::joining), &finding(l, &today.joining))) }
                @for w in &plan.words { li { (say!(l, today::shown_today, word = &w.word.says, times = w.today)) } }
            }
            @for c in &plan.cautions { (caution(page, &words_of::caution(l, name, *c))) }
        }
    }
}

/// The time of day it joined best.
fn best_time(l: &Locale, plan: &Plan) -> Markup {
    html! {
        @if let Some(best) = plan.times.first() {
            li { (say!(l, today::best_time, from = l.hour(best.from), to = l.hour(best.to), joined = finding(l, &best.joining))) }
        }
    }
}

/// What can wait, in a line.
fn later(page: &AnimalPage, a: &Advice) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        details data-test="later-advice" data-topic=(format!("{:?}", a.topic)) {
            summary { (words_of::act(l, name, &a.act)) }
            (cautions(page, a))
            (button(page, &a.act, false))
            (reasons(page, a))
        }
    }
}
