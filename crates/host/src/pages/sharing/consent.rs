//! Consent, purpose by purpose: off until given, taken back at any time.
//!
//! The order of giving: ask for leave, append the event to the home's log, and where the log says that it is new, witness it.
//! Where the last step is missing nothing opens.

use super::around::{Names, club_name};
use super::past::Past;
use super::view::to_what;
use crate::asker::{Asker, HOME, Inside};
use crate::fault::{came_new, told};
use axum::extract::{Path, Query};
use axum::response::Redirect;
use maud::{Markup, html};
use sayso_model::{AccountId, Body, ClubId, Coach, Consent, ConsentGiven, ConsentPurpose, Event};
use sayso_people::{Allowed, Capability, Role, Scope};
use sayso_web::Error;
use sayso_web::layout::{Tab, layout};
use sayso_web::typed::Typed;
use sayso_wording::consents::asked;
use sayso_wording::{say, words};
use serde::Deserialize;

/// Fields of a form about a consent.
const FIELDS: [&str; 5] = [HOME, "purpose", "club", "coach", "words"];
/// Purposes that are about coaches. Not sounds of presses: a server has none, and what there is not is not asked for. Where that was
/// agreed to before, it stands among what is open and can be taken back.
const OF_COACHES: [ConsentPurpose; 2] = [ConsentPurpose::CoachFigures, ConsentPurpose::CoachLog];

pub async fn ask(asker: Asker) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::TakeBack]).await?;
    let (l, past) = (&inside.page.locale, Past::of(&inside, &[]));
    let open: Vec<Consent> = inside.known.consents.open().map(|(consent, _)| consent).collect();
    let names = Names::of(&asker, open.iter().filter_map(|c| c.coach())).await?;
    let body = html! {
        p { (say!(l, sharing::consent_intro)) }
        section {
            h2 { (say!(l, sharing::with_coaches)) }
            @for consent in open.iter().filter(|c| c.coach().is_some()) {
                div.line data-test="open" {
                    p { (to_what(l, &names, *consent)) }
                    (button(&inside, *consent, "", true))
                }
            }
            p { (say!(l, sharing::with_how)) }
            form method="get" action="/sharing/with" .stack {
                div.field {
                    label for="club" { (say!(l, sharing::club_code)) }
                    input id="club" name="club" autocomplete="off" maxlength="300" required;
                }
                button.wide { (say!(l, sharing::look_at_club)) }
            }
        }
        @for consent in [Consent::Norms, Consent::Research] { (one(&inside, &past, consent, "", "")) }
        p { a href="/sharing" { (say!(l, sharing::back)) } }
    };
    Ok(layout(&inside.page, Tab::None, &say!(l, sharing::consent), body))
}

#[derive(Deserialize)]
pub struct Code {
    club: String,
}

/// A club by its code, or by the whole link that its page gives.
pub async fn find(asker: Asker, Query(code): Query<Code>) -> Result<Redirect, Error> {
    asker.home(&[Capability::Consent]).await?;
    let text = code.club.trim();
    let path = text.split_once("/sharing/with/").map_or(text, |(_, path)| path);
    let mut parts = path.trim_end_matches('/').split('/');
    let club = parts.next().and_then(|id| id.parse::<ClubId>().ok());
    let Some(club) = club else { return Err(Error::refused("club", words!(sharing::no_code))) };
    Ok(Redirect::to(&match parts.next().map(str::parse::<AccountId>) {
        None => format!("/sharing/with/{club}"),
        Some(Ok(coach)) => format!("/sharing/with/{club}/{coach}"),
        Some(Err(_)) => return Err(Error::refused("club", words!(sharing::no_code))),
    }))
}

pub async fn with_club(asker: Asker, Path(club): Path<String>) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::Consent]).await?;
    let club = club.parse().map_err(|_| no_such_club())?;
    let name = club_name(&asker, club).await?.ok_or_else(no_such_club)?;
    let l = &inside.page.locale;
    let whole = say!(l, sharing::whole_club, club = &name);
    Ok(with(&inside, Coach::Club { club }, club, &say!(l, sharing::coaches_of, club = &name), &whole))
}

pub async fn with_coach(asker: Asker, Path((club, coach)): Path<(String, String)>) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::Consent]).await?;
    let club = club.parse().map_err(|_| no_such_club())?;
    let account = coach.parse().map_err(|_| no_such_club())?;
    let (Some(of), Some(name)) = (club_name(&asker, club).await?, coach_of(&asker, club, account).await?) else {
        return Err(no_such_club());
    };
    let alone = say!(&inside.page.locale, sharing::coach_alone, name = &name, club = &of);
    Ok(with(&inside, Coach::Account { account }, club, &name, &alone))
}

fn no_such_club() -> Error {
    Error::NotFound(words!(sharing::no_such_club))
}

/// What a coach of a club is called.
async fn coach_of(asker: &Asker, club: ClubId, account: AccountId) -> Result<Option<String>, Error> {
    let members = asker.host.people.members(Scope::Club(club)).await.map_err(told)?;
    let is = |m: &&sayso_people::db::Member| m.membership.account == account && m.membership.part.role() == Role::Coach;
    Ok(members.iter().find(is).map(|m| m.name.to_string()))
}

fn with(inside: &Inside, to: Coach, club: ClubId, who: &str, what: &str) -> Markup {
    let (l, past) = (&inside.page.locale, Past::of(inside, &[]));
    let body = html! {
        p { (what) }
        @for purpose in OF_COACHES {
            @if let Some(consent) = of_coach(purpose, to) { (one(inside, &past, consent, who, &club.to_string())) }
        }
        p.quiet { (say!(l, sharing::already_seen)) }
        p { a href="/sharing" { (say!(l, sharing::back)) } }
    };
    layout(&inside.page, Tab::None, &say!(l, sharing::share_with, who = who), body)
}

/// A purpose for a coach or a club; none for one that is about neither.
pub fn of_coach(purpose: ConsentPurpose, to: Coach) -> Option<Consent> {
    match purpose {
        ConsentPurpose::CoachFigures => Some(Consent::CoachFigures { to }),
        ConsentPurpose::CoachLog => Some(Consent::CoachLog { to }),
        ConsentPurpose::CoachSnippets => Some(Consent::CoachSnippets { to }),
        ConsentPurpose::Norms | ConsentPurpose::Research => None,
    }
}

/// One purpose: its words, how it stands, and the one thing to do about it.
fn one(inside: &Inside, past: &Past, consent: Consent, who: &str, club: &str) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    let open = inside.known.consents.is_open(consent);
    let given = past.open(consent).filter(|_| open);
    let name = consent.purpose().name();
    let said = |version| asked(l, consent.purpose(), version, who).into_iter().flatten();
    html! {
        section.card data-test=(format!("purpose-{name}")) {
            h2 { (say!(l, sharing::purpose_title, purpose = name)) }
            @for text in said(Consent::WORDS) { p { (text) } }
            p.quiet data-test="words-number" { (say!(l, sharing::words_number, number = Consent::WORDS)) }
            @if let Some(given) = given.filter(|given| given.words_are_newer(l)) {
                // What was agreed to stays what it was.
                p { (say!(l, sharing::words_since, number = given.words)) }
                blockquote data-test="words-given" { @for text in said(given.words) { p { (text) } } }
                @if given.may_be_renewed(l) {
                    (form(inside, consent, club, "/sharing/consent", html! { button.primary.wide data-test="agree-newer" { (say!(l, sharing::agree_newer)) } }))
                }
            }
            p { strong {
                @match given {
                    Some(given) => (say!(l, sharing::on_since, at = l.weekday_date_time(given.at, &page.zone))),
                    None => (say!(l, sharing::off)),
                }
            } }
            (button(inside, consent, club, open))
        }
    }
}

fn button(inside: &Inside, consent: Consent, club: &str, open: bool) -> Markup {
    let l = &inside.page.locale;
    if open {
        return form(
            inside,
            consent,
            club,
            "/sharing/consent/back",
            html! { button.wide { (say!(l, sharing::take_back)) } },
        );
    }
    form(inside, consent, club, "/sharing/consent", html! { button.primary.wide { (say!(l, sharing::give)) } })
}

/// A form about a consent, with the words as they are now, that one button sends.
fn form(inside: &Inside, consent: Consent, club: &str, to: &str, button: Markup) -> Markup {
    let coach = match consent.coach() {
        Some(Coach::Account { account }) => Some(account),
        Some(Coach::Club { .. }) | None => None,
    };
    let of = match consent.coach() {
        Some(Coach::Club { club }) => club.to_string(),
        Some(Coach::Account { .. }) | None => club.to_owned(),
    };
    html! {
        form method="post" action=(to) {
            input type="hidden" name=(HOME) value=(inside.page.home);
            input type="hidden" name="purpose" value=(consent.purpose().name());
            input type="hidden" name="club" value=(of);
            @if let Some(coach) = coach { input type="hidden" name="coach" value=(coach); }
            input type="hidden" name="words" value=(Consent::WORDS);
            (button)
        }
    }
}

/// The consent that a form is about, and the page it came from.
fn meant(typed: &mut Typed) -> Option<(Consent, String)> {
    let purpose = typed.one_of("purpose", ConsentPurpose::ALL, ConsentPurpose::name)?;
    let club: Option<ClubId> = typed.id("club", |_| true);
    let coach: Option<AccountId> = typed.id("coach", |_| true);
    let back = || "/sharing/consent".to_owned();
    match purpose {
        ConsentPurpose::Norms => Some((Consent::Norms, back())),
        ConsentPurpose::Research => Some((Consent::Research, back())),
        of_coaches => {
            let from = |club: ClubId| match coach {
                Some(coach) => format!("/sharing/with/{club}/{coach}"),
                None => format!("/sharing/with/{club}"),
            };
            let to = coach.map(|account| Coach::Account { account }).or(club.map(|club| Coach::Club { club }))?;
            Some((of_coach(of_coaches, to)?, club.map_or_else(back, from)))
        }
    }
}

fn unclear() -> Error {
    Error::refused("purpose", words!(sharing::unclear))
}

/// That a form was shown with the words as they are now. What counts is what was read: new words are read first.
pub fn words_were_read(typed: &Typed) -> Result<(), Error> {
    let same = typed.text("words") == Consent::WORDS.to_string();
    if same { Ok(()) } else { Err(Error::refused("words", words!(sharing::new_words))) }
}

pub async fn give(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::Consent]).await?;
    let mut typed = typed.only(&FIELDS)?;
    inside.is_of(&typed)?;
    let (consent, back) = meant(&mut typed).filter(|_| typed.right()).ok_or_else(unclear)?;
    words_were_read(&typed)?;
    let club: Option<ClubId> = typed.id("club", |_| true);
    let there = match (consent.coach(), club) {
        (None, _) => true,
        (Some(Coach::Club { club }), _) => club_name(&asker, club).await?.is_some(),
        (Some(Coach::Account { account }), Some(club)) => coach_of(&asker, club, account).await?.is_some(),
        (Some(Coach::Account { .. }), None) => false,
    };
    if !there {
        return Err(no_such_club());
    }
    let given = ConsentGiven { consent, words_version: Consent::WORDS, holds: None };
    if !inside.known.consents.is_open(consent) {
        write(&asker, &inside, vec![given]).await?;
    } else if Past::of(&inside, &[]).open(consent).is_some_and(|of| of.may_be_renewed(&inside.page.locale)) {
        renew(&asker, &inside, given).await?;
    }
    Ok(Redirect::to(&back))
}

/// Asks for no fresh sign-in, as opening does: whoever can reach the page may close.
pub async fn take_back(asker: Asker, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::TakeBack]).await?;
    let mut typed = typed.only(&FIELDS)?;
    inside.is_of(&typed)?;
    let (consent, back) = meant(&mut typed).filter(|_| typed.right()).ok_or_else(unclear)?;
    write(&asker, &inside, inside.known.consents.closing(consent)).await?;
    // Pages on which something may be given ask for a fresh sign-in.
    Ok(Redirect::to(if asker.is_fresh() { &back } else { "/sharing/consent" }))
}

/// Agrees to newer words in place of earlier ones: takes back what was given and gives anew, at once. A giving that is not later than a
/// taking back is closed by it, so that comes a moment before.
async fn renew(asker: &Asker, inside: &Inside, given: ConsentGiven) -> Result<(), Error> {
    let page = &inside.page;
    let back = inside.known.consents.closing(given.consent).into_iter();
    let before = page.now.plus_seconds(-0.001);
    let back = back.map(|part| Event { happened_at: before, ..page.about_home(part) });
    write_all(asker, inside, back.chain([page.about_home(given)]).collect()).await
}

/// Writes givings, or takings back, all at once.
///
/// # Errors
/// Where one of them may not be written, and then none is; where a database fails.
pub async fn write(asker: &Asker, inside: &Inside, bodies: Vec<impl Into<Body>>) -> Result<(), Error> {
    let events = bodies.into_iter().map(|body| inside.page.about_home(body)).collect();
    write_all(asker, inside, events).await
}

async fn write_all(asker: &Asker, inside: &Inside, events: Vec<Event>) -> Result<(), Error> {
    let page = &inside.page;
    if let Some(leave) = &page.leave {
        events.iter().try_for_each(|event| leave.may_write(event, &page.story, page.now))?;
    }
    let outcomes = page.state.store.append(events.clone()).await?;
    for (event, outcome) in events.iter().zip(outcomes) {
        came_new(Some(outcome))?;
        // Who may give consent may take it back: what closes is remembered by that leave.
        let capability = match event.body {
            Body::ConsentTakenBack(_) => Capability::TakeBack,
            _ => inside.leave.capability,
        };
        let by = Allowed { capability, ..inside.leave };
        asker.host.people.witness(&by, event, asker.now).await.map_err(told)?;
    }
    Ok(())
}
