//! The lessons as a booklet without drawings: what speaks for or against the answers stands at its end.

use super::{animals, sheet};
use crate::sheet::{Block, Look, Paragraph, Sheet};
use sayso_model::facts::lessons as all_lessons;
use sayso_model::{Moment, Story};
use sayso_wording::lessons::{Told, told};
use sayso_wording::{Locale, say};

/// Every lesson, about the animal of the home where one lives there alone.
#[must_use]
pub fn lessons(story: &Story, now: Moment, locale: Locale) -> Sheet {
    let l = &locale;
    let only = if let [one] = animals(story).as_slice() { Some(one.name.as_str()) } else { None };
    let all: Vec<Told> = all_lessons().iter().map(|lesson| told(l, lesson, only)).collect();
    let mut blocks = vec![Paragraph::block("", say!(l, lessons::intro), Look::Plain)];
    for told in &all {
        lesson(l, told, &mut blocks);
    }
    blocks.push(Block::Heading(say!(l, lessons::answers)));
    for told in &all {
        for (i, asked) in told.questions.iter().enumerate() {
            let lead = if i == 0 { told.title.as_str() } else { "" };
            blocks.push(Paragraph::block(lead, say!(l, lessons::question, number = i + 1), Look::Plain));
            let whys = asked.answers.iter().map(|answer| format!("{} \u{2013} {}", answer.says, answer.why));
            blocks.push(Block::List { items: whys.collect(), big: false });
        }
    }
    sheet(story, now, locale, say!(l, lessons::booklet), blocks)
}

fn lesson(l: &Locale, told: &Told, blocks: &mut Vec<Block>) {
    blocks.push(Block::Heading(told.title.clone()));
    blocks.push(Paragraph::block("", told.short.as_str(), Look::Plain));
    blocks.push(Block::List { items: told.steps.clone(), big: false });
    if !told.signs.is_empty() {
        blocks.push(Paragraph::block(say!(l, lessons::signs), "", Look::Plain));
        blocks.push(Block::List { items: told.signs.clone(), big: false });
    }
    blocks.push(Paragraph::block(say!(l, lessons::take_care), told.care.as_str(), Look::Boxed));
    blocks.push(Paragraph::block(say!(l, lessons::mistake), told.mistake.as_str(), Look::Plain));
    if let Some(unknown) = &told.unknown {
        blocks.push(Paragraph::block(say!(l, lessons::not_known), unknown.as_str(), Look::Plain));
    }
    for (i, asked) in told.questions.iter().enumerate() {
        let number = say!(l, lessons::question, number = i + 1);
        blocks.push(Paragraph::block(number, asked.question.as_str(), Look::Plain));
        let answers = asked.answers.iter().map(|answer| answer.says.clone());
        blocks.push(Block::List { items: answers.collect(), big: false });
    }
    blocks.push(Paragraph::block(say!(l, lessons::rests_on), "", Look::Quiet));
    blocks.extend(told.rests_on.iter().map(|fact| Paragraph::block("", fact.as_str(), Look::Quiet)));
    blocks.push(Paragraph::block("", say!(l, lessons::rest), Look::Quiet));
}
