//! What the home is told of keepers of the server who invited a new keeper to it, and a no to that.

use crate::asker::{Asker, HOME};
use crate::fault::told as fault;
use axum::extract::Path;
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_people::db::Rescue;
use sayso_people::{Capability, InvitationId};
use sayso_web::typed::{Typed, named};
use sayso_web::{Error, Page};
use sayso_wording::say;
use uuid::Uuid;

/// All there ever were, newest first; those that are open with a way to refuse them.
pub fn told(asker: &Asker, page: &Page, rescues: &[Rescue]) -> Markup {
    let l = &page.locale;
    let lifetimes = asker.host.people.lifetimes();
    let when = |at| l.weekday_date_time(at, &page.zone);
    html! {
        @if !rescues.is_empty() {
            section #anew {
                h2 { (say!(l, sharing::anew)) }
                ul.plain { @for one in rescues {
                    @let open = one.is_open(asker.now, lifetimes.invitation_s);
                    li.line data-test="anew" {
                        span { (say!(l, sharing::anew_by, by = &one.made_by, at = when(one.made_at)))
                            span.hint {
                                @if let Some((who, at)) = &one.taken { (say!(l, sharing::anew_taken, who = who, at = when(*at))) }
                                @else if let Some((who, at)) = &one.refused { (say!(l, sharing::anew_refused, who = who, at = when(*at))) }
                                @else if open { (say!(l, sharing::anew_open, from = when(one.opens_at))) }
                                @else { (say!(l, sharing::anew_over)) }
                            } }
                        @if open {
                            form method="post" action=(format!("/sharing/anew/{}/refuse", one.id)) {
                                input type="hidden" name=(HOME) value=(page.home);
                                button data-test="refuse-anew" { (say!(l, sharing::anew_refuse)) }
                            }
                        }
                    }
                } }
            }
        }
    }
}

pub async fn refuse(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::SeePeople]).await?;
    inside.is_of(&typed)?;
    let id: Uuid = named(&id, "invitation")?;
    if asker.host.people.refuse_rescue(&inside.leave, InvitationId(id), asker.now).await.map_err(fault)? {
        tracing::warn!("Account {} refused a new keeper of home {}.", inside.leave.account, inside.page.home);
    }
    Ok(Redirect::to("/sharing"))
}
