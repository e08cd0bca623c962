//! The ladder: what may be said about a word, from "nothing can be said yet" to "stands up to a blind check".
//!
//! Sources: e-values that may be read at any time: Ville 1939; Holm 1979, Scand J Stat 6:65, on the largest each has ever
//! reached; that cues must be ruled out before understanding is claimed: Pfungst 1911. The rungs and their conditions are
//! ours. Page: `docs/methods/understanding.md`.
//!
//! Only what the notebook drew climbs: rounds of invitations, agreed swaps, planned checks. Everything of one animal goes
//! through two corrections, one for everyday evidence and one for blind checks, so that many words, many kinds of evidence
//! and many readings do not add up to a false claim. No rung says that an animal does not understand: that cannot be shown
//! by what it did not do.

use crate::stats::evalue::holm_on_maxima;
use sayso_model::Moment;

/// What a word is for: two questions, each with rungs of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ladder {
    /// Does the animal ask for the thing by pressing?
    Asking,
    /// Does the animal know what the spoken word means?
    Hearing,
}

/// How an e-value grew: at each moment something was closed, its natural logarithm.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Growth {
    /// Moment and natural logarithm of the e-value from then on, in order of time.
    pub steps: Vec<(Moment, f64)>,
    /// Observations behind the last one.
    pub n: u64,
}

impl Growth {
    /// The largest it ever was up to a moment; 0 (a whole stake) at the start.
    #[must_use]
    pub fn ln_max(&self, upto: Moment) -> f64 {
        self.steps.iter().take_while(|(at, _)| *at <= upto).fold(0.0, |most, (_, ln)| most.max(*ln))
    }

    /// Its present natural logarithm.
    #[must_use]
    pub fn ln_now(&self) -> f64 {
        self.steps.last().map_or(0.0, |(_, ln)| *ln)
    }

    /// When it first reached a bar.
    fn reached(&self, bar: f64) -> Option<Moment> {
        self.steps.iter().find(|(_, ln)| *ln >= bar).map(|(at, _)| *at)
    }
}

/// Everything drawn about one word.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct WordEvidence {
    /// Rounds of drawn invitations ([`super::rounds`]); none before the first round.
    pub rounds: Option<Growth>,
    /// Open checks, by ladder: planned and drawn, but somebody knew the answer.
    pub open: [Option<Growth>; 2],
    /// Blind checks, by ladder.
    pub blind: [Option<Growth>; 2],
}

/// Shares of false claims allowed over all readings together, of one animal.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LadderRule {
    /// Everyday evidence: rounds, swaps, open checks.
    pub everyday: f64,
    /// Blind checks, for the top rung.
    pub blind: f64,
}

impl Default for LadderRule {
    fn default() -> Self {
        Self { everyday: 0.04, blind: 0.01 }
    }
}

/// What may be said, lowest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rung {
    /// Nothing was drawn yet, or nothing came of it that could tell.
    NothingYet,
    /// Something was drawn, and it does not stand out of chance.
    FitsChance,
    /// Pressing goes with what was called for, in rounds the notebook drew.
    DiffersByWord,
    /// Of the animal: after another thing than asked for, as drawn, it presses again more, whatever thing or word.
    HoldsAgainstHabit,
    /// Drawn checks beat chance, but somebody knew the answer.
    PassesOpenProbe,
    /// Blind checks beat chance at the stricter level.
    StandsUpToBlindCheck,
}

impl Rung {}

/// What may be said, of how many observations, and since when.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdict {
    /// What may be said.
    pub rung: Rung,
    /// Observations behind the rung.
    pub n: u64,
    /// Since when it stands; none where nothing is claimed.
    pub since: Option<Moment>,
    /// Adjusted p-value of the evidence that decided, valid whenever it is read; none where nothing was drawn.
    pub adjusted_p: Option<f64>,
    /// When a claim stood that stands no more, because more words or checks came that are judged together.
    pub lapsed: Option<Moment>,
}

/// E-values from which something is told, as of now: how many are judged together and what the others reached set them.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct WordBars {
    /// Of the rounds.
    pub rounds: f64,
    /// Of open checks, by ladder.
    pub open: [f64; 2],
    /// Of blind checks, by ladder.
    pub blind: [f64; 2],
}

/// The verdicts of one animal.
#[derive(Debug, Clone, PartialEq)]
pub struct Verdicts {
    /// By word: asking, hearing.
    pub words: Vec<[Verdict; 2]>,
    /// By word: from what e-value on each kind of its evidence is told, given all that is judged together.
    pub bars: Vec<WordBars>,
    /// The animal, over all its words: swaps.
    pub animal: Verdict,
}

/// One hypothesis of the everyday family.
struct Hypothesis<'a> {
    /// Word and ladder; none for the animal.
    of: Option<(usize, Ladder)>,
    rung: Rung,
    growth: Option<&'a Growth>,
    /// Since when it is judged with the others.
    from: Option<Moment>,
}

/// Judges all words of one animal together, as of `now`. `known_since` tells for each word when it came onto the board:
/// hypotheses that came later raise the bar for all, and a claim that lapses by it is told as such.
#[must_use]
pub fn climb(
    words: &[WordEvidence],
    animal: Option<&Growth>,
    known_since: &[Moment],
    now: Moment,
    rule: &LadderRule,
) -> Verdicts {
    let mut everyday = vec![Hypothesis { of: None, rung: Rung::HoldsAgainstHabit, growth: animal, from: None }];
    let mut blind = Vec::new();
    for (at, word) in words.iter().enumerate() {
        let known = known_since.get(at).copied();
        let rounds = word.rounds.as_ref();
        everyday.push(Hypothesis {
            of: Some((at, Ladder::Asking)),
            rung: Rung::DiffersByWord,
            growth: rounds,
            from: known,
        });
        for (side, ladder) in [Ladder::Asking, Ladder::Hearing].into_iter().enumerate() {
            let probes = [
                (&word.open, Rung::PassesOpenProbe, &mut everyday),
                (&word.blind, Rung::StandsUpToBlindCheck, &mut blind),
            ];
            for (growths, rung, family) in probes {
                if let Some(growth) = &growths[side] {
                    let from = growth.steps.first().map(|s| s.0);
                    family.push(Hypothesis { of: Some((at, ladder)), rung, growth: Some(growth), from });
                }
            }
        }
    }
    let none = Verdict { rung: Rung::NothingYet, n: 0, since: None, adjusted_p: None, lapsed: None };
    let mut verdicts =
        Verdicts { words: vec![[none; 2]; words.len()], bars: vec![WordBars::default(); words.len()], animal: none };
    for (family, alpha) in [(&everyday, rule.everyday), (&blind, rule.blind)] {
        for (hypothesis, judged) in family.iter().zip(judge(family, now, alpha)) {
            let verdict = match hypothesis.of {
                None => &mut verdicts.animal,
                Some((at, ladder)) => {
                    let bars = &mut verdicts.bars[at];
                    let bar = match hypothesis.rung {
                        Rung::PassesOpenProbe => &mut bars.open[ladder as usize],
                        Rung::StandsUpToBlindCheck => &mut bars.blind[ladder as usize],
                        _ => &mut bars.rounds,
                    };
                    *bar = judged.bar;
                    &mut verdicts.words[at][ladder as usize]
                }
            };
            add(verdict, hypothesis, judged);
        }
    }
    verdicts
}

/// Takes one more judged hypothesis into a verdict: the highest rung counts.
fn add(verdict: &mut Verdict, hypothesis: &Hypothesis<'_>, judged: Judged) {
    let Some(growth) = hypothesis.growth.filter(|g| g.n > 0) else { return };
    let rung = if judged.since.is_some() { hypothesis.rung } else { Rung::FitsChance };
    let lapsed = verdict.lapsed.max(judged.lapsed);
    if rung > verdict.rung || (rung == verdict.rung && growth.n > verdict.n) {
        let adjusted_p = Some(judged.adjusted_p);
        *verdict = Verdict { rung, n: growth.n, since: judged.since, adjusted_p, lapsed };
    } else {
        verdict.lapsed = lapsed;
    }
}

struct Judged {
    since: Option<Moment>,
    adjusted_p: f64,
    lapsed: Option<Moment>,
    bar: f64,
}

/// The least e-value with which one of the family stands by Holm's procedure, the others being as they are.
fn bar_of(ln_max: &[f64], at: usize, alpha: f64) -> f64 {
    let mut others: Vec<f64> = ln_max.iter().enumerate().filter(|(i, _)| *i != at).map(|(_, ln)| *ln).collect();
    others.sort_unstable_by(|a, b| b.total_cmp(a));
    let needed = |before: usize| (ln_max.len() - before) as f64 / alpha;
    let standing = others.iter().enumerate().take_while(|(before, ln)| ln.exp() >= needed(*before)).count();
    needed(standing)
}

/// Holm's procedure on the largest values reached, now; for what does not stand now, whether it stood when fewer
/// hypotheses were judged together.
fn judge(family: &[Hypothesis<'_>], now: Moment, alpha: f64) -> Vec<Judged> {
    let ln_max: Vec<f64> = family.iter().map(|h| h.growth.map_or(0.0, |g| g.ln_max(now))).collect();
    let adjusted = holm_on_maxima(&ln_max);
    let mut changes: Vec<Moment> = family.iter().filter_map(|h| h.from).filter(|at| *at <= now).collect();
    changes.sort_unstable();
    changes.dedup();
    let stood = |at: usize, when: Moment| {
        let judged: Vec<usize> = (0..family.len()).filter(|i| family[*i].from.is_none_or(|from| from < when)).collect();
        let ln: Vec<f64> = judged.iter().map(|i| family[*i].growth.map_or(0.0, |g| g.ln_max(when))).collect();
        judged.iter().zip(holm_on_maxima(&ln)).any(|(i, p)| *i == at && p <= alpha)
    };
    (0..family.len())
        .map(|at| {
            let stands = adjusted[at] <= alpha;
            // It stands since its value reached the bar that the present number of hypotheses sets for it.
            let rank = ln_max.iter().filter(|x| **x > ln_max[at]).count();
            let bar = (((family.len() - rank) as f64) / alpha).ln();
            let since = family[at].growth.filter(|_| stands).map(|g| g.reached(bar).unwrap_or(now));
            let lapsed = if stands { None } else { changes.iter().copied().rfind(|when| stood(at, *when)) };
            Judged { since, adjusted_p: adjusted[at], lapsed, bar: bar_of(&ln_max, at, alpha) }
        })
        .collect()
}
