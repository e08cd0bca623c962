//! What homes of this server give for norms: rows of those that agree, under names that only a key tells.

use crate::fault::HostError;
use crate::stories::opening;
use hmac::{Hmac, Mac};
use sayso_advisor::summary::summary_rows;
use sayso_model::consents::Consents;
use sayso_model::{Consent, HomeId, Moment, Story};
use sayso_norms::{StudyName, SummaryRow};
use sayso_people::People;
use sayso_people::may::HomeNow;
use sayso_store::{Server, StoreError};
use sha2::Sha256;

/// The key by which homes are called: HMAC-SHA256 (RFC 2104) of a home's id. Kept apart from the rows.
pub struct RowsKey(Hmac<Sha256>);

impl std::fmt::Debug for RowsKey {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("RowsKey(..)")
    }
}

impl RowsKey {
    /// Fewest bytes of a key: as long as the hash, by RFC 2104.
    pub const LEAST: usize = 32;

    /// A key of these bytes; none where they are too few.
    #[must_use]
    pub fn new(bytes: &[u8]) -> Option<Self> {
        (bytes.len() >= Self::LEAST).then(|| Hmac::new_from_slice(bytes).ok()).flatten().map(Self)
    }

    /// What a home is called. Not as in the tables of raw records, though the key be the same: rows and tables cannot be joined.
    fn name(&self, home: HomeId) -> Option<StudyName> {
        let mut mac = self.0.clone();
        mac.update(b"sayso norms household\0");
        mac.update(home.0.as_bytes());
        let digits: String = mac.finalize().into_bytes().iter().map(|byte| format!("{byte:02x}")).collect();
        StudyName::new(&digits).ok()
    }
}

/// Rows of the homes that agree now.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct NormRows {
    /// Homes of the server.
    pub homes: usize,
    /// Names of those that agree, in order: which tells neither when a home began nor where it came from.
    pub agreed: Vec<StudyName>,
    /// Their rows, by name.
    pub rows: Vec<SummaryRow>,
}

/// Rows of every home whose consent to norms is open at `now` and was given by its keeper under the eyes of this server.
///
/// # Errors
/// Where a database fails. A home that was erased meanwhile is passed over.
pub async fn norm_rows(server: &Server, people: &People, key: &RowsKey, now: Moment) -> Result<NormRows, HostError> {
    let mut all = NormRows::default();
    for home in server.homes().await? {
        all.homes += 1;
        // By the few events that decide first: most homes' logs need not be read.
        let opens = opening(server, &[home]).await?.remove(&home).unwrap_or_default();
        if agreed(people, home, &opens, now).await?.is_none() {
            continue;
        }
        let story = match server.home(home).story(home).await {
            Ok(story) => story,
            Err(StoreError::HomeLeft(_) | StoreError::NoSuchHome(_)) => continue,
            Err(why) => return Err(why.into()),
        };
        // Asked after the story was read: it may have been taken back meanwhile.
        let Some(name) = key.name(home) else { continue };
        if let Some(consents) = agreed(people, home, &story, now).await? {
            // What it agreed to, and no column more.
            let form = form(&consents);
            all.rows.extend(summary_rows(&story, &name).into_iter().map(|row| row.in_form(form)));
            all.agreed.push(name);
        }
    }
    all.agreed.sort_unstable();
    all.rows.sort_unstable_by(|a, b| (&a.household, a.learner, a.word).cmp(&(&b.household, b.learner, b.word)));
    Ok(all)
}

/// What a home consents to, where its consent to norms is open and was given under the eyes of this server.
async fn agreed(people: &People, home: HomeId, story: &Story, now: Moment) -> Result<Option<Consents>, HostError> {
    let witnessed = people.witnessed(home).await?;
    let consents = HomeNow::of(home, story, &witnessed, now).consents;
    Ok(consents.is_open(Consent::Norms).then_some(consents))
}

/// The form of the rows that a home agreed to, by the words it was asked in.
fn form(consents: &Consents) -> u32 {
    match consents.norms_words() {
        Some(Consent::NORMS_WEEK..) => SummaryRow::FORM,
        Some(Consent::NORMS_STAGE..) => SummaryRow::WITHOUT_WEEK,
        Some(Consent::NORMS_HOURS..) => SummaryRow::WITHOUT_STAGE,
        _ => SummaryRow::WITHOUT_HOURS,
    }
}
