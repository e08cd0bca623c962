//! One week everywhere: seven household days, the last one ending today.

use sayso_advisor::Case;
use sayso_advisor::days::days;
use sayso_advisor::overview::overview;
use sayso_advisor::today::today;
use sayso_advisor::weeks::TREND_WEEKS;
use sayso_model::{Moment, Story};

#[test]
fn evidence_today_and_days_count_the_same_presses_in_the_same_weeks() {
    let mut pressed = 0;
    // A Monday, a Wednesday and a Sunday: a week of the calendar would be told apart.
    for now in ["2026-11-23T19:30:00Z", "2026-11-25T19:30:00Z", "2026-11-29T09:00:00Z"] {
        let now: Moment = now.parse().unwrap();
        let story = Story::from_events(sayso_sim::demo(7, now).events);
        for animal in story.animals().into_keys() {
            let case = Case::new(&story, animal, now);
            let of_days = days(&case, u16::try_from(7 * TREND_WEEKS).unwrap());
            let steps = today(&case).unwrap().steps;
            for row in overview(&case).unwrap() {
                let step = steps.iter().find(|s| s.word.word == row.word).unwrap();
                for (i, week) in of_days.days.chunks(7).enumerate() {
                    let counted: usize = week.iter().filter_map(|d| d.presses.get(&row.word)).sum();
                    assert_eq!(step.trend[i], counted, "{} in week {i} before {now}", row.says);
                    assert_eq!(row.weeks[i].unwrap_or(0), counted, "{} in week {i} before {now}", row.says);
                    assert_eq!(of_days.weeks[i].first, week[0].day);
                    pressed += counted;
                }
            }
        }
    }
    assert!(pressed > 100, "{pressed}");
}
