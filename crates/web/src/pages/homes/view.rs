use crate::home_label::labels;
use crate::layout::bare;
use crate::page::Page;
use maud::{Markup, html};
use sayso_model::{HomeId, Story};
use std::sync::Arc;

pub fn view(page: &Page, all: &[(HomeId, Arc<Story>)]) -> Markup {
    let names = labels(all);
    bare(
        &page.locale,
        "Which household?",
        html! {
            p { "This notebook holds " (all.len()) @if all.len() == 1 { " household." } @else { " households. Each has its own animals, words and figures; nothing is counted across them." } }
            form method="post" action="/homes" .stack {
                @for (id, story) in all {
                    button.wide name="home" value=(id) aria-pressed=(*id == page.home) data-test="home" {
                        (names.get(id).map_or("", String::as_str))
                        span.quiet {
                            @let animals: Vec<&str> = story.animals().into_values().filter(|l| l.active).map(|l| l.name.as_str()).collect();
                            " " (if animals.is_empty() { "no animal yet".to_owned() } else { animals.join(", ") })
                            "; " (story.ledger().len()) " events"
                        }
                    }
                }
            }
        },
    )
}
