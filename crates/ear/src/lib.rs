//! The engine of `sayso-listen` for pages: the same detector as WebAssembly, which hears on the phone itself.
//!
//! Built for a machine this crate carries the module that `build.rs` made of it; built for a page it is that module.

mod ear;
#[cfg(target_arch = "wasm32")]
#[allow(unsafe_code)]
mod exports;

pub use ear::{Ear, PRESS};

/// The module; none where the build had no target for it.
#[cfg(not(target_arch = "wasm32"))]
pub const MODULE: Option<&[u8]> = include!(concat!(env!("OUT_DIR"), "/module.rs"));
