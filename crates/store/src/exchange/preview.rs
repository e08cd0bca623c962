//! An import in two steps: a preview that says what would happen, then all of it or nothing.

use super::Format;
use super::derive::Occurrences;
use super::diary::Diary;
use super::faults::Faults;
use super::names::Names;
use super::problem::RowProblem;
use super::resolve::{Context, Resolved, resolve};
use super::rows::{self, Glance, Row, problem};
use super::wanted::Wanted;
use crate::appended::{self, Appended};
use crate::error::{NotImported, StoreError};
use crate::shares::{self, Others, Shares};
use crate::store::Store;
use crate::written::{Revision, Written};
use sayso_model::{Body, EventId, HomeId, Moment, Problems, Zone};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet, HashMap};

/// Problems listed in full; the rest is counted.
pub const MOST_PROBLEMS: usize = 1_000;

/// How to read a file.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct ImportOptions {
    /// Its form.
    pub format: Format,
    /// The home of rows that name none; the notebook's own where left out.
    pub home: Option<HomeId>,
}

/// What an import would do. Nothing is stored yet.
#[derive(Clone, Debug, Default)]
pub struct Preview {
    /// Rows with something in them.
    pub rows: usize,
    /// Rows that are sound and not stored yet.
    pub new: usize,
    /// Rows that are stored already, or stand in the file twice under one id.
    pub duplicates: usize,
    /// Rows that cannot be imported.
    pub bad_rows: usize,
    /// Those of them whose id another event has.
    pub conflicts: usize,
    /// What is wrong, the first [`MOST_PROBLEMS`] of them.
    pub problems: Vec<RowProblem>,
    /// All problems, those not listed among them.
    pub problem_count: usize,
    /// The same by kind.
    pub faults: Faults,
    /// New rows by kind.
    pub kinds: BTreeMap<&'static str, usize>,
    /// New rows that this version does not understand, by the name of their kind: a later version wrote them. They
    /// would be kept as they are, and not shown.
    pub later: BTreeMap<String, usize>,
    /// The homes of the new rows.
    pub homes: Shares,
    /// The home that the file is of, where its rows become those of the home that they move into.
    pub moved: Option<HomeId>,
    /// When the new rows happened, first and last.
    pub span: Option<(Moment, Moment)>,
    /// How it is read, where it is a diary with columns of its own.
    pub diary: Option<Diary>,
    /// The columns of a table that is not understood.
    pub strange_columns: Vec<String>,
    events: Vec<Written>,
}

impl Preview {
    /// The homes that come in only where somebody says so.
    #[must_use]
    pub fn others(&self) -> Shares {
        shares::others(&self.homes)
    }

    /// The same import without the rows that have problems. For a person to decide, having seen them.
    #[must_use]
    pub fn without_bad_rows(self) -> Self {
        Self {
            rows: self.rows.saturating_sub(self.bad_rows),
            bad_rows: 0,
            conflicts: 0,
            problems: Vec::new(),
            problem_count: 0,
            faults: Faults::default(),
            ..self
        }
    }

    fn bad(&mut self, problems: Vec<RowProblem>) {
        self.bad_rows += 1;
        self.problem_count += problems.len();
        problems.iter().for_each(|problem| self.faults.add(problem));
        self.problems.extend(problems);
        self.problems.truncate(MOST_PROBLEMS);
    }
}

/// What an import did.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Imported {
    /// Events stored now.
    pub new: usize,
    /// Events that were stored already.
    pub duplicates: usize,
}

impl Store {
    /// Reads a file of events and says what importing it would do.
    ///
    /// Problems of the file are part of the answer; an empty `problems` means it can be committed.
    ///
    /// # Errors
    /// [`StoreError`] where the notebook itself cannot be read; [`StoreError::NotImported`] for a home on a server, where the file is of
    /// several homes, or of another one and records are here already.
    pub async fn preview(&self, bytes: &[u8], options: &ImportOptions) -> Result<Preview, StoreError> {
        self.preview_only(bytes, options, |_| true).await
    }

    /// The same where not every event may come in from a file: new ones that `admits` does not let in are problems of it.
    ///
    /// # Errors
    /// As [`Store::preview`].
    pub async fn preview_only(
        &self,
        bytes: &[u8],
        options: &ImportOptions,
        admits: fn(&Body) -> bool,
    ) -> Result<Preview, StoreError> {
        self.preview_as(bytes, options, admits, |_| None).await
    }

    /// The same of a table that may be a diary, as `diary` finds.
    pub(super) async fn preview_as(
        &self,
        bytes: &[u8],
        options: &ImportOptions,
        admits: fn(&Body) -> bool,
        diary: fn(&str) -> Option<Diary>,
    ) -> Result<Preview, StoreError> {
        let mut preview = Preview::default();
        let text = match rows::text(bytes) {
            Ok(text) => text,
            Err(problem) => {
                preview.bad(vec![problem]);
                return Ok(preview);
            }
        };
        preview.diary = if options.format == Format::Csv { diary(text) } else { None };
        let diary = preview.diary.clone();
        let read = |each: &mut dyn FnMut(Row<'_>)| match &diary {
            Some(diary) => diary.read(text, each),
            None => rows::read(text, options.format, each),
        };
        // First look: the homes in the file, and what its own cards name.
        let (mut seen, mut cards) = (BTreeSet::new(), Vec::new());
        let mut first = |row: Row<'_>| {
            let Ok(raw) = row else { return };
            let Glance { home, card } = raw.glance();
            seen.extend(home);
            cards.extend(card.map(|body| (home, body)));
        };
        if let Err(problem) = read(&mut first) {
            if problem.field == "column" {
                preview.strange_columns = rows::header_of(text);
            }
            preview.bad(vec![problem]);
            return Ok(preview);
        }
        // A home on a server has an id of its own, and a notebook moves in whole: its rows become that home's.
        if let (Some(own), Some(of), 1) = (self.log.only_home(), seen.first().copied(), seen.len())
            && of != own
        {
            preview.moved = Some(of);
            seen = BTreeSet::from([own]);
            cards.iter_mut().for_each(|(home, _)| *home = Some(own));
        }
        let into = preview.moved.and(self.log.only_home());
        let home = match options.home {
            Some(given) => Some(given),
            // An export of one home into an empty notebook: its rows belong together.
            None => self.home().await?.or(if seen.len() == 1 { seen.first().copied() } else { None }),
        };
        seen.extend(home);
        let (mut names, mut zones) = (Names::default(), HashMap::new());
        let here: BTreeSet<HomeId> = self.homes().await?.into_iter().collect();
        for home in seen.intersection(&here).copied() {
            let story = self.story(home).await?;
            names.learn_story(home, &story);
            if story.home().is_some() {
                zones.insert(home, story.zone());
            }
        }
        for (named, body) in cards {
            let Some(home) = named.or(home) else { continue };
            names.learn_card(home, &body);
            let zone = body.get("zone").and_then(Value::as_str).and_then(|z| Zone::new(z).ok());
            if let Some(zone) = zone {
                zones.entry(home).or_insert(zone);
            }
        }
        // Second look: each row with names and zones known.
        let context = Context { format: options.format, home, zones: &zones, names: &names, fresh: false };
        let (mut occurrences, mut found) = (Occurrences::default(), Vec::new());
        // One line of a diary may hold two events: it is one row, and what is wrong with both is told once.
        let (mut last, mut told) = (0, Vec::new());
        let mut second = |row: Row<'_>| {
            let line = match &row {
                Ok(raw) => raw.line,
                Err(problems) => problems.first().map_or(0, |p| p.line),
            };
            if diary.is_none() || line != last {
                preview.rows += 1;
                told.clear();
            }
            last = line;
            let row = row.and_then(|raw| match &diary {
                Some(diary) => diary.settled(raw, &names, home),
                None => Ok(raw),
            });
            let row = row.map(|raw| match into {
                Some(home) => raw.moved_to(home),
                None => raw,
            });
            match row.and_then(|raw| resolve(&context, raw, &mut occurrences)) {
                Ok(resolved) => found.push((line, resolved)),
                Err(mut problems) => {
                    if let Some(diary) = &diary {
                        problems.iter_mut().for_each(|p| p.field = diary.column_of(&p.field));
                        problems.retain(|p| !told.contains(p));
                        if problems.is_empty() {
                            return;
                        }
                        told.extend(problems.iter().cloned());
                    }
                    preview.bad(problems);
                }
            }
        };
        if let Err(problem) = read(&mut second) {
            preview.bad(vec![problem]);
        }
        self.compare(found, &mut preview, admits).await?;
        Ok(preview)
    }

    /// Sorts sound rows into new, known and conflicting.
    async fn compare(
        &self,
        found: Vec<(u64, Resolved)>,
        preview: &mut Preview,
        admits: fn(&Body) -> bool,
    ) -> Result<(), StoreError> {
        let told = |line: u64, Problems(found): Problems| {
            found.into_iter().map(|p| problem(line, &p.field, "", p.fault)).collect::<Vec<_>>()
        };
        let mut rows = Vec::with_capacity(found.len());
        for (line, resolved) in found {
            match resolved {
                Resolved::Later(written) => rows.push((line, written, true, None)),
                Resolved::Event { event, own_id } => match Written::of(&event) {
                    Ok(written) => rows.push((line, written, own_id, Some(event))),
                    Err(problems) => preview.bad(told(line, problems)),
                },
            }
        }
        let ids: Vec<EventId> = rows.iter().map(|(_, w, _, _)| w.id).collect();
        let stored =
            if self.revision().await? == Revision(0) { BTreeMap::new() } else { self.log.contents(&ids).await? };
        // Whoever has something of it already took it in before: what is new since comes in, too.
        if let (Some(of), true, false) = (preview.moved, stored.is_empty(), self.revision().await? == Revision(0)) {
            return Err(StoreError::NotImported(NotImported::NotEmpty(of)));
        }
        let mut here: HashMap<EventId, usize> = HashMap::new();
        for (line, written, own_id, event) in rows {
            let earlier = || here.get(&written.id).and_then(|i| preview.events.get(*i)).map(|w| &w.json);
            match stored.get(&written.id).or_else(earlier) {
                // An id made from the content says that the content is known.
                Some(known) if !own_id || written.is(known) => preview.duplicates += 1,
                Some(_) => {
                    preview.conflicts += 1;
                    preview.bad(vec![problem(line, "id", &written.id.to_string(), Wanted::OwnId)]);
                }
                None => {
                    match &event {
                        Some(event) => {
                            // Only what is new has to stand up to today's rules.
                            if let Err(problems) = appended::sound(event, &written) {
                                preview.bad(told(line, problems));
                                continue;
                            }
                            if !admits(&event.body) {
                                let kind = event.body.kind().name();
                                preview.bad(vec![problem(line, "kind", kind, Wanted::ByHand)]);
                                continue;
                            }
                            let at = event.happened_at;
                            *preview.kinds.entry(event.body.kind().name()).or_default() += 1;
                            preview.span = Some(preview.span.map_or((at, at), |(a, b)| (a.min(at), b.max(at))));
                        }
                        None => *preview.later.entry(written.kind.clone()).or_default() += 1,
                    }
                    preview.new += 1;
                    let share = preview.homes.entry(written.home).or_default();
                    share.events += 1;
                    share.name = shares::named_by(&written.kind, &written.json).or(share.name.take());
                    here.insert(written.id, preview.events.len());
                    preview.events.push(written);
                }
            }
        }
        self.mark_others(&mut preview.homes).await?;
        let others = preview.others();
        if self.log.only_home().is_some() && !others.is_empty() {
            return Err(StoreError::NotImported(NotImported::NotItsOwn(others)));
        }
        Ok(())
    }

    /// Stores what a preview found new, in one transaction: all of it or, on any error, nothing.
    ///
    /// # Errors
    /// [`StoreError::NotImported`] while the preview has problems, where it would bring a home that the notebook
    /// does not hold, or begin it with several, and `others` refuses that, or where another event of the same id was stored since; [`StoreError::DiskFull`] and others of [`Store::append`].
    pub async fn commit(&self, mut preview: Preview, others: Others) -> Result<Imported, StoreError> {
        if let Some(problem) = preview.problems.first() {
            let (count, first) = (preview.problem_count, Box::new(problem.clone()));
            return Err(StoreError::NotImported(NotImported::Faults { count, first }));
        }
        self.mark_others(&mut preview.homes).await?;
        let who = preview.others();
        if others == Others::Refuse && !who.is_empty() {
            return Err(StoreError::NotImported(NotImported::OtherHomes(who)));
        }
        let known = preview.duplicates;
        if preview.events.is_empty() {
            return Ok(Imported { new: 0, duplicates: known });
        }
        // The writer asks once more, where nobody can come in between.
        let asked_in = others == Others::TakeIn;
        let events = preview.events.into_iter().map(|w| Written { asked_in, ..w }).collect();
        let outcomes = self.append_whole(events).await?;
        let new = outcomes.iter().filter(|o| **o == Appended::New).count();
        Ok(Imported { new, duplicates: known + outcomes.len() - new })
    }
}
