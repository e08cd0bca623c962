//! Pictures: looked at and stored. What is stored is what a browser will be given, so nothing else gets in.

use imagesize::ImageType;
use sayso_model::{MOST_PICTURE_BYTES, MOST_PICTURE_SIDE, MediaType, Picture, PictureCard, PictureOf, Unfit};
use sayso_store::{ClipHash, Store, StoreError};

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

/// Looks at a picture, stores its bytes and gives the card that says so, which is not in the log yet.
///
/// # Errors
/// [`NoPicture`].
pub async fn picture(store: &Store, of: PictureOf, bytes: Vec<u8>) -> Result<PictureCard, NoPicture> {
    let picture = look(&bytes).map_err(NoPicture::Unfit)?;
    store.put_clip(bytes).await?;
    Ok(PictureCard { of, picture: Some(picture) })
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
