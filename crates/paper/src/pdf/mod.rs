//! A sheet as PDF: composed into strips, laid on pages, written with its structure for screen readers.

mod chart;
mod compose;
mod face;
mod picture;
mod strip;
mod table;
mod tree;
mod write;

use crate::sheet::Sheet;
use compose::Compose;
use face::Faces;
use picture::Pictures;
use sayso_model::WordId;
use sayso_wording::{Locale, Message, say};
use std::collections::BTreeMap;
use strip::{Strip, paginate};

/// Sizes of paper.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Paper {
    /// ISO 216 A4, 210 × 297 mm.
    #[default]
    A4,
    /// US Letter, 8.5 × 11 in.
    Letter,
}

impl Paper {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::A4, Self::Letter];

    /// Name for programs.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::A4 => "a4",
            Self::Letter => "letter",
        }
    }

    /// The paper of that name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|p| p.name() == name)
    }

    /// Width and height, points.
    const fn points(self) -> (f32, f32) {
        match self {
            Self::A4 => (210.0 * MM, 297.0 * MM),
            Self::Letter => (612.0, 792.0),
        }
    }
}

/// A millimetre in points.
const MM: f32 = 72.0 / 25.4;

/// Margin on all sides. Printers of homes leave at most a quarter of an inch unprinted (common practice, no source).
const MARGIN: f32 = 12.0 * MM;

/// Room for the foot above the lower margin, points.
const FOOT: f32 = 16.0;

/// Sizes that are tried until a sheet fits one page, the usual one first; text stays at 8 points or above.
const SCALES: [f32; 6] = [1.0, 0.92, 0.85, 0.8, 0.75, 0.7];

/// What could not be printed.
#[derive(Debug, thiserror::Error)]
pub enum PaperError {
    /// The typeface the program carries cannot be read.
    #[error("the typeface cannot be read")]
    Typeface,
    /// The document was refused by the writer, or would not have been readable by a screen reader.
    #[error("the PDF could not be written: {0}")]
    Refused(String),
}

impl Message for PaperError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Typeface => say!(l, sheets::no_typeface),
            Self::Refused(why) => say!(l, sheets::pdf_refused, why = why),
        }
    }
}

/// A sheet as PDF.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Printed {
    /// The file.
    pub bytes: Vec<u8>,
    /// Its pages.
    pub pages: usize,
    /// Words whose picture could not be read: they stand without one.
    pub unread: Vec<WordId>,
}

/// Draws a sheet on paper, with pictures of its words (bytes of JPEG, PNG or WebP). One page where that is enough, if need be in somewhat smaller type,
/// and then by its shorter forms.
///
/// # Errors
/// [`PaperError`] where the writer refuses the document.
pub fn pdf(sheet: &Sheet, paper: Paper, pictures: &BTreeMap<WordId, Vec<u8>>) -> Result<Printed, PaperError> {
    let faces = Faces::new().ok_or(PaperError::Typeface)?;
    let (pictures, unread) = Pictures::read(pictures);
    let (width, height) = paper.points();
    let room = (width - 2.0 * MARGIN, height - 2.0 * MARGIN - FOOT);
    let composed = |sheet: &Sheet, scale: f32| {
        let (strips, tree) = Compose::new(&faces, &pictures, &sheet.locale, scale).sheet(sheet, room);
        (paginate(strips, room.1), tree)
    };
    let fits = |sheet: &Sheet| SCALES.into_iter().map(|s| composed(sheet, s)).find(|(pages, _)| pages.len() == 1);
    let shorter = || sheet.shorter.iter().find_map(|blocks| fits(&Sheet { blocks: blocks.clone(), ..sheet.clone() }));
    let (pages, tree) = fits(sheet).or_else(shorter).unwrap_or_else(|| composed(sheet, SCALES[0]));
    let bytes = write::document(sheet, (&faces, &pictures), (width, height), &pages, tree)?;
    Ok(Printed { bytes, pages: pages.len(), unread })
}

/// Strips of a page with their distances from its top.
type Page = Vec<(f32, Strip)>;
