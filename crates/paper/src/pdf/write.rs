//! Pages written as PDF.

use super::face::{Faces, Weight};
use super::picture::Pictures;
use super::strip::{Grey, Ink, Mark, SOFT};
use super::tree::{Branch, tag_tree};
use super::{FOOT, MARGIN, Page, PaperError};
use crate::sheet::Sheet;
use krilla::color::luma;
use krilla::configure::ConfigurationBuilder;
use krilla::configure::validate::Accessibility;
use krilla::destination::XyzDestination;
use krilla::geom::{Path, PathBuilder, Point, Rect, Size, Transform};
use krilla::metadata::{DateTime, Metadata};
use krilla::num::NormalizedF32;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, Identifier};
use krilla::{Document, SerializeSettings};
use sayso_model::{Moment, Zone};
use sayso_wording::say;

/// What ink is drawn with.
type With<'a> = (&'a Faces, &'a Pictures);

/// Writes the document, checked as it is written for what PDF/UA-1 asks of a file.
pub fn document(
    sheet: &Sheet,
    with: With<'_>,
    (width, height): (f32, f32),
    pages: &[Page],
    tree: Vec<Branch>,
) -> Result<Vec<u8>, PaperError> {
    let refused = |why: &dyn std::fmt::Debug| PaperError::Refused(format!("{why:?}"));
    let configuration = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|why| refused(&why))?;
    let mut document = Document::new_with(SerializeSettings { configuration, ..SerializeSettings::default() });
    let mut drawn: Vec<Vec<Identifier>> = Vec::new();
    let mut outline = Outline::new();
    for (number, page) in pages.iter().enumerate() {
        let settings = PageSettings::from_wh(width, height)
            .ok_or_else(|| PaperError::Refused(format!("{width} \u{d7} {height}")))?;
        let mut on = document.start_page_with(settings);
        let mut surface = on.surface();
        inks(&mut surface, with, page, &mut drawn);
        foot(&mut surface, sheet, with, height, (number, pages.len()));
        surface.finish();
        on.finish();
        for (y, strip) in page {
            if let Some(text) = &strip.heading {
                let at = XyzDestination::new(number, Point::from_xy(MARGIN, MARGIN + y));
                outline.push_child(OutlineNode::new(text.clone(), at));
            }
        }
    }
    let language = sheet.locale.tag();
    document.set_tag_tree(tag_tree(tree, drawn, language));
    document.set_outline(outline);
    document.set_metadata(
        Metadata::new()
            .title(sheet.title.clone())
            .language(language.to_owned())
            .creator(CREATOR.to_owned())
            .creation_date(date(sheet.made)),
    );
    document.finish().map_err(|why| refused(&why))
}

/// The program's own name.
const CREATOR: &str = "Sayso";

fn date(at: Moment) -> DateTime {
    let utc = Zone::utc();
    let ((year, month, day), [hour, minute, second]) = (at.day(&utc).parts(), at.clock(&utc));
    DateTime::new(u16::try_from(year).unwrap_or(0))
        .month(month)
        .day(day)
        .hour(hour)
        .minute(minute)
        .second(second)
        .utc_offset_hour(0)
        .utc_offset_minute(0)
}

/// Draws a page's inks; what follows each other under one mark is one piece.
fn inks(surface: &mut Surface<'_>, with: With<'_>, page: &Page, drawn: &mut Vec<Vec<Identifier>>) {
    let mut open: Option<Mark> = None;
    for (y, strip) in page {
        for (mark, ink) in &strip.inks {
            if open != Some(*mark) {
                if open.is_some() {
                    surface.end_tagged();
                }
                match mark {
                    None => {
                        surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(ArtifactType::Layout)));
                    }
                    Some(leaf) => {
                        let id = surface.start_tagged(ContentTag::Other);
                        if drawn.len() <= leaf.0 {
                            drawn.resize_with(leaf.0 + 1, Vec::new);
                        }
                        drawn[leaf.0].push(id);
                    }
                }
                open = Some(*mark);
            }
            draw(surface, with, ink, (MARGIN, MARGIN + y));
        }
    }
    if open.is_some() {
        surface.end_tagged();
    }
}

fn foot(surface: &mut Surface<'_>, sheet: &Sheet, with: With<'_>, height: f32, (number, of): (usize, usize)) {
    let (l, foot) = (&sheet.locale, &sheet.foot);
    let text = if of > 1 {
        say!(l, sheets::foot_page, home = &foot.home, day = &foot.day, page = number + 1, of = of)
    } else {
        say!(l, sheets::foot, home = &foot.home, day = &foot.day)
    };
    surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(ArtifactType::Footer)));
    let run = with.0.run(Weight::Regular, 0.5 * FOOT, &text);
    draw(surface, with, &Ink::Text { x: 0.0, y: 0.0, run, grey: SOFT }, (MARGIN, height - MARGIN));
    surface.end_tagged();
}

fn fill(grey: Grey) -> Fill {
    Fill { paint: luma::Color::new(grey).into(), opacity: NormalizedF32::ONE, ..Fill::default() }
}

fn draw(surface: &mut Surface<'_>, (faces, pictures): With<'_>, ink: &Ink, (dx, dy): (f32, f32)) {
    let stroke = |width: f32, grey: Grey, dashed: bool| Stroke {
        paint: luma::Color::new(grey).into(),
        width,
        dash: dashed.then(|| StrokeDash { array: vec![2.0, 2.0], offset: 0.0 }),
        ..Stroke::default()
    };
    let mut shape = |filled: Option<Fill>, stroked: Option<Stroke>, path: Option<Path>| {
        surface.set_fill(filled);
        surface.set_stroke(stroked);
        if let Some(path) = path {
            surface.draw_path(&path);
        }
    };
    match ink {
        Ink::Text { x, y, run, grey } => {
            surface.set_fill(Some(fill(*grey)));
            surface.set_stroke(None);
            let at = Point::from_xy(dx + x, dy + y);
            surface.draw_glyphs(at, &run.glyphs, faces.font(run.weight), &run.text, run.size, false);
        }
        Ink::Line { from, to, width, grey, dashed } => {
            let mut path = PathBuilder::new();
            path.move_to(dx + from.0, dy + from.1);
            path.line_to(dx + to.0, dy + to.1);
            shape(None, Some(stroke(*width, *grey, *dashed)), path.finish());
        }
        Ink::Bar { x, y, width, height, grey } => {
            shape(Some(fill(*grey)), None, rectangle(dx + x, dy + y, *width, *height));
        }
        Ink::Frame { x, y, width, height, line } => {
            shape(None, Some(stroke(*line, 0, false)), rectangle(dx + x, dy + y, *width, *height));
        }
        Ink::Picture { x, y, width, height, word } => {
            if let (Some(image), Some(size)) = (pictures.of(*word), Size::from_wh(*width, *height)) {
                surface.push_transform(&Transform::from_translate(dx + x, dy + y));
                surface.draw_image(image.clone(), size);
                surface.pop();
            }
        }
        Ink::Dot { x, y, radius } => shape(Some(fill(0)), None, circle(dx + x, dy + y, *radius)),
    }
}

/// A rectangle; none where it has no height.
fn rectangle(x: f32, y: f32, width: f32, height: f32) -> Option<Path> {
    let mut path = PathBuilder::new();
    path.push_rect(Rect::from_xywh(x, y, width, height)?);
    path.finish()
}

/// A circle of four curves.
fn circle(x: f32, y: f32, r: f32) -> Option<Path> {
    // Distance of the handles of a quarter of a circle.
    let k = 0.552_284_8 * r;
    let mut path = PathBuilder::new();
    path.move_to(x + r, y);
    path.cubic_to(x + r, y + k, x + k, y + r, x, y + r);
    path.cubic_to(x - k, y + r, x - r, y + k, x - r, y);
    path.cubic_to(x - r, y - k, x - k, y - r, x, y - r);
    path.cubic_to(x + k, y - r, x + r, y - k, x + r, y);
    path.close();
    path.finish()
}
