//! Inviting someone to a home: a role, for a sitter days, for who writes as themselves a person of the home.

use crate::asker::{Asker, HOME, Inside};
use crate::fault::told;
use crate::pages::invited;
use crate::pages::said::{role, weekdays};
use axum::extract::Path;
use axum::response::{IntoResponse, Redirect, Response};
use maud::{Markup, html};
use sayso_model::{Day, Label, PersonCard, PersonId};
use sayso_people::db::Member;
use sayso_people::{Capability, Days, InvitationId, MembershipId, OsSecrets, Part, Role, Scope};
use sayso_web::fields::{AGAIN, day, line, radios, select, sent_again, summary, ticks};
use sayso_web::layout::{Tab, layout_with};
use sayso_web::typed::{Typed, again, named};
use sayso_web::{Error, Page};
use sayso_wording::{say, words};
use std::collections::BTreeSet;
use uuid::Uuid;

/// Roles in a home.
const ROLES: [Role; 4] = [Role::Keeper, Role::Member, Role::Sitter, Role::Observer];
/// Days agreed with a sitter at most, the first and the last included: after a year they are agreed anew.
const MOST_DAYS: i32 = 366;
/// Fields of a role.
pub const FIELDS: [&str; 7] = [HOME, "role", "person", "new_person", "first", "last", "weekdays"];

pub async fn ask(asker: Asker) -> Result<Markup, Error> {
    let inside = asker.home(&[Capability::ManagePeople]).await?;
    Ok(form(&inside.page, &begun(&inside.page)))
}

fn begun(page: &Page) -> Typed {
    let today = page.now.day(&page.zone);
    let typed = Typed::default().with("role", Role::Member.name()).with("first", today).with("last", today.plus(6));
    (0..7).fold(typed, |typed, bit| typed.with("weekdays", bit))
}

pub async fn make(asker: Asker, typed: Typed) -> Result<Response, Error> {
    let inside = asker.home(&[Capability::ManagePeople]).await?;
    let mut typed = typed.only(&FIELDS)?.read_by(inside.page.locale);
    inside.is_of(&typed)?;
    let taken = taken(&asker, &inside, None).await?;
    let Some((part, card)) = part_of(&inside, &taken, &mut typed) else { return Ok(again(form(&inside.page, &typed))) };
    keep_card(&inside, card).await?;
    let made = asker.host.people.invite(&inside.leave, &part, asker.now, &mut OsSecrets).await.map_err(told)?;
    let (page, l) = (&inside.page, &inside.page.locale);
    let body = html! {
        p { (super::view::with_part(page, &part)) }
        (invited::shown(&asker.host, l, &page.zone, &made)?)
        p { a.button href="/sharing#people" { (say!(l, sharing::back)) } }
    };
    Ok(layout_with(page, Tab::None, &say!(l, sharing::invitation), &[invited::HANDS_ON], body).into_response())
}

pub async fn end(asker: Asker, Path(id): Path<String>, typed: Typed) -> Result<Redirect, Error> {
    let inside = asker.home(&[Capability::ManagePeople]).await?;
    inside.is_of(&typed)?;
    let id: Uuid = named(&id, "invitation")?;
    asker.host.people.end_invitation(&inside.leave, InvitationId(id), asker.now).await.map_err(told)?;
    Ok(Redirect::to("/sharing#people"))
}

/// Writes the card of a person that a form named.
///
/// # Errors
/// As [`Page::keep`].
pub async fn keep_card(inside: &Inside, card: Option<PersonCard>) -> Result<(), Error> {
    match card {
        Some(card) => inside.page.keep(vec![inside.page.about_home(card)]).await,
        None => Ok(()),
    }
}

/// Roles that there can be now: who writes under their own name in the home is one of its people, and before anything is written
/// there are none.
fn roles(page: &Page) -> impl Iterator<Item = Role> {
    let empty = page.story.ledger().is_empty();
    ROLES.into_iter().filter(move |role| !(empty && role.writes_as_itself()))
}

/// Cards of the home that are somebody's already: of an account that is that person, and of who keeps the home under that name.
/// Whoever writes as one of them could withdraw what that person wrote. `except` is the role that is being changed.
///
/// # Errors
/// Where the database fails.
pub async fn taken(asker: &Asker, inside: &Inside, except: Option<MembershipId>) -> Result<BTreeSet<PersonId>, Error> {
    let members = asker.host.people.members(Scope::Home(inside.page.home)).await.map_err(told)?;
    let others: Vec<_> = members.iter().filter(|m| Some(m.membership.id) != except).collect();
    let is_keepers = |card: &PersonCard| {
        let same = |m: &&&Member| m.membership.part.role() == Role::Keeper && m.name == card.name;
        others.iter().any(|m| same(&m))
    };
    let own = others.iter().filter_map(|m| m.membership.part.person());
    let people = inside.page.people();
    Ok(own.chain(people.iter().filter(|card| is_keepers(card)).map(|card| card.person)).collect())
}

/// The role that a form says, with the card of who was named and has none yet; none where something is wrong, which is noted
/// beside its field.
pub fn part_of(inside: &Inside, taken: &BTreeSet<PersonId>, typed: &mut Typed) -> Option<(Part, Option<PersonCard>)> {
    let page = &inside.page;
    let role = typed.one_of("role", &ROLES, Role::name).filter(|role| roles(page).any(|one| one == *role));
    let Some(role) = role else {
        if typed.right() {
            typed.wrong("role", words!(sharing::role_missing));
        }
        return None;
    };
    let person: Option<PersonId> = typed.id("person", |id| page.story.people().get(id).is_some_and(|p| p.active));
    let named = if typed.text("new_person").is_empty() { None } else { typed.label("new_person") };
    // Two people may have one name: who is meant is chosen, not guessed.
    let plain = |name: &Label| name.as_str().to_lowercase();
    if person.is_none()
        && let Some(name) = &named
        && page.people().iter().any(|card| plain(&card.name) == plain(name))
    {
        typed.wrong("new_person", words!(sharing::name_is_there, name = name.to_string()));
    }
    // One of the two: the other would be dropped without a word.
    if let (Some(name), Some(person)) = (&named, person)
        && page.story.people().get(&person).is_some_and(|card| plain(&card.name) != plain(name))
    {
        typed.wrong("new_person", words!(sharing::name_and_person));
    }
    let card = match (&named, person) {
        (Some(name), None) => Some(PersonCard::new(PersonId(Uuid::now_v7()), name.clone(), sayso_model::Role::Visitor)),
        _ => None,
    };
    if role.writes_as_itself() && person.is_some_and(|person| taken.contains(&person)) {
        typed.wrong("person", words!(sharing::person_taken));
    }
    let person = person.or(card.as_ref().map(|card| card.person));
    if role.writes_as_itself() && person.is_none() && typed.right() {
        typed.wrong("person", words!(sharing::person_missing));
    }
    let days = if role.has_days() { agreed(typed, page.now.day(&page.zone)) } else { None };
    if !typed.right() {
        return None;
    }
    let part = Part::new(Scope::Home(page.home), role, person, days);
    part.map_err(|_| typed.wrong("role", words!(host::part))).ok().map(|part| (part, card))
}

fn agreed(typed: &mut Typed, today: Day) -> Option<Days> {
    let mut day = |name: &str| {
        let read = typed.text(name).parse::<Day>().ok();
        if read.is_none() {
            typed.wrong(name, words!(sharing::day_missing));
        }
        read
    };
    let (first, last) = (day("first"), day("last"));
    let bits: Vec<u8> = typed.all("weekdays").filter_map(|bit| bit.parse().ok()).filter(|bit| *bit < 7).collect();
    if bits.is_empty() {
        typed.wrong("weekdays", words!(sharing::weekdays_missing));
    }
    let (first, last) = (first?, last?);
    if last < first {
        typed.wrong("last", words!(sharing::last_before_first));
    }
    if last < today {
        typed.wrong("last", words!(sharing::last_is_over));
    }
    if last.days_since(first) >= MOST_DAYS {
        typed.wrong("last", words!(sharing::last_too_far, day = typed.reader().date(first.plus(MOST_DAYS - 1))));
    }
    let days = Days { first, last, weekdays: bits.iter().fold(0, |all, bit| all | (1 << bit)) };
    if typed.right() && !days.hold_any() {
        typed.wrong("weekdays", words!(sharing::weekdays_none));
    }
    typed.right().then_some(days)
}

fn form(page: &Page, typed: &Typed) -> Markup {
    let l = &page.locale;
    layout_with(
        page,
        Tab::None,
        &say!(l, sharing::invite),
        &[AGAIN],
        html! {
            (sent_again(l))
            (summary(typed))
            p { (say!(l, sharing::invite_intro)) }
            form method="post" action="/sharing/invite" .stack {
                (fields(page, typed))
                button.primary.wide { (say!(l, sharing::make_link)) }
            }
            p { a href="/sharing#people" { (say!(l, sharing::back)) } }
        },
    )
}

/// The fields of a role.
pub fn fields(page: &Page, typed: &Typed) -> Markup {
    let l = &page.locale;
    let roles: Vec<_> = roles(page)
        .map(|one| {
            let what = html! { (role(l, one)) span.hint { (say!(l, sharing::role_can, role = one.name())) } };
            (one.name().to_owned(), what)
        })
        .collect();
    let named = !page.story.ledger().is_empty();
    let nobody = (String::new(), say!(l, sharing::no_person));
    let people = page.people().into_iter().map(|card| (card.person.to_string(), card.name.to_string()));
    let people: Vec<_> = std::iter::once(nobody).chain(people).collect();
    let week = weekdays(l, Days::every(page.now.day(&page.zone), page.now.day(&page.zone)));
    let week: Vec<_> = week.into_iter().map(|(bit, name)| (bit.to_string(), html! { (name) })).collect();
    html! {
        input type="hidden" name=(HOME) value=(page.home);
        (radios(typed, "role", &say!(l, sharing::as_role), "", &roles))
        @if !named { p.quiet data-test="not-begun" { (say!(l, sharing::roles_later)) } } @else {
        (select(typed, "person", &say!(l, sharing::which_person), &say!(l, sharing::which_person_hint), &people))
        (line(typed, "new_person", &say!(l, sharing::new_person), &say!(l, sharing::new_person_hint), false))
        fieldset .of-sitter {
            legend { (say!(l, sharing::sitter_days)) }
            (day(typed, "first", &say!(l, sharing::first_day), ""))
            (day(typed, "last", &say!(l, sharing::last_day), ""))
            (ticks(typed, "weekdays", &say!(l, sharing::on_weekdays), "", &week))
        } }
    }
}
