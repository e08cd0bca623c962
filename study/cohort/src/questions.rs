//! The questions, as plans. Each first makes one row of an animal or of one of its words, and only then looks across them: so a
//! household counts once, however much its animal presses.
//!
//! Order of joins: the engine builds its table on the left side. Animals are few, so they stand on the left, and nothing may
//! turn that round ([`config`]).

use crate::aggregates::{dose, first_press, hours, mean, spells, survival};
use crate::vocabulary::{By, Kind, Outcome, Vocabulary};
use datafusion::arrow::datatypes::DataType;
use datafusion::common::{JoinType, Result};
use datafusion::functions::core::expr_fn::{coalesce, get_field, greatest};
use datafusion::functions_aggregate::expr_fn::{count, count_distinct, sum};
use datafusion::logical_expr::{Expr, cast, col, lit, when};
use datafusion::prelude::{DataFrame, SessionConfig};

const DAY_S: f64 = 86_400.0;

/// What can be asked.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Question {
    /// Showings and days until an animal first presses a word by itself, words not pressed yet counted as such.
    FirstPress,
    /// Over which hours of the day animals spread their presses.
    Hours,
    /// How many sessions are joined, and how long they are.
    Sessions,
    /// How long words stand in a stage, and how many stand there longer than nine in ten did.
    Stuck,
    /// Presses at wanted invitations, and right ones among presses, by showings before.
    Curve,
}

impl Question {
    /// Every question.
    pub const ALL: [Self; 5] = [Self::FirstPress, Self::Hours, Self::Sessions, Self::Stuck, Self::Curve];

    /// Its name.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::FirstPress => "first-press",
            Self::Hours => "hours",
            Self::Sessions => "sessions",
            Self::Stuck => "stuck",
            Self::Curve => "curve",
        }
    }
}

/// How the engine must be set for these plans: so many threads, and joins as they are written.
#[must_use]
pub fn config(threads: usize) -> SessionConfig {
    SessionConfig::new().with_target_partitions(threads).set_bool("datafusion.optimizer.join_reordering", false)
}

/// The plan that answers a question from the two tables ([`crate::events_schema`], [`crate::animals_schema`]).
///
/// # Errors
/// Where the tables are not such.
pub fn ask(question: Question, events: DataFrame, animals: DataFrame) -> Result<DataFrame> {
    match question {
        Question::FirstPress => ask_first_press(events, animals),
        Question::Hours => ask_hours(events, animals),
        Question::Sessions => ask_sessions(events, animals),
        Question::Stuck => ask_stuck(events, animals),
        Question::Curve => ask_curve(events, animals),
    }
}

fn is<V: Vocabulary>(column: &str, word: V) -> Expr {
    col(column).eq(lit(word.name()))
}

fn is_one_of<V: Vocabulary>(column: &str, list: &[V]) -> Expr {
    col(column).in_list(list.iter().map(|word| lit(word.name())).collect(), false)
}

fn number(of: Expr) -> Expr {
    cast(of, DataType::Float64)
}

/// A part of a struct, under that name.
fn part(of: &str, name: &str, called: &str) -> Expr {
    get_field(col(of), name).alias(called)
}

/// Columns as they are.
fn cols<const N: usize>(names: [&str; N]) -> Vec<Expr> {
    names.map(col).into()
}

/// The middle of waits, with its interval.
fn half(of: &str, called: &str) -> Vec<Expr> {
    ["half", "half_low", "half_high"].map(|name| part(of, name, &format!("{called}_{name}"))).into()
}

/// The same between the quarters.
fn quarters(of: &str, called: &str) -> Vec<Expr> {
    let quarter = |name: &str| vec![part(of, name, &format!("{called}_{name}"))];
    [quarter("quarter"), half(of, called), quarter("three_quarters")].concat()
}

/// A mean under that name, and the ends of its interval.
fn mean_of(of: &str, name: &str, ends: &str) -> Vec<Expr> {
    vec![part(of, "mean", name), part(of, "low", &format!("{ends}_low")), part(of, "high", &format!("{ends}_high"))]
}

/// The share, or nothing where there is nothing to share.
fn share(some: Expr, all: Expr) -> Result<Expr> {
    when(all.clone().gt(lit(0)), number(some) / number(all)).end()
}

/// What is known of the animals, beside rows of theirs.
fn with_animals(animals: DataFrame, rows: DataFrame) -> Result<DataFrame> {
    let renamed = vec![col("household").alias("of_household"), col("animal").alias("of_animal")];
    let named = animals.select([renamed, cols(["species", "age_band", "until_s"])].concat())?;
    named.join(rows, JoinType::Inner, &["of_household", "of_animal"], &["household", "animal"], None)
}

fn by_word() -> Vec<Expr> {
    cols(["household", "animal", "word"])
}

fn by_animal() -> Vec<Expr> {
    cols(["household", "animal"])
}

fn in_order(answer: DataFrame, columns: &[&str]) -> Result<DataFrame> {
    answer.sort(columns.iter().map(|name| col(*name).sort(true, false)).collect())
}

fn households() -> Expr {
    count_distinct(col("household")).alias("households")
}

fn ask_first_press(events: DataFrame, animals: DataFrame) -> Result<DataFrame> {
    let first = first_press(col("at_s"), col("kind"), col("pressed_by"), col("outcome"), col("word_kind"));
    let words = events
        .filter(is_one_of("kind", &[Kind::Showing, Kind::Press, Kind::Invitation]).and(col("word").is_not_null()))?
        .aggregate(by_word(), vec![first.alias("first")])?
        .filter(get_field(col("first"), "begin_s").is_not_null())?;
    let pressed = || get_field(col("first"), "first_s");
    // A word can be pressed before it is first shown; nothing was waited for then.
    let waited = coalesce(vec![pressed(), col("until_s")]) - get_field(col("first"), "begin_s");
    let answer = with_animals(animals, words)?
        .select(vec![
            col("species"),
            col("age_band"),
            part("first", "word_kind", "word_kind"),
            col("household"),
            number(get_field(col("first"), "exposures")).alias("exposures"),
            (greatest(vec![number(waited), lit(0.0)]) / lit(DAY_S)).alias("days"),
            pressed().is_not_null().alias("pressed"),
        ])?
        .aggregate(
            cols(["species", "age_band", "word_kind"]),
            vec![
                households(),
                survival(col("exposures"), col("pressed")).alias("by_showings"),
                survival(col("days"), col("pressed")).alias("by_days"),
            ],
        )?
        .select(
            [
                cols(["species", "age_band", "word_kind", "households"]),
                vec![part("by_showings", "n", "words"), part("by_showings", "events", "pressed")],
                quarters("by_showings", "showings"),
                half("by_days", "days"),
            ]
            .concat(),
        )?;
    in_order(answer, &["species", "age_band", "word_kind"])
}

fn ask_hours(events: DataFrame, animals: DataFrame) -> Result<DataFrame> {
    let days = events
        .filter(is("kind", Kind::Press).and(is("pressed_by", By::Animal)))?
        .aggregate(by_animal(), vec![hours(col("hour")).alias("day")])?;
    let answer = with_animals(animals, days)?
        .select(cols(["species", "household", "day"]))?
        .unnest_columns(&["day"])?
        .select(vec![
            col("species"),
            col("household"),
            part("day", "hour", "hour"),
            part("day", "presses", "presses"),
            part("day", "share", "share"),
        ])?
        .aggregate(
            cols(["species", "hour"]),
            vec![households(), sum(col("presses")).alias("presses"), mean(col("share")).alias("share")],
        )?
        .select(
            [
                cols(["species", "hour", "households"]),
                vec![part("share", "n", "animals"), col("presses")],
                mean_of("share", "share", "share"),
            ]
            .concat(),
        )?;
    in_order(answer, &["species", "hour"])
}

fn ask_sessions(events: DataFrame, animals: DataFrame) -> Result<DataFrame> {
    let each = events.filter(is("kind", Kind::Session))?.aggregate(
        by_animal(),
        vec![
            count(lit(1)).alias("sessions"),
            sum(cast(col("joined"), DataType::Int64)).alias("joined"),
            count(col("tenths")).alias("timed"),
            sum(cast(col("tenths"), DataType::Int64)).alias("tenths"),
        ],
    )?;
    let minutes = share(col("tenths"), col("timed"))? / lit(600.0);
    let answer = with_animals(animals, each)?
        .select(
            [
                cols(["species", "age_band", "household", "sessions", "joined"]),
                vec![share(col("joined"), col("sessions"))?.alias("share"), minutes.alias("minutes")],
            ]
            .concat(),
        )?
        .aggregate(
            cols(["species", "age_band"]),
            vec![
                households(),
                sum(col("sessions")).alias("sessions"),
                sum(col("joined")).alias("joined"),
                mean(col("share")).alias("share"),
                survival(col("minutes"), lit(true)).alias("length"),
            ],
        )?
        .select(
            [
                cols(["species", "age_band", "households"]),
                vec![part("share", "n", "animals"), col("sessions"), col("joined")],
                mean_of("share", "share", "share"),
                quarters("length", "minutes"),
            ]
            .concat(),
        )?;
    in_order(answer, &["species", "age_band"])
}

fn ask_stuck(events: DataFrame, animals: DataFrame) -> Result<DataFrame> {
    let words = events
        .filter(is("kind", Kind::Stage).and(col("word").is_not_null()))?
        .aggregate(by_word(), vec![spells(col("at_s"), col("outcome")).alias("spell")])?;
    let end = coalesce(vec![get_field(col("spell"), "end_s"), col("until_s")]);
    let waited = number(end - get_field(col("spell"), "begin_s"));
    let answer = with_animals(animals, words)?
        .select(cols(["species", "household", "until_s", "spell"]))?
        .unnest_columns(&["spell"])?
        // In the last stage nothing is waited for.
        .filter(get_field(col("spell"), "stage").not_eq(lit(Outcome::Converse.name())))?
        .select(vec![
            col("species"),
            part("spell", "stage", "stage"),
            col("household"),
            (greatest(vec![waited, lit(0.0)]) / lit(DAY_S)).alias("days"),
            get_field(col("spell"), "end_s").is_not_null().alias("over"),
        ])?
        .aggregate(cols(["species", "stage"]), vec![households(), survival(col("days"), col("over")).alias("stay")])?
        .select(
            [
                cols(["species", "stage", "households"]),
                vec![part("stay", "n", "words"), part("stay", "events", "moved")],
                half("stay", "days"),
                vec![part("stay", "nine_tenths", "days_nine_tenths"), part("stay", "longer", "longer")],
            ]
            .concat(),
        )?;
    in_order(answer, &["species", "stage"])
}

fn ask_curve(events: DataFrame, animals: DataFrame) -> Result<DataFrame> {
    let words = events
        .filter(is_one_of("kind", &[Kind::Showing, Kind::Invitation]).and(col("word").is_not_null()))?
        .aggregate(by_word(), vec![dose(col("at_s"), col("kind"), col("outcome"), col("joined")).alias("dose")])?;
    let counts = ["wanted", "pressed", "presses", "right"];
    let parts = || ["shown"].into_iter().chain(counts).map(|name| part("dose", name, name)).collect::<Vec<_>>();
    let sums = || counts.map(|name| sum(cast(col(name), DataType::Int64)).alias(name)).to_vec();
    let each = with_animals(animals, words)?
        .select(cols(["species", "household", "animal", "dose"]))?
        .unnest_columns(&["dose"])?
        .select([cols(["species", "household", "animal"]), parts()].concat())?
        .filter(col("shown").is_not_null())?
        .aggregate(cols(["species", "household", "animal", "shown"]), sums())?;
    let answer = each
        .with_column("pressed_share", share(col("pressed"), col("wanted"))?)?
        .with_column("right_share", share(col("right"), col("presses"))?)?
        .aggregate(
            cols(["species", "shown"]),
            [
                vec![households()],
                sums(),
                vec![mean(col("pressed_share")).alias("of_wanted"), mean(col("right_share")).alias("of_presses")],
            ]
            .concat(),
        )?
        .select(
            [
                vec![col("species"), col("shown").alias("shown_from")],
                cols(["households", "wanted", "pressed"]),
                mean_of("of_wanted", "pressed_share", "pressed"),
                cols(["presses", "right"]),
                mean_of("of_presses", "right_share", "right"),
            ]
            .concat(),
        )?;
    in_order(answer, &["species", "shown_from"])
}
