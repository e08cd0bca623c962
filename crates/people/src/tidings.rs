//! When somebody wants to be told by e-mail that something is new.

use sayso_model::{Day, Moment, Zone};

/// How often at most. Who chose neither is not written to.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Every {
    /// Once a day.
    Day,
    /// Once a week, on Mondays.
    Week,
}

impl Every {
    /// Both of them.
    pub const ALL: [Self; 2] = [Self::Day, Self::Week];

    /// Its name in the database and in forms.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Day => "day",
            Self::Week => "week",
        }
    }

    /// By its name.
    #[must_use]
    pub fn of_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|every| every.name() == name)
    }

    fn falls_on(self, day: Day) -> bool {
        match self {
            Self::Day => true,
            Self::Week => day.weekday() == 0,
        }
    }
}

/// What somebody chose.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Chosen {
    /// How often at most.
    pub every: Every,
    /// At which hour, 0 to 23...
    pub hour: u8,
    /// ... by the clocks of this zone.
    pub zone: Zone,
}

/// Days within which the next letter is, if one is due on Mondays only.
const SEARCHED: i32 = 8;

impl Chosen {
    /// The next moment after another one at which a letter is due. Where clocks skip that hour it is the one after it.
    #[must_use]
    pub fn next(&self, after: Moment) -> Moment {
        let today = after.day(&self.zone);
        let days = (0..=SEARCHED).map(|n| today.plus(n)).filter(|day| self.every.falls_on(*day));
        let moments = days.filter_map(|day| {
            let later = self.hour.saturating_add(1).min(23);
            day.at((self.hour, 0), &self.zone).or_else(|| day.at((later, 0), &self.zone))
        });
        let next = moments.into_iter().find(|at| *at > after);
        // In a zone of which nothing holds that was said above: a day later, rather than never or at once.
        next.unwrap_or_else(|| after.plus_seconds(86_400.0))
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn next(every: Every, hour: u8, zone: &str, after: &str) -> String {
        let chosen = Chosen { every, hour, zone: Zone::new(zone).unwrap() };
        chosen.next(after.parse().unwrap()).to_string()
    }

    #[test]
    fn a_letter_is_due_at_the_hour_that_clocks_show_there() {
        let lisbon = "Europe/Lisbon";
        assert_eq!(next(Every::Day, 8, lisbon, "2026-06-10T06:59:59Z"), "2026-06-10T07:00:00.000Z");
        // At the moment itself the next one is the day after: the one that is due then is being sent.
        assert_eq!(next(Every::Day, 8, lisbon, "2026-06-10T07:00:00Z"), "2026-06-11T07:00:00.000Z");
        assert_eq!(next(Every::Day, 8, lisbon, "2026-12-10T07:30:00Z"), "2026-12-10T08:00:00.000Z");
        assert_eq!(next(Every::Day, 23, "Pacific/Auckland", "2026-06-10T12:00:00Z"), "2026-06-11T11:00:00.000Z");
    }

    #[test]
    fn once_a_week_is_on_mondays() {
        // 2026-06-10 is a Wednesday.
        assert_eq!(next(Every::Week, 8, "UTC", "2026-06-10T06:00:00Z"), "2026-06-15T08:00:00.000Z");
        assert_eq!(next(Every::Week, 8, "UTC", "2026-06-15T07:00:00Z"), "2026-06-15T08:00:00.000Z");
        assert_eq!(next(Every::Week, 8, "UTC", "2026-06-15T08:00:00Z"), "2026-06-22T08:00:00.000Z");
    }

    #[test]
    fn an_hour_that_clocks_skip_is_the_one_after_it_and_one_that_comes_twice_is_once() {
        // In Berlin there is no 02:00 on 29 March 2026, and it comes twice on 25 October.
        assert_eq!(next(Every::Day, 2, "Europe/Berlin", "2026-03-28T12:00:00Z"), "2026-03-29T01:00:00.000Z");
        assert_eq!(next(Every::Day, 2, "Europe/Berlin", "2026-10-24T12:00:00Z"), "2026-10-25T00:00:00.000Z");
        assert_eq!(next(Every::Day, 2, "Europe/Berlin", "2026-10-25T00:00:00Z"), "2026-10-26T01:00:00.000Z");
    }
}
