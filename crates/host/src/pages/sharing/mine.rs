//! Who can see this, for whoever does not see who belongs to the home: what they see themselves, and who sees what is theirs.

use crate::asker::Asker;
use crate::fault::told;
use crate::pages::said::{days, is_kept, role, shows};
use crate::stories::{Stories, name_of};
use crate::way;
use maud::{Markup, html};
use sayso_people::may::may;
use sayso_people::{Capability, Role, Scope, Who};
use sayso_web::Error;
use sayso_wording::{Locale, say};

/// The page.
///
/// # Errors
/// Where a database fails.
pub async fn view(asker: &Asker) -> Result<Markup, Error> {
    let l = &asker.locale();
    let chosen = way::chosen(&asker.host, &asker.signed, asker.headers()).await?;
    let of_home = match &chosen {
        Some(to) => of_home(asker, l, &to.who, to.home).await?,
        None => None,
    };
    let body = html! {
        @if let Some(told) = of_home { section #home data-test="seen-here" { (told) } }
        section #account {
            h2 { (say!(l, frame::account, name = asker.signed.account.name.as_str())) }
            p { (say!(l, sharing::account_seen)) }
            p.quiet { (say!(l, sharing::keepers_see)) }
        }
        p { a href="/homes" { (say!(l, sharing::to_homes)) } }
    };
    Ok(asker.framed(&say!(l, frame::who_sees), body))
}

/// Of the home that this browser is about: none where it is not theirs to know of at this moment.
async fn of_home(asker: &Asker, l: &Locale, who: &Who, home: sayso_model::HomeId) -> Result<Option<Markup>, Error> {
    let (people, stories) = (&asker.host.people, Stories(&asker.host.server));
    let held = who.memberships.iter().find(|m| m.part.scope() == Scope::Home(home)).map(|m| m.part);
    let Some(known) = people.known_to(who, home, &stories, asker.now).await.map_err(told)? else { return Ok(None) };
    let open = |capability: &Capability| may(who, *capability, home, Some(&known), asker.now).is_ok();
    let sees = Capability::ALL.iter().filter(|c| c.looks() && is_kept(**c) && open(c));
    let sees: Vec<String> = sees.map(|c| shows(l, *c)).collect();
    if held.is_none() && sees.is_empty() {
        return Ok(None);
    }
    let name = name_of(&asker.host, l, home).await?;
    let as_what = held.map_or(Role::Coach, |part| part.role());
    let agreed = held.and_then(|part| part.days());
    Ok(Some(html! {
        h2 { (name) }
        p { strong { (role(l, as_what)) } @if let Some(agreed) = agreed { "; " (days(l, agreed)) } }
        @if sees.is_empty() { p { (say!(l, sharing::you_see_nothing)) } } @else { p { (say!(l, sharing::you_see, what = l.and(&sees))) } }
        @if open(&Capability::Record) || open(&Capability::Advise) || held.is_some() { p { (say!(l, sharing::seen_by_home)) } }
        @if as_what.looks_are_noted() { p { (say!(l, sharing::looks_of_you)) } }
    }))
}
