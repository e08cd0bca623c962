//! How large papers and labels are.

use crate::{DEMO, now, read};
use lopdf::content::Content;
use lopdf::{Document, Object, ObjectId};
use sayso_paper::{LabelSize, Paper, labels, rules};
use sayso_wording::Locale;

fn number(object: &Object) -> f32 {
    object.as_float().unwrap()
}

#[test]
fn papers_have_their_sizes() {
    let sheet = rules(&DEMO, now(), Locale::ENGLISH);
    for (paper, width, height) in [(Paper::A4, 595.28, 841.89), (Paper::Letter, 612.0, 792.0)] {
        let document = read(&sheet, paper);
        let page = document.get_dictionary(*document.get_pages().values().next().unwrap()).unwrap();
        let sides: Vec<f32> = page.get(b"MediaBox").unwrap().as_array().unwrap().iter().map(number).collect();
        assert!((sides[2] - width).abs() < 0.01 && (sides[3] - height).abs() < 0.01, "{sides:?}");
    }
}

/// Widths and heights of the frames on all pages, mm.
pub fn frames(document: &Document) -> Vec<(f32, f32)> {
    document.get_pages().values().flat_map(|page| frames_of(document, *page)).collect()
}

fn frames_of(document: &Document, page: ObjectId) -> Vec<(f32, f32)> {
    let content = Content::decode(&document.get_page_content(page)).unwrap();
    let (mut found, mut points) = (Vec::new(), Vec::<(f32, f32)>::new());
    for operation in &content.operations {
        let at: Vec<f32> = operation.operands.iter().filter_map(|o| o.as_float().ok()).collect();
        match operation.operator.as_str() {
            "re" => points = vec![(at[0], at[1]), (at[0] + at[2], at[1] + at[3])],
            "m" => points = vec![(at[0], at[1])],
            "l" => points.push((at[0], at[1])),
            "S" | "s" if points.len() != 2 || operation.operator == "S" => {
                let side = |of: fn(&(f32, f32)) -> f32| {
                    let values: Vec<f32> = points.iter().map(of).collect();
                    let most = values.iter().copied().fold(f32::MIN, f32::max);
                    (most - values.iter().copied().fold(f32::MAX, f32::min)) * 25.4 / 72.0
                };
                let sides = (side(|p| p.0), side(|p| p.1));
                if sides.0 > 1.0 && sides.1 > 1.0 {
                    found.push(sides);
                }
                points.clear();
            }
            _ => {}
        }
    }
    found
}

#[test]
fn labels_are_as_large_as_they_say() {
    for size in LabelSize::ALL {
        let sheet = labels(&DEMO, now(), Locale::ENGLISH, size);
        let found = frames(&read(&sheet, Paper::A4));
        let expected = DEMO.words().values().filter(|w| w.active).count();
        assert_eq!(found.len(), expected, "{size:?}");
        let (width, height) = size.mm();
        for (wide, high) in found {
            assert!((wide - f32::from(width)).abs() < 0.05, "{wide} mm wide, not {width}");
            assert!((high - f32::from(height)).abs() < 0.05, "{high} mm high, not {height}");
        }
    }
}
