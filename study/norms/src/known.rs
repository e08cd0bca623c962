//! Households of known truth: waits drawn from laws, so that what estimates should have found is known. Not evidence about animals.

use rand::{RngExt as _, SeedableRng};
use rand_xoshiro::Xoshiro256PlusPlus;
use sayso_methods::stats::{normal_cdf, normal_quantile};
use sayso_model::Species;
use sayso_norms::{
    AgeBand, DayPart, Often, StageWait, Stretch, StudyName, SummaryRow, TimedStage, WeekPresses, WordKind,
};

/// Laws by which invented households come to their first presses.
///
/// Showings to a first press are lognormal, households having a speed of their own which their words share. Some learners mean nothing:
/// they press at random, so their waits are exponential. How often a word is shown a day differs by household, and so does how long it
/// was watched; neither has to do with the wait.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Laws {
    /// Median showings, of learners to whom words come to mean something.
    pub median: f64,
    /// Standard deviation of the logarithm of showings within a household.
    pub within: f64,
    /// And between households.
    pub between: f64,
    /// Share of learners that mean nothing.
    pub meaning_nothing: f64,
    /// Their mean showings to the first press.
    pub at_random: f64,
    /// Median showings of a word a day.
    pub a_day: f64,
    /// Standard deviation of its logarithm.
    pub a_day_spread: f64,
    /// Longest watching, in days; all lengths from 10 are as likely.
    pub watched: f64,
    /// Most words of a learner; all numbers from 1 are as likely.
    pub words: u16,
    /// The age band, one of all where there is none.
    pub age_band: Option<AgeBand>,
    /// The kind of every word; one of all where there is none.
    pub word_kind: Option<WordKind>,
    /// Share of words that, pressed, were pressed of the learner's own accord too.
    pub own_accord: f64,
    /// Shares of the parts of the day in which presses lie, on average. Each household has hours of its own: half of its presses lie
    /// in one part.
    pub hours: [f64; DayPart::MANY],
    /// Median days of a word in each stage, in the order of [`TimedStage::ALL`], where people choose stages.
    pub stage_days: [f64; 2],
    /// Standard deviation of their logarithm, of which half the variance is the household's own.
    pub stage_spread: f64,
    /// Share of households that choose no stages: their words are shown as long as they are watched.
    pub no_stages: f64,
    /// Mean presses in a week of each stretch, in the order of [`Stretch::ALL`], of words that were pressed. Numbers of presses are
    /// geometric: most words few, some many.
    pub in_a_week: [f64; 4],
}

impl Default for Laws {
    fn default() -> Self {
        Self {
            median: 45.0,
            within: 0.7,
            between: 0.8,
            meaning_nothing: 0.2,
            at_random: 120.0,
            a_day: 4.0,
            a_day_spread: 0.5,
            watched: 240.0,
            words: 6,
            age_band: None,
            word_kind: None,
            own_accord: 0.9,
            hours: [0.01, 0.02, 0.17, 0.14, 0.1, 0.16, 0.3, 0.1],
            stage_days: [25.0, 40.0],
            stage_spread: 0.9,
            no_stages: 0.2,
            in_a_week: [0.8, 2.5, 5.0, 9.0],
        }
    }
}

struct Draws(Xoshiro256PlusPlus);

impl Draws {
    fn unit(&mut self) -> f64 {
        self.0.random()
    }

    fn normal(&mut self) -> f64 {
        let (radius, angle) = ((-2.0 * (1.0 - self.unit()).ln()).sqrt(), std::f64::consts::TAU * self.unit());
        radius * angle.cos()
    }

    fn of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.0.random_range(0..all.len())]
    }
}

impl Laws {
    /// Rows of so many households of dogs.
    #[must_use]
    pub fn rows(&self, households: u32, seed: u64) -> Vec<SummaryRow> {
        let mut draws = Draws(Xoshiro256PlusPlus::seed_from_u64(seed));
        // Hours, stages and weeks have draws of their own: whether they are told changes no wait.
        let mut of_hours = Draws(Xoshiro256PlusPlus::seed_from_u64(!seed));
        let mut of_stages = Draws(Xoshiro256PlusPlus::seed_from_u64(seed.rotate_left(32) ^ 1));
        let mut of_weeks = Draws(Xoshiro256PlusPlus::seed_from_u64(seed.rotate_left(32) ^ 2));
        let mut household = |number| self.household(number, &mut draws, (&mut of_hours, &mut of_stages, &mut of_weeks));
        (0..households).flat_map(&mut household).collect()
    }

    fn household(
        &self,
        number: u32,
        draws: &mut Draws,
        (of_hours, of_stages, of_weeks): (&mut Draws, &mut Draws, &mut Draws),
    ) -> Vec<SummaryRow> {
        // A name of letters and digits is one.
        let Ok(household) = StudyName::new(&format!("known-{number:06}")) else { return Vec::new() };
        let own = self.between * draws.normal();
        let nothing = draws.unit() < self.meaning_nothing;
        let a_day = self.a_day * (self.a_day_spread * draws.normal()).exp();
        let watched = 10.0 + (self.watched - 10.0) * draws.unit();
        let age_band = self.age_band.unwrap_or_else(|| draws.of(&AgeBand::ALL[..3]));
        let invited = 100;
        // Across households the share joined lies as the root of an even draw.
        let joined = (100.0 * draws.unit().sqrt()).floor() as u32;
        let words = draws.0.random_range(1..=self.words);
        let favourite = self.part(of_hours);
        let (chooses, pace) = (of_stages.unit() >= self.no_stages, [of_stages.normal(), of_stages.normal()]);
        let row = |word: u16| {
            let wait = if nothing {
                -(1.0 - draws.unit()).ln() * self.at_random
            } else {
                self.median * (own + self.within * draws.normal()).exp()
            };
            let word_kind = self.word_kind.unwrap_or_else(|| draws.of(&WordKind::ALL));
            let pressed = wait <= watched * a_day;
            let (shown, days) = if pressed { (wait, wait / a_day) } else { (watched * a_day, watched) };
            let shown = (shown.floor() as u32).min(SummaryRow::MOST_COUNTED);
            SummaryRow {
                form: SummaryRow::FORM,
                household: household.clone(),
                learner: 0,
                word,
                species: Species::Dog,
                age_band,
                word_kind,
                exposures: if pressed { shown } else { shown.max(1) },
                pressed,
                days: days.floor() as u32,
                watched: watched.floor() as u32,
                invited: if word == 1 { invited } else { 0 },
                joined: if word == 1 { joined } else { 0 },
                hours: self.hours_of_one(favourite, of_hours).filter(|_| pressed),
                stage: self.stay((chooses, pace), watched, of_stages).filter(|_| word_kind != WordKind::Closing),
                week: self
                    .week(watched, of_weeks)
                    .filter(|week| word_kind != WordKind::Closing && (pressed || week.pressed == Often::Not)),
            }
        };
        (1..=words).map(row).collect()
    }

    /// A part of the day, by its share.
    fn part(&self, draws: &mut Draws) -> DayPart {
        let mut left = draws.unit() * self.hours.iter().sum::<f64>();
        let reached = |share: &f64| {
            left -= share;
            left < 0.0
        };
        let at = self.hours.iter().position(reached).unwrap_or(DayPart::MANY - 1);
        DayPart::ALL[at]
    }

    /// In which part one press lies that is drawn by lot; none where there was none of its own accord.
    fn hours_of_one(&self, favourite: DayPart, draws: &mut Draws) -> Option<DayPart> {
        let (there, favoured, other) = (draws.unit() < self.own_accord, draws.unit() < 0.5, self.part(draws));
        there.then_some(if favoured { favourite } else { other })
    }

    /// How long a word stood in the stage that is asked of it, drawn beforehand.
    ///
    /// How long it is shown has nothing to do with how long it is invited. Were the one long where the other is, words that were watched in
    /// the second stage would be quick ones, and no estimate from what was watched could tell.
    fn stay(&self, (chooses, pace): (bool, [f64; 2]), watched: f64, draws: &mut Draws) -> Option<StageWait> {
        let spread = self.stage_spread * 0.5_f64.sqrt();
        let [shown, invited] = [0, 1].map(|stage| {
            let days = self.stage_days[stage] * (spread * (pace[stage] + draws.normal())).exp();
            if chooses { days } else { f64::INFINITY }
        });
        let stage = draws.of(&TimedStage::ALL);
        let (days, left) = match stage {
            TimedStage::Show => (shown, watched),
            TimedStage::Invite => (invited, watched - shown),
        };
        // Of what is shown still, the days are those watched.
        let days_told = days.min(left).floor() as u32;
        (left >= 0.0).then_some(StageWait { stage, days: days_told, moved_on: days <= left })
    }

    /// How often a word was pressed in one week, drawn beforehand; whether it is watched so long has nothing to do with how often.
    fn week(&self, watched: f64, draws: &mut Draws) -> Option<WeekPresses> {
        let from = draws.of(&Stretch::ALL);
        let week = draws.0.random_range(from.from()..=from.to());
        let mean = self.in_a_week[from.number()];
        // Geometric: at least `n` presses with the chance (mean / (1 + mean))^n.
        let presses = ((1.0 - draws.unit()).ln() / (mean / (1.0 + mean)).ln()).floor();
        (7.0 * f64::from(week) <= watched).then(|| WeekPresses { from, pressed: Often::of(presses as usize) })
    }

    /// One week of each of so many words that were watched as households are, whatever is known of their first presses: there a word that was
    /// not pressed yet is pressed in no week.
    #[must_use]
    pub fn weeks(&self, words: usize, seed: u64) -> Vec<Option<WeekPresses>> {
        let mut draws = Draws(Xoshiro256PlusPlus::seed_from_u64(seed.rotate_left(32) ^ 3));
        let one = |_| {
            let watched = 10.0 + (self.watched - 10.0) * draws.unit();
            self.week(watched, &mut draws)
        };
        (0..words).map(one).collect()
    }

    /// The true share of words pressed in a week of a stretch as often as this or more.
    #[must_use]
    pub fn pressed_in_a_week(&self, from: Stretch, least: Often) -> f64 {
        let mean = self.in_a_week[from.number()];
        let least = match least {
            Often::Not => 0,
            Often::Some => 1,
            Often::Daily => 7,
        };
        (mean / (1.0 + mean)).powi(least)
    }

    /// The true share of words moved on from a stage within so many days.
    #[must_use]
    pub fn moved_on_by(&self, stage: TimedStage, days: f64) -> f64 {
        let moved = normal_cdf(((days + 1.0) / self.stage_days[stage as usize]).ln() / self.stage_spread);
        // A word comes to be invited only where people choose stages.
        let choose = if stage == TimedStage::Show { 1.0 - self.no_stages } else { 1.0 };
        choose * moved
    }

    /// The true share pressed within so many showings.
    #[must_use]
    pub fn pressed_by_showing(&self, showings: f64) -> f64 {
        // Whole showings before the press: fewer than one more.
        let by = showings + 1.0;
        let spread = self.within.hypot(self.between);
        let learned = normal_cdf((by / self.median).ln() / spread);
        let random = 1.0 - (-by / self.at_random).exp();
        (1.0 - self.meaning_nothing) * learned + self.meaning_nothing * random
    }

    /// The true share pressed within so many days.
    #[must_use]
    pub fn pressed_by_day(&self, days: f64) -> f64 {
        let by = days + 1.0;
        let spread = self.within.hypot(self.between).hypot(self.a_day_spread);
        let learned = normal_cdf((by * self.a_day / self.median).ln() / spread);
        // Over how often a word is shown a day, by the midpoints of even slices.
        const SLICES: u32 = 400;
        let slice = |k: u32| normal_quantile((f64::from(k) + 0.5) / f64::from(SLICES)).unwrap_or(0.0);
        let random: f64 = (0..SLICES)
            .map(|k| 1.0 - (-by * self.a_day * (self.a_day_spread * slice(k)).exp() / self.at_random).exp())
            .sum();
        (1.0 - self.meaning_nothing) * learned + self.meaning_nothing * random / f64::from(SLICES)
    }

    /// The true share of households that joined this share of invitations or less.
    #[must_use]
    pub fn joined_by(&self, share: f64) -> f64 {
        (((share * 100.0 + 1e-9).floor() + 1.0) / 100.0).powi(2).min(1.0)
    }

    /// Where a true share lies, by halving.
    #[must_use]
    pub fn quantile(&self, of: impl Fn(&Self, f64) -> f64, share: f64) -> f64 {
        let (mut low, mut high) = (0.0, 1e6);
        for _ in 0..80 {
            let middle = f64::midpoint(low, high);
            if of(self, middle) < share { low = middle } else { high = middle }
        }
        high
    }
}
