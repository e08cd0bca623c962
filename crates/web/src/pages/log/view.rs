//! Markup of the log.

use super::ahead::ahead;
use super::filter::{Filter, Kind};
use super::fix::Fixable;
use super::line::address;
use super::line::{how, when, who};
use crate::fields;
use crate::layout::{Tab, layout};
use crate::page::AnimalPage;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_model::{Accident, Answer, Body, Day, Event, EventId, PressedBy, SignLevel, Then};
use sayso_people::Capability;
use sayso_wording::events::{self, Teller};
use sayso_wording::say;

/// What a page shows of the log.
pub struct Part<'a> {
    /// Newest first.
    pub events: Vec<&'a Event>,
    /// Whether there are newer events.
    pub newer: bool,
    /// Whether there are older ones.
    pub older: bool,
    /// The event asked for.
    pub shown: Option<EventId>,
}

fn told(page: &AnimalPage, body: &Body) -> String {
    Teller { locale: &page.locale, story: &page.story, name: page.card.name.as_str() }.tell(body)
}

/// The page.
pub fn view(page: &AnimalPage, filter: &Filter, part: &Part<'_>) -> Markup {
    let locale = &page.locale;
    layout(
        page,
        Tab::Log,
        &say!(locale, log::title),
        html! {
            p { a.link href=(format!("/a/{}/heard", page.id)) { (say!(locale, log::judge_heard)) } }
            // On a server a home can be erased as a whole.
            p { @if page.leave.is_some() { (say!(locale, log::about_server, name = &page.card.name)) } @else { (say!(locale, log::about, name = &page.card.name)) } }
            (ahead(page))
            (choose(page, filter))
            @if part.events.is_empty() {
                p { @if filter.any() { (say!(locale, log::nothing_such)) } @else { (say!(locale, log::nothing)) } }
            }
            @for of_day in part.events.chunk_by(|a, b| day_of(page, a) == day_of(page, b)) {
                section.day {
                    h2 { (page.locale.day_near(day_of(page, of_day[0]), page.now.day(&page.zone))) }
                    ol.log { @for e in of_day { (entry(page, e, part.shown == Some(e.id))) } }
                }
            }
            (pages(page, filter, part))
        },
    )
}

/// What to see, folded until something was chosen.
fn choose(page: &AnimalPage, filter: &Filter) -> Markup {
    let locale = &page.locale;
    let any = || (String::new(), say!(locale, log::any));
    let mut kinds = vec![any()];
    kinds.extend(Kind::ALL.map(|k| (k.name().to_owned(), say!(locale, log::kind_name, kind = k.name()))));
    let mut people = vec![any()];
    people.extend(page.story.people().into_values().map(|p| (p.person.to_string(), p.name.to_string())));
    let mut taught = vec![any()];
    taught.extend(words(page));
    let typed = Typed::default()
        .with_some("day", filter.day)
        .with_some("kind", filter.kind.map(Kind::name))
        .with_some("word", filter.word)
        .with_some("person", filter.person);
    let log = format!("/a/{}/log", page.id);
    html! {
        @if filter.any() {
            p data-test="log-filtered" {
                strong { (say!(locale, log::filtered, what = filter.told(page))) } " "
                a.link href=(log) { (say!(locale, log::show_all)) }
            }
        }
        details.noprint {
            summary data-test="log-choose" { (say!(locale, log::filter)) }
            form.stack method="get" action=(log) {
                div.row.even {
                    (fields::day(&typed, "day", &say!(locale, log::day), ""))
                    (fields::select(&typed, "kind", &say!(locale, log::kind), "", &kinds))
                    (fields::select(&typed, "word", &say!(locale, log::word), "", &taught))
                    (fields::select(&typed, "person", &say!(locale, log::person), "", &people))
                }
                button.primary.wide data-test="log-show" { (say!(locale, log::show)) }
            }
        }
    }
}

/// Older and newer pages, each with an address of its own that stays.
fn pages(page: &AnimalPage, filter: &Filter, part: &Part<'_>) -> Markup {
    let (locale, chosen) = (&page.locale, filter.query());
    let to = |way: &str, e: &Event| format!("/a/{}/log?{way}={}&id={}{chosen}", page.id, e.happened_at, e.id);
    html! {
        nav.row aria-label=(say!(locale, log::pages)) {
            @if part.newer {
                @let newest = if chosen.is_empty() { String::new() } else { format!("?{}", &chosen[1..]) };
                a.button href=(format!("/a/{}/log{newest}", page.id)) { (say!(locale, log::newest)) }
            }
            @if let (true, Some(first)) = (part.newer, part.events.first()) {
                a.button href=(to("after", first)) rel="prev" { (say!(locale, log::newer)) }
            }
            @if let (true, Some(last)) = (part.older, part.events.last()) {
                a.button rel="next" href=(to("before", last)) { (say!(locale, log::older)) }
            }
        }
    }
}

/// The day an event is listed under: that of its first record, as the order is.
fn day_of(page: &AnimalPage, first: &Event) -> Day {
    first.happened_at.day(&page.zone)
}

fn entry(page: &AnimalPage, first: &Event, shown: bool) -> Markup {
    let (locale, story) = (&page.locale, &page.story);
    let now = story.ledger().standing(first.id);
    let now = now.as_deref();
    let changed = now.is_some_and(|n| n.body != first.body || n.happened_at != first.happened_at);
    let what = told(page, &now.unwrap_or(first).body);
    let at = now.unwrap_or(first).happened_at;
    // Below the heading of its day the clock is enough.
    let clock = if at.day(&page.zone) == day_of(page, first) {
        page.locale.time_seconds(at, &page.zone)
    } else {
        when(page, at)
    };
    let at = when(page, at);
    let twice = if story.same_press(first.id).is_some() { "yes" } else { "no" };
    html! {
        li #(format!("e{}", first.id)) aria-current=[shown.then_some("true")] data-test="log-entry" data-state=(if now.is_none() { "withdrawn" } else if changed { "corrected" } else { "standing" }) {
            div.what {
                @if now.is_none() { p { s { (say!(locale, log::undone, what = &what)) } } }
                @else { p { (what) } }
                @if changed {
                    p.quiet { (say!(locale, log::edited, what = told(page, &first.body), when = when(page, first.happened_at))) }
                }
                p.quiet { (say!(locale, log::noted, when = clock, who = who(page, first), how = how(first.source), twice = twice)) }
            }
            // Each by its own name, so that a list of links and buttons can be told apart.
            @if page.may(Capability::MendOwn) && mends(first) { div.row.noprint {
                @if now.is_some() {
                    a.button href=(format!("/a/{}/log/{}", page.id, first.id)) data-test="log-fix"
                        aria-label=(say!(locale, log::edit_this, what = &what, when = &at)) { (say!(locale, log::edit)) }
                    form method="post" action=(format!("/a/{}/log/withdraw", page.id)) {
                        button name="of" value=(first.id) data-test="log-withdraw"
                            aria-label=(say!(locale, log::undo_this, what = &what, when = &at)) { (say!(locale, log::undo)) }
                    }
                } @else {
                    form method="post" action=(format!("/a/{}/log/bring-back", page.id)) {
                        button name="of" value=(first.id) data-test="log-bring-back"
                            aria-label=(say!(locale, log::bring_back_this, what = &what, when = &at)) { (say!(locale, log::bring_back)) }
                    }
                }
            } }
        }
    }
}

/// Whether an entry is put right here. Cards are changed, or ticked off, where they stand: with an Undo of its first card an animal
/// would be gone, and with it the page that brings it back. Consent is given and taken back on its own page; what a
/// coach wrote, and what was answered, stands as it is, and another answer counts instead.
pub fn mends(first: &Event) -> bool {
    !matches!(
        first.body,
        Body::HomeCard(_)
            | Body::PersonCard(_)
            | Body::AnimalCard(_)
            | Body::ConsentGiven(_)
            | Body::ConsentTakenBack(_)
            | Body::Proposal(_)
            | Body::ProposalAnswer(_)
    )
}

fn options<T: Copy>(
    all: &[T],
    named: impl Fn(T) -> &'static str,
    words: impl Fn(T) -> String,
) -> Vec<(String, String)> {
    all.iter().map(|v| (named(*v).to_owned(), words(*v))).collect()
}

/// The form for one event.
pub fn edit(page: &AnimalPage, event: &Event, typed: &Typed) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    let fixable = Fixable::of(&event.body);
    let select =
        |name: &str, label: String, options: &[(String, String)]| fields::select(typed, name, &label, "", options);
    let not_seen = |mut options: Vec<(String, String)>| {
        options.insert(0, (String::new(), say!(locale, log::not_seen)));
        options
    };
    layout(
        page,
        Tab::Log,
        &say!(locale, log::edit),
        html! {
            p { (told(page, &event.body)) }
            (fields::summary(typed))
            form method="post" action=(format!("/a/{}/log/{}", page.id, event.id)) .stack {
                (fields::day(typed, "day", &say!(locale, log::day), ""))
                div.field {
                    label for="time" { (say!(locale, log::time)) span.hint { (say!(locale, log::time_zone, zone = page.zone.name())) } }
                    input #time name="time" type="time" step="1" value=(typed.text("time")) required;
                    @if let Some(what) = typed.problem("time") { span.wrong { (say!(locale, log::time_wrong, what = what)) } }
                }
                @if fixable.word().is_some() { (select("word", say!(locale, log::word), &words(page))) }
                @match fixable {
                    Fixable::Press(_) => {
                        (select("by", say!(locale, log::who_pressed), &options(PressedBy::ALL, PressedBy::name, |b| say!(locale, log::by, by = b.name(), name = name))))
                        (select("accident", say!(locale, log::meant), &options(Accident::ALL, Accident::name, |a| say!(locale, log::accident, accident = a.name()))))
                    }
                    Fixable::Delivery(_) => {
                        (select("answer", say!(locale, log::how_answered), &options(Answer::ALL, Answer::name, |a| events::answer(locale, a))))
                        (select("then", say!(locale, log::what_then, name = name), &not_seen(options(Then::ALL, Then::name, |t| events::then(locale, t)))))
                    }
                    Fixable::Sign(_) => (select("level", say!(locale, log::how_strong), &options(SignLevel::ALL, SignLevel::name, |l| events::level(locale, l)))),
                    Fixable::Invitation(_) => (select("took", say!(locale, log::took, name = name), &not_seen(vec![("yes".into(), say!(locale, log::yes)), ("no".into(), say!(locale, log::no))]))),
                    Fixable::Brush(_) | Fixable::Catch(_) | Fixable::Look(_) | Fixable::TimeOnly => {}
                }
                button.primary.wide data-test="log-save" { (say!(locale, log::edit)) }
            }
            p { a href=(address(page.id, event.id)) { (say!(locale, log::back)) } }
        },
    )
}

fn words(page: &AnimalPage) -> Vec<(String, String)> {
    page.story.words().into_values().map(|w| (w.word.to_string(), w.says.to_string())).collect()
}
