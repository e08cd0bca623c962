use crate::asker::Asker;
use crate::links;
use crate::pages::homes::restored_told;
use crate::pages::invited::{HANDS_ON, handed_on};
use crate::pages::said::role;
use crate::qr;
use maud::{Markup, html};
use sayso_model::{ClubId, HomeId, Label, Moment, Zone};
use sayso_people::Role;
use sayso_people::db::{Invited, Member};
use sayso_wording::say;

/// A home that shares something.
pub struct Shares {
    /// Which.
    pub home: HomeId,
    /// What it is called.
    pub name: String,
    /// Purposes that are open, by name.
    pub what: Vec<&'static str>,
}

/// What the page tells.
pub struct Seen {
    /// Which club.
    pub club: ClubId,
    /// What it is called.
    pub name: Label,
    /// Whether whoever asks is a coach of it.
    pub coaches: bool,
    /// Whether they are a keeper of it.
    pub keeps: bool,
    /// Who belongs to it.
    pub members: Vec<Member>,
    /// Invitations that nobody has taken yet.
    pub invitations: Vec<Invited>,
    /// When the server was lately brought back from a backup.
    pub restored: Option<Moment>,
    /// Homes that share something at this moment.
    pub homes: Vec<Shares>,
}

pub fn view(asker: &Asker, seen: &Seen) -> Markup {
    let l = &asker.locale();
    asker.framed_with(
        &[HANDS_ON],
        seen.name.as_str(),
        html! {
            (restored_told(l, seen.restored))
            section #homes {
                h2 { (say!(l, club::homes)) }
                @if seen.coaches { p { a.button href="/desk" data-test="to-desk" { (say!(l, club::to_desk)) } } }
                p.quiet { (say!(l, club::homes_how)) }
                @if seen.homes.is_empty() { p data-test="no-homes" { (say!(l, club::no_homes)) } }
                ul.plain { @for one in &seen.homes {
                    li.line data-test="shares" {
                        span { strong { (one.name) }
                            @let what: Vec<String> = one.what.iter().map(|p| say!(l, club::purpose, purpose = *p)).collect();
                            span.hint { (l.and(&what)) } }
                        @if seen.coaches { form method="post" action="/homes" { button.primary name="home" value=(one.home) { (say!(l, club::open)) } } }
                    }
                } }
            }
            section #link {
                h2 { (say!(l, club::link)) }
                p { (say!(l, club::link_what)) }
                (link(asker, &format!("sharing/with/{}", seen.club), "club-link"))
                @if seen.coaches {
                    p { (say!(l, club::own_link_what)) }
                    (link(asker, &format!("sharing/with/{}/{}", seen.club, asker.signed.account.id), "own-link"))
                }
            }
            (members(asker, seen))
            p { a href="/homes" { (say!(l, sharing::to_homes)) } }
        },
    )
}

/// A link that is no secret: it says to whom something may be given, and opens nothing.
fn link(asker: &Asker, path: &str, test: &str) -> Markup {
    let link = links::page(&asker.host.public_url, path);
    html! {
        (handed_on(&asker.locale(), &link, test))
        @if let Ok(code) = qr::drawn(&link, &say!(&asker.locale(), sharing::qr)) { p { (code) } }
    }
}

fn members(asker: &Asker, seen: &Seen) -> Markup {
    let l = &asker.locale();
    let fresh = asker.is_fresh();
    let to = |what: &str| format!("/club/{}/{what}", seen.club);
    let changes = seen.keeps && fresh;
    html! {
        section #members {
            h2 { (say!(l, club::members)) }
            ul.plain { @for member in &seen.members {
                li.line data-test="member" {
                    span { strong { (member.name.as_str()) } " " span.quiet { (role(l, member.membership.part.role())) } }
                    @if changes { form method="post" action=(to("end")) { button name="membership" value=(member.membership.id) { (say!(l, club::end)) } } }
                }
            } }
            @for invited in &seen.invitations {
                div.line data-test="invited" {
                    p { (say!(l, club::invited, role = role(l, invited.part.role()), until = crate::pages::invited::when(l, invited.expires_at, &Zone::utc()))) }
                    @if changes { form method="post" action=(to("invitations/end")) { button name="invitation" value=(invited.id) { (say!(l, sharing::end_invitation)) } } }
                }
            }
            @if changes {
                form method="post" action=(to("invite")) .row {
                    button.primary name="role" value=(Role::Coach.name()) { (say!(l, club::invite_coach)) }
                    button name="role" value=(Role::ClubKeeper.name()) { (say!(l, club::invite_keeper)) }
                }
            } @else if seen.keeps {
                p { a.button href=(format!("/sign-in?again=yes&to=/club/{}", seen.club)) { (say!(l, server::sign_in_again)) } }
            }
        }
    }
}
