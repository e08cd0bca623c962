//! `sheet`: what is printed, as PDF.

use super::notebook;
use super::serve::now;
use crate::args::sheet::{Kind, Printing};
use crate::error::CliError;
use crate::out::{note, tell};
use clap::ValueEnum;
use sayso_advisor::Case;
use sayso_model::Story;
use sayso_model::talks::talks;
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
    let mut missing = None;
    let made = about(asked, story, l, |case| {
        let found = sheet(case);
        if found.is_none() {
            let card = story.animals().get(&case.animal()).copied();
            missing = card.map(|card| words!(sheets::no_check, name = card.name.to_string()));
        }
        found
    });
    missing.map_or(made, |why| Err(CliError::said(why)))
}

/// A sheet about the animal that was asked for, or the only one.
fn about(
    asked: &Printing,
    story: &Story,
    l: &Locale,
    sheet: impl FnOnce(&Case<'_>) -> Option<Sheet>,
) -> Result<Sheet, CliError> {
    let found = animal_named(story, asked.animal.as_deref())?;
    let none = || CliError::said(words!(sheets::no_animal));
    match found.as_slice() {
        [] => Err(none()),
        [one] => sheet(&Case::new(story, one.animal, now())).ok_or_else(none),
        several => {
            let names: Vec<&str> = several.iter().map(|a| a.name.as_str()).collect();
            Err(CliError::said(words!(sheets::many_animals, names = l.or(&names))))
        }
    }
}
