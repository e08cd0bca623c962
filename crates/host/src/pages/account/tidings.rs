//! Whether and when one is told by e-mail that something is new.

use super::Shown;
use crate::fault::told;
use crate::host::Host;
use crate::tidings;
use maud::{Markup, html};
use sayso_model::{Day, Moment, Zone};
use sayso_people::Who;
use sayso_people::tidings::{Chosen, Every};
use sayso_web::Error;
use sayso_web::fields::select;
use sayso_web::typed::Typed;
use sayso_wording::{Locale, say};

/// Fields of the form.
pub const FIELDS: [&str; 3] = ["every", "hour", "zone"];
/// Not at all.
const NEVER: &str = "never";
/// The hour that is offered first.
const MORNING: u8 = 8;
const LAST_HOUR: u8 = 23;

/// What stands in the form.
pub struct Offered {
    /// What was chosen.
    pub chosen: Option<Chosen>,
    /// The zone of the account's first home, where it has one.
    pub zone: Option<Zone>,
}

impl Offered {
    /// None where no mail goes to people, or nothing would ever be told to this account.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn of(host: &Host, who: &Who, zone: &Zone) -> Result<Option<Self>, Error> {
        if !host.has_post() || !tidings::concern(who) {
            return Ok(None);
        }
        let chosen = host.people.tidings(who.account).await.map_err(told)?;
        let at_home = who.memberships.iter().any(|m| m.part.scope().home().is_some());
        Ok(Some(Self { chosen, zone: at_home.then(|| zone.clone()) }))
    }

    /// Fills the form; what was typed stays.
    pub fn fill(&self, typed: Typed) -> Typed {
        let chosen = self.chosen.as_ref();
        typed
            .with("every", chosen.map_or(NEVER, |chosen| chosen.every.name()))
            .with("hour", chosen.map_or(MORNING, |chosen| chosen.hour))
            .with_some("zone", chosen.map(|chosen| chosen.zone.name()).or(self.zone.as_ref().map(Zone::name)))
    }
}

/// What was chosen, none for not at all; none where something is wrong with it.
pub fn read(typed: &mut Typed) -> Option<Option<Chosen>> {
    if typed.text("every") == NEVER {
        return Some(None);
    }
    let every = typed.one_needed("every", &Every::ALL, Every::name);
    let hour = typed.whole_needed("hour", 0, LAST_HOUR.into()).and_then(|hour| u8::try_from(hour).ok());
    let zone = Zone::new(typed.text("zone"));
    let zone = typed.checked("zone", zone);
    Some(Some(Chosen { every: every?, hour: hour?, zone: zone? }))
}

/// The choice, where there is one.
pub fn form(shown: &Shown) -> Markup {
    let (l, typed) = (&shown.locale, &shown.typed);
    let every = [(NEVER, say!(l, account::news_never))]
        .into_iter()
        .chain([(Every::Day.name(), say!(l, account::news_daily)), (Every::Week.name(), say!(l, account::news_weekly))])
        .map(|(value, text)| (value.to_owned(), text));
    let hours = (0..=LAST_HOUR).map(|hour| (hour.to_string(), on_the_clock(l, hour)));
    html! {
        @if shown.tidings.is_some() {
            h2 #news { (say!(l, account::news)) }
            p { (say!(l, account::news_what)) }
            p.note data-test="news-urgent" { (say!(l, account::news_urgent)) }
            @if shown.signed.account.email.is_none() { p { (say!(l, account::news_no_email)) } }
            @else {
                form method="post" action="/account/news" .stack data-test="news" {
                    (select(typed, "every", &say!(l, account::news_every), "", &every.collect::<Vec<_>>()))
                    (select(typed, "hour", &say!(l, account::news_hour), "", &hours.collect::<Vec<_>>()))
                    div.field {
                        label for="zone" { (say!(l, account::news_zone)) }
                        @if let Some(what) = typed.sentence("zone") { span.wrong #zone-wrong role="alert" { (what) } }
                        input #zone name="zone" list="zones" value=(typed.text("zone")) placeholder="Europe/Berlin" autocomplete="off" data-zone
                            aria-invalid=[typed.problem("zone").map(|_| "true")];
                        datalist #zones { @for z in Zone::all() { option value=(z) {} } }
                    }
                    button data-test="news-save" { (say!(l, setup::keep)) }
                }
            }
        }
    }
}

/// An hour as the reader's clock shows it.
fn on_the_clock(l: &Locale, hour: u8) -> String {
    let utc = Zone::utc();
    let day: Day = Moment::clamped(0).day(&utc);
    day.at((hour, 0), &utc).map_or_else(|| hour.to_string(), |at| l.time(at, &utc))
}
