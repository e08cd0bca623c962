//! The way from an empty notebook to the first session, and how far it has been gone.

use crate::layout::Tab;
use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::ration::ration;
use sayso_model::{AnimalCard, LikeTrial};

struct Step {
    done: bool,
    what: String,
    why: &'static str,
    to: String,
}

fn list(page: &Page, animal: &AnimalCard) -> Vec<Step> {
    let (story, id) = (&page.story, animal.animal);
    let step = |done, what: String, why, to: String| Step { done, what, why, to };
    let words = story.words_of(id);
    vec![
        step(
            ration(story, animal, page.now).refusal.is_none(),
            format!("Settle {}\u{2019}s food for a day", animal.name),
            "so that rewards stay within it",
            format!("/people/animal/{id}"),
        ),
        step(
            page.people().len() > 1,
            "Add everyone who lives there".to_owned(),
            "everyone shows, and everyone answers alike; skip this if you live alone",
            "/people/person/new".to_owned(),
        ),
        step(
            story.rewards_of(id).len() >= 4,
            format!("List what {} may want", animal.name),
            "four or more, of several kinds",
            "/people/reward/new".to_owned(),
        ),
        step(
            story.of::<LikeTrial>(id).next().is_some(),
            "Hold a likes test".to_owned(),
            "the first words should be things it wants most",
            Tab::Likes.href(Some(id)),
        ),
        step(
            !words.is_empty(),
            "Choose two or three first words".to_owned(),
            "proposed with reasons",
            Tab::Words.href(Some(id)),
        ),
        step(
            story.board().is_some_and(|b| words.iter().any(|w| b.words.iter().any(|p| p.word == w.word))),
            "Say where the buttons are".to_owned(),
            "so that presses can be read by place",
            format!("/l/{id}/words/board"),
        ),
    ]
}

/// What is still to be set up for an animal; nothing once all is.
#[must_use]
pub fn steps(page: &Page, animal: &AnimalCard) -> Markup {
    let all = list(page, animal);
    let done = all.iter().filter(|s| s.done).count();
    html! {
        @if done < all.len() {
            section.card aria-label={ "Setting up for " (animal.name.as_str()) } {
                h2 { "Setting up for " (animal.name.as_str()) " " span.quiet { (done) " of " (all.len()) " done" } }
                ol.steps {
                    @for s in &all {
                        li.done[s.done] {
                            a.link href=(s.to) { (s.what) } @if s.done { span.quiet { " \u{2013} done" } }
                            @if !s.done { span.hint { (s.why) } }
                        }
                    }
                }
            }
        }
    }
}
