//! One thing a coach wrote: whose words, what, what was answered, and what can be done about it.

use super::about::place_of;
use super::ended::{ended, told};
use super::first;
use super::going::going;
use super::practice;
use super::programme::weeks;
use super::tried::tried;
use super::{animal_of, is_home, is_open_to, is_witnessed, reads, writer};
use crate::page::Page;
use crate::pages::designs::beside;
use crate::pages::words::saying;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::consents::Consents;
use sayso_model::talks::{Answered, Passed, Standing, Talk, hands, in_place, stage_of_closing};
use sayso_model::{Coach, EventId, Proposed, Reply, ShortNote};
use sayso_people::Capability;
use sayso_wording::say;
use sayso_wording::talk::{about, line, proposed};

/// One of them.
pub fn card(
    page: &Page,
    all: &[Talk<'_>],
    (passed, open): (&[Passed], &Consents),
    talk: &Talk<'_>,
    typed: &Typed,
) -> Markup {
    let (l, part) = (&page.locale, talk.part);
    let at = l.weekday_date_time(talk.event.happened_at, &page.zone);
    let with = talk.event.animal.filter(|_| page.animals().len() > 1);
    let with = with.and_then(|id| page.story.animals().get(&id).map(|card| card.name.to_string()));
    let ended = ended(page, (passed, open), talk);
    let earlier = part.takes_up.and_then(|id| all.iter().find(|t| t.id() == id));
    html! {
        section.card id=(format!("t-{}", talk.id())) data-test="talk" data-standing=(named(talk.standing)) {
            p.topic.quiet { (say!(l, talk::from, name = &part.from.name)) " · " (at) @if let Some(name) = with { " · " (name) } }
            @if !is_witnessed(page, talk.id()) { p.hint data-test="from-file" { (say!(l, talk::from_file, name = &part.from.name)) } }
            p.act { strong { (proposed(l, &page.story, &part.proposes)) } }
            @if let Proposed::Plan { lines, .. } = &part.proposes {
                ul.short { @for one in lines { li { (line(l, &page.story, one)) } } }
                @if let Some(animal) = talk.event.animal.filter(|_| talk.is_live()) { (first::of_lines(page, animal, lines)) }
            }
            @if let Some(card) = stage_of_closing(&page.story, &part.proposes).filter(|_| talk.is_live()) {
                p.note data-test="first" { (say!(l, talk::first_ends, word = card.says.as_str())) }
            }
            @if part.club.is_some_and(|club| open.any_to(Coach::Club { club })) { p.quiet data-test="for-club" { @if is_home(page) { (say!(l, talk::for_club)) } @else { (say!(l, talk::for_club_coach)) } } }
            @if let Some(ended) = ended.filter(|_| talk.may_be_settled()) { (told(page, talk, ended)) }
            @if let Some(text) = &part.text { p.lines data-test="text" { (text) } }
            (looked_at(page, talk))
            @if let Some(earlier) = earlier {
                p.quiet { a href=(format!("#t-{}", earlier.id())) { (say!(l, talk::takes_up, what = proposed(l, &page.story, &earlier.part.proposes))) } }
            }
            @for answer in &talk.answers { (answered(page, answer, passed)) }
            (goes_on_with(page, talk, passed, open))
            @if let Some(over) = over(talk.standing) { p.quiet data-test="standing" { (say!(l, talk::standing, standing = over)) } }
            (going(page, talk))
            (beside_trials(page, talk))
            (tried(page, talk))
            (weeks(page, talk))
            (practice::card(page, talk, ended.is_none()))
            (to_do(page, talk))
            @if is_home(page) { (answer(page, talk, typed)) }
            (of_the_coach(page, passed, talk))
        }
    }
}

/// Trials that go on on the days of a plan that waits for an answer or holds.
fn beside_trials(page: &Page, talk: &Talk<'_>) -> Markup {
    let (Proposed::Plan { last_day, .. }, Some(animal)) = (&talk.part.proposes, talk.event.animal) else {
        return html! {};
    };
    html! { @if talk.is_live() { (beside::of_a_plan(page, animal, Some(*last_day))) } }
}

/// The way to what a note or a question is about.
fn looked_at(page: &Page, talk: &Talk<'_>) -> Markup {
    let (Proposed::Note { about: Some(of) } | Proposed::Question { about: Some(of) }) = &talk.part.proposes else {
        return html! {};
    };
    let to = animal_of(page, talk).and_then(|animal| place_of(of, animal));
    html! {
        @if let Some(to) = to.filter(|_| page.may(Capability::SeeFigures)) {
            p { a.link href=(to) data-test="looked-at" { (say!(&page.locale, talk::look_at, what = about(&page.locale, &page.story, of))) } }
        }
    }
}

/// How it stands, for programs.
const fn named(standing: Standing) -> &'static str {
    match standing {
        Standing::Open => "open",
        Standing::Accepted => "accepted",
        Standing::Declined => "declined",
        Standing::Answered => "answered",
        Standing::Ended { .. } => "ended",
        Standing::Withdrawn => "withdrawn",
    }
}

/// Why it is over, as a message chooses by, where no answer says so already.
const fn over(standing: Standing) -> Option<&'static str> {
    match standing {
        Standing::Ended { accepted: true } => Some("ended"),
        Standing::Ended { accepted: false } => Some("over"),
        Standing::Withdrawn => Some("withdrawn"),
        Standing::Open | Standing::Accepted | Standing::Declined | Standing::Answered => None,
    }
}

fn answered(page: &Page, answer: &Answered<'_>, passed: &[Passed]) -> Markup {
    let l = &page.locale;
    // A coach who went on with it says no for nobody at home.
    let of_a_coach = answer
        .part
        .by
        .as_ref()
        .is_some_and(|by| passed.iter().any(|p| [p.to.account, p.from.account].contains(&by.account)));
    let reply = if of_a_coach && answer.part.reply == Reply::Declined { "ended" } else { answer.part.reply.name() };
    let card = answer.event.person.and_then(|id| page.story.people().get(&id).copied());
    let by = answer.part.by.as_ref().map(|by| by.name.to_string());
    let who = card.map(|card| card.name.to_string()).or(by).unwrap_or_else(|| say!(l, talk::someone));
    let when = l.weekday_date_time(answer.event.happened_at, &page.zone);
    html! {
        p.quiet data-test="reply" { (say!(l, talk::reply, reply = reply, who = who, when = when)) }
        @if let Some(text) = &answer.part.text { p.lines data-test="reply-text" { (text) } }
        @if let Some(of) = &answer.part.rehearsed { (practice::shared(page, answer.event, of)) }
    }
}

/// Who goes on with it in the place of whoever wrote it, while it is live.
fn goes_on_with(page: &Page, talk: &Talk<'_>, passed: &[Passed], open: &Consents) -> Markup {
    let l = &page.locale;
    let wrote = (talk.part.from.account, talk.event.happened_at);
    let all = hands(passed, wrote, page.now.day(&page.zone));
    // Nobody goes on with a home that is closed to them now.
    let all: Vec<_> = all.into_iter().filter(|p| is_open_to(open, p)).collect();
    let last = all.iter().filter(|p| p.days.is_none()).max_by_key(|p| p.since);
    let covers = all.iter().filter_map(|p| Some((p, p.days?)));
    let in_place =
        in_place(passed, wrote, &page.zone).filter(|p| open.any_to(Coach::Account { account: p.from.account }));
    html! {
        @for of in in_place {
            p.quiet data-test="in-place" { (say!(l, talk::in_place, name = &of.to.name, of = &of.from.name)) }
        }
        @if talk.is_live() && talk.part.proposes.opens_to().is_none() {
            @if let Some(of) = last.filter(|p| p.to.account != talk.part.from.account) {
                p.quiet data-test="goes-on" { (say!(l, talk::goes_on, name = &of.to.name, day = l.date(of.since.day(&page.zone)))) }
            }
            @for (of, (_, until)) in covers {
                p.quiet data-test="stands-in" { (say!(l, talk::stands_in, name = &of.to.name, day = l.date(until))) }
            }
        }
    }
}

/// Where what was agreed is done, for whoever may.
fn to_do(page: &Page, talk: &Talk<'_>) -> Markup {
    let l = &page.locale;
    let Some(animal) = animal_of(page, talk) else { return html! {} };
    let at = |rest: &str| format!("/a/{animal}/{rest}");
    let place = match &talk.part.proposes {
        Proposed::Stage { .. } if stage_of_closing(&page.story, &talk.part.proposes).is_some() => None,
        Proposed::Stage { word, .. } => {
            Some((Capability::ChangeCards, at(&format!("words/card/{word}#stage")), say!(l, today::do_stage)))
        }
        Proposed::Word { says } => Some(match saying(&page.story, says.as_str()) {
            Some(card) => {
                let to = at(&format!("words/card/{}", card.word));
                (Capability::ChangeCards, to, say!(l, talk::word_is_there, word = says))
            }
            None => (Capability::ChangeCards, at("words/new"), say!(l, talk::do_word)),
        }),
        Proposed::Likes => Some((Capability::Plan, at("likes"), say!(l, today::do_likes))),
        Proposed::Check { word } => {
            Some((Capability::Plan, at(&format!("checks/new?words={word}")), say!(l, today::do_checks)))
        }
        Proposed::Plan { .. }
        | Proposed::Change { .. }
        | Proposed::Meeting { .. }
        | Proposed::Note { .. }
        | Proposed::Question { .. }
        | Proposed::Programme { .. }
        | Proposed::HandOver { .. }
        | Proposed::Cover { .. }
        | Proposed::Practice { .. } => None,
    };
    let rests = talk.part.proposes.takes_sessions() && super::rests(page, animal);
    html! {
        @if let Some((takes, to, says)) = place
            && talk.standing == Standing::Accepted && page.may(takes) && !rests {
            p { a.button href=(to) data-test="do" { (says) } }
        }
    }
}

/// The home's answer: what it takes depends on how the thing stands.
fn answer(page: &Page, talk: &Talk<'_>, typed: &Typed) -> Markup {
    let l = &page.locale;
    if talk.part.proposes.opens_to().is_some() {
        return opening(page, talk, typed);
    }
    let words = talk.part.proposes.is_words();
    let asks = matches!(talk.part.proposes, Proposed::Question { .. });
    let button = |reply: Reply, primary: bool, says: String| {
        html! { button.primary[primary] name="reply" value=(reply.name()) data-test=(reply.name()) { (says) } }
    };
    let yes = if words { say!(l, talk::noted) } else { say!(l, talk::accept) };
    let no = if talk.standing == Standing::Accepted { say!(l, talk::not_any_more) } else { say!(l, talk::decline) };
    let buttons = match talk.standing {
        Standing::Open if asks => {
            html! { (button(Reply::Said, true, say!(l, talk::answer))) (button(Reply::Declined, false, no)) }
        }
        Standing::Open => html! {
            (button(Reply::Accepted, true, yes))
            @if !words { (button(Reply::Declined, false, no)) }
            (button(Reply::Said, false, say!(l, talk::answer)))
        },
        Standing::Accepted => {
            html! { (button(Reply::Said, false, say!(l, talk::answer))) (button(Reply::Declined, false, no)) }
        }
        Standing::Declined if !words => {
            html! { (button(Reply::Accepted, false, yes)) (button(Reply::Said, false, say!(l, talk::answer))) }
        }
        Standing::Declined | Standing::Answered => button(Reply::Said, false, say!(l, talk::answer)),
        Standing::Ended { .. } | Standing::Withdrawn => return html! {},
    };
    let mine = typed.text("to") == talk.id().to_string();
    let open = asks && talk.standing == Standing::Open;
    html! {
        form method="post" action=(page.of_home("/talk/answer")) {
            input type="hidden" name="to" value=(talk.id());
            @if open || mine { (words_of_home(page, talk.id(), typed, mine)) }
            @else { details { summary { (say!(l, talk::add_words)) } (words_of_home(page, talk.id(), typed, mine)) } }
            div.row { (buttons) }
        }
    }
}

/// The answer to what would open the home to somebody: given by a keeper, on a page that says to whom and what.
fn opening(page: &Page, talk: &Talk<'_>, typed: &Typed) -> Markup {
    let l = &page.locale;
    let open = talk.standing == Standing::Open;
    let mine = typed.text("to") == talk.id().to_string();
    html! {
        @if open && page.leave.is_some() && page.may(Capability::Consent) && is_witnessed(page, talk.id()) {
            p { a.button.primary href=(page.of_home(&format!("/sharing/handed/{}", talk.id()))) data-test="to-opening" { (say!(l, talk::look_and_decide)) } }
        } @else if open { p.quiet { (say!(l, talk::a_keeper_decides)) } }
        @if talk.standing == Standing::Accepted && page.leave.is_some() { p { a.link href={ (page.of_home("/sharing")) "#consent" } { (say!(l, talk::see_sharing)) } } }
        @if talk.is_live() {
            form method="post" action=(page.of_home("/talk/answer")) {
                input type="hidden" name="to" value=(talk.id());
                details open[mine] { summary { (say!(l, talk::add_words)) } (words_of_home(page, talk.id(), typed, mine)) }
                div.row {
                    @if open { button name="reply" value=(Reply::Declined.name()) data-test=(Reply::Declined.name()) { (say!(l, talk::decline)) } }
                    button name="reply" value=(Reply::Said.name()) data-test=(Reply::Said.name()) { (say!(l, talk::answer)) }
                }
            }
        }
    }
}

/// The home's own words.
fn words_of_home(page: &Page, talk: EventId, typed: &Typed, mine: bool) -> Markup {
    let l = &page.locale;
    let (id, wrong) = (format!("text-{talk}"), typed.sentence("text").filter(|_| mine));
    let over = typed.sentence("reply").filter(|_| mine);
    let mut told = vec![format!("{id}-hint")];
    told.extend(wrong.as_ref().map(|_| "text".to_owned()));
    html! {
        div.field {
            label for=(id) { (say!(l, talk::your_answer)) }
            span.hint id=(format!("{id}-hint")) { (say!(l, talk::most, most = ShortNote::MOST)) }
            @if let Some(what) = &wrong { span.wrong id="text" { (what) } }
            @if let Some(what) = &over { span.wrong id="reply" { (what) } }
            textarea id=(id) name="text" rows="2" aria-invalid=[wrong.as_ref().map(|_| "true")] aria-describedby=(told.join(" ")) {
                @if mine { (typed.text("text")) }
            }
        }
    }
}

/// What a coach can do about what they wrote, or go on with.
fn of_the_coach(page: &Page, passed: &[Passed], talk: &Talk<'_>) -> Markup {
    let l = &page.locale;
    let Some(leave) = writer(page) else { return html! {} };
    let own = leave.who.account == talk.part.from.account;
    if !own && (talk.part.proposes.opens_to().is_some() || !reads::goes_on(page, leave, passed, talk)) {
        return html! {};
    }
    let again = [("takes_up", talk.id().to_string())];
    html! {
        div.row {
            @if talk.part.proposes.opens_to().is_none() {
                a.button href=(page.of_home_with("/talk/write", &again)) data-test="write-again" { (say!(l, talk::write_again)) }
            }
            @if talk.is_live() && !own {
                form method="post" action=(page.of_home("/talk/end")) {
                    button name="of" value=(talk.id()) data-test="end" { (say!(l, talk::end)) }
                }
            }
            @if talk.is_live() && own {
                form method="post" action=(page.of_home("/talk/back")) {
                    button name="of" value=(talk.id()) data-test="take-back" { (say!(l, talk::take_back)) }
                }
            }
        }
    }
}
