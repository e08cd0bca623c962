use super::choice::Choice;
use crate::asker::Asker;
use crate::pages::said::{days, role};
use maud::{Markup, html};
use sayso_model::{ClubId, Day, HomeId, Label};
use sayso_people::Role;
use sayso_web::home_label::labels;
use sayso_wording::say;

/// From so many homes on they can be searched.
const MANY: usize = 8;

pub fn view(
    asker: &Asker,
    all: &[Choice],
    chosen: Option<HomeId>,
    parted: &[Day],
    clubs: &[(ClubId, Label)],
    (keeps_server, desk): (bool, bool),
    find: &str,
) -> Markup {
    let l = &asker.locale();
    let stories: Vec<_> = all.iter().map(|c| (c.home, c.story.clone())).collect();
    let names = labels(l, &stories);
    let name = |home: &HomeId| names.get(home).map_or("", String::as_str);
    // Own homes first, then by name, as people look for them.
    let mut sorted: Vec<&Choice> = all.iter().collect();
    sorted.sort_by_cached_key(|c| (c.part.is_none(), name(&c.home).to_lowercase(), c.home));
    let shown: Vec<&Choice> =
        sorted.into_iter().filter(|c| name(&c.home).to_lowercase().contains(&find.to_lowercase())).collect();
    let own: Vec<_> = all.iter().filter_map(|c| Some((c.home, c.part?))).collect();
    let theirs: Vec<String> = own.iter().map(|(home, _)| home.to_string()).collect();
    asker.framed_with(
        &["client/left.js"],
        &if all.is_empty() { say!(l, homes::title_none) } else { say!(l, homes::title) },
        html! {
            div #unsent data-homes=(theirs.join(" ")) hidden {}
            @for day in parted { p.note data-test="parted" { (say!(l, homes::parted, day = l.date(*day))) } }
            @if all.is_empty() {
                p data-test="no-home" { (say!(l, homes::none)) }
                p.quiet { (say!(l, homes::none_private)) }
            } @else {
                @if all.len() >= MANY {
                    form method="get" action="/homes" .row role="search" {
                        label for="find" { (say!(l, homes::find)) }
                        input #find name="find" type="search" maxlength="80" autocomplete="off" value=(find);
                        button { (say!(l, homes::find_button)) }
                        @if !find.is_empty() { a.link href="/homes" { (say!(l, homes::all)) } }
                    }
                    @if shown.is_empty() { p data-test="found-none" { (say!(l, homes::found_none, text = find)) } }
                }
                form method="post" action="/homes" .stack {
                    @for c in &shown {
                        button.wide name="home" value=(c.home) aria-pressed=(chosen == Some(c.home)) data-test="home" {
                            (name(&c.home))
                            span.quiet { " " (told(asker, c)) }
                        }
                    }
                }
            }
            @if desk { p { a.button href="/desk" data-test="to-desk" { (say!(l, club::to_desk)) } } }
            @if !clubs.is_empty() {
                h2 { (say!(l, homes::clubs)) }
                ul.links { @for (club, name) in clubs { li { a href=(format!("/club/{club}")) { (name.as_str()) } } } }
            }
            @if keeps_server { p { a.link href="/server" { (say!(l, homes::to_server)) } } }
            @if !own.is_empty() {
                details {
                    summary { (say!(l, homes::give_up)) }
                    p { (say!(l, homes::give_up_what)) }
                    ul.plain { @for (home, (id, part)) in &own {
                        li.line {
                            span { strong { (name(home)) } " " span.quiet { (role(l, part.role())) } }
                            form method="post" action="/homes/end" {
                                button name="membership" value=(id) data-test="give-up" { (say!(l, homes::go)) }
                            }
                        }
                    } }
                }
            }
        },
    )
}

/// As what one comes, and why nothing is open where that is so.
fn told(asker: &Asker, c: &Choice) -> String {
    let l = &asker.locale();
    let Some((_, part)) = &c.part else {
        let what: Vec<String> = c.shares.iter().map(|purpose| say!(l, club::purpose, purpose = *purpose)).collect();
        return say!(l, homes::shares, role = role(l, Role::Coach), what = l.and(&what));
    };
    let mut told = role(l, part.role());
    if let Some(agreed) = part.days() {
        told = say!(l, homes::with_days, role = told, days = days(l, agreed));
    }
    if c.story.ledger().is_empty() && !c.begins {
        return say!(l, homes::not_begun, role = told);
    }
    if c.first.is_none() {
        return say!(l, homes::closed_now, role = told);
    }
    told
}
