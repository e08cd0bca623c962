//! Strips: what cannot be broken across pages, and how they are laid on pages.

use super::Page;
use super::face::Run;
use super::tree::Leaf;
use sayso_model::WordId;

/// Lightness of ink, 0 black to 255 white. Only greys: nothing is said by colour.
pub type Grey = u8;
pub const BLACK: Grey = 0;
pub const SOFT: Grey = 70;
pub const RULE: Grey = 160;
pub const FILL: Grey = 110;

/// Something drawn; distances in points from the strip's upper left corner.
#[derive(Clone, Debug)]
pub enum Ink {
    /// Text, its baseline's start.
    Text { x: f32, y: f32, run: Run, grey: Grey },
    /// A line.
    Line { from: (f32, f32), to: (f32, f32), width: f32, grey: Grey, dashed: bool },
    /// A filled rectangle.
    Bar { x: f32, y: f32, width: f32, height: f32, grey: Grey },
    /// A frame.
    Frame { x: f32, y: f32, width: f32, height: f32, line: f32 },
    /// A dot.
    Dot { x: f32, y: f32, radius: f32 },
    /// The picture of a word.
    Picture { x: f32, y: f32, width: f32, height: f32, word: WordId },
}

impl Ink {
    fn moved(mut self, dx: f32, dy: f32) -> Self {
        match &mut self {
            Self::Text { x, y, .. }
            | Self::Bar { x, y, .. }
            | Self::Frame { x, y, .. }
            | Self::Dot { x, y, .. }
            | Self::Picture { x, y, .. } => {
                *x += dx;
                *y += dy;
            }
            Self::Line { from, to, .. } => {
                *from = (from.0 + dx, from.1 + dy);
                *to = (to.0 + dx, to.1 + dy);
            }
        }
        self
    }
}

/// What of the sheet's structure something belongs to; none where it only adorns.
pub type Mark = Option<Leaf>;

/// What cannot be broken.
#[derive(Clone, Debug, Default)]
pub struct Strip {
    pub height: f32,
    pub inks: Vec<(Mark, Ink)>,
    /// Stands on the page of the next strip, as a heading does.
    pub with_next: bool,
    /// A heading: its place in the outline.
    pub heading: Option<String>,
}

impl Strip {
    pub fn space(height: f32) -> Self {
        Self { height, ..Self::default() }
    }

    pub fn draw(&mut self, mark: Mark, ink: Ink) {
        self.inks.push((mark, ink));
    }

    /// Takes in what another holds, moved.
    pub fn take(&mut self, other: Self, dx: f32, dy: f32) {
        self.inks.extend(other.inks.into_iter().map(|(mark, ink)| (mark, ink.moved(dx, dy))));
    }
}

/// Height of strips one under the other.
pub fn height(strips: &[Strip]) -> f32 {
    strips.iter().map(|s| s.height).sum()
}

/// Strips one under the other, as one.
pub fn stacked(strips: Vec<Strip>, into: &mut Strip, dx: f32, dy: f32) {
    let mut y = dy;
    for strip in strips {
        let height = strip.height;
        into.take(strip, dx, y);
        y += height;
    }
}

/// Lays strips on pages of this height. Space at the head of a page is dropped.
pub fn paginate(strips: Vec<Strip>, room: f32) -> Vec<Page> {
    let mut pages: Vec<Page> = vec![Vec::new()];
    let mut y = 0.0;
    // What stays together with what follows it, down to the first that may be parted from the next.
    let together: Vec<f32> = (0..strips.len())
        .map(|at| {
            let chain = strips[at..].iter().take_while(|s| s.with_next).count();
            let all = height(&strips[at..strips.len().min(at + chain + 1)]);
            // More than a page holds is parted anywhere but right below a heading.
            if all <= room { all } else { height(&strips[at..strips.len().min(at + 1 + chain.min(1))]) }
        })
        .collect();
    for (strip, together) in strips.into_iter().zip(together) {
        let empty = strip.inks.is_empty();
        // Half a point for what rounding adds up to. Space at the foot of a page may run over.
        if !empty && y > 0.0 && y + together > room + 0.5 {
            pages.push(Vec::new());
            y = 0.0;
        }
        if empty && y == 0.0 {
            continue;
        }
        let height = strip.height;
        pages.last_mut().into_iter().for_each(|page| page.push((y, strip.clone())));
        y += height;
    }
    pages
}
