use super::choice::Choice;
use crate::asker::Asker;
use crate::pages::invited::when;
use crate::pages::said::{days, role};
use maud::{Markup, html};
use sayso_model::{ClubId, Day, HomeId, Label, Moment, Zone};
use sayso_people::Role;
use sayso_web::home_label::labels;
use sayso_web::news::way;
use sayso_wording::{Locale, say};

/// From so many homes on they can be searched.
const MANY: usize = 8;

/// What the page tells.
pub struct Seen<'a> {
    /// Homes that can be chosen.
    pub all: &'a [Choice],
    /// The one that this browser is about.
    pub chosen: Option<HomeId>,
    /// When homes left to which the account belonged.
    pub parted: &'a [Day],
    /// Clubs in which it has a role.
    pub clubs: &'a [(ClubId, Label)],
    /// Whether it keeps the server.
    pub keeps_server: bool,
    /// Whether it is a coach.
    pub coaches: bool,
    /// When the server was lately brought back from a backup, for a coach.
    pub restored: Option<Moment>,
}

pub fn view(asker: &Asker, seen: &Seen<'_>, find: &str) -> Markup {
    let l = &asker.locale();
    let &Seen { all, chosen, parted, clubs, keeps_server, coaches, restored } = seen;
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
        &title(l, seen),
        html! {
            div #unsent data-homes=(theirs.join(" ")) hidden {}
            @for day in parted { p.note data-test="parted" { (say!(l, homes::parted, day = l.date(*day))) } }
            @for c in all.iter().filter(|c| c.anew) {
                section.caution data-test="news" {
                    p { (say!(l, homes::anew, home = name(&c.home))) }
                    (way(c.home, &say!(l, sharing::news_look)))
                }
            }
            (restored_told(l, restored))
            @if all.is_empty() { (none(l, seen)) } @else {
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
            @if coaches { p { a.button href="/desk" data-test="to-desk" { (say!(l, club::to_desk)) } } }
            @if !all.is_empty() {
                @if !clubs.is_empty() {
                    h2 { (say!(l, homes::clubs)) }
                    ul.links { @for (club, name) in clubs { li { a href=(format!("/club/{club}")) { (name.as_str()) } } } }
                }
                @if keeps_server { p { a.link href="/server" { (say!(l, homes::to_server)) } } }
            }
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

fn title(l: &Locale, seen: &Seen<'_>) -> String {
    match seen {
        Seen { all: [_, ..], .. } => say!(l, homes::title),
        Seen { keeps_server: true, .. } => say!(l, homes::title_server),
        Seen { clubs: [_, ..], .. } => say!(l, homes::title_clubs),
        _ => say!(l, homes::title_none),
    }
}

/// For whoever has no home: what they keep, or where they coach, comes first.
fn none(l: &Locale, seen: &Seen<'_>) -> Markup {
    let keeps = seen.keeps_server || !seen.clubs.is_empty();
    html! {
        @if seen.keeps_server { p { a.button.primary.wide href="/server" data-test="to-server" { (say!(l, homes::to_server)) } } }
        @for (club, name) in seen.clubs {
            p { a.button.primary[!seen.keeps_server].wide href=(format!("/club/{club}")) data-test="to-club" { (name.as_str()) } }
        }
        @if seen.coaches { p data-test="no-home" { (say!(l, homes::none_coach)) } }
        @else if keeps { p.quiet data-test="no-home" { (say!(l, homes::none_keeper)) } }
        @else {
            p data-test="no-home" { (say!(l, homes::none)) }
            p.quiet { (say!(l, homes::none_private)) }
        }
        p.row.quiet {
            a.link href="/learn" { (say!(l, frame::learn)) }
            a.link href="/glossary" { (say!(l, glossary::title)) }
            a.link href="/methods" { (say!(l, frame::methods)) }
        }
    }
}

/// To a coach: that the server was brought back from a backup, and that every consent ended with it.
pub fn restored_told(l: &Locale, at: Option<Moment>) -> Markup {
    html! {
        @if let Some(at) = at { p.caution data-test="restored" { (say!(l, homes::restored, at = when(l, at, &Zone::utc()))) } }
    }
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
