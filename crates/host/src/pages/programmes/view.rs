use super::PATH;
use super::done::{Around, Done};
use crate::asker::Asker;
use crate::desk::{Found, HandedOn};
use crate::pages::desk::called;
use maud::{Markup, html};
use sayso_advisor::desk::ProgrammeLine;
use sayso_advisor::programme::week_of;
use sayso_model::{AnimalId, HomeId, ProgrammeId};
use sayso_people::db::ClubProgramme;
use sayso_web::fields::{day, summary, tick, ticks};
use sayso_web::typed::Typed;
use sayso_wording::programme::{aim, stood};
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// By course, who was handed over and is not to be seen any more.
type Closed = BTreeMap<ProgrammeId, Vec<HandedOn>>;

/// Every course of the clubs.
pub fn list(asker: &Asker, all: &[ClubProgramme], found: &Found, (around, closed): (&Around, &Closed)) -> Markup {
    let l = &asker.locale();
    asker.framed(
        &say!(l, programme::title),
        html! {
            p { (say!(l, programme::intro)) }
            p { a.button.primary.wide href="/desk/programmes/new" data-test="new" { (say!(l, programme::new)) } }
            @if all.is_empty() { p data-test="none" { (say!(l, programme::none)) } }
            ul.plain { @for of in all {
                li.line data-test="programme" {
                    span { strong { (of.course.name.as_str()) } span.hint {
                        (say!(l, programme::weeks, weeks = of.course.weeks.len()))
                        @if of.closed { " · " (say!(l, programme::closed)) }
                    } (handed_over(l, of, found, (around, closed))) }
                    a.button href=(format!("{PATH}/{}", of.course.programme)) { (say!(l, designs::open)) }
                }
            } }
            p { a href="/desk" { (say!(l, club::to_desk)) } }
        },
    )
}

/// Who had joined and was handed over: by name where the home is still to be seen.
fn handed_over(l: &Locale, of: &ClubProgramme, found: &Found, (around, closed): (&Around, &Closed)) -> Markup {
    let course = of.course.programme;
    let named = around.given_away.iter().filter_map(|(home, on)| Some((home, on, found.kept.get(home)?)));
    html! {
        @for (home, on, kept) in named {
            @for animal in kept.animals.values().filter(|animal| animal.line.programmes.iter().any(|p| p.programme == course)) {
                span.hint data-test="handed-on" { (given(l, &named_in(l, found, *home, &animal.name), on)) }
            }
        }
        @for on in closed.get(&course).into_iter().flatten() {
            span.hint data-test="handed-on" { (say!(l, programme::handed_on, name = &on.to, day = l.date(on.since))) }
        }
    }
}

fn given(l: &Locale, who: &str, on: &HandedOn) -> String {
    say!(l, programme::given_on, who = who, name = &on.to, day = l.date(on.since))
}

/// An animal with its home.
fn named_in(l: &Locale, found: &Found, home: HomeId, animal: &str) -> String {
    say!(l, followed::in_home, animal = animal, home = called(l, found, home))
}

/// What came of proposing it, by the names of animals.
fn told(l: &Locale, found: &Found, done: &Done) -> Markup {
    let names = |of: &[AnimalId]| -> Vec<String> {
        let of_home = |(home, kept): (&HomeId, &std::sync::Arc<crate::desk::Kept>)| {
            let there = kept.animals.iter().filter(|(animal, _)| of.contains(animal));
            there.map(|(_, kept)| named_in(l, found, *home, &kept.name)).collect::<Vec<_>>()
        };
        let mut all: Vec<String> = found.kept.iter().flat_map(of_home).collect();
        all.sort();
        all
    };
    let [sent, rests, handed, joined] = [&done.sent, &done.rests, &done.handed, &done.joined].map(|of| names(of));
    html! {
        div role="status" {
            @if !sent.is_empty() { p data-test="sent" { (say!(l, programme::sent, names = l.and(&sent))) } }
            @if !rests.is_empty() { p.caution data-test="left-out" { (say!(l, programme::left_rests, names = l.and(&rests))) } }
            @if !handed.is_empty() { p data-test="left-out" { (say!(l, programme::left_handed, names = l.and(&handed))) } }
            @if !joined.is_empty() { p data-test="left-out" { (say!(l, programme::left_joined, names = l.and(&joined))) } }
        }
    }
}

/// An animal that joined.
struct Joined<'a> {
    home: HomeId,
    animal: AnimalId,
    name: &'a str,
    of: String,
    line: &'a ProgrammeLine,
}

/// One course: its weeks, and where each home stands. By the names of animals, never by how far they are.
/// Homes that were handed over are told as such, and no more of them.
pub fn one(
    asker: &Asker,
    of: &ClubProgramme,
    found: &Found,
    (around, closed, done): (&Around, &[HandedOn], &Done),
    typed: &Typed,
) -> Markup {
    let l = &asker.locale();
    let mut joined: Vec<Joined<'_>> = Vec::new();
    for (home, kept) in &found.kept {
        for (animal, kept) in &kept.animals {
            let own = |line: &&ProgrammeLine| {
                line.programme == of.course.programme && around.goes_on.contains_key(&line.proposal)
            };
            joined.extend(kept.line.programmes.iter().filter(own).map(|line| Joined {
                home: *home,
                animal: *animal,
                name: &kept.name,
                of: called(l, found, *home),
                line,
            }));
        }
    }
    joined.sort_by(|a, b| (a.name, &a.of, a.animal).cmp(&(b.name, &b.of, b.animal)));
    asker.wide_with(
        &[],
        of.course.name.as_str(),
        html! {
            (summary(typed))
            (told(l, found, done))
            h2 { (say!(l, programme::where_each)) }
            p.quiet { (say!(l, programme::no_ranking)) }
            @if joined.is_empty() { p data-test="nobody" { (say!(l, programme::nobody)) } }
            ul.desk { @for one in &joined { (stands(asker, l, of, one, around.given_away.get(&one.home))) } }
            @for on in closed { p.quiet data-test="handed-on" { (say!(l, programme::handed_on, name = &on.to, day = l.date(on.since))) } }
            (course(l, of))
            (offer(l, of, found, typed))
            form method="post" action=(format!("{PATH}/{}/close", of.course.programme)) {
                button name="closed" value=(if of.closed { "no" } else { "yes" }) {
                    @if of.closed { (say!(l, programme::open_again)) } @else { (say!(l, programme::close)) }
                }
            }
            p { a.link href=(PATH) { (say!(l, programme::title)) } }
        },
    )
}

/// Where one stands: the aims of the week it is in, each with its counts; the weeks before folded.
fn stands(asker: &Asker, l: &Locale, of: &ClubProgramme, one: &Joined<'_>, given: Option<&HandedOn>) -> Markup {
    let zone = sayso_model::Zone::utc();
    let today = asker.now.day(&zone);
    let now = week_of(&of.course, one.line.first, today);
    let aims = |week: usize| {
        let aims = of.course.weeks.get(week).map_or(&[][..], |w| &w.aims);
        let done = one.line.weeks.get(week).map_or(&[][..], |w| w);
        html! {
            ul.short { @for (what, (done, all)) in aims.iter().zip(done) {
                li { (say!(l, programme::doing, aim = aim(l, what), done = stood(l, *done, *all))) }
            } }
        }
    };
    let over = now.unwrap_or(if today < one.line.first { 0 } else { of.course.weeks.len() });
    html! {
        li.desk-row data-test="stands" {
            div.who-is { h3 { a.open href=(format!("/talk?home={}", one.home)) { (one.name) } " " span.quiet { (one.of) } } }
            div.need {
                @if let Some(on) = given { p.quiet data-test="handed-on" { (say!(l, programme::handed_on, name = &on.to, day = l.date(on.since))) } }
                @match now {
                    Some(week) => {
                        p { (say!(l, programme::in_week, week = week + 1, weeks = of.course.weeks.len())) }
                        (aims(week))
                    },
                    None if today < one.line.first => p { (say!(l, programme::begins, day = l.date(one.line.first))) },
                    None => p { (say!(l, programme::over)) },
                }
                @if over > 0 {
                    details { summary { (say!(l, programme::weeks_before)) }
                        @for week in 0..over { p { strong { (say!(l, programme::week_number, week = week + 1)) } } (aims(week)) }
                    }
                }
            }
        }
    }
}

fn course(l: &Locale, of: &ClubProgramme) -> Markup {
    html! {
        h2 { (say!(l, programme::course)) }
        ol data-test="course" { @for week in &of.course.weeks {
            li {
                @if let Some(text) = &week.exercise { p.lines { (text) } }
                @if week.aims.is_empty() { p.quiet { (say!(l, programme::no_aims)) } }
                ul { @for one in &week.aims { li { (aim(l, one)) } } }
            }
        } }
    }
}

/// To whom it can be proposed: animals of homes that are open to the coach now.
fn offer(l: &Locale, of: &ClubProgramme, found: &Found, typed: &Typed) -> Markup {
    let mut all: Vec<(String, String)> = Vec::new();
    for (home, kept) in &found.kept {
        all.extend(
            kept.animals.iter().map(|(animal, kept)| (named_in(l, found, *home, &kept.name), animal.to_string())),
        );
    }
    all.sort();
    let all: Vec<(String, Markup)> = all.into_iter().map(|(name, animal)| (animal, html! { (name) })).collect();
    html! {
        @if !of.closed && !all.is_empty() {
            h2 { (say!(l, programme::propose)) }
            form method="post" action=(format!("{PATH}/{}/propose", of.course.programme)) .stack {
                (ticks(typed, "animal", &say!(l, programme::field_animal), &say!(l, programme::each_own), &all))
                @if all.len() > 1 { (tick(typed, "all", &say!(l, programme::all_of_them))) }
                (day(typed, "first", &say!(l, programme::field_first), ""))
                button.primary.wide data-test="propose" { (say!(l, programme::propose_button)) }
            }
        }
    }
}
