//! The typeface, and text shaped by it: the same shapes for measuring and for drawing.

use krilla::text::{Font, GlyphId, KrillaGlyph};
use rustybuzz::{Direction, Face as Shaper, UnicodeBuffer};

/// Weights.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Weight {
    Regular,
    Bold,
}

struct Face {
    shaper: Shaper<'static>,
    font: Font,
    /// Drawn for what the typeface lacks; the text keeps what was written.
    stand_in: GlyphId,
    stand_in_advance: f32,
}

impl Face {
    fn new(bytes: &'static [u8]) -> Option<Self> {
        let shaper = Shaper::from_slice(bytes, 0)?;
        let stand_in = ['\u{fffd}', '?'].into_iter().find_map(|c| shaper.glyph_index(c))?;
        let advance = f32::from(shaper.glyph_hor_advance(stand_in)?) / units(&shaper);
        let font = Font::new(bytes.into(), 0)?;
        Some(Self { shaper, font, stand_in: GlyphId::new(stand_in.0.into()), stand_in_advance: advance })
    }
}

#[allow(clippy::cast_precision_loss)]
fn units(shaper: &Shaper<'_>) -> f32 {
    shaper.units_per_em() as f32
}

/// Regular and bold.
pub struct Faces {
    regular: Face,
    bold: Face,
}

/// A piece of text of one weight and size, shaped.
#[derive(Clone, Debug)]
pub struct Run {
    pub text: String,
    pub weight: Weight,
    pub size: f32,
    pub glyphs: Vec<KrillaGlyph>,
}

impl Run {
    /// Width, points.
    pub fn width(&self) -> f32 {
        self.size * self.glyphs.iter().map(|g| g.x_advance).sum::<f32>()
    }
}

/// Text of one weight.
pub type Span<'a> = (Weight, &'a str);

impl Faces {
    pub fn new() -> Option<Self> {
        Some(Self { regular: Face::new(notosans::REGULAR_TTF)?, bold: Face::new(notosans::BOLD_TTF)? })
    }

    const fn face(&self, weight: Weight) -> &Face {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }

    pub fn font(&self, weight: Weight) -> Font {
        self.face(weight).font.clone()
    }

    /// Shapes text, left to right.
    #[allow(clippy::cast_precision_loss)]
    pub fn run(&self, weight: Weight, size: f32, text: &str) -> Run {
        let face = self.face(weight);
        let mut buffer = UnicodeBuffer::new();
        buffer.push_str(text);
        buffer.guess_segment_properties();
        buffer.set_direction(Direction::LeftToRight);
        let shaped = rustybuzz::shape(&face.shaper, &[], buffer);
        let em = |x: i32| x as f32 / units(&face.shaper);
        let starts: Vec<usize> = shaped.glyph_infos().iter().map(|i| i.cluster as usize).collect();
        let glyphs = shaped.glyph_infos().iter().zip(shaped.glyph_positions()).map(|(info, at)| {
            let start = info.cluster as usize;
            let end = starts.iter().copied().filter(|s| *s > start).min().unwrap_or(text.len());
            let (id, advance) = match info.glyph_id {
                0 => (face.stand_in, face.stand_in_advance),
                id => (GlyphId::new(id), em(at.x_advance)),
            };
            KrillaGlyph::new(id, advance, em(at.x_offset), em(at.y_offset), 0.0, start..end, None)
        });
        Run { text: text.to_owned(), weight, size, glyphs: glyphs.collect() }
    }

    pub fn width(&self, weight: Weight, size: f32, text: &str) -> f32 {
        self.run(weight, size, text).width()
    }

    /// Breaks text into lines no wider than `width`. A line ends in its space, so that whoever reads the text of the PDF
    /// finds the words apart; a word wider than a line is broken.
    pub fn lines(&self, spans: &[Span<'_>], size: f32, width: f32) -> Vec<Vec<Run>> {
        let mut lines: Vec<Vec<(Weight, String)>> = vec![Vec::new()];
        let mut used = 0.0;
        for (weight, text) in spans {
            for word in clean(text).split_inclusive(' ') {
                for part in self.parts(*weight, size, word, width) {
                    let bare = self.width(*weight, size, part.trim_end());
                    if used > 0.0 && used + bare > width {
                        lines.push(Vec::new());
                        used = 0.0;
                    }
                    used += self.width(*weight, size, &part);
                    match lines.last_mut().and_then(|l| l.last_mut()) {
                        Some((last, text)) if last == weight => text.push_str(&part),
                        _ => lines.last_mut().into_iter().for_each(|l| l.push((*weight, part.clone()))),
                    }
                }
            }
        }
        let shaped = |line: Vec<(Weight, String)>| line.into_iter().map(|(w, text)| self.run(w, size, &text)).collect();
        lines.into_iter().map(shaped).collect()
    }

    /// A word whole, or in parts that fit a line.
    fn parts(&self, weight: Weight, size: f32, word: &str, width: f32) -> Vec<String> {
        if self.width(weight, size, word.trim_end()) <= width {
            return vec![word.to_owned()];
        }
        let mut parts = vec![String::new()];
        for c in word.chars() {
            let last = parts.last().map_or("", String::as_str);
            if !last.is_empty() && self.width(weight, size, &format!("{last}{c}")) > width {
                parts.push(String::new());
            }
            parts.last_mut().into_iter().for_each(|p| p.push(c));
        }
        parts
    }
}

/// Text as paper takes it: white space is one space; what a PDF may not hold as text is left out.
fn clean(text: &str) -> String {
    let kept: String = text
        .chars()
        .filter(|c| !matches!(c, '\u{feff}' | '\u{fffe}' | '\u{ffff}'))
        .map(|c| if c.is_control() { ' ' } else { c })
        .collect();
    // A count does not part from its sign.
    let kept = kept.replace("n = ", "n\u{a0}=\u{a0}");
    let words: Vec<&str> = kept.split(' ').filter(|w| !w.is_empty()).collect();
    let mut one = words.join(" ");
    if kept.ends_with(' ') && !one.is_empty() {
        one.push(' ');
    }
    one
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn the_typeface_has_every_letter_of_the_catalogues() {
        let faces = Faces::new().unwrap();
        let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../wording/catalogues");
        let mut seen = 0;
        for language in std::fs::read_dir(root).unwrap() {
            for file in std::fs::read_dir(language.unwrap().path()).unwrap() {
                let path = file.unwrap().path();
                // Signs of pages alone, such as a tick, never come on paper.
                let own = path.file_name().is_some_and(|name| name == "sheets.ftl");
                let text = std::fs::read_to_string(&path).unwrap();
                for c in text.chars().filter(|c| c.is_alphanumeric() || (own && !c.is_control())) {
                    for face in [&faces.regular, &faces.bold] {
                        assert!(face.shaper.glyph_index(c).is_some(), "{c:?} of {}", path.display());
                    }
                    seen += 1;
                }
            }
        }
        assert!(seen > 10_000);
    }

    #[test]
    fn lines_are_no_wider_than_asked_and_lose_nothing() {
        let faces = Faces::new().unwrap();
        let text = "Never give this to Tarn. Donaudampfschifffahrtsgesellschaftskapitän, and more words.";
        for width in [30.0, 60.0, 120.0, 500.0] {
            let lines = faces.lines(&[(Weight::Bold, "Care: "), (Weight::Regular, text)], 10.0, width);
            let all: String = lines.iter().flatten().map(|run| run.text.as_str()).collect();
            assert_eq!(all, format!("Care: {text}"));
            for line in &lines {
                let said: String = line.iter().map(|r| r.text.as_str()).collect();
                let space = faces.width(Weight::Regular, 10.0, " ");
                let wide: f32 = line.iter().map(Run::width).sum();
                assert!(wide <= width + space + 0.5, "{said:?} is {wide} wide, not {width}");
            }
        }
    }
}
