//! Pictures of words, read once, drawn beside what the word says.

use krilla::Data;
use krilla::image::Image;
use sayso_model::WordId;
use std::collections::BTreeMap;

/// Pictures by the word they show.
#[derive(Default)]
pub struct Pictures(BTreeMap<WordId, Image>);

impl Pictures {
    /// Reads JPEG, PNG and WebP; gives also the words whose picture cannot be read.
    pub fn read(files: &BTreeMap<WordId, Vec<u8>>) -> (Self, Vec<WordId>) {
        let (mut read, mut unread) = (BTreeMap::new(), Vec::new());
        for (word, bytes) in files {
            match image(bytes) {
                Some(image) => {
                    read.insert(*word, image);
                }
                None => unread.push(*word),
            }
        }
        (Self(read), unread)
    }

    /// The picture of a word.
    pub fn of(&self, word: WordId) -> Option<&Image> {
        self.0.get(&word)
    }

    /// Width and height of a word's picture where it fills a room one way and lies inside it the other way.
    pub fn inside(&self, word: WordId, (width, height): (f32, f32)) -> Option<(f32, f32)> {
        // A side has at most a thousand or so pixels, which are exact.
        #[allow(clippy::cast_precision_loss)]
        let (wide, high) = self.of(word).map(|image| (image.size().0 as f32, image.size().1 as f32))?;
        let scale = (width / wide).min(height / high);
        Some((wide * scale, high * scale))
    }
}

/// A picture by its first bytes (ISO/IEC 10918-1; ISO/IEC 15948; RFC 9649).
fn image(bytes: &[u8]) -> Option<Image> {
    let data: Data = bytes.to_vec().into();
    // Smoothed where it is drawn larger than it is.
    const SMOOTH: bool = true;
    match bytes {
        [0xff, 0xd8, ..] => Image::from_jpeg(data, SMOOTH).ok(),
        [0x89, b'P', b'N', b'G', ..] => Image::from_png(data, SMOOTH).ok(),
        [b'R', b'I', b'F', b'F', _, _, _, _, b'W', b'E', b'B', b'P', ..] => Image::from_webp(data, SMOOTH).ok(),
        _ => None,
    }
}
