//! `sheet`: what is printed, as PDF.

use super::notebook;
use super::serve::now;
use crate::args::sheet::{Kind, Printing};
use crate::error::CliError;
use crate::out::{note, tell};
use clap::ValueEnum;
use sayso_advisor::Case;
use sayso_model::talks::talks;
use sayso_model::{AnimalCard, Story};
use sayso_notebook::{animal_named, word_pictures};
use sayso_paper::{Sheet, check_scorer, check_setter, kit, labels, lessons, likes, meeting, pdf, progress, rules};
use sayso_wording::{Locale, words};

/// Writes a sheet.
pub async fn sheet(l: &Locale, asked: &Printing) -> Result<(), CliError> {
    let notebook = notebook::open(l, &asked.data.data).await?;
    let sheet = made(asked, &notebook.story, *l)?;
    let pictures = word_pictures(&notebook.store, &notebook.story, &sheet.words()).await?;
    let printed = pdf(&sheet, asked.paper, &pictures)?;
    std::fs::write(&asked.to, &printed.bytes).map_err(|why| CliError::file(&asked.to, why))?;
    let file = asked.to.display().to_string();
    for word in &printed.unread {
        let says = notebook.story.words().get(word).map(|card| card.says.to_string());
        note!(l, sheets::picture_unread, word = says.unwrap_or_default());
    }
    tell!(l, sheets::written, file = file, pages = printed.pages);
    Ok(())
}

fn made(asked: &Printing, story: &Story, l: Locale) -> Result<Sheet, CliError> {
    let of_home = matches!(asked.kind, Kind::Rules | Kind::Labels | Kind::Kit | Kind::Lessons);
    if of_home && asked.animal.is_some() {
        let kind = asked.kind.to_possible_value().map_or_else(String::new, |v| v.get_name().to_owned());
        return Err(CliError::said(words!(sheets::no_animal_needed, sheet = kind)));
    }
    match asked.kind {
        Kind::Rules => Ok(rules(story, now(), l)),
        Kind::Labels => Ok(labels(story, now(), l, asked.size)),
        Kind::Kit => Ok(kit(story, now(), l)),
        Kind::Lessons => Ok(lessons(story, now(), l)),
        Kind::Progress => about(asked, story, &l, |case| progress(case, l, asked.days, None)),
        Kind::Meeting => about(asked, story, &l, |case| meeting(case, l, asked.since, Some(&talks(story, case.now())))),
        Kind::Likes => about(asked, story, &l, |case| likes(case, l)),
        Kind::Setter => of_check(asked, story, &l, |case| check_setter(case, asked.check, l)),
        Kind::Scorer => of_check(asked, story, &l, |case| check_scorer(case, asked.check, l)),
    }
}

/// A sheet of a check: the one asked for, else the last one planned.
fn of_check(
    asked: &Printing,
    story: &Story,
    l: &Locale,
    sheet: impl FnOnce(&Case<'_>) -> Option<Sheet>,
) -> Result<Sheet, CliError> {
    let card = animal(asked, story, l)?;
    let none = || CliError::said(words!(sheets::no_check, name = card.name.to_string()));
    sheet(&Case::new(story, card.animal, now())).ok_or_else(none)
}

/// A sheet about the animal that was asked for, or the only one.
fn about(
    asked: &Printing,
    story: &Story,
    l: &Locale,
    sheet: impl FnOnce(&Case<'_>) -> Option<Sheet>,
) -> Result<Sheet, CliError> {
    let card = animal(asked, story, l)?;
    sheet(&Case::new(story, card.animal, now())).ok_or_else(|| CliError::said(words!(sheets::no_animal)))
}

/// The animal that was asked for, or the only one.
fn animal(asked: &Printing, story: &Story, l: &Locale) -> Result<AnimalCard, CliError> {
    let found = animal_named(story, asked.animal.as_deref())?;
    match found.as_slice() {
        [] => Err(CliError::said(words!(sheets::no_animal))),
        [one] => Ok(one.clone()),
        several => {
            let names: Vec<&str> = several.iter().map(|a| a.name.as_str()).collect();
            Err(CliError::said(words!(sheets::many_animals, names = l.or(&names))))
        }
    }
}
