//! Sound in and out: files, sample streams, clips.

pub(crate) mod clip;
#[cfg(feature = "files")]
mod codec;
#[cfg(feature = "files")]
pub(crate) mod decode;
pub(crate) mod downmix;
#[cfg(feature = "files")]
mod header;
#[cfg(feature = "files")]
mod kinds;
#[cfg(feature = "files")]
pub(crate) mod mono;
#[cfg(feature = "files")]
mod mp4;
pub(crate) mod pcm;
#[cfg(feature = "files")]
mod told;
pub(crate) mod wav;
