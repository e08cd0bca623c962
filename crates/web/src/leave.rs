//! What whoever asks may do, on a server of many homes. At home there are no accounts: whoever came in may do all, and no
//! page carries a leave.

use crate::error::Error;
use sayso_model::{Author, Body, ClubId, Event, EventId, HomeId, Label, Moment, PersonId, Story};
use sayso_people::needs::{asks_passed, clubs_coached, coaches_in, may_append, may_be_read_in};
use sayso_people::{Capability, HomeNow, Scope, Who, may::may};
use sayso_wording::{Locale, words};
use std::collections::BTreeSet;

/// What an account may do in a home at the moment of a request. Made by the door for each request, and good for it alone.
#[derive(Clone, Debug)]
pub struct Leave {
    /// The account with its roles.
    pub who: Who,
    /// What it is called.
    pub name: Label,
    /// How it reads, where the home has no card of the person, or a card that leaves it open.
    pub locale: Locale,
    /// The home as far as it decides.
    pub known: HomeNow,
    /// Who the account is in the home's log, if anyone.
    pub person: Option<PersonId>,
    /// Whether the person proved who they are in the last minutes.
    pub fresh: bool,
    /// Homes it can choose from.
    pub homes: Vec<HomeId>,
    /// What it has to know of the home before anything else.
    pub news: Vec<News>,
    /// Answers that came since it last looked at what was agreed there, or spoke with the home; on the page of what was agreed alone.
    pub unread: BTreeSet<EventId>,
}

/// What whoever is at a home has to know before anything else.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum News {
    /// A keeper of the server invited a new keeper, for the home is said to have lost its way in.
    Anew {
        /// Who.
        by: String,
        /// From when the link lets someone in.
        opens_at: Moment,
    },
    /// Every consent ended, for the server was brought back from a backup, and some have not been given anew.
    Restored {
        /// When.
        at: Moment,
    },
}

/// Stands beside an answer: a coach's proposal that was put into the log just now, for the server to remember who wrote it.
#[derive(Clone, Debug)]
pub struct NewProposal(pub Event);

impl Leave {
    /// Who the account is in the log by its name, where no role says so: the one person at home who is called the same. None for
    /// whoever does not belong to the home, as a coach.
    #[must_use]
    pub fn namesake(&self, story: &Story) -> Option<PersonId> {
        let scope = Scope::Home(self.known.home);
        if !self.who.memberships.iter().any(|m| m.part.scope() == scope) {
            return None;
        }
        let people = story.people();
        let mut same = people.values().filter(|card| card.active && card.name == self.name);
        let one = same.next()?;
        same.next().is_none().then_some(one.person)
    }

    /// Whether it may do this in the home now, but for the freshness of the sign-in: for what a page offers.
    #[must_use]
    pub fn may(&self, capability: Capability, now: Moment) -> bool {
        may(&self.who, capability, self.known.home, Some(&self.known), now).is_ok()
    }

    /// Whoever asks, as what they write names them.
    #[must_use]
    pub fn author(&self) -> Author {
        Author { account: self.who.account, name: self.name.clone() }
    }

    /// As whom it answers a coach: who is no person of the home, under the account's name.
    #[must_use]
    pub fn answers_as(&self) -> Option<Author> {
        self.person.is_none().then(|| self.author())
    }

    /// The club in whose name it writes to the home: one it coaches in, whose coaches may read what others of it wrote.
    #[must_use]
    pub fn writes_for(&self) -> Option<ClubId> {
        clubs_coached(&self.who).filter(|club| self.known.consents.club_reads(*club)).min()
    }

    /// Whether it reads what was written in a club's name.
    #[must_use]
    pub fn reads_of(&self, club: ClubId) -> bool {
        coaches_in(&self.who, club) && self.known.consents.club_reads(club)
    }

    /// That it may write an event into the home's log.
    ///
    /// # Errors
    /// [`Error::Forbidden`], [`Error::NotFresh`], [`Error::NotFound`] where the event is another home's.
    pub fn may_write(&self, event: &Event, story: &Story, now: Moment) -> Result<(), Error> {
        if event.home != self.known.home {
            return Err(Error::NotFound(words!(errors::no_such_page)));
        }
        let first = |id: EventId| story.ledger().first(id);
        // What passed on from one coach to another is asked for where it decides alone.
        let talk = asks_passed(&event.body).then(|| self.known.clone().with_talk(story, now));
        may_append(&self.who, event, Some(talk.as_ref().unwrap_or(&self.known)), first, now, self.fresh)?;
        Ok(())
    }
}

/// What may come into the log from a file: at home everything, on a server no consent, which opens nothing from there.
#[must_use]
pub fn admits(leave: Option<&Leave>) -> fn(&Body) -> bool {
    match leave {
        Some(_) => may_be_read_in,
        None => |_| true,
    }
}
