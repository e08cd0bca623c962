//! Which lessons belong to which exercise.

use crate::page::Page;
use maud::{Markup, html};
use sayso_model::facts::lesson;
use sayso_rehearse::Change;
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
        Exercise::Stuck => &["stuck", "wants"],
        Exercise::Free => &["showing", "body"],
    }
}

/// The lesson about what is to be changed; none where nothing is.
const fn about(change: &Change) -> Option<&'static str> {
    Some(match change {
        Change::StepAway | Change::Pause => "body",
        Change::LetGo | Change::Stay | Change::DoNotPush { .. } | Change::Slower => "coming-going",
        Change::LetEat
        | Change::Give
        | Change::Sooner { .. }
        | Change::Oftener
        | Change::Longer { .. }
        | Change::Even { .. } => "showing",
        Change::WhenThere { invited: false } | Change::Wanted { .. } | Change::LetChoose | Change::MorePairs => "wants",
        Change::Wait | Change::AfterWait | Change::MoreInvitations | Change::WhenThere { invited: true } => "inviting",
        Change::Answer | Change::Instead { .. } | Change::GiveOftener { .. } | Change::UsedUp { .. } => "not-now",
        Change::Shorter { .. } => "closing",
        Change::Soften { .. } => "recording",
        Change::Try | Change::Vet => "stuck",
        Change::TooSoon | Change::CarryOn => return None,
    })
}

/// The link to the lesson about what is to be changed, else to those of the exercise.
pub fn next(page: &Page, change: &Change, exercise: Exercise) -> Markup {
    let l = &page.locale;
    let Some(of) = about(change).and_then(lesson) else { return links(page, exercise) };
    let to = page.of_home(&format!("/learn/{}", of.id));
    html! { p { a.link href=(to) data-test="lesson-next" { (say!(l, rehearse::the_lesson, title = title(l, of, None))) } } }
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

    #[test]
    fn what_is_to_be_changed_leads_to_the_lesson_about_it() {
        let thing = sayso_sim::rehearsal::Thing::Ball;
        for (change, id) in [
            (Change::StepAway, "body"),
            (Change::Wait, "inviting"),
            (Change::Sooner { delay_s: 4.0 }, "showing"),
            (Change::Answer, "not-now"),
            (Change::Instead { word: thing }, "not-now"),
            (Change::MorePairs, "wants"),
            (Change::Soften { word: thing, times: 5 }, "recording"),
            (Change::Try, "stuck"),
        ] {
            assert_eq!(about(&change).and_then(lesson).map(|lesson| lesson.id.as_str()), Some(id), "{change:?}");
        }
        assert_eq!(about(&Change::CarryOn), None);
    }
}
