//! A coach proposed another one, for good or while away: what would end and what would begin, in the words of each consent; and a
//! keeper's yes, which does both at once.
//!
//! Handing over ends every consent by which the coach who hands over sees the home, also one to a whole club: from then on the other
//! one alone has what that one had. Cover ends nothing, and what it opens closes by itself.

use super::around::Names;
use super::consent::{of_coach, words_were_read, write};
use super::view::to_what;
use crate::asker::{Asker, HOME, Inside};
use crate::fault::told;
use axum::extract::Path;
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_model::talks::{Standing, Talk, talks};
use sayso_model::{Author, Body, Coach, Consent, ConsentGiven, EventId, ProposalAnswer, Proposed, Reply, Stretch};
use sayso_people::needs::clubs_coached;
use sayso_people::{Capability, Who};
use sayso_web::Error;
use sayso_web::layout::{Tab, layout};
use sayso_web::leave::Leave;
use sayso_web::told::no_such_page;
use sayso_web::typed::{Typed, named};
use sayso_wording::consents::asked;
use sayso_wording::say;
use std::collections::BTreeSet;

/// What a proposal comes to.
struct Opening<'a> {
    talk: Talk<'a>,
    /// Who would see the home.
    to: Author,
    /// What is open now and would close.
    ends: Vec<Consent>,
    /// What is closed now and would open.
    begins: Vec<Consent>,
    /// When alone it would hold.
    holds: Option<Stretch>,
}

/// A proposal that waits for a keeper; none where there is no such one, nobody here saw it written, or one of the two is no coach of
/// the other's club any more.
async fn opening<'a>(asker: &Asker, inside: &'a Inside, id: &str) -> Result<Option<Opening<'a>>, Error> {
    let (page, id) = (&inside.page, named::<EventId>(id, "proposal")?);
    let mut all = talks(&page.story, page.now).into_iter();
    let waits = |t: &Talk<'_>| t.id() == id && t.standing == Standing::Open && inside.known.witnessed.contains(&id);
    let Some(talk) = all.find(waits) else { return Ok(None) };
    let (from, Some(to)) = (talk.part.from.account, talk.part.proposes.opens_to().cloned()) else { return Ok(None) };
    let people = &asker.host.people;
    let (gives, takes) = (people.who(from).await.map_err(told)?, people.who(to.account).await.map_err(told)?);
    let clubs: BTreeSet<_> = clubs_coached(&gives).collect();
    if !clubs_coached(&takes).any(|club| clubs.contains(&club)) {
        return Ok(None);
    }
    let comes_by = |who: &Who, coach: Coach| match coach {
        Coach::Account { account } => account == who.account,
        Coach::Club { club } => clubs_coached(who).any(|of| of == club),
    };
    let open: Vec<Consent> = inside.known.consents.open().map(|(consent, _)| consent).collect();
    let had: Vec<Consent> =
        open.iter().copied().filter(|c| c.coach().is_some_and(|coach| comes_by(&gives, coach))).collect();
    let (ends, holds) = match talk.part.proposes {
        Proposed::Cover { first, last, .. } => {
            (Vec::new(), Some(Stretch { from: first.start(&page.zone), until: last.plus(1).start(&page.zone) }))
        }
        _ => (had.clone(), None),
    };
    // What the other has after that, by what stays open.
    let stays = |purpose| {
        let stay = open.iter().filter(|c| !ends.contains(c) && c.purpose() == purpose);
        stay.filter_map(|c| c.coach()).any(|coach| comes_by(&takes, coach))
    };
    let purposes: BTreeSet<_> = had.iter().map(|c| c.purpose()).collect();
    let begins = purposes.into_iter().filter(|purpose| !stays(*purpose));
    let begins = begins.filter_map(|purpose| of_coach(purpose, Coach::Account { account: to.account })).collect();
    Ok(Some(Opening { talk, to, ends, begins, holds }))
}

pub async fn ask(asker: Asker, Path(id): Path<String>) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::Consent]).await?;
    let Some(opening) = opening(&asker, &inside, &id).await? else { return Err(no_such_page().await) };
    let names = Names::of(&asker, opening.ends.iter().filter_map(|c| c.coach())).await?;
    Ok(view(&inside, &opening, &names))
}

fn view(inside: &Inside, of: &Opening<'_>, names: &Names) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    let (from, to) = (of.talk.part.from.name.as_str(), of.to.name.as_str());
    let last = match of.talk.part.proposes {
        Proposed::Cover { first, last, .. } => Some((l.date(first), l.date(last))),
        _ => None,
    };
    let title = sayso_wording::talk::proposed(l, &page.story, &of.talk.part.proposes);
    let body = html! {
        p {
            @match &last {
                Some((first, last)) => (say!(l, colleagues::cover_what, from = from, to = to, first = first, last = last)),
                None => (say!(l, colleagues::handed_what, from = from, to = to)),
            }
        }
        @if let Some(text) = &of.talk.part.text { p.lines { (text) } }
        @if !of.ends.is_empty() {
            section.card data-test="ends" {
                h2 { (say!(l, colleagues::ends)) }
                ul { @for consent in &of.ends { li { (to_what(l, names, *consent)) } } }
                @if of.ends.iter().any(|c| matches!(c.coach(), Some(Coach::Club { .. }))) { p { (say!(l, colleagues::ends_club, to = to)) } }
            }
        }
        section.card data-test="begins" {
            h2 { @if last.is_some() { (say!(l, colleagues::begins_for_days)) } @else { (say!(l, colleagues::begins)) } }
            @for consent in &of.begins {
                h3 { (say!(l, sharing::purpose_title, purpose = consent.purpose().name())) }
                @for text in asked(l, consent.purpose(), Consent::WORDS, to).into_iter().flatten() { p { (text) } }
            }
            p { (say!(l, colleagues::reads_on, from = from, to = to)) }
            @if last.is_some() { p { (say!(l, colleagues::reads_back, from = from, to = to)) } }
            p.quiet { (say!(l, sharing::words_number, number = Consent::WORDS)) }
        }
        form method="post" action=(format!("/sharing/handed/{}", of.talk.id())) {
            input type="hidden" name=(HOME) value=(page.home);
            input type="hidden" name="words" value=(Consent::WORDS);
            button.primary.wide data-test="agree" { (say!(l, sharing::give)) }
        }
        p.quiet { (say!(l, sharing::already_seen)) }
        p { a href="/talk" { (say!(l, talk::title)) } }
    };
    layout(page, Tab::None, &title, body)
}

pub async fn agree(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::Consent]).await?;
    let typed = typed.only(&[HOME, "words"])?;
    inside.is_of(&typed)?;
    words_were_read(&typed)?;
    let Some(of) = opening(&asker, &inside, &id).await? else { return Err(no_such_page().await) };
    let (page, to) = (&inside.page, of.talk.id());
    let given = |consent: &Consent| ConsentGiven { consent: *consent, words_version: Consent::WORDS, holds: of.holds };
    let mut bodies: Vec<Body> = of.begins.iter().map(given).map(Body::from).collect();
    bodies.extend(of.ends.iter().flat_map(|consent| inside.known.consents.closing(*consent)).map(Body::from));
    let by = page.leave.as_ref().and_then(Leave::answers_as);
    bodies.push(ProposalAnswer { to, reply: Reply::Accepted, text: None, by, rehearsed: None }.into());
    // All at once: there is no moment in which both see the home. The new one does once this server has noted who gave it.
    write(&asker, &inside, bodies).await?;
    Ok(Redirect::to(&format!("/talk#t-{to}")))
}
