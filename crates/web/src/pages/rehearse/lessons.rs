//! Which lessons belong to which exercise.

use crate::page::Page;
use maud::{Markup, html};
use sayso_model::facts::lesson;
use sayso_sim::rehearsal::Exercise;
use sayso_wording::lessons::title;
use sayso_wording::say;

/// The lessons of an exercise, in the order in which they are read.
const fn of(exercise: Exercise) -> &'static [&'static str] {
    match exercise {
        Exercise::Likes => &["wants"],
        Exercise::Showing => &["showing", "brushed"],
        Exercise::Leaving => &["coming-going", "body"],
        Exercise::Inviting => &["ready", "inviting"],
        Exercise::Evening => &["not-now", "own-way"],
        Exercise::Free => &["showing", "body"],
    }
}

/// The exercise in which a lesson is practised.
pub fn for_lesson(id: &str) -> Option<Exercise> {
    Exercise::ALL.into_iter().find(|exercise| of(*exercise).contains(&id))
}

/// Links to the lessons of an exercise.
pub fn links(page: &Page, exercise: Exercise) -> Markup {
    let l = &page.locale;
    html! {
        section data-test="lessons-for" {
            p.hint { (say!(l, rehearse::lessons)) }
            ul.links {
                @for lesson in of(exercise).iter().filter_map(|id| lesson(id)) {
                    li { a href=(page.of_home(&format!("/learn/{}", lesson.id))) { (title(l, lesson, None)) } }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_exercise_has_lessons_that_there_are() {
        for exercise in Exercise::ALL {
            assert!(!of(exercise).is_empty() && of(exercise).iter().all(|id| lesson(id).is_some()), "{exercise:?}");
        }
    }
}
