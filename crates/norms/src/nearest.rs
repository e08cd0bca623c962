//! Which cell of a release tells of learners like this one.

use crate::cell::{Answer, Cell, Question};
use crate::curve::Curve;
use crate::kinds::{AgeBand, WordKind};
use crate::release::Release;
use crate::row::SummaryRow;
use sayso_model::Species;
use serde::{Deserialize, Serialize};

/// Whom a learner is to be laid beside.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Like {
    /// Its species.
    pub species: Species,
    /// Its age at the first showing.
    pub age_band: AgeBand,
    /// What the word brings; none where the question is not of one word.
    pub word_kind: Option<WordKind>,
}

impl Like {
    /// The learner and word of a row.
    #[must_use]
    pub const fn of(row: &SummaryRow) -> Self {
        Self { species: row.species, age_band: row.age_band, word_kind: Some(row.word_kind) }
    }
}

impl<'a> Nearest<'a> {
    /// The curve of the cell, where its question has one.
    #[must_use]
    pub const fn curve(&self) -> Option<&'a Curve> {
        match &self.cell.answer {
            Answer::Curve(curve) => Some(curve),
            Answer::Spread(_) | Answer::Parts(_) | Answer::Hours(_) | Answer::Weeks(_) => None,
        }
    }
}

/// The closest cell that there is.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Nearest<'a> {
    /// The cell.
    pub cell: &'a Cell,
    /// Whether it holds other ages too.
    pub any_age: bool,
    /// Whether it holds words of other kinds too, where one was asked for.
    pub any_kind: bool,
}

/// Too few households with a learner like this one: no cell of it, nor any wider one, was published.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
#[error("too few households with a learner like this one")]
pub struct NotEnough;

impl Release {
    /// The closest cell for a learner: of its age and of words of this kind; else of any age, for what a word brings says more of
    /// a wait than age; else of its age and any kind; else of its species. An unknown age is laid beside every age. A word that ends a session
    /// is laid beside such words alone: it is shown when something stops, and learned otherwise than a word that brings something.
    ///
    /// # Errors
    /// [`NotEnough`].
    pub fn cell_for(&self, question: Question, like: Like) -> Result<Nearest<'_>, NotEnough> {
        let age = Some(like.age_band).filter(|age| *age != AgeBand::Unknown);
        let kind = like.word_kind;
        let find = |age_band: Option<AgeBand>, word_kind: Option<WordKind>| {
            self.cells.iter().find(|cell| {
                cell.question == question
                    && cell.species == like.species
                    && cell.age_band == age_band
                    && cell.word_kind == word_kind
            })
        };
        let wider = kind != Some(WordKind::Closing);
        let cell = [(age, kind), (None, kind), (age, None), (None, None)]
            .into_iter()
            .filter(|(_, of)| wider || *of == kind)
            .find_map(|(age, kind)| find(age, kind))
            .ok_or(NotEnough)?;
        let any_kind = kind.is_some() && cell.word_kind.is_none();
        Ok(Nearest { cell, any_age: cell.age_band.is_none(), any_kind })
    }
}
