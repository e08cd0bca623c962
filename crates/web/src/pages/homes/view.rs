use crate::home_label::labels;
use crate::layout::bare;
use crate::page::Page;
use maud::{Markup, html};
use sayso_model::{HomeId, Story};
use sayso_wording::say;
use std::sync::Arc;

pub fn view(page: &Page, all: &[(HomeId, Arc<Story>)]) -> Markup {
    let l = &page.locale;
    let names = labels(l, all);
    bare(
        l,
        &say!(l, homes::title),
        html! {
            p { (say!(l, homes::intro, count = all.len())) }
            form method="post" action="/homes" .stack {
                @for (id, story) in all {
                    button.wide name="home" value=(id) aria-pressed=(*id == page.home) data-test="home" {
                        (names.get(id).map_or("", String::as_str))
                        span.quiet {
                            @let animals: Vec<&str> = story.animals().into_values().filter(|l| l.active).map(|l| l.name.as_str()).collect();
                            @let animals = if animals.is_empty() { say!(l, homes::no_animal) } else { l.and(&animals) };
                            " " (say!(l, homes::holds, animals = animals, count = story.ledger().len()))
                        }
                    }
                }
            }
        },
    )
}
