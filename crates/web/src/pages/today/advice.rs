//! Markup of an advice wherever it stands: what to do, the caution, why, and where to do it.

use crate::layout::Tab;
use crate::page::AnimalPage;
use crate::pages::log;
use crate::rich;
use maud::{Markup, html};
use sayso_advisor::advice::Act;
use sayso_advisor::stuck::Cause;
use sayso_advisor::{Advice, Reason, Topic};
use sayso_people::Capability;
use sayso_wording::advice as words_of;
use sayso_wording::say;

/// One advice with its reasons. Welfare stands out by its frame and its word, not by colour alone.
#[must_use]
pub fn advice(page: &AnimalPage, advice: &Advice) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    let first = advice.topic == Topic::Welfare;
    html! {
        section.advice.stop[first].card[!first] data-test="advice" data-topic=(format!("{:?}", advice.topic)) {
            p.topic { (words_of::topic(l, advice.topic)) }
            p.act { (words_of::act(l, name, &advice.act)) }
            (cautions(page, advice))
            (button(page, &advice.act, false))
            details { summary { (say!(l, today::why, sure = words_of::sure(l, advice.sure))) } (reasons(page, advice)) }
        }
    }
}

/// What to watch out for.
#[must_use]
pub fn cautions(page: &AnimalPage, advice: &Advice) -> Markup {
    html! { @for c in &advice.cautions { (caution(page, &words_of::caution(&page.locale, page.card.name.as_str(), *c))) } }
}

/// One caution, said before the hand acts.
#[must_use]
pub fn caution(page: &AnimalPage, what: &str) -> Markup {
    html! { p.note { (rich!(&page.locale, today::take_care, what = what.to_owned(), care = html! { strong { (say!(&page.locale, today::care)) } })) } }
}

/// Because of what, and what would change it.
#[must_use]
pub fn reasons(page: &AnimalPage, advice: &Advice) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        ul { @for reason in &advice.because { li { (self::reason(page, reason)) } } }
        @if !advice.would_change.is_empty() {
            p { (say!(l, today::change_our_mind)) }
            ul { @for change in &advice.would_change { li { (words_of::change(l, name, change)) } } }
        }
    }
}

/// One reason with a way to its records.
#[must_use]
pub fn reason(page: &AnimalPage, reason: &Reason) -> Markup {
    let l = &page.locale;
    html! {
        (words_of::because(l, page.card.name.as_str(), &reason.fact))
        @if let Some(first) = reason.events.first().filter(|_| page.may(Capability::SeeLog)) {
            " " a href=(log::address(page.id, *first)) { (say!(l, today::records)) }
        }
    }
}

/// The one button that leads to where the advice is carried out; none where it is carried out away from the notebook.
#[must_use]
pub fn button(page: &AnimalPage, act: &Act, primary: bool) -> Markup {
    let Some((to, says)) = place(page, act) else { return html! {} };
    let takes = if to == Tab::Board.href(Some(page.id)) { Capability::Record } else { Capability::Plan };
    if !page.may(takes) {
        return html! {};
    }
    html! { p { a.button.wide.primary[primary] href=(to) data-test="do" { (says) } } }
}

fn place(page: &AnimalPage, act: &Act) -> Option<(String, String)> {
    let (l, id) = (&page.locale, page.id);
    let at = |rest: &str| format!("/a/{id}/{rest}");
    Some(match act {
        Act::ListRewards => ("/people/reward/new".to_owned(), say!(l, today::do_rewards)),
        Act::TestLikes | Act::RetestLikes => (at("likes"), say!(l, today::do_likes)),
        Act::ChooseFirstWords => (at("words"), say!(l, today::do_words)),
        Act::SetAllowance => (format!("/people/animal/{id}"), say!(l, today::do_allowance)),
        Act::FillCard { word, .. } => (at(&format!("words/card/{}", word.word)), say!(l, today::do_card)),
        Act::CheckBatteries { .. } | Act::CheckSilent { .. } => (at("heard"), say!(l, today::do_heard)),
        Act::Mend { word, cause } => match cause {
            Cause::HardToMakeOut | Cause::SoundsAlike => {
                (at(&format!("words/card/{}", word.word)), say!(l, today::do_card))
            }
            Cause::NotWanted => (at("likes"), say!(l, today::do_likes)),
            Cause::PeopleDiffer => ("/sheets/rules".to_owned(), say!(l, today::do_rules)),
            Cause::TimeOrPlace => (at("days"), say!(l, today::do_days)),
            Cause::Avoided => (at("words/board"), say!(l, today::do_places)),
            Cause::TooLittle | Cause::TooLate => (at("board"), say!(l, today::do_board)),
            Cause::Health => return None,
        },
        Act::Show { .. }
        | Act::ShowAtEnd { .. }
        | Act::Invite { .. }
        | Act::BeginInviting { .. }
        | Act::Answer { .. }
        | Act::LeaveToAnimal { .. } => (at("board"), say!(l, today::do_board)),
        Act::StepBack { word, .. } => (at(&format!("words/card/{}", word.word)), say!(l, today::do_stage)),
        Act::PlanCheck { .. } | Act::GoOnWithCheck { .. } => (at("checks"), say!(l, today::do_checks)),
        _ => return None,
    })
}

/// Whether whoever looks writes down what happens, and changes no cards.
pub(super) fn helps_only(page: &AnimalPage) -> bool {
    page.may(Capability::Record) && !page.may(Capability::ChangeCards)
}

/// Whether it is done by filling in cards.
pub(super) const fn of_cards(act: &Act) -> bool {
    matches!(act, Act::ListRewards | Act::TestLikes | Act::ChooseFirstWords | Act::SetAllowance | Act::FillCard { .. })
}
