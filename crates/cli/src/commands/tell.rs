//! `today`, `evidence`, `patterns` and `agree`: what the pages say, as text.

use super::notebook;
use super::serve::now;
use crate::error::CliError;
use crate::out::say;
use sayso_advisor::agreement::{ScoreScale, agreement, read};
use sayso_advisor::patterns::patterns as found;
use sayso_advisor::{Advice, Case, evidence, today};
use sayso_model::Story;
use sayso_notebook::animal_named;
use sayso_wording::advice as words_of;
use sayso_wording::agreement as told;
use sayso_wording::claims::{by_ladder, of_animal, rivals_of};
use sayso_wording::evidence::{chance, sentence};
use sayso_wording::figures::{estimate, finding};
use sayso_wording::{Locale, patterns, say as words};
use std::path::Path;
use std::sync::Arc;

pub(super) async fn story(dir: &Path) -> Result<Arc<Story>, CliError> {
    Ok(notebook::open(dir).await?.story)
}

/// Prints what to do today.
pub async fn today(dir: &Path, which: Option<&str>) -> Result<(), CliError> {
    let story = story(dir).await?;
    for card in animal_named(&story, which)? {
        say!("# {}", card.name);
        let Some(today) = today::today(&Case::new(&story, card.animal, now())) else { continue };
        let (l, name) = (&Locale::ENGLISH, card.name.as_str());
        for advice in &today.welfare {
            print_advice(name, advice);
        }
        say!("{}", words_of::next(l, name, &today.next));
        say!();
        for word in &today.steps {
            say!("{} ({})", word.word.says, word.stage.name());
            print_advice(name, &word.advice);
        }
        say!();
        for good in &today.went_well {
            say!("{}", words_of::good(l, name, good));
        }
        for advice in &today.later {
            print_advice(name, advice);
        }
        say!();
    }
    Ok(())
}

fn print_advice(name: &str, advice: &Advice) {
    let l = &Locale::ENGLISH;
    say!("{}", words_of::act(l, name, &advice.act));
    for reason in &advice.because {
        say!("   because: {}", words_of::because(l, name, &reason.fact));
    }
    say!("   how sure: {}", words_of::sure(l, advice.sure));
    for change in &advice.would_change {
        say!("   what would change it: {}", words_of::change(l, name, change));
    }
    for caution in &advice.cautions {
        say!("   take care: {}", words_of::caution(l, name, *caution));
    }
}

/// Prints the patterns in presses and choices.
pub async fn patterns(dir: &Path, which: Option<&str>) -> Result<(), CliError> {
    let (story, locale) = (story(dir).await?, &Locale::ENGLISH);
    for card in animal_named(&story, which)? {
        let Some(p) = found(&Case::new(&story, card.animal, now())) else { continue };
        say!("# {}", p.name);
        let told = |heading: String, sentences: Vec<String>, not_shown: String| {
            say!("## {heading}");
            sentences.iter().for_each(|s| say!("{s}"));
            say!("   {not_shown}");
        };
        told(
            words!(locale, patterns::pace),
            p.pace.iter().map(|x| patterns::pace(locale, &p.name, x)).collect(),
            words!(locale, patterns::pace_does_not_show),
        );
        told(
            words!(locale, patterns::lines),
            p.lines.iter().map(|x| patterns::line(locale, &p.name, x)).collect(),
            words!(locale, patterns::lines_do_not_show),
        );
        told(
            words!(locale, patterns::order),
            vec![patterns::order(locale, &p.name, &p.order)],
            words!(locale, patterns::order_does_not_show),
        );
        told(
            words!(locale, patterns::slips),
            vec![patterns::slips(locale, &p.name, &p.slips)],
            words!(locale, patterns::slips_do_not_show),
        );
        told(
            words!(locale, patterns::hours),
            vec![patterns::hours(locale, &p.name, &p.hours)],
            words!(locale, patterns::hours_do_not_show),
        );
        say!();
    }
    Ok(())
}

/// Prints how far people agree on what they scored.
pub fn agree(file: &Path, scale: ScoreScale, headed: bool) -> Result<(), CliError> {
    let wrong = |source| CliError::File { path: file.to_owned(), source };
    let text = if file == Path::new("-") {
        std::io::read_to_string(std::io::stdin()).map_err(wrong)?
    } else {
        std::fs::read_to_string(file).map_err(wrong)?
    };
    let scores = read(&text, headed, scale).map_err(|e| CliError::said(format!("{}: {e}", file.display())))?;
    let found = agreement(&scores, scale);
    let locale = &Locale::ENGLISH;
    say!("{}", told::sentence(locale, &found));
    if let Some(alike) = &found.alike {
        say!("scored alike: {}", estimate(locale, alike));
    }
    if let Some(kappa) = &found.kappa {
        say!("Cohen's kappa: {}", told::figure(locale, kappa));
    }
    say!("Krippendorff's alpha: {}", told::figure(locale, &found.alpha));
    for d in &found.differing {
        say!(
            "taken differently {} times: {} \"{}\", {} \"{}\"",
            d.n,
            found.people[0],
            d.first,
            found.people[1],
            d.second
        );
    }
    say!("{}", words!(locale, agreement::would_change));
    Ok(())
}

/// Prints the evidence for every word.
pub async fn evidence(dir: &Path, which: Option<&str>) -> Result<(), CliError> {
    let story = story(dir).await?;
    for card in animal_named(&story, which)? {
        say!("# {}", card.name);
        let case = Case::new(&story, card.animal, now());
        for word in story.words_of(card.animal) {
            let Some(e) = evidence::evidence(&case, word.word) else { continue };
            say!("{}: {}", word.says, sentence(&Locale::ENGLISH, card.name.as_str(), &e));
            let told = |e| finding(&Locale::ENGLISH, e);
            say!("   pressed, of wanted: {}", told(&e.standing.response));
            say!(
                "   right, of presses: {}; chance: {}",
                told(&e.standing.right),
                chance(&Locale::ENGLISH, &e.standing.chance)
            );
            say!("   seconds to press (median): {}", told(&e.waiting.median));
            say!("   teaching as agreed, given within {} s: {}", evidence::GIVEN_WITHIN_S, told(&e.fidelity));
            say!("   delivery after a showing (median): {}", told(&e.standing.delay));
            say!("   taken when given: {}; for other words: {}", told(&e.uptake.this), told(&e.uptake.others));
            match &e.claim {
                Ok((claim, animal)) => {
                    for (what, said) in by_ladder(&Locale::ENGLISH, claim, &story.zone()) {
                        say!("   may be said, {what}: {said}");
                    }
                    say!("   may be said of {}: {}", card.name, of_animal(&Locale::ENGLISH, animal, &story.zone()));
                    for rival in rivals_of(&Locale::ENGLISH, claim).iter().filter(|r| r.open) {
                        say!("   not ruled out: {} ({})", rival.rival, rival.standing);
                    }
                }
                Err(why) => say!("   nothing could be judged: {why}"),
            }
        }
        say!();
    }
    Ok(())
}
