//! Who can see a home, consent, people, leaving, the server and clubs: by their pages, on a database, with real sessions.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod agreed;
mod begun;
mod beside;
mod calendar;
mod caseload;
mod closing;
#[path = "../../../../tests/postgres/cluster.rs"]
mod cluster;
mod colleagues;
mod consent;
mod desk;
mod empty;
mod files;
mod followed;
#[path = "../../../../tests/postgres/fresh.rs"]
mod fresh;
mod handed;
mod homeless;
mod house;
mod invitations;
mod late;
mod leaving;
mod linked;
mod looks;
mod norms;
// Its letters with one link are those of another test.
#[allow(dead_code)]
#[path = "../signing/post.rs"]
mod post;
mod practice;
mod programmes;
mod rescue;
mod restored;
mod roles;
mod server;
mod talk;
mod tidings;
mod turns;
