//! What is told at the end: how much was heard and logged, tired batteries, words that were not heard.

use super::diary::Kept;
use super::vocabulary::Vocabulary;
use sayso_listen::{Heard, SpeedAt, TiredBattery, silent_words, tired_batteries, tired_battery};
use sayso_model::{Press, Source, Story, WordId};
use std::collections::BTreeMap;

/// Days of silence after which a word is named.
const SILENT_DAYS: f64 = 7.0;
/// Confidence a press needs for its speed to count.
const SURE: f64 = 0.8;
const DAY_S: f64 = 86_400.0;

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
    pub fn heard(&mut self, heard: &[Heard]) {
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
    pub fn batteries(&mut self, vocabulary: &Vocabulary, heard: &[Heard]) {
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
        if let Some(story) = history {
            let presses = presses(story);
            for (name, known) in &vocabulary.known {
                let Some(times) = presses.get(&known.word) else { continue };
                let speeds: Vec<SpeedAt> = times
                    .iter()
                    .filter_map(|(time_s, speed)| speed.map(|speed| SpeedAt { time_s: *time_s, speed }))
                    .collect();
                if let Some(tired) = tired_battery(vocabulary.says(name), &speeds) {
                    // Over days is stronger evidence than within one file.
                    self.batteries.retain(|b| b.word != tired.word);
                    self.batteries.push(tired);
                }
            }
            silent(vocabulary, &presses);
        }
        for t in &self.batteries {
            eprintln!(
                "\"{}\" has slowed by {:.1} % (standard error {:.1} %, n = {} presses): its battery may be running down. Keep batteries away from animals; one that was swallowed is an emergency for a veterinarian.",
                t.word,
                100.0 * t.slowed_by,
                100.0 * t.standard_error,
                t.n
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

/// Times (seconds) and speeds of heard presses that stand, by word.
fn presses(story: &Story) -> BTreeMap<WordId, Vec<(f64, Option<f64>)>> {
    let mut by_word: BTreeMap<WordId, Vec<(f64, Option<f64>)>> = BTreeMap::new();
    for fact in story.everyones::<Press>().filter(|f| f.event.source == Source::Heard) {
        let speed = fact.part.speed.filter(|_| fact.part.certainty.get() >= SURE).map(|s| s.get());
        by_word.entry(fact.part.word).or_default().push((fact.at().millis() as f64 / 1000.0, speed));
    }
    by_word
}

fn silent(vocabulary: &Vocabulary, presses: &BTreeMap<WordId, Vec<(f64, Option<f64>)>>) {
    let all = || presses.values().flatten().map(|(t, _)| t / DAY_S);
    let (from, now) = (all().fold(f64::INFINITY, f64::min), all().fold(f64::NEG_INFINITY, f64::max));
    if !(now > from) {
        return;
    }
    let times: Vec<(String, Vec<f64>)> = vocabulary
        .known
        .iter()
        .map(|(name, known)| {
            let days = presses.get(&known.word).into_iter().flatten().map(|(t, _)| t / DAY_S).collect();
            (vocabulary.says(name).to_owned(), days)
        })
        .collect();
    for s in silent_words(&times, from, now, SILENT_DAYS) {
        let chance =
            s.chance.map_or_else(String::new, |c| format!("; by its earlier rate the chance of that is {c:.1e}"));
        eprintln!(
            "\"{}\" has {} for {:.0} days (other words: n = {}{chance}). See whether its button still sounds.",
            s.word,
            if s.ever { "not been heard" } else { "never been heard" },
            s.days_silent,
            s.others_heard
        );
    }
}
