//! The pages in a real headless Chromium at phone size, against the real binary.
//!
//! Needs `chromium` and `chromedriver` on the path and axe-core under `tests/node_modules`; `.ci/install` brings them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod accessibility;
mod again;
mod asked;
mod board;
mod by_keys;
mod calmly;
mod caseload;
mod charts;
#[path = "../postgres/cluster.rs"]
mod cluster;
mod drawn;
mod ear;
mod every_page;
mod first;
mod focus;
mod hand;
mod harness;
mod heard;
mod homescreen;
mod hosted;
mod invitation;
mod joining;
mod killed;
mod kit;
mod large;
mod learn;
mod left;
mod likes;
mod linked;
mod listen;
mod mat;
mod meeting;
mod others;
mod outbox;
mod pad;
mod phone;
mod pictures;
// Its letters with one link are those of another test.
#[allow(dead_code)]
#[path = "../../crates/host/tests/signing/post.rs"]
mod post;
mod printed;
mod recorder;
mod rehearse;
mod resting;
mod secure;
mod served;
mod session;
#[path = "../../crates/listen/tests/common/mod.rs"]
mod sounds;
mod talking;
mod tidings;
mod tour;
mod warned;
mod whole;
