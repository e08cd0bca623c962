//! A change to try, as a coach proposes it: its fields, what they begin with, and what was typed into them.

use crate::fields::{line, radios, select, ticks};
use crate::page::Page;
use crate::pages::designs::beside;
use crate::typed::Typed;
use maud::{Markup, html};
use sayso_advisor::designs::Try;
use sayso_model::{AnimalCard, CaseExpected, CaseMeasure, CaseQuestion, DesignId, Proposed, WordId};
use sayso_wording::designs::{measure, small};
use sayso_wording::{say, words};
use uuid::Uuid;

/// Names of its fields.
pub const FIELDS: [&str; 5] = ["question", "label", "words", "measure", "expected"];

/// The fields. Each change says what a trial of it would be.
pub fn fields(page: &Page, typed: &Typed, with: Option<&AnimalCard>) -> Markup {
    let l = &page.locale;
    let option = |name: &str, text: &str, hint: &str| {
        (name.to_owned(), html! { (text) @if !hint.is_empty() { span.hint { (hint) } } })
    };
    let questions: Vec<_> = CaseQuestion::ALL
        .iter()
        .map(|q| option(q.name(), &say!(l, designs::change, question = q.name()), &small(l, *q)))
        .collect();
    let own = with.map(|a| page.story.words_of(a.animal)).unwrap_or_default();
    let own: Vec<_> = own.iter().map(|w| option(&w.word.to_string(), w.says.as_str(), "")).collect();
    let measures: Vec<_> = CaseMeasure::ALL.iter().map(|m| (m.name().to_owned(), measure(l, *m))).collect();
    let expected: Vec<_> = CaseExpected::ALL
        .iter()
        .map(|e| option(e.name(), &say!(l, designs::expect, expected = e.name()), ""))
        .collect();
    let like = Try {
        question: CaseQuestion::Other,
        label: None,
        words: Vec::new(),
        measure: CaseMeasure::OwnPresses,
        expected: CaseExpected::More,
    };
    let like = like.plan(DesignId(Uuid::nil()), None, beside::soonest(page), 0);
    html! {
        @if let Some(animal) = with {
            (beside::going(page, animal.animal, &like))
            (beside::of_plans(page, animal.animal))
        }
        (radios(typed, "question", &say!(l, designs::field_question), &say!(l, designs::field_question_hint), &questions))
        (line(typed, "label", &say!(l, talk::field_change), &say!(l, talk::field_change_hint), false))
        @if !own.is_empty() { (ticks(typed, "words", &say!(l, designs::field_words), &say!(l, talk::field_change_words_hint), &own)) }
        details open[!typed.right()] {
            summary { (say!(l, talk::change_measured)) }
            (select(typed, "measure", &say!(l, designs::field_measure), "", &measures))
            (radios(typed, "expected", &say!(l, designs::field_expected), &say!(l, designs::field_expected_hint), &expected))
        }
        p.quiet { (say!(l, talk::change_how)) }
    }
}

/// What stands in the fields where nothing else does.
pub fn usual(typed: Typed) -> Typed {
    typed.with("measure", CaseMeasure::OwnPresses.name()).with("expected", CaseExpected::More.name())
}

/// The same as was proposed before.
pub fn taken_up(typed: Typed, tries: &Try) -> Typed {
    let typed = typed.with("question", tries.question.name()).with_some("label", tries.label.as_ref());
    let typed = typed.with("measure", tries.measure.name()).with("expected", tries.expected.name());
    tries.words.iter().fold(typed, |typed, word| typed.with("words", word))
}

/// What was typed.
pub fn read(page: &Page, animal: &AnimalCard, typed: &mut Typed) -> Option<Proposed> {
    let question = typed.one_needed("question", CaseQuestion::ALL, CaseQuestion::name);
    let measure = typed.one_needed("measure", CaseMeasure::ALL, CaseMeasure::name);
    let expected = typed.one_needed("expected", CaseExpected::ALL, CaseExpected::name);
    let question = question?;
    let (may, must) = question.label();
    let label = typed.label_or_none("label");
    if label.is_none() && must && typed.problem("label").is_none() {
        typed.wrong("label", words!(faults::missing));
    }
    if label.is_some() && !may {
        typed.wrong("label", words!(faults::label_of_other));
    }
    let own = page.story.words_of(animal.animal);
    let words = typed.ids("words", |word: &WordId| own.iter().any(|w| w.word == *word));
    Some(Proposed::Change { question, label, words, measure: measure?, expected: expected? })
}
