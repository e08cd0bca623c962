//! What happens, moment by moment, for the page to draw.

use super::captions::{captions, over};
use sayso_sim::rehearsal::{Run, Thing, What};
use sayso_wording::Locale;
use serde::Serialize;

/// All of it.
#[derive(Debug, Serialize)]
pub struct Moments {
    /// Where the animal is at first.
    begins: [f64; 2],
    /// How it moves: begin and end in milliseconds, from and to in units of the room.
    motions: Vec<[f64; 6]>,
    /// What happens, in time.
    told: Vec<Moment>,
    /// When it is over if nothing more is done.
    over_ms: u32,
    /// Why, in words.
    over: String,
}

/// One moment.
#[derive(Debug, Serialize)]
struct Moment {
    at: u32,
    what: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    thing: Option<usize>,
    #[serde(skip_serializing_if = "Option::is_none")]
    level: Option<&'static str>,
    /// Places of two things held out: on the animal's left and on its right.
    #[serde(skip_serializing_if = "Option::is_none")]
    pair: Option<[usize; 2]>,
    /// Whether it is the person's doing.
    mine: bool,
    says: String,
}

fn rounded(x: f64) -> f64 {
    (x * 10.0).round() / 10.0
}

/// What happens in a rehearsal.
pub fn of(l: &Locale, run: &Run) -> Moments {
    let moment = |what: What, at: u32, says: String| Moment {
        at,
        what: what.name(),
        thing: what.thing().map(Thing::place),
        level: if let What::Sign(sign) = what { Some(sign.level.name()) } else { None },
        pair: if let What::Held(left, right) = what { Some([left, right].map(Thing::place)) } else { None },
        mine: matches!(what, What::Person(_)),
        says,
    };
    Moments {
        begins: [rounded(run.begins_at.x), rounded(run.begins_at.y)],
        motions: run
            .motions
            .iter()
            .map(|m| {
                let [x0, y0, x1, y1] = [m.from.x, m.from.y, m.to.x, m.to.y].map(rounded);
                [f64::from(m.begins_ms), f64::from(m.ends_ms), x0, y0, x1, y1]
            })
            .collect(),
        told: run.told.iter().zip(captions(l, run)).map(|(t, says)| moment(t.what, t.at_ms, says)).collect(),
        over_ms: run.over.0,
        over: over(l, run.over.1),
    }
}
