//! Files that were brought and wait for a decision, and for a while what became of them.

use crate::store::Revision;
use maud::Markup;
use sayso_model::{Moment, Zone};
use sayso_store::{FileKind, HeldFile, TakenIn};
use sayso_wording::Locale;
use std::collections::VecDeque;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use uuid::Uuid;

/// Files kept at once; a further one takes the place of the oldest.
const MOST: usize = 4;
/// How long one is kept, in seconds: time to look at it and ask somebody.
const KEPT_S: f64 = 3_600.0;

/// A file that was brought.
#[derive(Debug)]
pub struct Upload {
    /// What it is called where it comes from.
    pub name: String,
    /// What it is.
    pub kind: FileKind,
    /// Where it is kept; removed with this.
    pub file: HeldFile,
    /// The preview as it was last shown.
    shown: Mutex<Option<Shown>>,
}

/// A preview, kept as the page it makes: small, however large the file is.
#[derive(Clone, Debug)]
pub struct Shown {
    /// What it was compared with.
    pub at: Revision,
    /// Whose days it tells.
    pub zone: Zone,
    /// In whose words it tells.
    pub locale: Locale,
    /// Its part of the page.
    pub page: Markup,
}

impl Upload {
    /// A file that nobody has looked at yet.
    #[must_use]
    pub fn new(name: String, kind: FileKind, file: HeldFile) -> Self {
        Self { name, kind, file, shown: Mutex::default() }
    }

    /// The preview as it was shown before, where the log has not grown since.
    #[must_use]
    pub fn shown(&self, at: Revision, zone: &Zone, locale: &Locale) -> Option<Markup> {
        let shown = self.shown.lock().unwrap_or_else(PoisonError::into_inner);
        shown.as_ref().filter(|s| s.at == at && s.zone == *zone && s.locale == *locale).map(|s| s.page.clone())
    }

    /// Keeps a preview for the next who asks.
    pub fn show(&self, shown: Shown) {
        *self.shown.lock().unwrap_or_else(PoisonError::into_inner) = Some(shown);
    }
}

/// What was done with a file.
#[derive(Debug)]
pub struct Report {
    /// The file's name.
    pub name: String,
    /// What it brought.
    pub done: TakenIn,
}

/// What is kept under an id.
#[derive(Clone, Debug)]
pub enum Waits {
    /// A file; gone from the disk once nobody holds this any more.
    Upload(Arc<Upload>),
    /// What taking it in did.
    Done(Arc<Report>),
}

struct Kept {
    id: Uuid,
    since: Moment,
    what: Waits,
}

/// All that wait, the oldest first.
#[derive(Default)]
pub struct Waiting(Mutex<VecDeque<Kept>>);

impl Waiting {
    fn lock(&self) -> MutexGuard<'_, VecDeque<Kept>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Keeps a file; answers the id it is found by.
    pub(crate) fn put(&self, upload: Upload, now: Moment) -> Uuid {
        let id = Uuid::now_v7();
        let mut all = self.fresh(now);
        while all.len() >= MOST {
            all.pop_front();
        }
        all.push_back(Kept { id, since: now, what: Waits::Upload(Arc::new(upload)) });
        id
    }

    /// All that are still kept now.
    fn fresh(&self, now: Moment) -> MutexGuard<'_, VecDeque<Kept>> {
        let mut all = self.lock();
        all.retain(|kept| now.seconds_since(kept.since) < KEPT_S);
        all
    }

    pub(crate) fn get(&self, id: Uuid, now: Moment) -> Option<Waits> {
        self.fresh(now).iter().find(|kept| kept.id == id).map(|kept| kept.what.clone())
    }

    /// Lets the file go and keeps what became of it.
    pub(crate) fn done(&self, id: Uuid, report: Report) {
        if let Some(kept) = self.lock().iter_mut().find(|kept| kept.id == id) {
            kept.what = Waits::Done(Arc::new(report));
        }
    }

    pub(crate) fn remove(&self, id: Uuid) {
        self.lock().retain(|kept| kept.id != id);
    }
}
