//! The invented club that `host --demo` serves: homes with their keepers, a club with its keeper and a coach, a sitter, an
//! observer, consents. All of it comes about as it would in use: by invitations taken, events appended, consent witnessed.

use sayso_host::Stories;
use sayso_model::{
    AccountId, Author, Body, ClubId, Coach, Consent, ConsentGiven, Event, Label, Language, Moment, PersonCard,
    PersonId, PlanLine, PlanWay, Proposal, ProposalAnswer, Proposed, Reply,
};
use sayso_notebook::Pen;
use sayso_people::capability::Capability;
use sayso_people::db::Taker;
use sayso_people::membership::Days;
use sayso_people::{Allowed, Email, OsSecrets, Part, PartError, People, Role, Scope, Secret, Session};
use sayso_sim::{ClubHome, Simulated, called};
use sayso_store::{Appended, Server, StoreError};
use std::sync::{Mutex, PoisonError};
use uuid::Uuid;

/// Events put in at once.
const BATCH: usize = 1000;
/// Days agreed with the sitter, from some days ago.
const SITTING: (i32, i32) = (-3, 25);
/// How long ago the plan of the demo was agreed that is under way, and how many days plans go on.
const PLAN_AGREED: i32 = 5;
const PLAN_DAYS: i32 = 6;
/// Where nobody has mail (RFC 2606).
const MAIL_AT: &str = "example.org";

/// Why the club could not be made.
#[derive(Debug, thiserror::Error)]
pub enum NotMade {
    /// The log.
    #[error("{0}")]
    Store(#[from] StoreError),
    /// People and permission.
    #[error("{0}")]
    People(#[from] sayso_people::Error),
    /// An event that was not stored.
    #[error("an invented event was not stored: {0:?}")]
    NotStored(Appended),
    /// An account that was to be new.
    #[error("an invitation was taken without a new account")]
    NoSession,
    /// A club too small for its people.
    #[error("the club lacks home {0}")]
    NoHome(usize),
}

impl From<PartError> for NotMade {
    fn from(why: PartError) -> Self {
        Self::People(why.into())
    }
}

impl From<sayso_people::Denied> for NotMade {
    fn from(why: sayso_people::Denied) -> Self {
        Self::People(why.into())
    }
}

/// Someone to come in as.
#[derive(Clone, Debug)]
pub struct Door {
    /// As what.
    pub role: Role,
    /// What the person is called.
    pub name: Label,
    /// The address to ask another link for.
    pub email: Email,
    /// Whose home or club.
    pub of: Vec<Label>,
    /// The secret of a link to sign in.
    pub secret: Secret,
}

/// What was made.
#[derive(Debug)]
pub struct Club {
    /// How many homes.
    pub homes: usize,
    /// How many events.
    pub events: usize,
    /// As whom one may come in.
    pub doors: Vec<Door>,
}

/// What makes it.
pub struct Maker<'a> {
    /// Where logs are.
    pub server: &'a Server,
    /// Where people are. Its links should hold as long as the demo does.
    pub people: &'a People,
    /// What the people of the demo read.
    pub language: Language,
    /// Now.
    pub now: Moment,
    /// Accounts that came so far.
    pub came: Mutex<Vec<AccountId>>,
}

impl Maker<'_> {
    /// Makes the club of these homes; `made` is told how many homes are done.
    pub async fn make(&self, homes: Vec<ClubHome>, made: &(dyn Fn(usize) + Sync)) -> Result<Club, NotMade> {
        let of =
            |place: usize| homes.get(place).map(|one| one.run.truth.home.name.clone()).ok_or(NotMade::NoHome(place));
        let (_, secret) = self.people.invite_first_keeper(self.now, &mut OsSecrets).await?;
        let server_keeper = self.comes(&secret, called::SERVER_KEEPER).await?;
        let host = self.people.may_on_server(&server_keeper, Capability::Host, self.now).await?;
        let club_name = named(called::CLUB)?;
        let club = self.people.open_club(&host, &club_name, self.now, &mut OsSecrets).await?;
        let (club_keeper, coach, colleague) = self.club_people(&host, club).await?;
        let mut doors = vec![
            self.door(&server_keeper, called::SERVER_KEEPER, Role::ServerKeeper, Vec::new()).await?,
            self.door(&club_keeper, called::CLUB_KEEPER, Role::ClubKeeper, vec![club_name.clone()]).await?,
            self.door(&coach, called::COACH, Role::Coach, vec![club_name.clone()]).await?,
            self.door(&colleague, called::COLLEAGUE, Role::Coach, vec![club_name]).await?,
        ];
        let mut events = 0;
        let mut first_keeper: Option<(String, Session)> = None;
        for (place, one) in homes.iter().enumerate() {
            let run = &one.run;
            self.append(run).await?;
            events += run.events.len();
            self.people.open_home(&host, run.truth.ids.home, self.now).await?;
            let keeper = match &first_keeper {
                // Whoever keeps the first home keeps the second one too.
                Some((name, session)) if place == 1 => {
                    let person = self.card(run, name, sayso_model::Role::Home).await?;
                    let secret = self.keeper(&host, run, Some(person)).await?;
                    let taker = Taker::Known(session);
                    self.people.take_invitation(&secret, taker, FROM, DEVICE, self.now, &mut OsSecrets).await?;
                    session.clone()
                }
                _ => self.comes(&self.keeper(&host, run, person(run, 0)).await?, name_of(run)).await?,
            };
            self.consents(&keeper, run, club, place).await?;
            match place {
                1 => self.plan(&coach, run, None).await?,
                2 => self.plan(&coach, run, Some(PLAN_AGREED)).await?,
                _ => {}
            }
            if place == 0 {
                doors.push(self.door(&keeper, name_of(run), Role::Keeper, vec![of(0)?, of(1)?]).await?);
                let sitter = self.joins(&keeper, run, Role::Sitter, called::SITTER).await?;
                doors.push(self.door(&sitter, called::SITTER, Role::Sitter, vec![of(0)?]).await?);
                let observer = self.joins(&keeper, run, Role::Observer, called::OBSERVER).await?;
                doors.push(self.door(&observer, called::OBSERVER, Role::Observer, vec![of(0)?]).await?);
                first_keeper = Some((name_of(run).to_owned(), keeper));
            }
            made(place + 1);
        }
        self.all_go(&server_keeper).await?;
        Ok(Club { homes: homes.len(), events, doors })
    }

    /// Ends every session: nobody has signed in yet, and whoever comes in finds none but their own.
    async fn all_go(&self, server_keeper: &Session) -> Result<(), NotMade> {
        let by = self.people.may_on_server(server_keeper, Capability::ManageServer, self.now).await?;
        let came = std::mem::take(&mut *self.came.lock().unwrap_or_else(PoisonError::into_inner));
        for account in came {
            self.people.end_all_sessions(&by, account, self.now).await?;
        }
        Ok(())
    }

    async fn append(&self, run: &Simulated) -> Result<(), NotMade> {
        let store = self.server.found(run.truth.ids.home).await?;
        for batch in run.events.chunks(BATCH) {
            let outcomes = store.append(batch.to_vec()).await?;
            if let Some(other) = outcomes.into_iter().find(|o| *o != Appended::New) {
                return Err(NotMade::NotStored(other));
            }
        }
        Ok(())
    }

    /// What the keeper of a home writes down now.
    fn event(&self, run: &Simulated, body: impl Into<Body>) -> Event {
        let (home, zone) = (run.truth.ids.home, run.truth.home.zone.clone());
        Pen { home, animal: None, person: person(run, 0), zone, now: self.now }.event(body)
    }

    async fn write(&self, event: &Event) -> Result<(), NotMade> {
        match self.server.home(event.home).append(vec![event.clone()]).await?.pop() {
            Some(Appended::New) => Ok(()),
            Some(other) => Err(NotMade::NotStored(other)),
            None => Err(StoreError::Closed.into()),
        }
    }

    /// Someone more in a home.
    async fn card(&self, run: &Simulated, name: &str, role: sayso_model::Role) -> Result<PersonId, NotMade> {
        let person = PersonId(Uuid::now_v7());
        self.write(&self.event(run, PersonCard::new(person, named(name)?, role))).await?;
        Ok(person)
    }

    /// An invitation to keep a home.
    async fn keeper(&self, host: &Allowed, run: &Simulated, person: Option<PersonId>) -> Result<Secret, NotMade> {
        let part = Part::new(Scope::Home(run.truth.ids.home), Role::Keeper, person, None)?;
        Ok(self.people.invite(host, &part, self.now, &mut OsSecrets).await?.1)
    }

    /// Takes an invitation as somebody new.
    async fn comes(&self, secret: &Secret, name: &str) -> Result<Session, NotMade> {
        let taker = Taker::New { name: &named(name)?, language: self.language };
        let joined = self.people.take_invitation(secret, taker, FROM, DEVICE, self.now, &mut OsSecrets).await?;
        let (session, _) = joined.session.ok_or(NotMade::NoSession)?;
        self.came.lock().unwrap_or_else(PoisonError::into_inner).push(session.account);
        Ok(session)
    }

    /// The keeper of the club, its coach, and a colleague to whom homes can be handed over.
    async fn club_people(&self, host: &Allowed, club: ClubId) -> Result<(Session, Session, Session), NotMade> {
        let part = Part::new(Scope::Club(club), Role::ClubKeeper, None, None)?;
        let (_, secret) = self.people.invite(host, &part, self.now, &mut OsSecrets).await?;
        let keeper = self.comes(&secret, called::CLUB_KEEPER).await?;
        let manages = self.people.may_in_club(&keeper, Capability::ManageClub, club, self.now).await?;
        let coach = self.coaches(&manages, club, called::COACH).await?;
        let colleague = self.coaches(&manages, club, called::COLLEAGUE).await?;
        Ok((keeper, coach, colleague))
    }

    async fn coaches(&self, manages: &Allowed, club: ClubId, name: &str) -> Result<Session, NotMade> {
        let part = Part::new(Scope::Club(club), Role::Coach, None, None)?;
        let (_, secret) = self.people.invite(manages, &part, self.now, &mut OsSecrets).await?;
        self.comes(&secret, name).await
    }

    /// Someone whom the keeper of a home invites, as a new person of the home.
    async fn joins(&self, keeper: &Session, run: &Simulated, role: Role, name: &str) -> Result<Session, NotMade> {
        let home = run.truth.ids.home;
        let today = self.now.day(&run.truth.home.zone);
        let days = role.has_days().then(|| Days::every(today.plus(SITTING.0), today.plus(SITTING.1)));
        let person = self.card(run, name, sayso_model::Role::Visitor).await?;
        let part = Part::new(Scope::Home(home), role, Some(person), days)?;
        let leave = self.people.may(keeper, Capability::ManagePeople, home, &Stories(self.server), self.now).await?;
        let (_, secret) = self.people.invite(&leave, &part, self.now, &mut OsSecrets).await?;
        self.comes(&secret, name).await
    }

    /// Of four homes one shares nothing, two share figures, and one also the log.
    async fn consents(&self, keeper: &Session, run: &Simulated, club: ClubId, place: usize) -> Result<(), NotMade> {
        let to = Coach::Club { club };
        let given: &[Consent] = match place % 4 {
            0 => &[],
            2 => &[Consent::CoachFigures { to }, Consent::CoachLog { to }],
            _ => &[Consent::CoachFigures { to }],
        };
        let home = run.truth.ids.home;
        for consent in given {
            let leave = self.people.may(keeper, Capability::Consent, home, &Stories(self.server), self.now).await?;
            let event = self.event(run, ConsentGiven { consent: *consent, words_version: Consent::WORDS, holds: None });
            self.write(&event).await?;
            self.people.witness(&leave, &event, self.now).await?;
        }
        Ok(())
    }

    /// A plan of the coach for the first words of a home's first animal: one that waits for an answer, or one that was agreed so many
    /// days ago.
    async fn plan(&self, coach: &Session, run: &Simulated, agreed: Option<i32>) -> Result<(), NotMade> {
        let home = run.truth.ids.home;
        let stories = Stories(self.server);
        let leave = self.people.may(coach, Capability::Advise, home, &stories, self.now).await?;
        let story = self.server.home(home).story(home).await?;
        let Some(animal) = story.animals().into_keys().next() else { return Ok(()) };
        let words = story.words_of(animal).into_iter().filter(|w| !w.closing).take(2);
        let line = |word| PlanLine { word, way: Some(PlanWay::Show), minutes: 3, times: 3 };
        let lines = words.map(|w| line(w.word)).collect();
        let at = self.now.plus_seconds(-86_400.0 * f64::from(agreed.unwrap_or(0)));
        let last_day = self.now.day(&run.truth.home.zone).plus(PLAN_DAYS);
        let from = Author { account: leave.account, name: named(called::COACH)? };
        let body =
            Proposal { from, proposes: Proposed::Plan { lines, last_day }, text: None, takes_up: None, club: None };
        let written =
            Event { animal: Some(animal), person: None, happened_at: at, recorded_at: at, ..self.event(run, body) };
        self.write(&written).await?;
        self.people.witness_proposal(&leave, &written, self.now).await?;
        if agreed.is_some() {
            let yes = ProposalAnswer { to: written.id, reply: Reply::Accepted, text: None, by: None, rehearsed: None };
            let yes = self.event(run, yes);
            self.write(&Event { animal: Some(animal), happened_at: at, recorded_at: at, ..yes }).await?;
        }
        Ok(())
    }

    /// Gives someone an address, proved as if by a mail, and a link to sign in.
    async fn door(&self, session: &Session, name: &str, role: Role, of: Vec<Label>) -> Result<Door, NotMade> {
        use sayso_people::letter::Letter;
        let email = Email::new(&format!("{}@{MAIL_AT}", name.to_lowercase()))?;
        let none = || NotMade::People(sayso_people::Error::NotValid);
        let asked = self.people.ask_proof(session, &email, FROM, self.now, &mut OsSecrets).await?;
        let Some(Letter::Prove { secret, .. }) = asked.letter().map(|mail| mail.letter) else { return Err(none()) };
        self.people.prove_email(session, &secret, self.now).await?;
        let asked = self.people.ask_link(&email, None, FROM, self.now, &mut OsSecrets).await?;
        let Some(Letter::SignIn { secret, .. }) = asked.letter().map(|mail| mail.letter) else { return Err(none()) };
        Ok(Door { role, name: named(name)?, email, of, secret })
    }
}

/// What the sessions of those who took their invitations here are called, and from where they did.
const DEVICE: &str = "demo";
const FROM: &str = "demo";

fn named(name: &str) -> Result<Label, NotMade> {
    Label::new(name).map_err(|_| NotMade::People(sayso_people::Error::Stored("account")))
}

fn person(run: &Simulated, place: usize) -> Option<PersonId> {
    run.truth.ids.people.get(place).copied()
}

fn name_of(run: &Simulated) -> &str {
    run.truth.home.people.first().map_or(called::KEEPER, |person| person.name.as_str())
}
