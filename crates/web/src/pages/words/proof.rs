//! The proof of a recording: the button is pressed once more, and the page says whether it was heard, and if not why.
//! Nothing is logged. Where the page cannot hear by itself, the notebook does it here.

use super::clip::{FIELD, refused};
use super::known;
use crate::assets::{EAR, asset};
use crate::error::Error;
use crate::page::AnimalPage;
use axum::Json;
use axum::body::Bytes;
use axum::extract::Path;
use maud::{Markup, html};
use sayso_listen::{ListenError, Proof, Stretches};
use sayso_model::WordCard;
use sayso_notebook::{NoVocabulary, cut as cut_by, prove as prove_by};
use sayso_wording::{say, words};

fn taken(page: &AnimalPage) -> Result<(), Error> {
    if page.state.takes_sound { Ok(()) } else { Err(Error::Forbidden(words!(enrol::no_sound_taken))) }
}

/// Hears a sound file in which the word's button was pressed once.
pub async fn prove(
    page: AnimalPage,
    Path((_, id)): Path<(String, String)>,
    sound: Bytes,
) -> Result<Json<Proof>, Error> {
    taken(&page)?;
    let card = known(&page, &id)?;
    let proof = prove_by(&page.state.store, &page.story, card.word, sound.to_vec()).await;
    proof.map(Json).map_err(|e| match e {
        NoVocabulary::Nothing(_) | NoVocabulary::Sound(ListenError::NoClips) => {
            Error::Unavailable(words!(listen::nothing_recorded))
        }
        NoVocabulary::Sound(e) => Error::refused(FIELD, e),
        NoVocabulary::Store(e) => e.into(),
        other => Error::internal(other),
    })
}

/// Cuts a sound file at its pauses.
pub async fn cut(page: AnimalPage, sound: Bytes) -> Result<Json<Stretches>, Error> {
    taken(&page)?;
    cut_by(sound.to_vec()).await.map(Json).map_err(|e| refused(e, &page.locale))
}

/// Where a script finds what it needs to judge sound: the engine's module, where there is one, and the notebook, where it
/// takes sound.
pub struct Judged {
    /// The module.
    pub module: Option<String>,
    /// What is listened for.
    pub vocabulary: String,
    /// Where sound goes that cannot be judged in the page.
    pub notebook: Option<String>,
}

impl Judged {
    /// For pages of this animal.
    pub fn by(page: &AnimalPage) -> Self {
        Self {
            module: sayso_ear::MODULE.is_some().then(|| asset(EAR)),
            vocabulary: format!("/a/{}/ear", page.id),
            notebook: page.state.takes_sound.then(|| format!("/a/{}/words", page.id)),
        }
    }
}

/// The proof of a word's recordings; `client/proof.js` makes it work. First thing to do where a recording was just kept.
pub fn section(page: &AnimalPage, card: &WordCard, kept: bool) -> Markup {
    let (l, judged) = (&page.locale, Judged::by(page));
    html! {
        section.card #proof data-proof=(card.word) data-says=(card.says) data-name=(page.card.name) data-kept[kept] data-test="proof"
            data-module=[judged.module] data-vocabulary=(judged.vocabulary) data-notebook=[judged.notebook] {
            h3.first { (say!(l, enrol::proof)) }
            p { (say!(l, enrol::proof_how, says = &card.says)) }
            p.hint { (say!(l, enrol::proof_care, name = &page.card.name)) " " (say!(l, hazards::battery)) }
            noscript { p.caution { (say!(l, enrol::no_script)) } }
        }
    }
}
