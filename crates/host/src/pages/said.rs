//! What several of the server's pages say: roles, days, capabilities.

use sayso_people::{Capability, Days, Role};
use sayso_wording::{Locale, say};

/// What a role is called.
pub fn role(l: &Locale, role: Role) -> String {
    say!(l, sharing::role, role = role.name())
}

/// What can be seen of a home on a server: sounds of presses are kept in a notebook's folder alone, so nobody is told of them here,
/// nor asked to agree to them.
pub fn is_kept(capability: Capability) -> bool {
    capability != Capability::HearSnippets
}

/// What a capability shows, in a few words.
pub fn shows(l: &Locale, capability: Capability) -> String {
    say!(l, sharing::shows, what = capability.name())
}

/// The days of the week as bits and by their names, Monday first.
pub fn weekdays(l: &Locale, days: Days) -> Vec<(u8, String)> {
    // Seven days from any one are each weekday once.
    let mut all: Vec<_> = (0..7).map(|n| days.first.plus(n)).map(|day| (day.weekday(), l.weekday(day))).collect();
    all.sort();
    all
}

/// Days agreed with a sitter.
pub fn days(l: &Locale, agreed: Days) -> String {
    let (first, last) = (l.date(agreed.first), l.date(agreed.last));
    if agreed.weekdays & 0b111_1111 == 0b111_1111 {
        return say!(l, sharing::days_every, first = first, last = last);
    }
    let on = weekdays(l, agreed).into_iter().filter(|(bit, _)| agreed.weekdays & (1 << bit) != 0);
    let names: Vec<String> = on.map(|(_, name)| name).collect();
    say!(l, sharing::days_some, first = first, last = last, weekdays = l.and(&names))
}
