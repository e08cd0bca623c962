//! What a page knows when it is asked for: the story, the time, who is looking and about which animal.

pub use crate::cookie::cookie;
use crate::error::Error;
use crate::home_label::labels;
use crate::leave::Leave;
use crate::reading::{Reader, in_home, locale};
use crate::state::AppState;
use axum::extract::{FromRequestParts, RawPathParams};
use axum::http::Method;
use axum::http::request::Parts;
use sayso_advisor::Case;
use sayso_model::{AnimalCard, AnimalId, Body, Event, HomeId, Language, Moment, PersonCard, PersonId, Story, Zone};
use sayso_notebook::{Pen, keep};
use sayso_people::Capability;
use sayso_wording::{Locale, words};
use std::collections::BTreeMap;
use std::ops::Deref;
use std::sync::Arc;
use uuid::Uuid;

/// Name of the cookie that says who is holding this device.
pub const PERSON_COOKIE: &str = "sayso_person";

/// Name of the cookie that says which of several homes this device is about.
pub const HOME_COOKIE: &str = "sayso_home";

/// Stands beside a request of whoever belongs to no home, for a page that holds nothing of any.
#[derive(Clone, Copy, Debug)]
pub struct OfNoHome;

/// Whether what stands at an address holds nothing of any home, so that whoever belongs to none, or has not begun a notebook, may
/// read it, too.
#[must_use]
pub fn is_common(method: &Method, path: &str) -> bool {
    const COMMON: [&str; 4] = ["glossary", "methods", "learn", "rehearse"];
    method.is_safe() && path.split('/').nth(1).is_some_and(|first| COMMON.contains(&first))
}

/// Stands beside a request whose page works though nothing is written in the home yet: who belongs to it, and leaving.
#[derive(Clone, Copy, Debug)]
pub struct EvenEmpty;

/// What names a home in an address.
pub const HOME_QUERY: &str = "home";

/// Context of a page about the home. Without a home the visitor is led to set-up.
#[derive(Clone)]
pub struct Page {
    /// Shared state.
    pub state: AppState,
    /// Whose notebook.
    pub home: HomeId,
    /// All homes in this notebook; most often that one alone.
    pub homes: Vec<HomeId>,
    /// What it is called where several are.
    pub home_label: String,
    /// All that is known of it.
    pub story: Arc<Story>,
    /// How many of its events this version does not understand, by kind.
    pub not_understood: BTreeMap<String, usize>,
    /// The time of the request.
    pub now: Moment,
    /// The home's zone.
    pub zone: Zone,
    /// Who holds this device, once they have said so.
    pub person: Option<PersonId>,
    /// How they read.
    pub locale: Locale,
    /// The animal in the address, if it names one.
    pub animal: Option<AnimalId>,
    /// The path of the address.
    pub path: String,
    /// What whoever asks may do, on a server of many homes.
    pub leave: Option<Leave>,
}

impl Page {
    /// Whether whoever asks may do this here now, but for the freshness of the sign-in: for what a page offers. At home
    /// everyone may do all.
    #[must_use]
    pub fn may(&self, capability: Capability) -> bool {
        self.leave.as_ref().is_none_or(|leave| leave.may(capability, self.now))
    }

    /// Whether whoever asks may see a score that this person noted: with the figures anyone's, else one's own. Who scores without
    /// seeing what others scored is held by this alone.
    #[must_use]
    pub fn may_see_score(&self, by: Option<PersonId>) -> bool {
        let own = || by.is_some() && by == self.person && self.may(Capability::SeeOwnScores);
        self.may(Capability::SeeFigures) || own()
    }

    /// Whether addresses name the home: where whoever asks has several, so that what a page is about stays what it was when
    /// another was chosen meanwhile, in another tab.
    #[must_use]
    pub fn names_home(&self) -> bool {
        self.leave.is_some() && self.homes.len() > 1
    }

    /// An address of the home without an animal in it.
    #[must_use]
    pub fn of_home(&self, path: &str) -> String {
        self.of_home_with(path, &[])
    }

    /// An address of the home, with more to say in its query. Values must need no escape.
    #[must_use]
    pub fn of_home_with(&self, path: &str, more: &[(&str, String)]) -> String {
        let home = self.names_home().then(|| (HOME_QUERY, self.home.to_string()));
        let mut to = path.to_owned();
        for (name, value) in home.as_slice().iter().chain(more) {
            to.push(if to.contains('?') { '&' } else { '?' });
            to.push_str(&format!("{name}={value}"));
        }
        to
    }

    /// A page for whoever belongs to no home: there is nothing it could show of one.
    fn of_no_home(parts: &Parts, state: &AppState, leave: Option<Leave>) -> Self {
        let reader = parts.extensions.get::<Reader>().and_then(Reader::known);
        Self {
            state: state.clone(),
            home: HomeId(Uuid::nil()),
            homes: Vec::new(),
            home_label: String::new(),
            story: Arc::default(),
            not_understood: BTreeMap::new(),
            now: state.now(),
            zone: Zone::utc(),
            person: None,
            locale: reader.unwrap_or_else(|| locale(&parts.headers, None)),
            animal: None,
            path: parts.uri.path().to_owned(),
            leave,
        }
    }

    /// Whether it is of no home: there is none yet, or whoever asks belongs to none.
    #[must_use]
    pub const fn is_of_no_home(&self) -> bool {
        self.home.0.is_nil()
    }

    /// Active animals by name.
    #[must_use]
    pub fn animals(&self) -> Vec<AnimalCard> {
        let mut all: Vec<_> = self.story.animals().into_values().filter(|l| l.active).cloned().collect();
        all.sort_by(|a, b| a.name.cmp(&b.name).then(a.animal.cmp(&b.animal)));
        all
    }

    /// Active people by name.
    #[must_use]
    pub fn people(&self) -> Vec<PersonCard> {
        let mut all: Vec<_> = self.story.people().into_values().filter(|t| t.active).cloned().collect();
        all.sort_by(|a, b| a.name.cmp(&b.name).then(a.person.cmp(&b.person)));
        all
    }

    /// The card of who holds this device.
    #[must_use]
    pub fn person_card(&self) -> Option<PersonCard> {
        self.person.and_then(|t| self.story.people().get(&t).map(|c| (*c).clone()))
    }

    /// An event of now, by who holds this device, about the animal in the address. Change fields where that is wrong.
    #[must_use]
    pub fn event(&self, body: impl Into<Body>) -> Event {
        let zone = self.zone.clone();
        Pen { home: self.home, animal: self.animal, person: self.person, zone, now: self.now }.event(body)
    }

    /// An event of now about the whole home, whichever animal's page it was written on.
    #[must_use]
    pub fn about_home(&self, body: impl Into<Body>) -> Event {
        Event { animal: None, ..self.event(body) }
    }

    /// Puts events into the log, as [`sayso_notebook::keep`].
    ///
    /// # Errors
    /// [`Error::Forbidden`] and others where whoever asks may not write one of them, and then none is kept;
    /// [`Error::Refused`] with every problem of every refused event (the others are kept), [`Error::Internal`] where
    /// the store fails.
    pub async fn keep(&self, events: Vec<Event>) -> Result<(), Error> {
        if let Some(leave) = &self.leave {
            events.iter().try_for_each(|event| leave.may_write(event, &self.story, self.now))?;
        }
        Ok(keep(&self.state.store, &self.story, events).await?)
    }
}

/// Where there is no such animal. On a server that is said as of any address that is not there, or not theirs.
fn no_such_animal(leave: Option<&Leave>) -> Error {
    Error::NotFound(if leave.is_some() { words!(errors::no_such_page) } else { words!(errors::no_such_animal) })
}

impl FromRequestParts<AppState> for Page {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, state: &AppState) -> Result<Self, Error> {
        let params = RawPathParams::from_request_parts(parts, state).await.ok();
        let named =
            params.as_ref().and_then(|p| p.iter().find(|(name, _)| *name == "animal").map(|(_, v)| v.to_owned()));
        let leave = parts.extensions.get::<Leave>().cloned();
        if parts.extensions.get::<OfNoHome>().is_some() {
            return Ok(Self::of_no_home(parts, state, leave));
        }
        let homes = state.store.homes().await?;
        let chosen = cookie(&parts.headers, HOME_COOKIE).and_then(|id| id.parse::<HomeId>().ok());
        let home = chosen.filter(|id| homes.contains(id)).or(homes.first().copied());
        let parts = &*parts;
        let nowhere = |leave| match is_common(&parts.method, parts.uri.path()) {
            true => Ok(Self::of_no_home(parts, state, leave)),
            false => Err(Error::NoHome),
        };
        let Some(mut home) = home else { return nowhere(leave) };
        let mut story = state.store.story(home).await?;
        // An address about an animal is about its home, whichever was chosen here.
        if let Some(animal) = named.as_ref().and_then(|text| text.parse::<AnimalId>().ok()) {
            for other in &homes {
                if story.animals().contains_key(&animal) {
                    break;
                }
                (home, story) = (*other, state.store.story(*other).await?);
            }
        }
        // On a server a home is there before anyone has written in it.
        if story.ledger().is_empty() && parts.extensions.get::<EvenEmpty>().is_none() {
            return nowhere(leave);
        }
        let not_understood = state.store.not_understood(home).await?;
        let person = leave
            .as_ref()
            .and_then(|leave| leave.person)
            .or_else(|| cookie(&parts.headers, PERSON_COOKIE).and_then(|id| id.parse::<PersonId>().ok()))
            .filter(|id| story.people().get(id).is_some_and(|t| t.active))
            .or_else(|| leave.as_ref().and_then(|leave| leave.namesake(&story)));
        let animal = match named {
            None => None,
            Some(text) => Some(
                text.parse::<AnimalId>()
                    .ok()
                    .filter(|id| story.animals().contains_key(id))
                    .ok_or_else(|| no_such_animal(leave.as_ref()))?,
            ),
        };
        let card = person.and_then(|id| story.people().get(&id).copied());
        let locale = in_home(&parts.headers, card, leave.as_ref().map(|leave| leave.locale));
        if let Some(reader) = parts.extensions.get::<Reader>() {
            reader.is(locale);
        }
        let (homes, home_label) = match &leave {
            // Beside homes of other people, which are not read for this: its own name alone.
            Some(leave) => (leave.homes.clone(), story.home().map(|card| card.name.to_string()).unwrap_or_default()),
            None => {
                let label = label_among(state, &locale, &homes, home).await;
                (homes, label)
            }
        };
        let path = parts.uri.path().to_owned();
        Ok(Self {
            state: state.clone(),
            home,
            homes,
            home_label,
            not_understood,
            zone: story.zone(),
            now: state.now(),
            story,
            person,
            locale,
            animal,
            path,
            leave,
        })
    }
}

/// What a home is called among those of the notebook; nothing where it is the only one, and nobody asks.
async fn label_among(state: &AppState, locale: &Locale, homes: &[HomeId], home: HomeId) -> String {
    if homes.len() < 2 {
        return String::new();
    }
    // Before the stories: what comes in meanwhile is told by the next.
    let at = state.store.revision().await.ok();
    let kept = match at.and_then(|at| state.kept.labels(at, locale.language)) {
        Some(kept) => kept,
        None => {
            let mut all = Vec::new();
            for id in homes {
                // One that cannot be read says so on its own pages, and takes none from this one.
                if let Ok(story) = state.store.story(*id).await {
                    all.push((*id, story));
                }
            }
            let fresh = Arc::new(labels(locale, &all));
            if let Some(at) = at.filter(|_| all.len() == homes.len()) {
                state.kept.keep_labels(at, locale.language, Arc::clone(&fresh));
            }
            fresh
        }
    };
    kept.get(&home).cloned().unwrap_or_default()
}

/// Context of a page about one animal: the route has `{animal}` in its path.
#[derive(Clone)]
pub struct AnimalPage {
    /// Context of the home.
    pub page: Page,
    /// The animal.
    pub id: AnimalId,
    /// Its card.
    pub card: AnimalCard,
}

impl Deref for AnimalPage {
    type Target = Page;
    fn deref(&self) -> &Page {
        &self.page
    }
}

impl AnimalPage {
    /// The animal at the time of the request, with what was added up for earlier pages.
    #[must_use]
    pub fn case(&self) -> Case<'_> {
        Case::new(&self.story, self.id, self.now).with(self.state.kept.sums(self.home))
    }

    /// The language to propose labels in: the board's, or the reader's where none was chosen (reward names are theirs).
    #[must_use]
    pub fn label_language(&self) -> Language {
        let reads = || Language::of_tag(self.locale.tag()).unwrap_or(Language::En);
        self.story.board().and_then(|board| board.language).unwrap_or_else(reads)
    }
}

impl FromRequestParts<AppState> for AnimalPage {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, state: &AppState) -> Result<Self, Error> {
        let page = Page::from_request_parts(parts, state).await?;
        let missing = || no_such_animal(page.leave.as_ref());
        let id = page.animal.ok_or_else(missing)?;
        let card = page.story.animals().get(&id).map(|c| (*c).clone()).ok_or_else(missing)?;
        Ok(Self { page, id, card })
    }
}
