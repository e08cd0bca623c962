//! Pictures: looked at and stored. What is stored is what a browser will be given, so nothing else gets in.

use imagesize::ImageType;
use sayso_model::{
    MOST_PICTURE_BYTES, MOST_PICTURE_SIDE, MediaType, Picture, PictureCard, PictureOf, Story, Unfit, WordId,
};
use sayso_store::{ClipHash, Store, StoreError};
use std::collections::{BTreeMap, BTreeSet};

/// Why a picture was not kept.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum NoPicture {
    /// It cannot be kept as it is.
    #[error("unfit as a picture: {0:?}")]
    Unfit(Unfit),
    /// It cannot be stored.
    #[error(transparent)]
    Store(#[from] StoreError),
}

/// What a picture is, by its own header: a JPEG, PNG or WebP file within the bounds, without a camera's notes.
///
/// # Errors
/// [`Unfit`] otherwise.
pub fn look(bytes: &[u8]) -> Result<Picture, Unfit> {
    if bytes.is_empty() {
        return Err(Unfit::Empty);
    }
    if bytes.len() > MOST_PICTURE_BYTES {
        return Err(Unfit::TooManyBytes(bytes.len()));
    }
    let media_type = match imagesize::image_type(bytes) {
        Ok(ImageType::Jpeg) => MediaType::Jpeg,
        Ok(ImageType::Png) => MediaType::Png,
        Ok(ImageType::Webp) => MediaType::Webp,
        _ => return Err(Unfit::NoPicture),
    };
    let size = imagesize::blob_size(bytes).map_err(|_| Unfit::NoPicture)?;
    let side = |pixels: usize| {
        let fits = u16::try_from(pixels).ok().filter(|p| (1..=MOST_PICTURE_SIDE).contains(p));
        fits.ok_or(Unfit::Size { width: size.width, height: size.height })
    };
    let (width, height) = (side(size.width)?, side(size.height)?);
    if camera_data(media_type, bytes).ok_or(Unfit::NoPicture)? {
        return Err(Unfit::CameraData);
    }
    Ok(Picture { sha256: ClipHash::of(bytes).to_string(), media_type, width, height })
}

/// Bytes of the pictures of words, of those that have one here: a picture may come later than the card that tells of it.
///
/// # Errors
/// [`StoreError::BadClip`] where its bytes are damaged; [`StoreError::Io`].
pub async fn word_pictures(
    store: &Store,
    story: &Story,
    words: &BTreeSet<WordId>,
) -> Result<BTreeMap<WordId, Vec<u8>>, StoreError> {
    let mut found = BTreeMap::new();
    for word in words {
        let hash = story.picture_of(PictureOf::Word { word: *word }).and_then(|p| p.sha256.parse::<ClipHash>().ok());
        if let Some(hash) = hash
            && let Some(bytes) = store.clip(&hash).await?
        {
            found.insert(*word, bytes);
        }
    }
    Ok(found)
}

/// Looks at a picture, stores its bytes and gives the card that says so, which is not in the log yet.
///
/// # Errors
/// [`NoPicture`].
pub async fn picture(store: &Store, shows: PictureOf, bytes: Vec<u8>) -> Result<PictureCard, NoPicture> {
    let picture = look(&bytes).map_err(NoPicture::Unfit)?;
    store.put_clip(bytes).await?;
    Ok(PictureCard { shows, picture: Some(picture) })
}

/// Whether a part of the file holds Exif data; none where the parts end before the picture begins.
fn camera_data(media_type: MediaType, bytes: &[u8]) -> Option<bool> {
    match media_type {
        // Segments up to the scan (ISO/IEC 10918-1, annex B); Exif and XMP stand in APP1.
        MediaType::Jpeg => {
            let mut rest = bytes.get(2..)?;
            loop {
                let (marker, length) = match *rest {
                    [0xff, 0xff, ..] => {
                        rest = rest.get(1..)?;
                        continue;
                    }
                    [0xff, marker, high, low, ..] => (marker, usize::from(u16::from_be_bytes([high, low]))),
                    _ => return None,
                };
                match marker {
                    0xda => return Some(false),
                    0xe1 => return Some(true),
                    _ => rest = rest.get(2 + length..)?,
                }
            }
        }
        // Chunks of length, name, data and a check (ISO/IEC 15948, 5.3).
        MediaType::Png => {
            let mut rest = bytes.get(8..)?;
            loop {
                let [a, b, c, d, name @ ..] = rest else { return None };
                let length = usize::try_from(u32::from_be_bytes([*a, *b, *c, *d])).ok()?;
                match name.get(..4)? {
                    b"IEND" => return Some(false),
                    b"eXIf" => return Some(true),
                    _ => rest = rest.get(length.checked_add(12)?..)?,
                }
            }
        }
        // Chunks of name, length and data, filled up to an even length (RFC 9649, 2.3).
        MediaType::Webp => {
            let mut rest = bytes.get(12..)?;
            while let [n0, n1, n2, n3, a, b, c, d, data @ ..] = rest {
                if matches!(&[*n0, *n1, *n2, *n3], b"EXIF" | b"XMP ") {
                    return Some(true);
                }
                let length = usize::try_from(u32::from_le_bytes([*a, *b, *c, *d])).ok()?;
                rest = data.get(length.checked_next_multiple_of(2)?..).unwrap_or_default();
            }
            Some(false)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn jpeg(more: &[u8]) -> Vec<u8> {
        let mut bytes = b"\xff\xd8\xff\xe0\0\x10JFIF\0\x01\x01\0\0\x01\0\x01\0\0".to_vec();
        bytes.extend(more);
        // 8 bits, 30 down, 40 across, one component; then the scan.
        bytes.extend(b"\xff\xc0\0\x0b\x08\0\x1e\0\x28\x01\x01\x11\0\xff\xda\0\x08\x01\x01\0\0\x3f\0\0\xff\xd9");
        bytes
    }

    fn webp(more: &[u8]) -> Vec<u8> {
        // Lossless, 14 bits each for one less than 40 across and 30 down.
        let mut bytes = b"RIFF\0\0\0\0WEBPVP8L\x06\0\0\0\x2f\x27\x40\x07\0\0".to_vec();
        bytes.extend(more);
        let size = u32::try_from(bytes.len() - 8).unwrap_or_default();
        bytes.splice(4..8, size.to_le_bytes());
        bytes
    }

    #[test]
    fn jpeg_and_webp_are_told_by_their_headers() {
        for (bytes, media_type) in [(jpeg(b""), MediaType::Jpeg), (webp(b""), MediaType::Webp)] {
            let seen = look(&bytes).map(|p| (p.media_type, p.width, p.height));
            assert_eq!(seen, Ok((media_type, 40, 30)));
        }
        assert_eq!(look(b""), Err(Unfit::Empty));
        assert_eq!(look(b"RIFF\0\0\0\0WAVE"), Err(Unfit::NoPicture));
        assert_eq!(look(b"<svg xmlns=\"http://www.w3.org/2000/svg\"/>"), Err(Unfit::NoPicture));
    }

    #[test]
    fn what_a_camera_wrote_beside_the_picture_is_found() {
        for bytes in
            [jpeg(b"\xff\xe1\0\x0aExif\0\0MM"), webp(b"EXIF\x02\0\0\0MM"), webp(b"ICCP\x01\0\0\0x\0XMP \x01\0\0\0x\0")]
        {
            assert_eq!(look(&bytes), Err(Unfit::CameraData));
        }
        assert!(look(&webp(b"ICCP\x01\0\0\0x\0")).is_ok());
    }

    #[test]
    fn every_cut_ends_without_panic() {
        for whole in [jpeg(b"\xff\xe2\0\x04ab"), webp(b"ICCP\x01\0\0\0x\0")] {
            for end in 0..whole.len() {
                let _ = look(&whole[..end]);
            }
        }
    }
}
