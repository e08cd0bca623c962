//! Days and times as each language writes them, by CLDR data.

use crate::locale::Locale;
use crate::say;
use icu_datetime::DateTimeFormatter;
use icu_datetime::fieldsets::enums::{
    CalendarPeriodFieldSet, CompositeDateTimeFieldSet as Fields, DateAndTimeFieldSet, DateFieldSet, TimeFieldSet,
};
use icu_datetime::fieldsets::{E, M, MD, MDE, MDET, T, YMD};
use icu_datetime::input::{Date, DateTime, Time};
use icu_datetime::options::TimePrecision;
use icu_locale_core::Locale as Tag;
use sayso_model::{Clock, Day, Language, Moment, Zone};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// What is written of a day or moment.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Form {
    Date,
    Day,
    Weekday,
    WeekdayDate,
    Month,
    Time,
    TimeSeconds,
    WeekdayDateTime,
}

impl Form {
    const ALL: [Self; 8] = [
        Self::Date,
        Self::Day,
        Self::Weekday,
        Self::WeekdayDate,
        Self::Month,
        Self::Time,
        Self::TimeSeconds,
        Self::WeekdayDateTime,
    ];

    fn fields(self) -> Fields {
        let time = |precision| Fields::Time(TimeFieldSet::T(T::short().with_time_precision(precision)));
        match self {
            Self::Date => Fields::Date(DateFieldSet::YMD(YMD::medium())),
            Self::Day => Fields::Date(DateFieldSet::MD(MD::medium())),
            Self::Weekday => Fields::Date(DateFieldSet::E(E::short())),
            Self::WeekdayDate => Fields::Date(DateFieldSet::MDE(MDE::medium())),
            Self::Month => Fields::CalendarPeriod(CalendarPeriodFieldSet::M(M::long())),
            Self::Time => time(TimePrecision::Minute),
            Self::TimeSeconds => time(TimePrecision::Second),
            Self::WeekdayDateTime => {
                Fields::DateTime(DateAndTimeFieldSet::MDET(MDET::medium().with_time_precision(TimePrecision::Minute)))
            }
        }
    }
}

static FORMATTERS: LazyLock<BTreeMap<(Language, Clock, Form), DateTimeFormatter<Fields>>> = LazyLock::new(|| {
    let mut all = BTreeMap::new();
    for language in Language::ALL {
        for (clock, cycle) in [(Clock::Hours24, "h23"), (Clock::Hours12, "h12")] {
            for form in Form::ALL {
                // Britain's for English: the day before the month.
                let tag = if language == Language::En { "en-GB" } else { language.tag() };
                let tag: Option<Tag> = format!("{tag}-u-hc-{cycle}").parse().ok();
                let formatter = tag.and_then(|tag| DateTimeFormatter::try_new(tag.into(), form.fields()).ok());
                all.extend(formatter.map(|f| ((language, clock, form), f)));
            }
        }
    }
    all
});

impl Locale {
    fn written(&self, at: (Day, [u8; 3]), form: Form) -> String {
        let ((year, month, day), [hour, minute, second]) = (at.0.parts(), at.1);
        let date = Date::try_new_iso(i32::from(year), month, day).ok();
        let time = Time::try_new(hour, minute, second, 0).ok();
        match (FORMATTERS.get(&(self.language, self.clock, form)), date, time) {
            (Some(formatter), Some(date), Some(time)) => formatter.format(&DateTime { date, time }).to_string(),
            _ => format!("{} {hour:02}:{minute:02}", at.0),
        }
    }

    fn moment(&self, at: Moment, zone: &Zone, form: Form) -> String {
        self.written((at.day(zone), at.clock(zone)), form)
    }

    /// `26 Nov 2026`.
    #[must_use]
    pub fn date(&self, day: Day) -> String {
        self.written((day, [12, 0, 0]), Form::Date)
    }

    /// `26 Nov`, in the language's order.
    #[must_use]
    pub fn day_of_month(&self, day: Day) -> String {
        self.written((day, [12, 0, 0]), Form::Day)
    }

    /// `Thu 26 Nov`, in the language's order.
    #[must_use]
    pub fn weekday_date(&self, day: Day) -> String {
        self.written((day, [12, 0, 0]), Form::WeekdayDate)
    }

    /// `Thu 26 Nov`, or with its year where that is not the year of `today`.
    #[must_use]
    pub fn day_near(&self, day: Day, today: Day) -> String {
        if day.parts().0 == today.parts().0 { self.weekday_date(day) } else { self.date(day) }
    }

    /// `Thu`.
    #[must_use]
    pub fn weekday(&self, day: Day) -> String {
        self.written((day, [12, 0, 0]), Form::Weekday)
    }

    /// `November 2026`.
    #[must_use]
    pub fn month(&self, day: Day) -> String {
        let month = self.written((day, [12, 0, 0]), Form::Month);
        // The year is a name here, not a count: no separator.
        say!(self, unit::month_of_year, month = month, year = day.parts().0.to_string())
    }

    /// `14:05`, or `2:05 pm` on a clock of twelve hours.
    #[must_use]
    pub fn time(&self, at: Moment, zone: &Zone) -> String {
        self.moment(at, zone, Form::Time)
    }

    /// `14:05:09`.
    #[must_use]
    pub fn time_seconds(&self, at: Moment, zone: &Zone) -> String {
        self.moment(at, zone, Form::TimeSeconds)
    }

    /// `Thu 26 Nov, 14:05`.
    #[must_use]
    pub fn weekday_date_time(&self, at: Moment, zone: &Zone) -> String {
        self.moment(at, zone, Form::WeekdayDateTime)
    }

    /// A full hour of the day, 0 to 24, as in `14:00` or `2:00 pm`.
    #[must_use]
    pub fn hour(&self, hour: u8) -> String {
        self.written((Day::EPOCH, [hour % 24, 0, 0]), Form::Time)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn days_and_times_are_written_as_the_language_writes_them() {
        let day: Day = "2026-11-26".parse().unwrap();
        let zone = Zone::new("Europe/Lisbon").unwrap();
        let at: Moment = "2026-11-26T14:05:09Z".parse().unwrap();
        let written = |language| {
            let l = Locale::of(language);
            [
                l.date(day),
                l.day_of_month(day),
                l.weekday_date(day),
                l.month(day),
                l.time(at, &zone),
                l.weekday_date_time(at, &zone),
                l.hour(14),
            ]
        };
        assert_eq!(
            written(Language::En),
            ["26 Nov 2026", "26 Nov", "Thu 26 Nov", "November 2026", "14:05", "Thu 26 Nov, 14:05", "14:00"]
        );
        assert_eq!(
            written(Language::De),
            ["26.11.2026", "26. Nov.", "Do., 26. Nov.", "November 2026", "14:05", "Do., 26. Nov., 14:05", "14:00"]
        );
        assert_eq!(
            written(Language::Fr),
            ["26 nov. 2026", "26 nov.", "jeu. 26 nov.", "novembre 2026", "14:05", "jeu. 26 nov., 14:05", "14:00"]
        );
        assert_eq!(
            written(Language::Es),
            ["26 nov 2026", "26 nov", "jue, 26 nov", "noviembre de 2026", "14:05", "jue, 26 nov, 14:05", "14:00"]
        );
        assert_eq!(
            written(Language::Pt),
            [
                "26 de nov. de 2026",
                "26 de nov.",
                "qui., 26 de nov.",
                "novembro de 2026",
                "14:05",
                "qui., 26 de nov., 14:05",
                "14:00"
            ]
        );
        let twelve = Locale { clock: Clock::Hours12, ..Locale::ENGLISH };
        assert_eq!(
            (twelve.time(at, &zone), twelve.hour(0)),
            ("2:05\u{202f}pm".to_owned(), "12:00\u{202f}am".to_owned())
        );
    }
}
