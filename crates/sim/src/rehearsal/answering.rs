//! Which press each gift and each "not now" answers.

use super::act::Does;
use super::thing::Thing;
use super::told::{Told, What};
use std::collections::BTreeMap;

/// Which press was answered.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Answering {
    /// Its place in what was told.
    pub press: usize,
    /// Whether it was the animal's own.
    pub own: bool,
}

/// Of what the person gave and said, by its place in what was told: the press that it answers.
#[must_use]
pub fn answers(told: &[Told]) -> BTreeMap<usize, Answering> {
    let mut found = BTreeMap::new();
    let (mut own, mut shown): (Option<Press>, Option<Press>) = (None, None);
    for (i, told) in told.iter().enumerate() {
        match told.what {
            What::Pressed(thing) => own = Some((thing, i)),
            What::Person(Does::Show(thing)) => shown = Some((thing, i)),
            What::Person(Does::Offer(_) | Does::Back) => shown = None,
            What::Unanswered(_) => own = None,
            What::Gone => (own, shown) = (None, None),
            What::Person(Does::Give(given)) => {
                let one = answered(given, (&mut own, &mut shown), |(thing, _)| *thing);
                found.extend(one.map(|((_, press), own)| (i, Answering { press, own })));
            }
            What::Person(Does::Instead(_) | Does::NotNow) => {
                found.extend(own.take().map(|(_, press)| (i, Answering { press, own: true })));
            }
            _ => {}
        }
    }
    found
}

/// A press that waits, and its place.
type Press = (Thing, usize);

/// Which of the presses that wait, the animal's own and the person's, a gift answers, and whether it is the own one. What was just
/// shown is given for that, though another press waits; and a showing waits on while the animal's press of something else is answered.
pub(super) fn answered<T: Copy>(
    given: Thing,
    (own, shown): (&mut Option<T>, &mut Option<T>),
    of: impl Fn(&T) -> Thing,
) -> Option<(T, bool)> {
    let for_shown = shown.is_some_and(|one| of(&one) == given);
    if let Some(one) = own.take_if(|one| of(one) == given || !for_shown) {
        // What was shown is had by it, too.
        shown.take_if(|_| for_shown);
        return Some((one, true));
    }
    shown.take().map(|one| (one, false))
}
