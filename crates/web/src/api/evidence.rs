//! What the Evidence page says of an animal's words, as JSON: the same figures from the same functions.

use crate::error::Error;
use crate::page::AnimalPage;
use axum::Json;
use sayso_advisor::Estimate;
use sayso_advisor::claims::claims;
use sayso_advisor::stages::standings;
use sayso_methods::understanding::ladder::Verdict;
use sayso_model::{Moment, Stage, WordId};
use sayso_wording::claims::{by_ladder, of_animal};
use serde::Serialize;

/// What may be said, on one ladder or of the animal.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct SaidJson {
    /// Name of the rung.
    pub rung: String,
    /// In words.
    pub said: String,
    /// Observations behind it.
    pub n: u64,
    /// Since when it stands.
    pub since: Option<Moment>,
    /// When more was claimed than now, where words or checks that were added raised the bar.
    pub lapsed: Option<Moment>,
}

/// A figure with its 95 % interval.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct FigureJson {
    /// Best value; none where nothing was observed.
    pub value: Option<f64>,
    /// Lower end.
    pub low: Option<f64>,
    /// Upper end.
    pub high: Option<f64>,
    /// Observations.
    pub n: usize,
}

impl From<Estimate> for FigureJson {
    fn from(e: Estimate) -> Self {
        Self { value: e.value, low: e.low, high: e.high, n: e.n }
    }
}

/// One word.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct WordJson {
    /// Which.
    pub word: WordId,
    /// What its button says.
    pub says: String,
    /// The stage people work at.
    pub stage: Stage,
    /// The stage the figures point to.
    pub figures_say: Stage,
    /// Pressed, of wanted.
    pub pressed: FigureJson,
    /// Right, of presses.
    pub right: FigureJson,
    /// What chance is for that.
    pub chance: f64,
    /// Whether right presses are more than chance.
    pub above_chance: bool,
    /// What may be said about asking for the thing.
    pub asking: SaidJson,
    /// What may be said about knowing the spoken word.
    pub hearing: SaidJson,
}

/// An animal's evidence.
#[derive(Clone, PartialEq, Debug, Serialize)]
pub struct EvidenceJson {
    /// By word.
    pub words: Vec<WordJson>,
    /// Of the animal over all its words.
    pub animal: SaidJson,
}

fn said(v: Verdict, words: String) -> SaidJson {
    SaidJson { rung: format!("{:?}", v.rung), said: words, n: v.n, since: v.since, lapsed: v.lapsed }
}

/// `GET /api/evidence/{animal}`.
///
/// # Errors
/// [`Error::Refused`] where the records contradict themselves.
pub async fn show(page: AnimalPage) -> Result<Json<EvidenceJson>, Error> {
    let case = page.case();
    let found = claims(&case).map_err(|why| Error::refused("records", why))?;
    let words = standings(&case)
        .iter()
        .filter_map(|s| {
            let claim = found.of(s.word)?;
            let [(_, asking), (_, hearing)] = by_ladder(&page.locale, claim, &page.zone);
            Some(WordJson {
                word: s.word,
                says: s.says.clone(),
                stage: s.stage,
                figures_say: s.figures_say,
                pressed: s.response.into(),
                right: s.right.into(),
                chance: s.chance.level(),
                above_chance: s.above_chance,
                asking: said(claim.asking, asking),
                hearing: said(claim.hearing, hearing),
            })
        })
        .collect();
    let animal = said(found.animal.verdict, of_animal(&page.locale, &found.animal, &page.zone));
    Ok(Json(EvidenceJson { words, animal }))
}
