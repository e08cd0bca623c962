//! `today`, `evidence`, `patterns` and `agree`: what the pages say, as text.

use super::notebook;
use super::serve::now;
use crate::error::CliError;
use crate::out::say;
use sayso_advisor::agreement::{ScoreScale, agreement, read};
use sayso_advisor::claim_text::{by_ladder, of_animal, rivals_of};
use sayso_advisor::patterns::{self, patterns as found};
use sayso_advisor::{Advice, Case, evidence, today};
use sayso_model::Story;
use sayso_notebook::animal_named;
use sayso_wording::Locale;
use sayso_wording::advice as words_of;
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
    let story = story(dir).await?;
    for card in animal_named(&story, which)? {
        let Some(p) = found(&Case::new(&story, card.animal, now())) else { continue };
        say!("# {}", p.name);
        say!("{}", patterns::LOOKS_BACK);
        let told = |heading: &str, sentences: Vec<&str>, not_shown: &str| {
            say!("## {heading}");
            sentences.iter().for_each(|s| say!("{s}"));
            say!("   {not_shown}");
        };
        told(
            "Do presses grow or fade?",
            p.pace.iter().map(|x| x.sentence.as_str()).collect(),
            patterns::PACE_DOES_NOT_SHOW,
        );
        let lines = p.lines.iter().map(|x| x.sentence.as_str()).collect();
        told("Before and after a change", lines, patterns::LINES_DO_NOT_SHOW);
        told("One word after another", vec![p.order.sentence.as_str()], patterns::ORDER_DOES_NOT_SHOW);
        told("Presses that look like slips", vec![p.slips.sentence.as_str()], patterns::SLIPS_DO_NOT_SHOW);
        told("Likes by the hour", vec![p.hours.sentence.as_str()], patterns::HOURS_DO_NOT_SHOW);
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
    say!("{}", found.sentence);
    if let Some(alike) = &found.alike {
        say!("scored alike: {alike}");
    }
    if let Some(kappa) = &found.kappa {
        say!("Cohen's kappa: {kappa}");
    }
    say!("Krippendorff's alpha: {}", found.alpha);
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
    say!("what would change it: {}", found.would_change);
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
            say!("{}: {}", word.says, e.sentence);
            say!("   pressed, of wanted: {}", e.standing.response);
            say!(
                "   right, of presses: {}; chance: {}",
                e.standing.right,
                sayso_wording::advice::chance(&Locale::ENGLISH, &e.standing.chance)
            );
            say!("   seconds to press (median): {}", e.waiting.median);
            say!("   teaching as agreed, given within {} s: {}", evidence::GIVEN_WITHIN_S, e.fidelity);
            say!("   delivery after a showing (median): {}", e.standing.delay);
            say!("   taken when given: {}; for other words: {}", e.uptake.this, e.uptake.others);
            match &e.claim {
                Ok((claim, animal)) => {
                    for (what, said) in by_ladder(claim, &story.zone()) {
                        say!("   may be said, {what}: {said}");
                    }
                    say!("   may be said of {}: {}", card.name, of_animal(animal, &story.zone()));
                    for rival in rivals_of(claim).iter().filter(|r| r.open) {
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
