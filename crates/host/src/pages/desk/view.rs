use super::asked::{ANSWERS, ASIDE, Asked, Chosen, KINDS, NONE, ON_A_PAGE, PATH, Tab};
use super::begun::{fitting, homes};
use super::figures::key;
use super::open::Opened;
use super::row::{Of, back, called, row};
use crate::asker::Asker;
use crate::desk::Found;
use crate::pages::homes::restored_told;
use maud::{Markup, html};
use sayso_model::{HomeId, Moment};
use sayso_wording::{Locale, say};
use std::collections::BTreeSet;

/// Its script.
const KEYS: &str = "client/desk.js";

pub fn view(asker: &Asker, opened: &Opened, chosen: &Chosen) -> Markup {
    let (l, asked) = (&asker.locale(), &chosen.asked);
    let all = chosen.shown(opened);
    let pages = all.len().div_ceil(ON_A_PAGE).max(1);
    let at = asked.page.clamp(1, pages);
    let shown = all.iter().skip((at - 1) * ON_A_PAGE).take(ON_A_PAGE);
    let without = fitting(opened, chosen);
    asker.wide_with(
        &[KEYS],
        &say!(l, desk_page::title),
        html! {
            (around(l, &opened.found, Tab::Needs, asked))
            (restored_told(l, opened.restored))
            (notices(l, opened, asked, asker.now))
            (answered(l, opened, asked))
            (filters(l, opened, chosen))
            p.quiet { (say!(l, desk_page::no_diagnosis)) }
            @if opened.found.kept.is_empty() && opened.found.unread == 0 { p data-test="none" { (say!(l, homes::none_coach)) } }
            @else if !all.is_empty() {
                (keys(l, &say!(l, desk_page::keys)))
                (key(l))
                ul.desk data-test="desk" { @for one in shown {
                    @if let Some(animal) = opened.animal(one.key) {
                        (row(&Of {
                            l,
                            now: asker.now,
                            asked,
                            key: one.key,
                            animal,
                            home: called(l, &opened.found, one.key.0),
                            words: opened.found.words(one.key.0),
                            goes_on: &opened.goes_on,
                            mark: chosen.marks.get(&one.key.0),
                            unheard: opened.unheard_of((one.key.0, Some(one.key.1))),
                            norms: asker.host.norms.as_deref(),
                        }, &one.needs))
                    }
                } }
            }
            @else if asked.kind == ANSWERS && !without.is_empty() {}
            @else if asked.find.trim().is_empty() { p data-test="none" { (say!(l, desk_page::none)) } }
            @else if without.is_empty() { p data-test="none-found" { (say!(l, desk_page::none_found, find = asked.find.trim())) } }
            @if at == pages { (homes(l, opened, chosen, &without)) }
            (paging(l, (at, pages), |page| asked.at(page)))
            p.quiet data-test="how-many" { (say!(l, desk_page::how_many, shown = all.len(), animals = opened.rows.len(), homes = opened.found.kept.len())) }
        },
    )
}

/// The pages of a desk, from the one where one is, as it was asked for. Some of its needs are not the whole page.
pub fn around(l: &Locale, found: &Found, at: Tab, asked: &Asked) -> Markup {
    let here = |tab| (tab == at && asked.kind.is_empty()).then_some("page");
    html! {
        nav.row aria-label=(say!(l, desk_page::title)) {
            a.button href=(Tab::Needs.path()) aria-current=[here(Tab::Needs)] { (say!(l, desk_page::needs)) }
            a.button href=(Tab::Week.path()) aria-current=[here(Tab::Week)] data-test="to-week" { (say!(l, desk_page::week)) }
            a.button href=(Tab::Changes.path()) aria-current=[here(Tab::Changes)] data-test="to-changes" { (say!(l, followed::title)) }
            // What is seldom needed leaves the first screen to who needs somebody.
            details.when-wide {
                summary data-test="more-pages" { (say!(l, desk_page::more_pages)) }
                div.row {
                    a.link href="/desk/programmes" data-test="to-programmes" { (say!(l, programme::title)) }
                    a.link href="/desk/colleagues" data-test="to-colleagues" { (say!(l, colleagues::title)) }
                    a.link href="/desk/calendar" data-test="to-calendar" { (say!(l, calendar::title)) }
                    a.link href="/homes" { (say!(l, sharing::to_homes)) }
                }
            }
        }
        @if found.behind + found.unread > 0 {
            p.quiet data-test="behind" {
                @if found.behind > 0 { (say!(l, desk_page::behind, behind = found.behind)) " " }
                @if found.unread > 0 { (say!(l, desk_page::unread, unread = found.unread)) " " }
                a href=(asked.address(at.path())) { (say!(l, desk_page::look_again)) }
            }
        }
    }
}

/// What the keys do, and whether they do it wherever one is on the page (WCAG 2.1.4).
pub fn keys(l: &Locale, how: &str) -> Markup {
    html! {
        div.row.keys {
            p.quiet { (how) }
            label.tick { input type="checkbox" data-keys checked autocomplete="off"; span { (say!(l, desk_page::keys_anywhere)) } }
        }
    }
}

/// That homes answered, and the way to what they said.
fn answered(l: &Locale, opened: &Opened, asked: &Asked) -> Markup {
    let homes: BTreeSet<HomeId> = opened.answered().map(|(home, _)| home).collect();
    html! {
        @if !homes.is_empty() && asked.kind != ANSWERS {
            p {
                a.link href=(format!("{PATH}?kind={ANSWERS}")) data-test="answered" { (say!(l, desk_page::answered, homes = homes.len())) }
            }
        }
    }
}

/// What was done just now.
fn notices(l: &Locale, opened: &Opened, asked: &Asked, now: Moment) -> Markup {
    let put = opened.asides.iter().filter(|a| a.animal.to_string() == asked.put && a.until > now).max_by_key(|a| a.at);
    let named = put.and_then(|aside| Some((aside, opened.animal((aside.home, aside.animal))?)));
    html! {
        @if !asked.gone.is_empty() { p.caution role="status" data-test="gone" { (say!(l, desk_page::gone)) } }
        @if let Some((aside, animal)) = named {
            div.row role="status" data-back data-test="put" {
                p { (say!(l, desk_page::was_put, name = animal.name.as_str())) }
                (back(l, &Asked { put: String::new(), ..asked.clone() }, (aside.home, aside.animal), &aside.need))
            }
        }
    }
}

/// By kind of need, by own marks, by text.
fn filters(l: &Locale, opened: &Opened, chosen: &Chosen) -> Markup {
    let asked = &chosen.asked;
    let marks: BTreeSet<&str> =
        chosen.marks.iter().filter(|(home, _)| opened.found.kept.contains_key(home)).map(|(_, m)| m.as_str()).collect();
    let is_filtered = [&asked.kind, &asked.mark, &asked.find].iter().any(|of| !of.is_empty());
    let option = |value: &str, count: usize| {
        html! {
            option value=(value) selected[value == asked.kind] { (say!(l, desk_page::kind, kind = value, count = count)) }
        }
    };
    html! {
        details.when-wide open[is_filtered] {
            summary data-test="filter" { (say!(l, desk_page::filter)) }
            form.filters method="get" action=(PATH) role="search" {
                div.field {
                    label for="kind" { (say!(l, desk_page::show)) }
                    select id="kind" name="kind" {
                        option value="" { (say!(l, desk_page::all_needs)) }
                        @for ((_, name), count) in KINDS.iter().zip(chosen.counts) { @if count > 0 || *name == asked.kind { (option(name, count)) } }
                        @let said = opened.answered().count();
                        @if said > 0 || asked.kind == ANSWERS { (option(ANSWERS, said)) }
                        (option(ASIDE, chosen.aside))
                        (option(NONE, chosen.without))
                    }
                }
                @if !marks.is_empty() {
                    div.field {
                        label for="mark" { (say!(l, desk_page::own_mark)) }
                        select id="mark" name="mark" {
                            option value="" { (say!(l, desk_page::any_mark)) }
                            @for mark in marks { option value=(mark) selected[mark == asked.mark] { (mark) } }
                        }
                    }
                }
                div.field {
                    label for="find" { (say!(l, desk_page::find)) }
                    input id="find" name="find" type="search" maxlength="80" autocomplete="off" value=(asked.find);
                }
                button { (say!(l, desk_page::apply)) }
            }
        }
    }
}

/// The way to the pages before and after this one, of so many; nothing where there is one.
pub fn paging(l: &Locale, (at, pages): (usize, usize), address: impl Fn(usize) -> String) -> Markup {
    html! {
        @if pages > 1 {
            nav.row data-test="pages" aria-label=(say!(l, desk_page::pages)) {
                @if at > 1 { a.button href=(address(at - 1)) rel="prev" { (say!(l, desk_page::before)) } }
                span { (say!(l, desk_page::page, at = at, pages = pages)) }
                @if at < pages { a.button href=(address(at + 1)) rel="next" data-test="next" { (say!(l, desk_page::after)) } }
            }
        }
    }
}
