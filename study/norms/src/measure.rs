//! What is counted of households, with noise or without. Everything that is published follows from what stands here.

use crate::draw::{Drawn, FIRST_WORDS, LEAST_INVITED};
use crate::estimate::Counts;
use crate::grid::{DAYS, SHARE_STEPS, SHOWINGS, STAGE_DAYS};
use crate::group::{Group, Level};
use crate::loss::{Counted, Loss};
use crate::noise::{NoNoise, Noise, rarely_reached, variance};
use crate::publish::{AllSizes, Division, Sizes, cross};
use sayso_norms::{DayPart, Often, Release, StageWait, Stretch, TimedStage, WeekPresses, WordKind};

/// Whether noise is added.
pub enum Kind<'a> {
    /// Noise that costs so much in all.
    Noisy(Loss, &'a mut dyn Noise),
    /// None: inside a club that agreed to it.
    Plain,
}

impl Kind<'_> {
    /// Fewest households of a group.
    #[must_use]
    pub const fn least(&self) -> u32 {
        match self {
            Self::Noisy(..) => Release::LEAST_WITH_NOISE,
            Self::Plain => Release::LEAST_WITHOUT_NOISE,
        }
    }

    /// The scale of the noise of what is counted; 0 without noise.
    fn scale(&self, counted: Counted) -> f64 {
        match self {
            Self::Noisy(loss, _) => counted.scale(*loss),
            Self::Plain => 0.0,
        }
    }
}

/// Counts of the parts of a division, so many bins a part.
#[derive(Clone, PartialEq, Debug)]
pub struct Table {
    /// What is published of them.
    pub division: Division,
    bins: usize,
    counts: Vec<i64>,
    noise: f64,
}

impl Table {
    /// Counts of a group: those of its parts together.
    #[must_use]
    pub fn counts(&self, parts: &[usize]) -> Counts {
        let mut bins = vec![0.0; self.bins];
        for part in parts {
            let its = self.counts.iter().skip(part * self.bins);
            bins.iter_mut().zip(its).for_each(|(bin, count)| *bin += *count as f64);
        }
        let draws = parts.len() as f64;
        Counts { draws, ..Counts::new(bins, self.noise * draws) }
    }

    /// Counts of a group that is published.
    #[must_use]
    pub fn of(&self, group: &Group) -> Option<Counts> {
        let (_, parts) = self.division.groups.iter().find(|(published, _)| published == group)?;
        Some(self.counts(parts))
    }
}

/// Everything that was counted.
#[derive(Clone, PartialEq, Debug)]
pub struct Measured {
    /// Households of groups.
    pub sizes: AllSizes,
    /// Variance of the noise of those by species, kind, kind and age, and age.
    pub sizes_noise: [f64; 4],
    /// Showings to the first press.
    pub showings: Table,
    /// Days to it.
    pub days: Table,
    /// Share joined; the last bin is those invited too seldom.
    pub joined: Table,
    /// Kinds of the first, second, third word.
    pub words: Table,
    /// Hours of a press; the last bin is those that tell none.
    pub hours: Table,
    /// Days in a stage: bins of the one stage, of the other, and those that tell none.
    pub stages: Table,
    /// Households that tell of each stretch of weeks. They alone decide which is told: decided by the counts of presses, a stretch would be told
    /// where their noise is high, and what its intervals hold would be wrong there.
    pub stretches: Table,
    /// From how many of these on a stretch is told: with noise, so that fewer than the rule asks get by once in twenty at most.
    pub stretch_bar: f64,
    /// Presses in a week: bins of each stretch.
    pub weeks: Table,
    /// The privacy loss, as whoever made the noise reckons it.
    pub spent: f64,
}

/// The bins in which a household is counted.
type Places<'a> = &'a dyn Fn(&Drawn) -> Vec<usize>;

/// Adds noise and keeps account.
struct Counter<'a> {
    kind: Kind<'a>,
    spent: f64,
}

impl Counter<'_> {
    fn add(&mut self, counts: Vec<i64>, counted: Counted) -> Result<Vec<i64>, NoNoise> {
        let scale = self.kind.scale(counted);
        match &mut self.kind {
            Kind::Plain => Ok(counts),
            Kind::Noisy(_, noise) => {
                let noisy = noise.add(counts, counted.sensitivity(), scale)?;
                self.spent += noisy.loss;
                Ok(noisy.counts)
            }
        }
    }

    fn noise(&self, counted: Counted) -> f64 {
        match self.kind {
            Kind::Noisy(..) => variance(self.kind.scale(counted)),
            Kind::Plain => 0.0,
        }
    }

    /// From how many households on, by their count, something may be told of them.
    fn bar(&self, counted: Counted) -> f64 {
        let above = match self.kind {
            Kind::Noisy(..) => rarely_reached(self.kind.scale(counted)),
            Kind::Plain => 0.0,
        };
        f64::from(self.kind.least()) + above
    }

    fn sizes(&mut self, level: Level, counted: Counted, drawn: &[Drawn]) -> Result<Sizes, NoNoise> {
        let bar = self.bar(counted);
        let counts = self.add(level.count(drawn), counted)?;
        Ok(Sizes::new(level, &counts, bar))
    }

    fn table(
        &mut self,
        counted: Counted,
        drawn: &[Drawn],
        division: &Division,
        (bins, places): (usize, Places<'_>),
    ) -> Result<Table, NoNoise> {
        let mut counts = vec![0; division.parts.len() * bins];
        for one in drawn {
            if let Some(part) = division.part_of(one) {
                places(one).into_iter().for_each(|place| counts[part * bins + place] += 1);
            }
        }
        let counts = self.add(counts, counted)?;
        Ok(Table { division: division.clone(), bins, counts, noise: self.noise(counted) })
    }
}

/// Bins of the share joined: steps, and those invited too seldom.
pub const JOINED_BINS: usize = SHARE_STEPS + 1;
/// Bins of first words: kinds of the first, then of the second, then of the third.
pub const WORD_BINS: usize = FIRST_WORDS * WordKind::ALL.len();

/// Bins of hours: parts of the day, and those that tell none.
pub const HOURS_BINS: usize = DayPart::MANY + 1;

/// Bins of one stage.
pub const STAGE_BINS: usize = STAGE_DAYS.bins();
/// Bins of stages: of each stage, and those that tell none.
pub const STAGES_BINS: usize = TimedStage::ALL.len() * STAGE_BINS + 1;

/// Bins of one stretch of weeks.
pub const STRETCH_BINS: usize = Often::ALL.len();
/// Bins of weeks: of each stretch. Who tells of no week is in none of them, who tells of one in one.
pub const WEEKS_BINS: usize = Stretch::ALL.len() * STRETCH_BINS;

/// Counts households: first by groups, then, by those counts, in groups that are large enough.
///
/// # Errors
/// [`NoNoise`].
pub fn measure(drawn: &[Drawn], kind: Kind<'_>) -> Result<Measured, NoNoise> {
    let least = kind.least();
    let mut counter = Counter { kind, spent: 0.0 };
    let sizes = AllSizes {
        species: counter.sizes(Level::Species, Counted::Species, drawn)?,
        kinds: counter.sizes(Level::Kinds, Counted::Kinds, drawn)?,
        leaves: counter.sizes(Level::Leaves, Counted::Leaves, drawn)?,
        ages: counter.sizes(Level::Ages, Counted::Ages, drawn)?,
        least: f64::from(least),
    };
    let sizes_noise =
        [Counted::Species, Counted::Kinds, Counted::Leaves, Counted::Ages].map(|counted| counter.noise(counted));
    let (by_word, by_species, by_learner) = (sizes.by_word(), sizes.by_species(), sizes.by_learner());
    let by_invited = match counter.kind {
        Kind::Noisy(..) => by_learner,
        // Of a learner's cell those invited often enough are told: they, and the others, are groups as well.
        Kind::Plain => {
            let tells = |division: &Division| !cross(&by_word, division, seldom, drawn, least as usize);
            [by_learner, by_species.clone()].into_iter().find(tells).unwrap_or_default()
        }
    };
    let by_telling = match counter.kind {
        Kind::Noisy(..) => by_species.clone(),
        // Who tells hours, a stage, or a week, and who does not would cut every other cell in two.
        Kind::Plain => Division::default(),
    };
    let showings = |one: &Drawn| vec![SHOWINGS.bin(one.exposures, one.pressed)];
    let days = |one: &Drawn| vec![DAYS.bin(one.days, one.pressed)];
    Ok(Measured {
        showings: counter.table(Counted::Showings, drawn, &by_word, (SHOWINGS.bins(), &showings))?,
        days: counter.table(Counted::Days, drawn, &by_word, (DAYS.bins(), &days))?,
        joined: counter.table(Counted::Joined, drawn, &by_invited, (JOINED_BINS, &|one| vec![joined_bin(one)]))?,
        words: counter.table(Counted::Words, drawn, &by_species, (WORD_BINS, &word_bins))?,
        hours: counter.table(Counted::Hours, drawn, &by_telling, (HOURS_BINS, &|one| vec![hours_bin(one)]))?,
        stages: counter.table(Counted::Stages, drawn, &by_telling, (STAGES_BINS, &|one| vec![stages_bin(one)]))?,
        stretches: counter.table(Counted::Stretches, drawn, &by_telling, (Stretch::ALL.len(), &stretch))?,
        stretch_bar: counter.bar(Counted::Stretches),
        weeks: counter.table(Counted::Weeks, drawn, &by_telling, (WEEKS_BINS, &weeks_bin))?,
        sizes,
        sizes_noise,
        spent: counter.spent,
    })
}

/// Whether it was invited too seldom for a share.
fn seldom(one: &Drawn) -> bool {
    one.joined.1 < LEAST_INVITED
}

fn joined_bin(one: &Drawn) -> usize {
    if seldom(one) {
        return SHARE_STEPS;
    }
    let (joined, invited) = one.joined;
    // The step that ends at or above the share.
    let steps = u64::from(joined) * SHARE_STEPS as u64;
    usize::try_from(steps.div_ceil(u64::from(invited)).saturating_sub(1)).unwrap_or(0).min(SHARE_STEPS - 1)
}

fn hours_bin(one: &Drawn) -> usize {
    one.hours.map_or(DayPart::MANY, |part| usize::from(part.number()))
}

fn stages_bin(one: &Drawn) -> usize {
    let of = |stay: StageWait| stay.stage as usize * STAGE_BINS + STAGE_DAYS.bin(stay.days, stay.moved_on);
    one.stage.map_or(STAGES_BINS - 1, of)
}

fn stretch(one: &Drawn) -> Vec<usize> {
    one.week.iter().map(|week| week.from.number()).collect()
}

fn weeks_bin(one: &Drawn) -> Vec<usize> {
    let of = |week: &WeekPresses| week.from.number() * STRETCH_BINS + week.pressed as usize;
    one.week.iter().map(of).collect()
}

fn word_bins(one: &Drawn) -> Vec<usize> {
    let place = |kind: WordKind| WordKind::ALL.iter().position(|each| *each == kind).unwrap_or(0);
    let each = one.first_words.iter().enumerate();
    each.filter_map(|(number, kind)| kind.map(|kind| number * WordKind::ALL.len() + place(kind))).collect()
}
