//! A home's notebook as page and command use it: opened, written into, its names found, its recordings enrolled and
//! listened for. Both faces do these things here, so that they do them alike.
//!
//! Stands on the store (which knows no sound) and on the ear (which knows no home). Never reads the clock: moments
//! are arguments.

mod diary;
mod keep;
mod names;
mod norms;
mod notebook;
mod pictures;
mod proof;
mod recordings;
mod speeds;
mod vocabulary;

pub use diary::{Diary, NotLogged, UNSURE};
pub use keep::{NotKept, Pen, keep};
pub use names::{NotNamed, animal_named, reward_named, word_named};
pub use norms::{CURRENT_NORMS, NoNorms, ReadNorms, keep_norms, kept_norms, read_norms};
pub use notebook::{NoNotebook, Notebook, existing};
pub use pictures::{NoPicture, look, picture, word_pictures};
pub use proof::{cut, prove};
pub use recordings::{Enrolment, NoSound, Recording, Replaces, enrol, recordings};
pub use speeds::speeds;
pub use vocabulary::{Listened, NoVocabulary, Vocabulary, vocabulary};
