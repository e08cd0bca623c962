//! Two people's records, picked: which of what both noted is compared.

use crate::error::Error;
use crate::form::checked;
use crate::page::Page;
use crate::typed::Typed;
use sayso_advisor::agreement::{Agreement, Both, Mark, Noted, ScoreScale, agreement, both, pairs, scores};
use sayso_model::{AnimalCard, AnimalId, PersonId};
use sayso_wording::say;

/// Names of all fields of the address.
pub const FIELDS: [&str; 5] = ["animal", "noted", "first", "second", "of"];

/// Two people who noted the same.
pub struct Pair {
    pub animal: AnimalCard,
    pub noted: Noted,
    pub people: [PersonId; 2],
    /// Things both marked.
    pub n: usize,
}

/// What was picked, and what it comes to.
pub struct Picked {
    pub animal: AnimalId,
    pub noted: Noted,
    pub people: [PersonId; 2],
    /// Each session or check, and whether it is compared.
    pub groups: Vec<(Both, bool)>,
    pub found: Agreement,
}

/// Every pair that can be compared.
pub fn all(page: &Page) -> Vec<Pair> {
    let mut found = Vec::new();
    for animal in page.animals() {
        for noted in Noted::ALL {
            for (people, n) in pairs(&page.story, animal.animal, noted, page.now) {
                found.push(Pair { animal: animal.clone(), noted, people, n });
            }
        }
    }
    found
}

/// What a person is called.
pub fn name(page: &Page, person: PersonId) -> String {
    page.story.people().get(&person).map_or_else(|| "?".to_owned(), |card| card.name.to_string())
}

/// Reads the address; none where nobody was picked.
///
/// # Errors
/// [`Error::Refused`] naming what cannot be read.
pub fn read(page: &Page, asked: &Typed) -> Result<Option<Picked>, Error> {
    if asked.text("noted").is_empty() {
        return Ok(None);
    }
    let noted = Noted::ALL.into_iter().find(|n| n.name() == asked.text("noted"));
    let noted = checked("noted", noted.ok_or("must be presses or checks"))?;
    let animal = checked("animal", asked.text("animal").parse::<AnimalId>())?;
    let people = [
        checked("first", asked.text("first").parse::<PersonId>())?,
        checked("second", asked.text("second").parse::<PersonId>())?,
    ];
    let of: Vec<&str> = asked.all("of").collect();
    let groups: Vec<(Both, bool)> = both(&page.story, animal, noted, people, page.now)
        .into_iter()
        .map(|b| {
            let taken = of.is_empty() || of.contains(&b.id.to_string().as_str());
            (b, taken)
        })
        .collect();
    let marks: Vec<[Mark; 2]> = groups.iter().filter(|g| g.1).flat_map(|g| g.0.marks.clone()).collect();
    let words = page.story.words();
    let locale = &page.locale;
    let scores = scores(people.map(|p| name(page, p)), &marks, |mark| match mark {
        Mark::Word(id) => {
            words.get(&id).map_or_else(|| say!(locale, events::word_without_card), |w| w.says.to_string())
        }
        Mark::Nothing => say!(locale, events::nothing),
        Mark::Left => say!(locale, events::result_left),
        Mark::NotNoted => say!(locale, agreement::not_noted),
    });
    let found = agreement(&scores, ScoreScale::Names);
    Ok(Some(Picked { animal, noted, people, groups, found }))
}
