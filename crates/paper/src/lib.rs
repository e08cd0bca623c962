//! Sheets to print: what they say, once for the page and for the paper ([`Sheet`]), and the PDF drawn from it ([`pdf()`]),
//! tagged for screen readers (PDF/UA-1, ISO 14289-1), in black, white and grey.
//!
//! Takes typed values of the floors below, gives values and bytes: no I/O; the moment and the reader are arguments. Equal
//! sheets give equal bytes.

mod content;
mod pdf;
mod sheet;

pub use content::{
    KIT_DISTANCES_M, LENGTHS, check_scorer, check_setter, kit, labels, lessons, likes, meeting, progress, rules,
};
pub use pdf::{Paper, PaperError, Printed, pdf};
pub use sheet::{
    Bar, Block, Cell, Chart, Drawn, Foot, LabelSize, LabelText, Look, Paragraph, Rest, Row, Sheet, Table, Whisker,
};
