use super::now::{Now, now};
use crate::layout::{Tab, layout_with};
use crate::page::AnimalPage;
use crate::pages::listen::switch;
use maud::{Markup, html};
use sayso_model::facts;

pub fn view(page: &AnimalPage) -> Markup {
    let now = now(page);
    let json = serde_json::to_string(&now).unwrap_or_default();
    layout_with(
        page,
        Tab::Board,
        "Board",
        &["client/board.js", "client/listen.js"],
        html! {
            noscript { p.caution { "The board notes taps with JavaScript, which is switched off in this browser." } }
            div #board .pad-page data-test="board" data-now=(json) {
                (status())
                p.stop data-part="broken" role="alert" hidden {}
                p.caution data-part="clock-off" data-test="clock-off" hidden {}
                div.stop data-part="stop" data-test="stop" role="alert" hidden {}
                div.swaps data-part="swaps" data-test="swaps" role="status" hidden {}
                div.modes role="group" aria-label="What are you doing?" {
                    @for (mode, name) in [("showing", "Show"), ("invitation", "Invite"), ("day", "Answer"), ("catch", "Catch")] {
                        button type="button" data-mode=(mode) data-test=(format!("mode-{mode}")) aria-pressed="false" { (name) }
                    }
                }
                (figures())
                p.ration.num data-part="ration" data-test="ration" {}
                (pads(&now))
                div.dock {
                    section.panel.card data-part="panel" data-test="panel" aria-live="polite" aria-label="Now" {}
                    (actions())
                }
                (recent())
                (switch(page))
                p.quiet { a href=(crate::pages::swaps::address(page)) { "Agreed swaps" } ": telling meaning from habit" }
                (cautions(&now))
            }
        },
    )
}

fn status() -> Markup {
    html! {
        div.status data-part="outbox" data-test="outbox" data-kept="" data-sent="" data-refused="" {
            button.plain type="button" data-part="outbox-text" data-test="outbox-text" title="Send now" { "Opening…" }
            span.quiet.num data-part="outbox-counts" data-test="outbox-counts" {}
            a.plain.ear href="#listen" data-ear-chip data-test="listen-chip" hidden { "Listening" }
            a.button data-part="pair" data-test="pair" href="/pair" hidden { "Pair this device" }
            button.warn type="button" data-part="attention" data-test="attention" hidden {}
        }
    }
}

fn figures() -> Markup {
    html! {
        dl.figures.num data-part="figures" data-test="figures" hidden {
            div { dt { "Time" } dd { span data-part="clock" data-test="clock" {} span.quiet data-part="joined" data-test="joined" {} } }
            div { dt { "Showings" } dd data-part="showings" data-test="showings" {} }
            div { dt { "A minute" } dd data-part="pace" data-test="pace" {} }
            div { dt { "Delay" } dd { span data-part="delay" data-test="delay" {} span.quiet data-part="delay-n" data-test="delay-n" {} } }
        }
    }
}

fn pads(now: &Now) -> Markup {
    html! {
        section.pads data-part="pads" data-test="pads" aria-label="Words" hidden {
            @for w in &now.words {
                button.pad type="button" data-word=(w.id) data-test=(format!("pad-{}", w.says)) data-state="idle" {
                    span.does {}
                    span.says { (w.says) }
                    span.count.num {}
                    span.gives {}
                }
            }
        }
    }
}

fn actions() -> Markup {
    let all = [
        ("joined", "Joined"),
        ("looked", "Looked…"),
        ("pressed", "Pressed…"),
        ("brushed", "Brushed…"),
        ("sign", "Sign…"),
        ("left", "Left"),
        ("end", "End…"),
    ];
    html! {
        section.actions data-part="actions" data-test="actions" aria-label="What the animal does" hidden {
            @for (action, name) in all {
                button type="button" data-action=(action) data-test=(format!("act-{action}")) { (name) }
            }
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
