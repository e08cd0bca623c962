//! Drawings of the lessons: our own, lines in the colour of the text, a file each. Parts with a class move once, where the
//! style sheet says so.

use maud::{Markup, PreEscaped, html};

/// Every drawing, by the short name of its lesson.
const DRAWINGS: [(&str, &str); 16] = [
    ("board", include_str!("board.svg")),
    ("wants", include_str!("wants.svg")),
    ("first-words", include_str!("first-words.svg")),
    ("recording", include_str!("recording.svg")),
    ("placing", include_str!("placing.svg")),
    ("showing", include_str!("showing.svg")),
    ("coming-going", include_str!("coming-going.svg")),
    ("body", include_str!("body.svg")),
    ("brushed", include_str!("brushed.svg")),
    ("own-way", include_str!("own-way.svg")),
    ("ready", include_str!("ready.svg")),
    ("inviting", include_str!("inviting.svg")),
    ("not-now", include_str!("not-now.svg")),
    ("closing", include_str!("closing.svg")),
    ("stuck", include_str!("stuck.svg")),
    ("wishing", include_str!("wishing.svg")),
];

/// The drawing of a lesson, told in words for who does not see it.
pub fn drawing(lesson: &str, told: &str) -> Markup {
    let svg = DRAWINGS.iter().find(|(id, _)| *id == lesson).map_or("", |(_, svg)| svg);
    html! { div.drawing role="img" aria-label=(told) { (PreEscaped(svg)) } }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::facts::lessons;

    #[test]
    fn every_lesson_has_one_drawing_and_no_drawing_is_over() {
        let of_lessons: Vec<&str> = lessons().iter().map(|l| l.id.as_str()).collect();
        assert_eq!(DRAWINGS.map(|(id, _)| id).to_vec(), of_lessons);
    }

    #[test]
    fn drawings_are_lines_in_the_colour_of_the_text_and_hold_nothing_else() {
        for (id, svg) in DRAWINGS {
            assert!(svg.contains("stroke=\"currentColor\"") && svg.contains("viewBox=\"0 0 320 160\""), "{id}");
            for other in ["style", "script", "href", "#", "rgb", "<text", "<image"] {
                let plain = svg.replace("http://www.w3.org/2000/svg", "");
                assert!(!plain.contains(other), "{id}: {other}");
            }
            let told = drawing(id, "What it shows").into_string();
            assert!(told.contains("aria-label=\"What it shows\"") && told.contains("<path"), "{id}");
        }
    }
}
