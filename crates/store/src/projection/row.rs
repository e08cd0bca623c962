//! One standing event as a row, and the tally it counts towards.

use crate::log::pieces;
use sayso_model::*;
use sqlx::{AssertSqlSafe, QueryBuilder, Sqlite, SqliteConnection};
use std::collections::BTreeMap;
use uuid::Uuid;

/// The columns of `fact`, in the order of [`FactRow`].
pub(super) const FACT_COLUMNS: &str = "event, household, kind, learner, teacher, session, word, pressed_by, answer, \
                                       outcome, source, happened_ms, day, hour, amended";

/// The columns of `day_tally`, the count last.
pub(super) const TALLY_COLUMNS: &str = "household, day, learner, kind, word, pressed_by, answer, n";

/// A row of `fact`.
#[derive(Clone, PartialEq, Debug, sqlx::FromRow)]
pub(super) struct FactRow {
    pub event: Uuid,
    pub household: Uuid,
    pub kind: String,
    pub learner: Option<Uuid>,
    pub teacher: Option<Uuid>,
    pub session: Option<Uuid>,
    pub word: Option<Uuid>,
    pub pressed_by: Option<String>,
    pub answer: Option<String>,
    pub outcome: Option<String>,
    pub source: String,
    pub happened_ms: i64,
    pub day: String,
    pub hour: i64,
    pub amended: bool,
}

/// What is counted together on a day. Nil and empty stand for "not named".
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct TallyKey {
    pub household: Uuid,
    pub day: String,
    pub learner: Uuid,
    pub kind: String,
    pub word: Uuid,
    pub pressed_by: String,
    pub answer: String,
}

/// Counts, or changes of counts, by key.
pub(super) type Tally = BTreeMap<TallyKey, i64>;

impl FactRow {
    /// The row of a standing event, its day and hour by the household's zone.
    pub fn of(event: &Event, zone: &Zone, amended: bool) -> Self {
        let (pressed_by, answer, outcome) = match &event.body {
            Body::Press(p) => (Some(p.by.name()), None, None),
            Body::Delivery(d) => (None, Some(d.answer.name()), d.then.map(Then::name)),
            Body::Invitation(i) => (None, None, Some(invitation(&i.result))),
            Body::LikeTrial(t) => (None, None, Some(like(&t.result))),
            Body::ProbeTrial(t) => (None, None, Some(probe(&t.response))),
            Body::Sign(s) => (None, None, Some(s.level.name())),
            Body::SessionEnd(e) => (None, None, Some(e.reason.name())),
            _ => (None, None, None),
        };
        Self {
            event: event.id.0,
            household: event.household.0,
            kind: event.body.kind().name().to_owned(),
            learner: event.learner.map(|l| l.0),
            teacher: event.teacher.map(|t| t.0),
            session: event.body.session().map(|s| s.0),
            word: event.body.word().map(|w| w.0),
            pressed_by: pressed_by.map(str::to_owned),
            answer: answer.map(str::to_owned),
            outcome: outcome.map(str::to_owned),
            source: source(event.source).to_owned(),
            happened_ms: event.happened_at.millis(),
            day: event.happened_at.day(zone).to_string(),
            hour: i64::from(event.happened_at.hour(zone)),
            amended,
        }
    }

    /// What it counts towards.
    pub fn tally(&self) -> TallyKey {
        TallyKey {
            household: self.household,
            day: self.day.clone(),
            learner: self.learner.unwrap_or_default(),
            kind: self.kind.clone(),
            word: self.word.unwrap_or_default(),
            pressed_by: self.pressed_by.clone().unwrap_or_default(),
            answer: self.answer.clone().unwrap_or_default(),
        }
    }
}

const fn source(source: Source) -> &'static str {
    match source {
        Source::Tap => "tap",
        Source::Heard => "heard",
        Source::Device => "device",
        Source::Import => "import",
    }
}

const fn invitation(result: &InvitationResult) -> &'static str {
    match result {
        InvitationResult::Pressed { .. } => "pressed",
        InvitationResult::WithoutButton { .. } => "without_button",
        InvitationResult::NothingByWait => "nothing_by_wait",
        InvitationResult::Left { .. } => "left",
    }
}

const fn like(result: &LikeOutcome) -> &'static str {
    match result {
        LikeOutcome::Chose { .. } => "chose",
        LikeOutcome::ChoseNone => "chose_none",
        LikeOutcome::WalkedAway => "walked_away",
        LikeOutcome::Observed { .. } => "observed",
    }
}

const fn probe(response: &ProbeResponse) -> &'static str {
    match response {
        ProbeResponse::Chose { .. } => "chose",
        ProbeResponse::Nothing => "nothing",
        ProbeResponse::Left => "left",
    }
}

/// Adds rows to `fact` or a table of its shape.
pub(super) async fn insert_facts(
    db: &mut SqliteConnection,
    table: &'static str,
    rows: &[FactRow],
) -> Result<(), sqlx::Error> {
    for piece in pieces(rows) {
        let mut query = QueryBuilder::<Sqlite>::new(format!("INSERT INTO {table} ({FACT_COLUMNS}) "));
        query.push_values(piece, |mut out, row| {
            out.push_bind(row.event)
                .push_bind(row.household)
                .push_bind(row.kind.as_str())
                .push_bind(row.learner)
                .push_bind(row.teacher)
                .push_bind(row.session)
                .push_bind(row.word)
                .push_bind(row.pressed_by.as_deref())
                .push_bind(row.answer.as_deref())
                .push_bind(row.outcome.as_deref())
                .push_bind(row.source.as_str())
                .push_bind(row.happened_ms)
                .push_bind(row.day.as_str())
                .push_bind(row.hour)
                .push_bind(i64::from(row.amended));
        });
        query.build().execute(&mut *db).await?;
    }
    Ok(())
}

/// Adds counts to `day_tally` or a table of its shape and key; counts that come to nothing are removed.
pub(super) async fn add_tally(
    db: &mut SqliteConnection,
    table: &'static str,
    changes: &Tally,
) -> Result<(), sqlx::Error> {
    let rows: Vec<(&TallyKey, i64)> = changes.iter().filter(|(_, n)| **n != 0).map(|(k, n)| (k, *n)).collect();
    for piece in pieces(&rows) {
        let mut query = QueryBuilder::<Sqlite>::new(format!("INSERT INTO {table} ({TALLY_COLUMNS}) "));
        query.push_values(piece, |mut out, (key, n)| {
            out.push_bind(key.household)
                .push_bind(key.day.as_str())
                .push_bind(key.learner)
                .push_bind(key.kind.as_str())
                .push_bind(key.word)
                .push_bind(key.pressed_by.as_str())
                .push_bind(key.answer.as_str())
                .push_bind(*n);
        });
        query.push(format!(
            " ON CONFLICT (household, day, learner, kind, word, pressed_by, answer) \
             DO UPDATE SET n = {table}.n + excluded.n"
        ));
        query.build().execute(&mut *db).await?;
    }
    for (key, _) in rows.iter().filter(|(_, n)| *n < 0) {
        let sql = format!(
            "DELETE FROM {table} WHERE household = $1 AND day = $2 AND learner = $3 AND kind = $4 AND word = $5 \
             AND pressed_by = $6 AND answer = $7 AND n = 0"
        );
        // `table` is one of our own names.
        sqlx::query(AssertSqlSafe(sql))
            .bind(key.household)
            .bind(key.day.as_str())
            .bind(key.learner)
            .bind(key.kind.as_str())
            .bind(key.word)
            .bind(key.pressed_by.as_str())
            .bind(key.answer.as_str())
            .execute(&mut *db)
            .await?;
    }
    Ok(())
}
