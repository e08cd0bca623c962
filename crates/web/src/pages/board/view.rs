use super::mat::Mat;
use super::now::{Now, WordNow, now};
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::listen::switch;
use maud::{Markup, html};
use sayso_model::{Stage, WordId, facts};

pub fn view(page: &AnimalPage) -> Markup {
    let now = now(page);
    let json = serde_json::to_string(&now).unwrap_or_default();
    let words: Vec<WordId> = now.words.iter().map(|w| w.id).collect();
    let mat = Mat::new(page.story.board(), &words);
    let state = if now.open.is_some() { "session" } else { "idle" };
    let care = now.rewards.iter().any(|r| r.never.is_none() && !r.cautions.is_empty());
    layout_with(
        page,
        Tab::Board,
        "Board",
        &["client/board.js", "client/listen.js"],
        html! {
            noscript { p.caution { "The board notes taps with JavaScript, which is switched off in this browser." } }
            div #board .pad-page .has-care[care] data-test="board" data-mode="showing" data-state=(state) data-now=(json) {
                p.stop data-part="broken" role="alert" hidden {}
                p.caution data-part="clock-off" data-test="clock-off" hidden {}
                p.unseen role="status" data-part="said" data-test="said" {}
                div.stage data-part="stage" {
                    (status())
                    div.modes role="group" aria-label="What are you doing?" {
                        @for (mode, name) in [("showing", "Show"), ("invitation", "Invite"), ("day", "Answer"), ("catch", "Catch")] {
                            button type="button" data-mode=(mode) data-test=(format!("mode-{mode}")) aria-pressed=(mode == "showing") { (name) }
                        }
                    }
                    div.swaps data-part="swaps" data-test="swaps" role="status" hidden {}
                    (pads(&now, &mat))
                    div.dock data-part="dock" {
                        button.undo type="button" data-part="undo" data-test="undo-last" disabled { "Undo" }
                        section.panel data-part="panel" data-test="panel" aria-label="Now" {}
                        (actions(&now))
                    }
                }
                div.stop.over data-part="stop" data-test="stop" role="alert" hidden {}
                div.below {
                    (recent())
                    p.ration.num data-part="ration" data-test="ration" {}
                    (figures())
                    details.fold { summary data-test="fold-microphone" { "Microphone" } (switch(page)) }
                    (keys())
                    p.quiet { a href=(crate::pages::swaps::address(page)) { "Agreed swaps" } ": telling meaning from habit" }
                    (cautions(&now))
                }
            }
        },
    )
}

fn status() -> Markup {
    html! {
        div.status data-part="outbox" data-test="outbox" data-kept="" data-sent="" data-refused="" {
            button.plain type="button" data-part="outbox-text" data-test="outbox-text" title="Send now" { "Opening…" }
            a.plain.ear href="#listen" data-ear-chip data-test="listen-chip" hidden { "Listening" }
            span.num data-part="session-line" hidden {
                span data-part="clock" data-test="clock" {} " · " span data-part="joined" data-test="joined" {} " · " span data-part="showings" data-test="showings" {}
            }
            a.button data-part="pair" data-test="pair" href="/pair" hidden { "Pair this device" }
            button.warn type="button" data-part="attention" data-test="attention" hidden {}
        }
    }
}

/// How the session goes, for who asks.
fn figures() -> Markup {
    html! {
        dl.figures.num data-part="figures" data-test="figures" hidden {
            div { dt { "Showings a minute" } dd data-part="pace" data-test="pace" {} }
            div { dt { "From press to given" } dd { span data-part="delay" data-test="delay" {} " " span.quiet data-part="delay-n" data-test="delay-n" {} } }
        }
    }
}

/// The mat; on a phone that it does not fit, the zones come first, and planned words and the closing word stay above.
fn pads(now: &Now, mat: &Mat) -> Markup {
    let of = |id: WordId| now.words.iter().find(|w| w.id == id);
    let planned = |id: WordId| now.plan.iter().any(|p| p.word == id);
    let zones = mat.zone_columns * mat.zone_rows;
    html! {
        div.board-place .many[mat.by_zones()] data-part="mat" data-zone-width=(mat.zone_width) data-columns=(mat.columns) {
            @if mat.by_zones() {
                div.pinned {
                    button.whole type="button" data-part="whole" data-test="whole" hidden { "Whole board" }
                    @for w in now.words.iter().filter(|w| planned(w.id) || w.closing) { (pad(w, "pinned", None, planned(w.id))) }
                }
                div class=(format!("zones cols-{}", mat.zone_columns)) {
                    @for zone in 0..zones {
                        @let says: Vec<&str> = mat.places.iter().filter(|p| p.zone == zone).filter_map(|p| of(p.word?)).map(|w| w.says.as_str()).collect();
                        @if says.is_empty() { span.blank {} }
                        @else { button type="button" data-zone=(zone) data-test=(format!("zone-{zone}")) { (says.join(", ")) } }
                    }
                }
            }
            section class=(format!("pads cols-{}", mat.columns)) data-part="pads" data-test="pads" aria-label="Words, as they lie" {
                @for place in &mat.places {
                    @match place.word.and_then(of) {
                        Some(w) => (pad(w, "pad", Some(place.zone), planned(w.id))),
                        None => span.blank data-z=(place.zone) {},
                    }
                }
            }
        }
    }
}

fn pad(w: &WordNow, test: &str, zone: Option<usize>, planned: bool) -> Markup {
    html! {
        button.pad .planned[planned] .unready[w.stage == Stage::Prepare] .closing[w.closing] type="button" data-word=(w.id)
            data-z=[zone] data-test=(format!("{test}-{}", w.says)) data-state="idle" {
            span.count.num {}
            span.says { (w.says) }
            span.does {}
            span.gives {}
        }
    }
}

/// Always in the same places. The closing word, where there is one, has the corner beside the end.
fn actions(now: &Now) -> Markup {
    let closing = now.words.iter().find(|w| w.closing);
    let all = [
        ("joined", "Joined"),
        ("looked", "Looked…"),
        ("brushed", "Brushed…"),
        ("pressed", "Pressed…"),
        ("left", "Went away"),
        ("sign", "Sign…"),
    ];
    html! {
        section.actions data-part="actions" data-test="actions" aria-label="What the animal does" hidden[now.open.is_none()] {
            @for (action, name) in all {
                button type="button" data-action=(action) data-test=(format!("act-{action}")) { (name) }
            }
            @match closing {
                Some(w) => button.closing type="button" data-action="closing" data-test="act-closing" { (w.says) },
                None => span.blank {},
            }
            button type="button" data-action="end" data-test="act-end" { "End…" }
        }
    }
}

fn recent() -> Markup {
    html! {
        section.recent data-part="recent" data-test="recent" aria-label="Last taps" hidden {
            h2 { "Last taps" }
            ol {}
        }
    }
}

fn keys() -> Markup {
    html! {
        details.fold.keys {
            summary { "Keys at a desk" }
            dl.facts {
                @for (key, what) in [("1 to 9", "the words, in the order of reading"), ("J", "Joined"), ("L", "Went away"), ("S", "Sign…"), ("U", "Undo the last tap")] {
                    dt { kbd { (key) } } dd { (what) }
                }
            }
        }
    }
}

/// Short, plain, where the person acts; the food's own cautions stand at its pad and where it is given.
fn cautions(now: &Now) -> Markup {
    let foods: Vec<_> = now.rewards.iter().filter(|r| r.never.is_some() || !r.cautions.is_empty()).collect();
    html! {
        @for r in &foods {
            @if let Some(never) = &r.never {
                p.stop { strong { (r.name) ": never give it. " } (never) ". Eaten already? Call a veterinarian now." }
            } @else {
                div.caution { strong { (r.name) ": care. " } @for c in &r.cautions { (c) ". " } }
            }
        }
        details.before {
            summary { "Safe at the board" }
            ul {
                @for h in facts::other_hazards() {
                    li { strong { (h.hazard) } ": " (h.act) "." }
                }
            }
            p.quiet { (facts::hazards_note()) }
        }
    }
}
