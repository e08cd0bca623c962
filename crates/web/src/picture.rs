//! Pictures of animals, rewards and words where they stand beside a name.

use maud::{Markup, PreEscaped, html};
use sayso_model::{Picture, PictureOf, RewardId, RewardKind, Story};

/// Where a thing's picture is served; a word without one of its own shows what is given for it.
#[must_use]
pub fn address(story: &Story, of: PictureOf) -> Option<String> {
    story.picture_of(of).map(at)
}

/// Where a picture is served.
#[must_use]
pub fn at(picture: &Picture) -> String {
    format!("/pictures/{}", picture.sha256)
}

/// The picture of a thing to stand beside its name: a photo, or a drawing of its kind for a reward, or nothing. The name
/// says it all, so screen readers pass over it.
#[must_use]
pub fn of(story: &Story, of: PictureOf) -> Markup {
    html! {
        @match story.picture_of(of) {
            Some(p) => img.picture src=(at(p)) width=(p.width) height=(p.height) alt="";
            None => @if let PictureOf::Reward { reward } = of { (drawing(story, reward)) }
        }
    }
}

fn drawing(story: &Story, reward: RewardId) -> Markup {
    let lines = story.rewards().get(&reward).map(|r| lines(r.kind));
    html! {
        @if let Some(lines) = lines {
            svg.picture viewBox="0 0 48 48" aria-hidden="true" focusable="false" { (PreEscaped(lines)) }
        }
    }
}

/// Drawn in the colour of the text around.
const fn lines(kind: RewardKind) -> &'static str {
    match kind {
        // A bowl with something in it.
        RewardKind::Food => {
            r#"<path d="M6 25h36l-5 14H11z"/><circle cx="17" cy="18" r="4"/><circle cx="27" cy="15" r="4"/><circle cx="34" cy="20" r="3"/>"#
        }
        // A rope with a knot at each end.
        RewardKind::Play => {
            r#"<path d="M13 35 35 13"/><circle cx="10" cy="38" r="4"/><circle cx="38" cy="10" r="4"/><path d="m4 39-1 5 5-1M39 4l5-1-1 5"/>"#
        }
        // A brush.
        RewardKind::Touch => {
            r#"<rect x="6" y="14" width="36" height="9" rx="4"/><path d="M10 23v9M15 23v9M20 23v9M25 23v9M30 23v9M35 23v9"/>"#
        }
        // A bar to go over.
        RewardKind::Training => r#"<path d="M10 42V24M38 42V24M10 30h28M6 22c8-16 28-16 36 0M42 22l-1-7M42 22l-7-2"/>"#,
        // A tree on a hill.
        RewardKind::Exploring => {
            r#"<path d="M4 40c10-9 30-9 40 0"/><path d="M24 33V22"/><circle cx="24" cy="14" r="9"/>"#
        }
        // A cushion under the moon.
        RewardKind::Rest => {
            r#"<rect x="5" y="29" width="38" height="12" rx="6"/><path d="M30 7a9 9 0 1 0 8 13 8 8 0 0 1-8-13z"/>"#
        }
    }
}
