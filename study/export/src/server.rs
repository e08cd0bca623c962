//! Homes of a server's database: those whose consent to research is open and was given by a keeper under that server's eyes.

use crate::aside::aside;
use crate::dataset::{Source, hex};
use crate::error::ExportError;
use crate::household::{Household, household};
use crate::pseudonym::{Key, StudyId, lies_within, mark};
use sayso_model::{Consent, HomeId, Moment, Story};
use sayso_people::db::{Homes, Standing};
use sayso_people::{Lifetimes, People};
use sayso_store::{Database, Server, StoreError};
use std::collections::BTreeMap;
use std::error::Error;
use std::io::Write;
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use tokio::runtime::{Builder, Runtime};

/// Connections to the database: few are asked at a time.
const CONNECTIONS: u32 = 4;

/// Homes of a server. A home's number is its place in a list made when the export began, in the order of what the key calls them: it
/// stays while homes come and go, and tells neither when the home began nor where it came from.
pub struct OnServer {
    runtime: Runtime,
    server: Server,
    people: People,
    listed: Vec<StudyId>,
    /// Those of the list that are still there.
    here: BTreeMap<StudyId, HomeId>,
    clock: fn() -> Moment,
}

/// Where permission reads what of a home's log decides.
struct Stories<'a>(&'a Server);

impl Homes for Stories<'_> {
    async fn opens(&self, home: HomeId) -> Result<Option<Arc<Story>>, Box<dyn Error + Send + Sync>> {
        Ok(self.0.opens(&[home]).await?.remove(&home).map(|events| Arc::new(Story::from_events(events))))
    }
}

impl OnServer {
    /// Opens a database of homes, by its address and, where that is another, by how the owner of its tables connects. `list` names the file of this export's homes under their study names: it is made where it is not there
    /// yet, and must lie outside `tables`. Consent is asked for as of the `clock`, each time anew.
    ///
    /// # Errors
    /// Where the database or the list cannot be used, or the database was brought back from a backup, which may hold consents that were
    /// taken back since.
    pub fn open(
        (database, owner): (&str, Option<String>),
        key: &Key,
        (list, tables): (&Path, &Path),
        clock: fn() -> Moment,
    ) -> Result<Self, ExportError> {
        let runtime =
            Builder::new_multi_thread().worker_threads(2).enable_all().build().map_err(ExportError::Threads)?;
        let (server, people, homes) = runtime.block_on(async {
            let server = Server::open(&Database { owner, connections: CONNECTIONS, ..Database::at(database) }).await?;
            let people = People::at(database, Lifetimes::default(), CONNECTIONS).await?;
            if people.standing().await? == Standing::Elsewhere {
                return Err(ExportError::BroughtBack);
            }
            let homes = server.homes().await?;
            Ok((server, people, homes))
        })?;
        let here: BTreeMap<_, _> = homes.into_iter().map(|home| (key.study_id(home), home)).collect();
        let listed = listed(list, tables, &here)?;
        Ok(Self { runtime, server, people, listed, here, clock })
    }

    /// A home by its number, while it is there.
    fn home(&self, number: u32) -> Option<HomeId> {
        self.here.get(self.listed.get(number as usize)?).copied()
    }

    /// Whether a home agrees now, as far as this server saw it.
    async fn agrees(&self, home: HomeId) -> Result<bool, ExportError> {
        let known = self.people.home_now(home, &Stories(&self.server), (self.clock)()).await?;
        Ok(known.is_some_and(|known| known.consents.is_open(Consent::Research)))
    }

    async fn rows(&self, number: u32) -> Result<Option<Household>, ExportError> {
        let Some(home) = self.home(number) else { return Ok(None) };
        // By the few events that decide first: most homes' logs need not be read.
        if !self.agrees(home).await? {
            return Ok(None);
        }
        let story = match self.server.home(home).story(home).await {
            Ok(story) => story,
            Err(StoreError::HomeLeft(_) | StoreError::NoSuchHome(_)) => return Ok(None),
            Err(why) => return Err(why.into()),
        };
        // It may have been taken back while the log was read.
        Ok(self.agrees(home).await?.then(|| household(&story, number)))
    }
}

/// The homes of an export: those of its list, else all that are here, which become its list.
fn listed(list: &Path, tables: &Path, here: &BTreeMap<StudyId, HomeId>) -> Result<Vec<StudyId>, ExportError> {
    let folder = list.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let real: PathBuf = folder.canonicalize().map_err(ExportError::io(folder))?;
    if lies_within(&real, tables) {
        return Err(ExportError::ListWithTheTables(list.to_owned()));
    }
    let text = match std::fs::read_to_string(list) {
        Ok(text) => text,
        Err(none) if none.kind() == std::io::ErrorKind::NotFound => {
            let text: String = here.keys().map(|id| format!("{}\n", hex(id.bytes()))).collect();
            aside(list, |file| file.write_all(text.as_bytes()).map_err(ExportError::io(list)))?;
            text
        }
        Err(why) => return Err(ExportError::io(list)(why)),
    };
    let bad = |line| ExportError::BadList { path: list.to_owned(), line };
    let one = |(line, name): (usize, &str)| StudyId::read(name).ok_or_else(|| bad(line));
    let listed = (1..).zip(text.lines()).map(one).collect::<Result<Vec<_>, _>>()?;
    // A name twice would be a household twice.
    if let Some(at) = listed.windows(2).position(|two| two[0] >= two[1]) {
        return Err(bad(at + 2));
    }
    // By another key all of them would seem to have left.
    if !listed.is_empty() && !listed.iter().any(|id| here.contains_key(id)) {
        return Err(ExportError::ListOfOthers(list.to_owned()));
    }
    Ok(listed)
}

impl Source for OnServer {
    fn of(&self) -> String {
        format!("records of {} homes of a server, {}", self.listed.len(), mark(self.listed.iter()))
    }

    fn households(&self) -> u32 {
        u32::try_from(self.listed.len()).unwrap_or(u32::MAX)
    }

    fn agreeing(&self, numbers: Range<u32>) -> Result<Vec<u32>, ExportError> {
        self.runtime.block_on(async {
            let mut agreeing = Vec::new();
            for number in numbers {
                if let Some(home) = self.home(number)
                    && self.agrees(home).await?
                {
                    agreeing.push(number);
                }
            }
            Ok(agreeing)
        })
    }

    fn household(&self, number: u32) -> Result<Option<Household>, ExportError> {
        self.runtime.block_on(self.rows(number))
    }
}
