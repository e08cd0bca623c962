use super::label::{length, longest, parted};
use super::mat::Mat;
use super::now::{Now, RewardNow, WordNow, now};
use crate::layout::{Tab, layout_with};
use crate::news;
use crate::page::AnimalPage;
use crate::pages::learn::at_board;
use crate::pages::listen::switch;
use crate::pages::scored;
use crate::rich;
use maud::{Markup, html};
use sayso_model::{Language, Stage, WordId, facts};
use sayso_people::Capability;
use sayso_wording::hazards::other;
use sayso_wording::{Locale, say};

pub fn view(page: &AnimalPage) -> Markup {
    let now = now(page);
    let json = serde_json::to_string(&now).unwrap_or_default();
    let words: Vec<WordId> = now.words.iter().map(|w| w.id).collect();
    let mat = Mat::new(page.story.board(), &words);
    let state = if now.open.is_some() { "session" } else { "idle" };
    let locale = &page.locale;
    let care = on_buttons(&now).any(|r| r.never.is_none() && !r.cautions.is_empty());
    let modes = [
        ("showing", Some("show"), say!(locale, board::show)),
        ("invitation", None, say!(locale, board::invite)),
        ("day", Some("answer"), say!(locale, board::answer)),
        ("catch", None, say!(locale, board::catch)),
    ];
    layout_with(
        page,
        Tab::Board,
        &say!(locale, board::title),
        &["client/board.js", "client/listen.js"],
        html! {
            noscript { p.caution { (say!(locale, board::no_script)) } }
            (news::in_a_line(page))
            div #board .pad-page .has-care[care] data-test="board" data-mode="showing" data-state=(state) data-now=(json) {
                p.caution.unopened data-part="unopened" data-test="unopened" { (say!(locale, board::not_open)) }
                p.stop data-part="broken" role="alert" hidden {}
                p.caution data-part="clock-off" data-test="clock-off" hidden {}
                p.unseen role="status" data-part="said" data-test="said" {}
                div.stage data-part="stage" {
                    (status(locale, page.leave.is_some()))
                    div.modes role="group" aria-label=(say!(locale, board::doing)) {
                        @for (mode, asked, name) in modes {
                            button type="button" data-mode=(mode) data-asked=[asked] data-test=(format!("mode-{mode}")) aria-pressed=(mode == "showing") { (name) }
                        }
                    }
                    div.caution.rests data-part="rests" data-test="rests" role="status" hidden {}
                    div.swaps data-part="swaps" data-test="swaps" role="status" hidden {}
                    (pads(page, &now, &mat))
                    div.dock data-part="dock" {
                        div.asked data-part="asked" {
                            (session_line())
                            section.panel data-part="panel" data-test="panel" aria-label=(say!(locale, board::now)) {}
                        }
                        (actions(locale, &now))
                    }
                }
                div.whose data-part="whose" data-test="whose" role="status" hidden {}
                div.stop.over data-part="stop" data-test="stop" role="alert" hidden {}
                div.below {
                    (at_board(page, now.words.iter().map(|w| w.stage)))
                    (recent(locale))
                    p.ration.num data-part="ration" data-test="ration" {}
                    (figures(locale))
                    details.fold { summary data-test="fold-microphone" { (say!(locale, board::microphone)) } (switch(page)) }
                    (keys(locale))
                    @if page.may(Capability::SeeFigures) { p.quiet { (rich!(locale, board::swaps_for, link = html! { a href=(crate::pages::swaps::address(page)) { (say!(locale, board::swaps)) } })) } }
                    @else { (scored::under_way(page)) }
                    (cautions(locale, &now))
                }
            }
        },
    )
}

fn status(locale: &Locale, on_server: bool) -> Markup {
    html! {
        div.status data-part="outbox" data-test="outbox" data-kept="" data-sent="" data-refused="" {
            button.plain type="button" data-part="outbox-text" data-test="outbox-text" title=(say!(locale, board::send_now)) { (say!(locale, board::opening)) }
            a.plain.ear href="#listen" data-ear-chip data-test="listen-chip" hidden { (say!(locale, board::listening)) }
            button.undo type="button" data-part="undo" data-test="undo-last" disabled { (say!(locale, board::undo)) }
            a.button data-part="pair" data-test="pair" href="/pair" hidden { @if on_server { (say!(locale, sign_in::title)) } @else { (say!(locale, board::pair)) } }
            button.warn type="button" data-part="attention" data-test="attention" hidden {}
        }
    }
}

/// How long the session runs, of how long it was planned, and what was shown.
fn session_line() -> Markup {
    html! {
        p.session-line.num data-part="session-line" data-test="session-line" hidden {
            span data-part="clock" data-test="clock" {} " " span.planned-time data-part="planned-time" data-test="planned-time" {}
            br; span data-part="showings" data-test="showings" {} span.unseen data-part="joined" data-test="joined" {}
        }
    }
}

/// How the session goes, for who asks.
fn figures(locale: &Locale) -> Markup {
    html! {
        dl.figures.num data-part="figures" data-test="figures" hidden {
            div { dt { (say!(locale, board::pace)) } dd data-part="pace" data-test="pace" {} }
            div { dt { (say!(locale, board::delay)) } dd { span data-part="delay" data-test="delay" {} " " span.quiet data-part="delay-n" data-test="delay-n" {} } }
        }
    }
}

/// The mat; on a phone that it does not fit, the zones come first, and planned words and the closing word stay above. So they do
/// in large letters, in which it goes on sideways.
fn pads(page: &AnimalPage, now: &Now, mat: &Mat) -> Markup {
    let locale = &page.locale;
    let of = |id: WordId| now.words.iter().find(|w| w.id == id);
    let planned = |id: WordId| now.plan.iter().any(|p| p.word == id);
    let zones = mat.zone_columns * mat.zone_rows;
    let zoned = mat.by_zones() || mat.by_zones_if_low();
    let written = page.story.board().and_then(|board| board.language).unwrap_or(locale.language);
    html! {
        div.board-place .many[mat.by_zones()] .low-many[mat.by_zones_if_low()] data-part="mat" data-zone-width=(mat.zone_width) data-columns=(mat.columns) {
            @if now.words.is_empty() {
                p data-test="no-words" { (rich!(locale, board::no_words, link = html! { a href=(Tab::Words.href(Some(page.id))) { (say!(locale, board::choose_words)) } })) }
            }
            @if zoned || mat.goes_on_in_large_letters() {
                div.pinned {
                    @if zoned { button.whole type="button" data-part="whole" data-test="whole" hidden { (say!(locale, board::whole)) } }
                    @for w in now.words.iter().filter(|w| planned(w.id) || w.closing) { (pad(w, "pinned", None, planned(w.id), written)) }
                }
                p.goes-on data-test="goes-on" { (say!(locale, board::goes_on)) }
            }
            @if zoned {
                div class=(format!("zones cols-{}", mat.zone_columns)) {
                    @for zone in 0..zones {
                        @let says: Vec<String> = mat.places.iter().filter(|p| p.zone == zone).filter_map(|p| of(p.word?)).map(|w| parted(&w.says, written)).collect();
                        @if says.is_empty() { span.blank {} }
                        @else { button type="button" data-zone=(zone) data-test=(format!("zone-{zone}")) { span { (says.join(", ")) } } }
                    }
                }
            }
            section class=(format!("pads cols-{}{}", mat.columns, longest(now.words.iter().map(|w| w.says.as_str())))) data-part="pads" data-test="pads" aria-label=(say!(locale, board::words)) {
                @for place in &mat.places {
                    @match place.word.and_then(of) {
                        Some(w) => (pad(w, "pad", Some(place.zone), planned(w.id), written)),
                        None => span.blank data-z=(place.zone) {},
                    }
                }
            }
        }
    }
}

fn pad(w: &WordNow, test: &str, zone: Option<usize>, planned: bool, written: Language) -> Markup {
    html! {
        button.pad .planned[planned] .unready[w.stage == Stage::Prepare] .closing[w.closing] type="button" data-word=(w.id)
            data-z=[zone] data-test=(format!("{test}-{}", w.says)) data-state="idle" {
            span class=(format!("face {}", length(&w.says))) {
                @if let Some(picture) = &w.picture { img.picture src=(picture) alt="" draggable="false"; }
                span.count.num {}
                span.says { (parted(&w.says, written)) }
                span.does {}
                span.gives {}
            }
        }
    }
}

/// Always in the same places; outside a session a sign alone can be noted. The closing word, where there is one, has the corner beside the end.
fn actions(locale: &Locale, now: &Now) -> Markup {
    let closing = now.words.iter().find(|w| w.closing);
    let all = [
        ("joined", say!(locale, board::joined)),
        ("looked", say!(locale, board::looked)),
        ("brushed", say!(locale, board::brushed)),
        ("pressed", say!(locale, board::pressed)),
        ("left", say!(locale, board::left)),
        ("sign", say!(locale, board::sign)),
    ];
    html! {
        section.actions .idle[now.open.is_none()] data-part="actions" data-test="actions" aria-label=(say!(locale, board::does, name = now.name.as_str())) {
            @for (action, name) in all {
                button type="button" data-action=(action) data-test=(format!("act-{action}")) { (name) }
            }
            @match closing {
                Some(w) => button.closing type="button" data-action="closing" data-test="act-closing" { (w.says) },
                None => span.blank {},
            }
            button type="button" data-action="end" data-test="act-end" { (say!(locale, board::end)) }
        }
    }
}

fn recent(locale: &Locale) -> Markup {
    html! {
        section.recent data-part="recent" data-test="recent" aria-label=(say!(locale, board::last_taps)) hidden {
            h2 { (say!(locale, board::last_taps)) }
            ol {}
        }
    }
}

fn keys(locale: &Locale) -> Markup {
    let all = [
        (say!(locale, board::keys_numbers), say!(locale, board::keys_words)),
        ("J".to_owned(), say!(locale, board::joined)),
        ("L".to_owned(), say!(locale, board::left)),
        ("S".to_owned(), say!(locale, board::sign)),
        ("U".to_owned(), say!(locale, board::keys_undo)),
    ];
    html! {
        details.fold.keys {
            summary { (say!(locale, board::keys)) }
            dl.facts {
                @for (key, what) in all {
                    dt { kbd { (key) } } dd { (what) }
                }
            }
        }
    }
}

/// What a button on the board brings.
fn on_buttons(now: &Now) -> impl Iterator<Item = &RewardNow> {
    now.rewards.iter().filter(|r| now.words.iter().any(|w| w.reward == Some(r.id)))
}

/// Short, plain, where the person acts, once for each thing; the whole stands on its card.
fn cautions(locale: &Locale, now: &Now) -> Markup {
    let foods: Vec<_> = on_buttons(now).filter(|r| r.never.is_some() || !r.cautions.is_empty()).collect();
    html! {
        @for r in &foods {
            @if let Some(never) = &r.never {
                p.stop { (rich!(locale, board::never, food = html! { strong { (r.name) } }, why = never)) }
            } @else {
                p.caution data-test="care-of" { (r.care.as_deref().unwrap_or_default()) }
            }
        }
        details.before {
            summary { (say!(locale, board::safe)) }
            ul {
                @for h in facts::other_hazards() {
                    li { (other(locale, h)) }
                }
            }
            p.quiet { (say!(locale, hazards::note)) }
        }
    }
}
