//! Why something cannot be kept as a picture.

use crate::{Locale, say};
use sayso_model::{MOST_PICTURE_BYTES, MOST_PICTURE_SIDE, Unfit};

/// What is wrong with it and what would be right, to stand behind the field's name.
#[must_use]
pub fn unfit(locale: &Locale, unfit: Unfit) -> String {
    match unfit {
        Unfit::Empty => say!(locale, pictures::empty),
        Unfit::NoPicture => say!(locale, pictures::unreadable),
        Unfit::TooManyBytes(bytes) => {
            say!(locale, pictures::too_large, size = bytes.div_ceil(1000), most = MOST_PICTURE_BYTES / 1000)
        }
        Unfit::Size { width, height } => {
            say!(locale, pictures::too_wide, width = width, height = height, most = MOST_PICTURE_SIDE)
        }
        Unfit::CameraData => say!(locale, pictures::camera_data),
    }
}
