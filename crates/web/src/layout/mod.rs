//! The frame around every page.

mod tab;

pub use tab::{NAME, Tab};

use crate::assets::{asset, text};
use crate::page::Page;
use crate::picture;
use crate::rich;
use maud::{DOCTYPE, Markup, html};
use sayso_model::{Clock, Kind, Language, OwnPlan, PictureOf};
use sayso_people::Capability;
use sayso_wording::{Locale, say};

/// Colours of the bar above the page, by what the person's device asks for; those of the page's own bar.
pub const THEMES: [(&str, &str); 2] = [("light", "#ffffff"), ("dark", "#1b2220")];

/// Stands for the time in the line on a page that the worker kept; for private use in Unicode, as in `client/worker.js`.
const EARLIER_TIME: &str = "\u{e002}";

/// A page in its frame.
#[must_use]
pub fn layout(page: &Page, tab: Tab, title: &str, body: Markup) -> Markup {
    layout_with(page, tab, title, &[], body)
}

/// A page in its frame with its own ES modules, named as in `assets`, such as `client/board.js`.
#[must_use]
pub fn layout_with(page: &Page, tab: Tab, title: &str, modules: &[&str], body: Markup) -> Markup {
    let l = &page.locale;
    // There its tabs would lead nowhere.
    let nowhere = page.is_of_no_home();
    let animal = page.animal.or_else(|| page.animals().first().map(|l| l.animal));
    let at = |tab: Tab| match tab {
        Tab::People | Tab::Sheets | Tab::Learn => page.of_home(&tab.href(animal)),
        _ => tab.href(animal),
    };
    // How many letters stand side by side in the bar: they are as large as leaves them one line.
    let letters: usize =
        Tab::NEAR.iter().map(|t| t.name(l)).chain([say!(l, frame::more)]).map(|name| name.chars().count()).sum();
    let long = match letters {
        0..=28 => "",
        29..=34 => "long",
        _ => "longer",
    };
    let near = |tabs: &[Tab]| {
        html! {
            @for t in tabs.iter().filter(|t| t.is_open(page)) {
                li { a href=(at(*t)) aria-current=[(*t == tab).then_some("page")] { (t.name(l)) } }
            }
        }
    };
    document(
        &page.locale,
        title,
        modules,
        html! {
            a.skip href="#main" { (say!(l, frame::to_content)) }
            header.top {
                a.brand href="/" { (NAME) }
                @if page.homes.len() > 1 {
                    a.switch href="/homes" data-test="home" { span.unseen { (say!(l, frame::home)) " " } (page.home_label) }
                }
                (animal_switch(page, tab))
                (who(page))
            }
            @if !nowhere { nav.side aria-label=(say!(l, frame::pages)) { ul { (near(&Tab::ALL)) (talk(page)) (sharing(page)) } } }
            main #main tabindex="-1" {
                (heading(page, tab, title))
                (not_understood(page))
                (body)
                @if !matches!(tab, Tab::Board | Tab::Today) {
                    p.quiet.foot { a href="/glossary" { (say!(l, glossary::title)) } " · " a href="/methods" { (say!(l, frame::methods)) } }
                    @if l.language != Language::En { p.quiet.foot data-test="unchecked" { (say!(l, frame::unchecked)) } }
                }
                @if nowhere && page.leave.as_ref().is_none_or(|leave| !leave.homes.is_empty()) { p { a.button.primary href="/start" data-test="begin" { (say!(l, start::title)) } } }
                (account(page))
            }
            @if !nowhere { nav.thumb aria-label=(say!(l, frame::pages)) {
                ul class=(long) {
                    (near(&Tab::NEAR))
                    li {
                        details.more {
                            summary aria-current=[Tab::FAR.contains(&tab).then_some("true")] { (say!(l, frame::more)) }
                            ul { (near(&Tab::FAR)) (talk(page)) (sharing(page)) }
                        }
                    }
                }
            } }
        },
    )
}

/// Pages on which the animal's picture stands beside the title, and not in the bar above.
const fn beside_title(tab: Tab) -> bool {
    matches!(tab, Tab::Today | Tab::Likes | Tab::Words)
}

/// The title, on the pages about an animal's day, likes and words beside its picture.
fn heading(page: &Page, tab: Tab, title: &str) -> Markup {
    let animal = page.animal.filter(|_| beside_title(tab));
    let shown = animal.and_then(|animal| {
        let name = page.story.animals().get(&animal)?.name.to_string();
        Some((page.story.picture_of(PictureOf::Animal { animal })?, name))
    });
    html! {
        @match shown {
            Some((p, name)) => div.titled {
                img.picture src=(picture::at(p)) width=(p.width) height=(p.height) alt=(say!(&page.locale, pictures::of, name = name)) data-test="animal-picture";
                h1 { (title) }
            }
            None => h1 { (title) }
        }
    }
}

/// A page without home: set-up, pairing, errors.
#[must_use]
pub fn bare(locale: &Locale, title: &str, body: Markup) -> Markup {
    bare_with(locale, title, &[], body)
}

/// The same with ES modules.
#[must_use]
pub fn bare_with(locale: &Locale, title: &str, modules: &[&str], body: Markup) -> Markup {
    framed(locale, title, modules, "narrow", body)
}

/// The same for a page that is about many homes: as wide as the screen has use for.
#[must_use]
pub fn wide_with(locale: &Locale, title: &str, modules: &[&str], body: Markup) -> Markup {
    framed(locale, title, modules, "whole", body)
}

fn framed(locale: &Locale, title: &str, modules: &[&str], width: &str, body: Markup) -> Markup {
    document(
        locale,
        title,
        modules,
        html! {
            header.top { a.brand href="/" { (NAME) } }
            main #main .(width) { h1 { (title) } (body) }
        },
    )
}

fn document(locale: &Locale, title: &str, modules: &[&str], body: Markup) -> Markup {
    let clock = match locale.clock {
        Clock::Hours24 => "h23",
        Clock::Hours12 => "h12",
    };
    html! {
        (DOCTYPE)
        html lang=(locale.tag()) dir=(locale.direction().name()) data-clock=(clock) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover";
                meta name="color-scheme" content="light dark";
                meta name="referrer" content="same-origin";
                title { (title) " · " (NAME) }
                link rel="stylesheet" href=(asset("assets/base.css"));
                link rel="stylesheet" href=(asset("assets/board.css"));
                link rel="stylesheet" href=(asset("assets/pages.css"));
                link rel="icon" href=(asset("assets/icon.svg")) type="image/svg+xml";
                link rel="apple-touch-icon" href=(asset("assets/touch-180.png"));
                link rel="manifest" href="/manifest.webmanifest" crossorigin="use-credentials";
                @for (scheme, colour) in THEMES {
                    meta name="theme-color" media={ "(prefers-color-scheme: " (scheme) ")" } content=(colour);
                }
                // What the worker says on a page that it kept.
                meta name="sayso-earlier" content=(say!(locale, homescreen::earlier, time = EARLIER_TIME));
                // What a page says where a form finds no notebook.
                meta name="sayso-unsent" content=(say!(locale, frame::unsent));
                script type="module" src=(asset("client/frame.js")) {}
                script type="module" src=(asset("client/unsent.js")) {}
                script type="module" src=(asset("client/kept.js")) {}
                // Before the modules that say them.
                @if !modules.is_empty() { script type="module" src=(asset(text(locale))) {} }
                @for module in modules { script type="module" src=(asset(module)) {} }
            }
            body { (body) }
        }
    }
}

/// What is in the notebook and not on any page.
fn not_understood(page: &Page) -> Markup {
    let count: usize = page.not_understood.values().sum();
    let kinds: Vec<&str> = page.not_understood.keys().map(String::as_str).collect();
    html! {
        @if count > 0 {
            p.caution data-test="not-understood" {
                (say!(&page.locale, frame::not_understood, count = count, kinds = kinds.join(", ")))
            }
        }
    }
}

fn animal_switch(page: &Page, tab: Tab) -> Markup {
    let animals = page.animals();
    let current = page.animal.and_then(|id| animals.iter().find(|l| l.animal == id));
    html! {
        @if animals.len() > 1 {
            details.switch {
                summary {
                    span.unseen { (say!(&page.locale, frame::which_animal)) " " }
                    @if let Some(l) = current.filter(|_| !beside_title(tab)) { (picture::of(&page.story, PictureOf::Animal { animal: l.animal })) }
                    @match current { Some(l) => (l.name.as_str()), None => (say!(&page.locale, frame::animals)) }
                }
                ul {
                    @let to = Some(tab).filter(|tab| page.animal.is_some() && tab.is_open(page)).or_else(|| Tab::first(page)).unwrap_or(Tab::Today);
                    @for l in &animals {
                        li {
                            a href=(to.href(Some(l.animal)))
                                aria-current=[(page.animal == Some(l.animal)).then_some("true")] { (l.name.as_str()) }
                        }
                    }
                }
            }
        } @else if let Some(l) = current.or(animals.first()) {
            span.switch {
                @if !beside_title(tab) { (picture::of(&page.story, PictureOf::Animal { animal: l.animal })) }
                (l.name.as_str())
            }
        }
    }
}

/// The way to who can see this, on a server of many homes.
fn sharing(page: &Page) -> Markup {
    html! {
        @if page.leave.is_some() {
            li { a href=(page.of_home("/sharing")) { (say!(&page.locale, frame::who_sees)) } }
        }
    }
}

/// The way to what coach and home agreed on: where there is a coach, or was one.
fn talk(page: &Page) -> Markup {
    let coaches = page.leave.is_some() && page.may(Capability::Advise);
    let talks = match &page.leave {
        Some(_) => page.may(Capability::Agree) || page.may(Capability::Advise),
        None => {
            page.story.as_recorded(Kind::Proposal).next().is_some()
                || page.story.everyones::<OwnPlan>().next().is_some()
        }
    };
    html! {
        @if talks { li { a href=(page.of_home("/talk")) { (say!(&page.locale, talk::title)) } } }
        @if coaches { li { a href="/desk" { (say!(&page.locale, frame::desk)) } } }
    }
}

/// Below every page on a server of many homes, where it moves nothing: who can see this, the account, the way out.
fn account(page: &Page) -> Markup {
    html! {
        @if let Some(leave) = &page.leave {
            (doors_to(&page.locale, leave.name.as_str(), &page.of_home("/sharing")))
        }
    }
}

/// Who can see this, the account and the way out, for pages of a server. `/sharing` tells everyone what is theirs to know.
#[must_use]
pub fn doors(l: &Locale, account: &str) -> Markup {
    doors_to(l, account, "/sharing")
}

fn doors_to(l: &Locale, account: &str, sharing: &str) -> Markup {
    html! {
        nav.row.after data-test="doors" aria-label=(say!(l, frame::you)) {
            a.link href=(sharing) data-test="who-sees" { (say!(l, frame::who_sees)) }
            a.link href="/account" data-test="account" { (say!(l, frame::account, name = account)) }
            (sign_out(l))
        }
    }
}

/// The way out. Without a network it cannot be gone, and then the page says so instead of the browser.
#[must_use]
pub fn sign_out(l: &Locale) -> Markup {
    html! {
        form method="post" action="/sign-out" {
            button data-test="sign-out" { (say!(l, frame::sign_out)) }
            p.caution role="status" data-offline hidden { (say!(l, frame::offline_out)) }
        }
    }
}

/// Who writes: chosen on the device, or on a server named by the membership, and then there is no choice.
fn who(page: &Page) -> Markup {
    if let Some(leave) = &page.leave
        && (leave.person.is_some() || !page.may(Capability::RecordForOthers))
    {
        let name = page.person_card().map_or_else(|| leave.name.to_string(), |card| card.name.to_string());
        return html! { a.who href="/account" data-test="who" { (rich!(&page.locale, frame::i_am, name = html! { strong { (name) } })) } };
    }
    if page.is_of_no_home() && page.leave.is_none() {
        return html! {};
    }
    html! {
        a.who href=(format!("/who?back={}", page.path)) data-test="who" {
            @match page.person_card() {
                Some(t) => (rich!(&page.locale, frame::i_am, name = html! { strong { (t.name.as_str()) } }))
                None => (say!(&page.locale, frame::who_are_you))
            }
        }
    }
}
