//! Laying out a course: how many weeks, then the aims of each.

use super::PATH;
use crate::asker::Asker;
use maud::{Markup, html};
use sayso_model::facts::lessons;
use sayso_model::{Aim, ClubId, Label, Programme, ProgrammeId, ProgrammeWeek, ShortNote};
use sayso_web::fields::{area, line, number, radios, summary, ticks};
use sayso_web::typed::Typed;
use sayso_wording::{Locale, lessons as told, say, words};
use uuid::Uuid;

/// Weeks that a form begins with.
pub const USUAL: usize = 4;
/// The step that shows the form again, of another number of weeks, with what was typed.
pub const SHOW: &str = "show";
/// Aims in own words of a week.
const OWN: usize = 2;

/// So many weeks, or the nearest number that can be.
pub fn within(weeks: usize) -> usize {
    weeks.clamp(1, Programme::MOST_WEEKS)
}

/// Names of the fields of a week.
fn of_week(week: usize) -> Vec<String> {
    let names = ["showings", "invitations", "a_day", "days", "lessons", "exercise"];
    let own = (1..=OWN).map(|n| format!("own_{week}_{n}"));
    names.iter().map(|name| format!("{name}_{week}")).chain(own).collect()
}

/// Names of all fields there can be.
pub fn fields() -> Vec<&'static str> {
    static ALL: std::sync::LazyLock<Vec<String>> = std::sync::LazyLock::new(|| {
        let weeks = (1..=Programme::MOST_WEEKS).flat_map(of_week);
        ["name", "club", "weeks", "step"].map(str::to_owned).into_iter().chain(weeks).collect()
    });
    ALL.iter().map(String::as_str).collect()
}

fn weeks_of(typed: &Typed) -> usize {
    within(typed.text("weeks").parse().unwrap_or(USUAL))
}

/// The form.
pub fn page(asker: &Asker, clubs: &[(ClubId, String)], typed: &Typed) -> Markup {
    let l = &asker.locale();
    let weeks = weeks_of(typed);
    let of: Vec<_> = clubs.iter().map(|(club, name)| (club.to_string(), html! { (name) })).collect();
    asker.framed(
        &say!(l, programme::new),
        html! {
            (summary(typed))
            p { (say!(l, programme::new_how)) }
            form method="post" action="/desk/programmes/new" .stack {
                div.row {
                    label for="how-many" { (say!(l, programme::how_many)) }
                    input id="how-many" name="weeks" type="number" min="1" max=(Programme::MOST_WEEKS) value=(weeks);
                    button name="step" value=(SHOW) data-test="show-weeks" formnovalidate { (say!(l, desk_page::apply)) }
                }
                (line(typed, "name", &say!(l, programme::field_name), "", true))
                @if clubs.len() > 1 { (radios(typed, "club", &say!(l, programme::field_club), "", &of)) }
                @for week in 1..=weeks { (week_fields(l, typed, week)) }
                button.primary.wide data-test="lay-out" { (say!(l, programme::lay_out)) }
            }
            p { a href=(PATH) { (say!(l, programme::title)) } }
        },
    )
}

fn week_fields(l: &Locale, typed: &Typed, week: usize) -> Markup {
    let name = |field: &str| format!("{field}_{week}");
    let all: Vec<_> =
        lessons().iter().map(|lesson| (lesson.id.clone(), html! { (told::title(l, lesson, None)) })).collect();
    html! {
        details open[week == 1 || of_week(week).iter().any(|field| typed.problem(field).is_some())] {
            summary { (say!(l, programme::week_number, week = week)) }
            div.row.even {
                (number(typed, &name("showings"), &say!(l, programme::field_showings), ""))
                (number(typed, &name("invitations"), &say!(l, programme::field_invitations), ""))
            }
            div.row.even {
                (number(typed, &name("a_day"), &say!(l, programme::field_a_day), ""))
                (number(typed, &name("days"), &say!(l, programme::field_days), ""))
            }
            details { summary { (say!(l, programme::field_lessons)) } (ticks(typed, &name("lessons"), &say!(l, programme::field_lessons), "", &all)) }
            @for n in 1..=OWN { (line(typed, &format!("own_{week}_{n}"), &say!(l, programme::field_own, number = n), &say!(l, programme::field_own_hint), false)) }
            (area(typed, &name("exercise"), &say!(l, programme::field_exercise), &say!(l, talk::if_you_like, most = ShortNote::MOST)))
        }
    }
}

/// The course that was typed, and for which club.
pub fn read(clubs: &[(ClubId, String)], typed: &mut Typed) -> Option<(ClubId, Programme)> {
    let name = typed.label("name");
    let club = match clubs {
        [(only, _)] => Some(*only),
        several => typed.id("club", |id| several.iter().any(|(club, _)| club == id)),
    };
    if club.is_none() && typed.problem("club").is_none() {
        typed.wrong("club", words!(faults::missing_choose));
    }
    let weeks: Vec<ProgrammeWeek> = (1..=weeks_of(typed)).map(|week| week_of(typed, week)).collect();
    if weeks.iter().all(|week| week.aims.is_empty() && week.exercise.is_none()) && typed.right() {
        typed.wrong("showings_1", words!(programme::nothing));
    }
    let programme = ProgrammeId(Uuid::now_v7());
    Some((club?, Programme { programme, name: name?, weeks }))
}

fn week_of(typed: &mut Typed, week: usize) -> ProgrammeWeek {
    let name = |field: &str| format!("{field}_{week}");
    let mut aims = Vec::new();
    aims.extend(typed.whole(&name("showings"), 1, Aim::MOST_TIMES).map(|times| Aim::Showings { times }));
    aims.extend(typed.whole(&name("invitations"), 1, Aim::MOST_TIMES).map(|times| Aim::Invitations { times }));
    let small = |n: Option<u16>| n.and_then(|n| u8::try_from(n).ok());
    let a_day = small(typed.whole(&name("a_day"), 1, Aim::MOST_A_DAY.into()));
    let days = small(typed.whole(&name("days"), 1, 7));
    match (a_day, days) {
        (Some(a_day), Some(days)) => aims.push(Aim::Sessions { a_day, days }),
        (None, None) => {}
        (Some(_), None) => typed.wrong(&name("days"), words!(faults::missing)),
        (None, Some(_)) => typed.wrong(&name("a_day"), words!(faults::missing)),
    }
    let field = name("lessons");
    let read = typed.all(&field).filter(|id| lessons().iter().any(|l| l.id == *id));
    let read: Vec<Label> = read.filter_map(|id| Label::new(id).ok()).collect();
    aims.extend(read.into_iter().map(|lesson| Aim::Lesson { lesson }));
    for n in 1..=OWN {
        aims.extend(typed.label_or_none(&format!("own_{week}_{n}")).map(|text| Aim::Own { text }));
    }
    if aims.len() > Programme::MOST_AIMS {
        typed.wrong(&name("lessons"), words!(programme::too_many, most = Programme::MOST_AIMS));
    }
    ProgrammeWeek { aims, exercise: typed.short_or_none(&name("exercise")) }
}
