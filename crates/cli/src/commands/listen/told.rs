//! What is told at the end: how much was heard and logged, tired batteries, words that were not heard.

use super::diary::Kept;
use super::vocabulary::Vocabulary;
use sayso_advisor::Caution;
use sayso_advisor::Sums;
use sayso_advisor::buttons::{advice, buttons};
use sayso_listen::{Detection, TiredBattery, tired_batteries};
use sayso_model::{Moment, Story};
use sayso_wording::Locale;
use sayso_wording::advice as words_of;
use std::collections::BTreeMap;

/// Gathers what is told at the end, on standard error.
#[derive(Default)]
pub struct Told {
    seconds: f64,
    counts: BTreeMap<String, usize>,
    kept: Option<Kept>,
    batteries: Vec<TiredBattery>,
}

impl Told {
    /// So much sound was listened to.
    pub fn listened(&mut self, seconds: f64) {
        self.seconds += seconds;
    }

    /// These presses were heard.
    pub fn heard(&mut self, heard: &[Detection]) {
        for h in heard {
            *self.counts.entry(h.word.clone()).or_default() += 1;
        }
    }

    /// So many were logged.
    pub fn kept(&mut self, kept: Kept) {
        let so_far = self.kept.get_or_insert_default();
        so_far.new += kept.new;
        so_far.known += kept.known;
    }

    /// Batteries that tired within one file.
    pub fn batteries(&mut self, vocabulary: &Vocabulary, heard: &[Detection]) {
        self.batteries.extend(
            tired_batteries(heard).into_iter().map(|t| TiredBattery { word: vocabulary.says(&t.word).to_owned(), ..t }),
        );
    }

    /// Says it all. `history` is the notebook after logging.
    pub fn at_the_end(mut self, vocabulary: &Vocabulary, history: Option<&Story>) {
        let total: usize = self.counts.values().sum();
        eprintln!("{total} presses heard in {:.1} minutes.", self.seconds / 60.0);
        if let Some(kept) = self.kept {
            eprintln!("{} of them logged; {} were in the log already.", kept.new, kept.known);
        }
        if let Some((story, last)) = history.and_then(|s| Some((s, last_heard(s)?))) {
            let sums = Sums::default();
            // Over days is stronger evidence than within one file.
            let known = buttons(story, last, &sums).tired;
            self.batteries.retain(|b| known.iter().all(|k| k.says != b.word));
            for advice in advice(story, None, last, &sums) {
                let l = &Locale::ENGLISH;
                eprintln!("{}", words_of::act(l, "", &advice.act));
                for reason in &advice.because {
                    eprintln!("  because: {}", words_of::because(l, "", &reason.fact));
                }
                eprintln!("  how sure: {}", words_of::sure(l, advice.sure));
                for change in &advice.would_change {
                    eprintln!("  what would change it: {}", words_of::change(l, "", change));
                }
                for caution in &advice.cautions {
                    eprintln!("  take care: {}", words_of::caution(l, "", *caution));
                }
            }
        }
        for t in &self.batteries {
            eprintln!(
                "\"{}\" has slowed by {:.1} % (standard error {:.1} %, n = {} presses; chance that it slows more than healthy buttons do: {:.0} %): its battery may be running down. {}",
                t.word,
                100.0 * t.slowed_by,
                100.0 * t.standard_error,
                t.n,
                (100.0 * t.probability).min(99.0),
                words_of::caution(&Locale::ENGLISH, "", Caution::Battery)
            );
        }
        let mut never: Vec<&str> = vocabulary
            .enrolled
            .words()
            .iter()
            .filter(|w| !self.counts.contains_key(*w))
            .map(|w| vocabulary.says(w))
            .collect();
        never.sort_unstable();
        if self.seconds > 0.0 && !never.is_empty() {
            eprintln!(
                "Not heard at all (other words: n = {total}): {}. Nobody may have pressed them; a flat battery or an old recording is possible too.",
                never.join(", ")
            );
        }
    }
}

/// The buttons are judged as of the last press heard: the sound may be older than today.
fn last_heard(story: &Story) -> Option<Moment> {
    story.heard_presses().map(|f| f.at()).max()
}
