use crate::asker::Asker;
use maud::{Markup, html};
use sayso_model::{ClubId, HomeId, Label, Moment, Zone};
use sayso_people::db::{Counts, Member};
use sayso_web::fields::{AGAIN, line, number, sent_again, summary};
use sayso_web::home_label::tail;
use sayso_web::typed::Typed;
use sayso_wording::say;

/// A club as the server's keepers see it.
pub struct ClubLine {
    /// Which.
    pub club: ClubId,
    /// What it is called.
    pub name: Label,
    /// How many roles there are in it.
    pub members: usize,
}

/// What keepers of the server see.
pub struct Seen {
    /// How much of what there is.
    pub counts: Counts,
    /// What stories in this process's memory take, bytes.
    pub story_bytes: usize,
    /// Homes whose first keeper has not come, with when they were opened.
    pub waiting: Vec<(HomeId, Moment)>,
    /// Homes that left and whose log is still here.
    pub unfinished: usize,
    /// Clubs by name.
    pub clubs: Vec<ClubLine>,
    /// Keepers of the server.
    pub keepers: Vec<Member>,
}

pub fn view(asker: &Asker, seen: &Seen, typed: &Typed) -> Markup {
    let l = &asker.locale();
    let counts = &seen.counts;
    let fresh = asker.is_fresh();
    asker.framed_with(
        &[AGAIN],
        &say!(l, server::title),
        html! {
            (sent_again(l))
            (summary(typed))
            p { (say!(l, server::intro)) }
            dl.facts data-test="counts" {
                dt { (say!(l, server::homes)) } dd.num { (counts.homes) }
                dt { (say!(l, server::left)) } dd.num { (counts.left) }
                dt { (say!(l, server::clubs)) } dd.num { (counts.clubs) }
                dt { (say!(l, server::accounts)) } dd.num { (counts.accounts) }
                dt { (say!(l, server::memory)) } dd.num { (say!(l, server::megabytes, value = l.number(seen.story_bytes as f64 / 1e6, 1))) }
            }
            @if seen.unfinished > 0 {
                p.caution data-test="unfinished" { (say!(l, server::unfinished, count = seen.unfinished)) }
            }
            @if fresh { (acts(asker, seen, typed)) } @else {
                p { a.button.primary href="/sign-in?again=yes&to=/server" { (say!(l, server::sign_in_again)) } }
                p.quiet { (say!(l, server::why_again)) }
            }
        },
    )
}

fn acts(asker: &Asker, seen: &Seen, typed: &Typed) -> Markup {
    let l = &asker.locale();
    html! {
        @if seen.unfinished > 0 {
            form method="post" action="/server/finish" { button { (say!(l, server::finish)) } }
        }
        section {
            h2 { (say!(l, server::open_homes)) }
            p { (say!(l, server::open_homes_what)) }
            form method="post" action="/server/homes" .stack {
                (number(typed, "count", &say!(l, server::how_many, most = "50"), ""))
                button.primary.wide { (say!(l, server::open)) }
            }
            @if !seen.waiting.is_empty() {
                details { summary { (say!(l, server::waiting, count = seen.waiting.len())) }
                    p.quiet { (say!(l, server::waiting_what)) }
                    ul.plain { @for (home, opened) in &seen.waiting {
                        li.line data-test="waiting" {
                            span { "\u{2026}" (tail(*home)) " " span.quiet { (l.date(opened.day(&Zone::utc()))) } }
                            form method="post" action="/server/homes/link" { button name="home" value=(home) { (say!(l, server::new_link)) } }
                        }
                    } } }
            }
        }
        section {
            h2 { (say!(l, server::anew)) }
            p { (say!(l, server::anew_what)) }
            p.quiet { (say!(l, server::anew_told)) }
            form method="post" action="/server/homes/anew" .stack {
                (line(typed, "whose", &say!(l, server::anew_whose), "", true))
                button.wide { (say!(l, server::anew_invite)) }
            }
        }
        section {
            h2 { (say!(l, server::clubs)) }
            ul.plain { @for club in &seen.clubs {
                li.line data-test="club" {
                    span { strong { (club.name.as_str()) } " " span.quiet { (say!(l, server::members, count = club.members)) } }
                    @if club.members == 0 {
                        form method="post" action="/server/clubs/link" { button name="club" value=(club.club) { (say!(l, server::new_link)) } }
                    }
                }
            } }
            form method="post" action="/server/clubs" .stack {
                (line(typed, "name", &say!(l, server::club_name), "", true))
                button.wide { (say!(l, server::open_club)) }
            }
        }
        section {
            h2 { (say!(l, server::keepers)) }
            ul.plain { @for keeper in &seen.keepers {
                li.line data-test="keeper" {
                    strong { (keeper.name.as_str()) }
                    @if seen.keepers.len() > 1 {
                        form method="post" action="/server/keepers/end" { button name="membership" value=(keeper.membership.id) { (say!(l, server::end_keeper)) } }
                    }
                }
            } }
            form method="post" action="/server/keepers" { button.wide { (say!(l, server::invite_keeper)) } }
        }
        section {
            h2 { (say!(l, server::sessions)) }
            p { (say!(l, server::sessions_what)) }
            form method="post" action="/server/sessions" .stack {
                (line(typed, "account", &say!(l, server::account_id), "", true))
                button.wide { (say!(l, server::end_sessions)) }
            }
        }
    }
}
