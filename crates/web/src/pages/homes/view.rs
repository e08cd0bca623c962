use crate::layout::bare;
use crate::page::Page;
use crate::wording::home_name;
use maud::{Markup, html};
use sayso_model::{HomeId, Story};
use std::sync::Arc;

pub fn view(page: &Page, all: &[(HomeId, Arc<Story>)]) -> Markup {
    bare(
        "Which household?",
        html! {
            p { "This notebook holds " (all.len()) @if all.len() == 1 { " household." } @else { " households. Each has its own animals, words and figures; nothing is counted across them." } }
            form method="post" action="/homes" .stack {
                @for (id, story) in all {
                    button.wide name="home" value=(id) aria-pressed=(*id == page.home) data-test="home" {
                        (home_name(story))
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
