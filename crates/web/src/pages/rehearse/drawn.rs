//! The room from above and whoever is in it: our own lines in the colour of the text. The script moves what has a `data-part`.

use maud::{Markup, PreEscaped, html};
use sayso_model::Species;
use sayso_sim::rehearsal::{BED, BOARD, DOOR, Exercise, GIVEN, PERSON, ROOM, Setup, Spot, Thing};
use sayso_wording::{Locale, say};

const DOG: &str = include_str!("animals/dog.svg");
const CAT: &str = include_str!("animals/cat.svg");
const PARROT: &str = include_str!("animals/parrot.svg");
/// Units of the room between the middle and a thing held out.
const HANDS: f64 = 44.0;

const fn shape(species: Species) -> &'static str {
    match species {
        Species::Cat => CAT,
        Species::Parrot => PARROT,
        Species::Dog | Species::Rabbit | Species::Other => DOG,
    }
}

fn moved(to: Spot) -> String {
    format!("translate({} {})", to.x, to.y)
}

/// A thing that is held out, by lines of our own: a piece of food, a ball, an open door, a hand.
const fn held(thing: Thing) -> &'static str {
    match thing {
        Thing::Treat => "M-6 5L0 -6L6 5Z",
        Thing::Ball => "M-7 0A7 7 0 1 0 7 0A7 7 0 1 0 -7 0M-6 -3Q0 2 6 -3",
        Thing::Out => "M-6 8L-6 -8L6 -8L6 8M-6 -8L1 -5L1 10L-6 8",
        Thing::Company => "M-5 8L-5 -1M-5 -1L-5 -5M-1 -1L-1 -8M3 -1L3 -7M-5 -1L3 -1M3 -1L7 -4M-5 8L3 8L4 0",
    }
}

/// What is held out on one side, all of it there and none of it seen yet.
fn hand(side: &str, at: Spot) -> Markup {
    html! {
        g transform=(moved(at)) data-hand=(side) {
            @for thing in Thing::ALL { path.held d=(held(thing)) data-held=(thing.place()) visibility="hidden" {} }
        }
    }
}

/// The room with the animal where it is at first; in a likes test the board is put away.
pub fn room(l: &Locale, setup: Setup, begins: Spot) -> Markup {
    let likes = setup.exercise == Exercise::Likes;
    let (width, height) = ROOM;
    let button = |thing: Thing| {
        (if thing.place().is_multiple_of(2) { -17 } else { 17 }, if thing.place() < 2 { -12 } else { 12 })
    };
    html! {
        svg.room viewBox=(format!("0 0 {width} {height}")) role="img" aria-label=(if likes { say!(l, rehearse::room_likes) } else { say!(l, rehearse::room) }) data-part="room" {
            // Walls, with the door open on the left.
            path.wall d=(format!("M4 {} L4 4 L{} 4 L{} {} L4 {} L4 {}", DOOR.y - 26.0, width - 4.0, width - 4.0, height - 4.0, height - 4.0, DOOR.y + 26.0)) {}
            path.wall d=(format!("M4 {} L-14 {}", DOOR.y - 26.0, DOOR.y - 14.0)) {}
            ellipse.bed cx=(BED.x) cy=(BED.y) rx="36" ry="25" {}
            ellipse.bed cx=(BED.x) cy=(BED.y) rx="25" ry="15" {}
            @if !likes {
                g.mat transform=(moved(BOARD)) {
                    rect x="-38" y="-26" width="76" height="52" rx="6" {}
                    @for thing in Thing::ALL {
                        @let (x, y) = button(thing);
                        circle.knob cx=(x) cy=(y) r="8" data-knob=(thing.place()) {}
                    }
                }
            }
            g.person transform=(moved(PERSON)) {
                ellipse cx="0" cy="0" rx="20" ry="11" {}
                circle cx="0" cy="0" r="8" {}
                path d="M-17 6C-16 16 -10 20 -5 20" {}
                path.calls data-part="calls" visibility="hidden" d="M-26 0A14 14 0 0 0 -22 14M-36 -2A24 24 0 0 0 -29 22M-46 -4A34 34 0 0 0 -36 30" {}
            }
            (hand("left", Spot { x: BOARD.x - HANDS, ..BOARD }))
            (hand("right", Spot { x: BOARD.x + HANDS, ..BOARD }))
            path.bars data-part="bars" visibility="hidden" d=(format!("M4 {} L4 {} M11 {} L11 {}", DOOR.y - 22.0, DOOR.y + 22.0, DOOR.y - 22.0, DOOR.y + 22.0)) {}
            g transform=(moved(GIVEN)) { circle.given r="5" data-part="given" visibility="hidden" {} }
            g.animal data-part="animal" transform=(moved(begins)) {
                circle.mild r="33" data-part="mild" visibility="hidden" {}
                g data-part="strong" visibility="hidden" { circle.strong r="31" {} circle.strong r="36" {} path.strong d="M0 -54L0 -44M0 -41L0 -40" {} }
                g.body data-part="turned" { (PreEscaped(shape(setup.character.species()))) }
            }
        }
    }
}

/// What happens, line by line, said by a screen reader as `live` has it.
pub fn happens(l: &Locale, live: &str) -> Markup {
    html! {
        div.captions role="log" tabindex="0" aria-live=(live) aria-label=(say!(l, rehearse::happens)) data-part="captions" data-test="captions" { ol {} }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn animals_are_lines_in_the_colour_of_the_text_and_hold_nothing_else() {
        for svg in [DOG, CAT, PARROT] {
            for other in ["style", "script", "href", "#", "rgb", "<text", "<image", "fill=", "stroke="] {
                assert!(!svg.contains(other), "{other}");
            }
        }
    }
}
