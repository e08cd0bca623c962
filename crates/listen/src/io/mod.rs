//! Sound in and out: files, sample streams, clips.

pub(crate) mod clip;
#[cfg(feature = "files")]
pub(crate) mod decode;
pub(crate) mod downmix;
pub(crate) mod pcm;
pub(crate) mod wav;
