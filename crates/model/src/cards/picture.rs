//! Pictures of animals, rewards and words.

use crate::event::{About, Content, Does};
use crate::fault::Fault;
use crate::findings::Findings;
use crate::id::{AnimalId, RewardId, WordId};
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// The most bytes a picture may have; one of [`MOST_PICTURE_SIDE`] is sharp with a third of it.
pub const MOST_PICTURE_BYTES: usize = 300_000;
/// The most pixels along a picture's longer side.
pub const MOST_PICTURE_SIDE: u16 = 1024;

/// What a picture shows.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "what", rename_all = "snake_case", deny_unknown_fields)]
pub enum PictureOf {
    /// An animal.
    Animal {
        /// Which.
        animal: AnimalId,
    },
    /// Something an animal may want.
    Reward {
        /// Which.
        reward: RewardId,
    },
    /// What a word stands for.
    Word {
        /// Which.
        word: WordId,
    },
}

impl PictureOf {
    const fn id(self) -> Uuid {
        match self {
            Self::Animal { animal } => animal.0,
            Self::Reward { reward } => reward.0,
            Self::Word { word } => word.0,
        }
    }

    /// The animal it shows, if it shows one.
    #[must_use]
    pub const fn animal(self) -> Option<AnimalId> {
        match self {
            Self::Animal { animal } => Some(animal),
            Self::Reward { .. } | Self::Word { .. } => None,
        }
    }

    const fn word(self) -> Option<WordId> {
        match self {
            Self::Word { word } => Some(word),
            Self::Animal { .. } | Self::Reward { .. } => None,
        }
    }
}

/// How a picture is written down. No SVG: that can hold scripts.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum MediaType {
    /// JPEG (ISO/IEC 10918-1).
    #[serde(rename = "image/jpeg")]
    Jpeg,
    /// PNG (ISO/IEC 15948).
    #[serde(rename = "image/png")]
    Png,
    /// WebP (RFC 9649).
    #[serde(rename = "image/webp")]
    Webp,
}

impl MediaType {
    /// The name on the wire, as a browser wants it.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Jpeg => "image/jpeg",
            Self::Png => "image/png",
            Self::Webp => "image/webp",
        }
    }
}

/// A picture whose bytes are stored.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Picture {
    /// SHA-256 of the stored file, in hexadecimal.
    pub sha256: String,
    /// How it is written down.
    pub media_type: MediaType,
    /// Pixels across.
    pub width: u16,
    /// Pixels down.
    pub height: u16,
}

/// The picture of a thing, or that it has none any more. The newest of the same thing counts.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PictureCard {
    /// What it shows.
    pub shows: PictureOf,
    /// The picture; none where it was taken away.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub picture: Option<Picture>,
}

/// Why bytes cannot be kept as a picture.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Unfit {
    /// There are none.
    Empty,
    /// More than [`MOST_PICTURE_BYTES`].
    TooManyBytes(usize),
    /// Neither JPEG, PNG nor WebP, or cut short before its size is told.
    NoPicture,
    /// Of no pixels, or more than [`MOST_PICTURE_SIDE`] along a side.
    Size {
        /// Pixels across.
        width: usize,
        /// Pixels down.
        height: usize,
    },
    /// Holds what a camera writes beside a picture (Exif), such as where it was taken.
    CameraData,
}

impl Content for PictureCard {
    fn about(&self) -> About<'_> {
        About {
            session: None,
            word: self.shows.word(),
            needs_animal: false,
            as_recorded: false,
            does: Does::Sets(Some(self.shows.id())),
        }
    }
    fn check(&self, found: &mut Findings) {
        let Some(picture) = &self.picture else { return };
        if picture.sha256.len() != 64 || !picture.sha256.bytes().all(|b| b.is_ascii_hexdigit()) {
            found.wrong("picture.sha256", Fault::NotAHash);
        }
        for (field, pixels) in [("picture.width", picture.width), ("picture.height", picture.height)] {
            if !(1..=MOST_PICTURE_SIDE).contains(&pixels) {
                found.wrong(field, Fault::range(1_u32, MOST_PICTURE_SIDE, pixels));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_picture_card_says_is_checked() {
        let card = |sha256: &str, width, height| PictureCard {
            shows: PictureOf::Word { word: WordId(Uuid::nil()) },
            picture: Some(Picture { sha256: sha256.to_owned(), media_type: MediaType::Webp, width, height }),
        };
        let wrong = |card: &PictureCard| {
            let mut found = Findings::default();
            card.check(&mut found);
            found.told().err().map_or(0, |p| p.0.len())
        };
        let hash = "0123456789abcdef".repeat(4);
        assert_eq!(wrong(&card(&hash, 512, 384)), 0);
        assert_eq!(wrong(&card(&hash, 0, MOST_PICTURE_SIDE + 1)), 2);
        assert_eq!(wrong(&card("../../etc/passwd", 1, 1)), 1);
        assert_eq!(wrong(&PictureCard { picture: None, ..card(&hash, 1, 1) }), 0);
    }
}
