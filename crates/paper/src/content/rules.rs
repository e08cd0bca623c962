//! The sheet for the fridge: word by word, and the rules of the house.

use super::{animals, sheet, words};
use crate::sheet::{Block, Cell, Look, Paragraph, Row, Sheet, Table};
use sayso_advisor::ration::cautions;
use sayso_model::{AnimalId, HouseRule, Moment, RewardId, Story, WordCard, WordId};
use sayso_wording::hazards::briefly;
use sayso_wording::on_card;
use sayso_wording::{Locale, say};
use std::collections::BTreeSet;

/// The rules of the house.
#[must_use]
pub fn rules(story: &Story, now: Moment, locale: Locale) -> Sheet {
    let l = &locale;
    let words = words(story);
    let rules: Vec<&HouseRule> = story.rules().into_values().filter(|r| r.active).collect();
    let of = |word: Option<WordId>| rules.iter().filter(move |r| r.word == word).map(|r| r.text.to_string());
    let mut blocks = Vec::new();
    let general: Vec<String> = of(None).collect();
    if !general.is_empty() {
        blocks.push(Block::List { items: general, big: true });
    }
    if words.is_empty() {
        blocks.push(Paragraph::block("", say!(l, sheets::none_on_board), Look::Plain));
    } else {
        let head = vec![
            say!(l, sheets::button),
            say!(l, sheets::means),
            say!(l, sheets::answers),
            say!(l, sheets::not_now_said),
        ];
        let mut told = BTreeSet::new();
        let rows = words.iter().map(|w| {
            let more = cares(story, l, w, &mut told).into_iter().chain(of(Some(w.word)));
            Row { word: Some(w.word), cells: row(story, l, w, more.collect()) }
        });
        blocks.push(Block::Table(Table { caption: String::new(), head, rows: rows.collect(), whole: false }));
    }
    let always = [say!(l, sheets::every_press), say!(l, sheets::come_and_go), say!(l, sheets::batteries)];
    blocks.push(Block::List { items: always.to_vec(), big: false });
    for animal in animals(story) {
        if let Some(text) = &animal.cautions {
            blocks.push(Paragraph::block(say!(l, sheets::of_animal, name = &animal.name), text.as_str(), Look::Plain));
        }
    }
    sheet(story, now, locale, say!(l, sheets::rules), blocks)
}

/// What to bear in mind of the thing that a word brings, short, for each animal that is taught it; once on the sheet.
fn cares(story: &Story, l: &Locale, word: &WordCard, told: &mut BTreeSet<(RewardId, AnimalId)>) -> Vec<String> {
    let rewards = story.rewards();
    let Some(reward) = word.reward.and_then(|r| rewards.get(&r)) else { return Vec::new() };
    let all = animals(story);
    let taught = all.iter().filter(|a| word.is_for(a.animal) && reward.is_for(a.animal));
    taught
        .filter(|a| told.insert((reward.reward, a.animal)))
        .filter_map(|a| {
            let found = cautions(a.species, reward);
            let thing = if all.len() > 1 { format!("{} ({})", reward.name, a.name) } else { reward.name.to_string() };
            (!found.is_empty()).then(|| format!("{}.", briefly(l, &thing, &found)))
        })
        .collect()
}

fn row(story: &Story, l: &Locale, word: &WordCard, own_rules: Vec<String>) -> Vec<Cell> {
    let written = |text: Option<String>| Cell::from(text.unwrap_or_default());
    let on_card = on_card::read(l, story, word);
    let mut hints = Vec::new();
    let all = animals(story);
    if all.len() > 1 {
        let names: Vec<&str> = all.iter().filter(|a| word.is_for(a.animal)).map(|a| a.name.as_str()).collect();
        hints.push(if word.animals.is_empty() { say!(l, sheets::for_all) } else { l.and(&names) });
    }
    if word.closing {
        hints.push(say!(l, sheets::ends_session));
    }
    vec![
        Cell { hints, ..Cell::from(word.says.to_string()) },
        written(on_card.means),
        Cell { more: own_rules, ..written(on_card.answer) },
        written(on_card.not_now),
    ]
}
