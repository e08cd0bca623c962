//! The way from an empty notebook to the first session: which step comes next, and how far it has been gone.

use crate::layout::Tab;
use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::ration::ration;
use sayso_model::{AnimalCard, LikeTrial};
use sayso_wording::say;

/// Things an animal may want from which a choice of words is worth its name.
const WANTS: usize = 4;

/// A step, in the order of the way.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum StepName {
    /// How much food it may have.
    Food,
    /// What it might like.
    Wants,
    /// A likes test.
    Likes,
    /// First words.
    Words,
    /// Their recordings.
    Record,
    /// Where the buttons are.
    Places,
    /// Who else shows and answers.
    People,
}

impl StepName {
    const fn key(self) -> &'static str {
        match self {
            Self::Food => "food",
            Self::Wants => "wants",
            Self::Likes => "likes",
            Self::Words => "words",
            Self::Record => "record",
            Self::Places => "places",
            Self::People => "people",
        }
    }
}

/// A step of one animal.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Step {
    /// Which.
    pub name: StepName,
    /// Whether it is done.
    pub done: bool,
    /// Whether the first session waits for it; the others can come any time.
    pub needed: bool,
    /// What to do, in the reader's words.
    pub what: String,
    /// Why, in the reader's words.
    pub why: String,
    /// Its page.
    pub to: String,
}

/// Every step of an animal, in order.
#[must_use]
pub fn list(page: &Page, animal: &AnimalCard) -> Vec<Step> {
    let (story, id, l) = (&page.story, animal.animal, &page.locale);
    let words = story.words_of(id);
    let placed = story.board().is_some_and(|b| words.iter().any(|w| b.words.iter().any(|p| p.word == w.word)));
    let step = |name: StepName, done, needed, to: String| {
        let (what, why) =
            (say!(l, setup::what, step = name.key(), name = &animal.name), say!(l, setup::why, step = name.key()));
        Step { name, done, needed, what, why, to }
    };
    let fed = ration(story, animal, page.now).refusal.is_none();
    let wants = story.rewards_of(id).len() >= WANTS;
    let tested = story.of::<LikeTrial>(id).next().is_some();
    let clips = story.clips();
    let has_clip = |word| clips.values().any(|c| c.active && c.word == word);
    let recorded = !words.is_empty() && words.iter().all(|w| has_clip(w.word));
    vec![
        step(StepName::Food, fed, true, super::food_of(id)),
        step(StepName::Wants, wants, true, format!("/a/{id}/ideas")),
        step(StepName::Likes, tested, false, Tab::Likes.href(Some(id))),
        step(StepName::Words, !words.is_empty(), true, Tab::Words.href(Some(id))),
        step(StepName::Record, recorded, false, format!("/a/{id}/words/record")),
        step(StepName::Places, placed, true, format!("/a/{id}/words/board")),
        step(StepName::People, page.people().len() > 1, false, "/people/person/new".to_owned()),
    ]
}

/// The next step the first session waits for, of those after one just done or skipped; none once the way is gone.
#[must_use]
pub fn next(page: &Page, animal: &AnimalCard, after: Option<StepName>) -> Option<Step> {
    list(page, animal).into_iter().find(|s| s.needed && !s.done && after.is_none_or(|a| s.name > a))
}

/// The recording of the words, where it was left for later; none while the way before it is not gone, or once it is done.
#[must_use]
pub fn left_for_later(page: &Page, animal: &AnimalCard) -> Option<Step> {
    let open = next(page, animal, None).is_none();
    list(page, animal).into_iter().find(|s| open && s.name == StepName::Record && !s.done)
}

/// Where to go after a step: to the next one, at the end to the board.
#[must_use]
pub fn onward(page: &Page, animal: &AnimalCard, after: StepName) -> String {
    next(page, animal, Some(after)).map_or_else(|| Tab::Board.href(Some(animal.animal)), |s| s.to)
}

/// Whether an animal is still on the way to its first session: it has no words on the board yet.
#[must_use]
pub fn on_the_way(page: &Page, animal: &AnimalCard) -> bool {
    list(page, animal).iter().any(|s| s.name >= StepName::Words && s.needed && !s.done)
}

/// How far along a step is, on the page of the step; nothing once the way is gone.
#[must_use]
pub fn along(page: &Page, animal: &AnimalCard, at: StepName) -> Markup {
    let needed: Vec<Step> = list(page, animal).into_iter().filter(|s| s.needed).collect();
    let number = needed.iter().take_while(|s| s.name < at).count() + 1;
    html! { @if on_the_way(page, animal) { p.quiet { (say!(&page.locale, setup::along, number = number, of = needed.len())) } } }
}

/// What is still to be set up for an animal; nothing once all is.
#[must_use]
pub fn steps(page: &Page, animal: &AnimalCard) -> Markup {
    let all = list(page, animal);
    let l = &page.locale;
    // Those the first session waits for, as each step's own page counts them; the others can come any time.
    let needed = || all.iter().filter(|s| s.needed);
    let done = needed().filter(|s| s.done).count();
    let Some(next) = needed().find(|s| !s.done) else { return html! {} };
    let title = say!(l, setup::title, name = &animal.name);
    html! {
        section.card aria-label=(title) {
            h2 { (title) " " span.quiet { (say!(l, setup::done_of, done = done, of = needed().count())) } }
            p { a.button.primary.wide href=(next.to) { (say!(l, setup::next)) } }
            ol.steps {
                @for s in &all {
                    li.done[s.done] {
                        a.link href=(s.to) { (s.what) } @if s.done { " " span.quiet { (say!(l, setup::is_done)) } }
                        @if !s.done { span.hint { (s.why) } }
                    }
                }
            }
        }
    }
}
