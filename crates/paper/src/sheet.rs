//! A sheet: what it says, once, for the page and for the paper.

use sayso_advisor::Estimate;
use sayso_model::{Moment, WordId};
use sayso_wording::Locale;
use std::collections::BTreeSet;

/// A sheet to print.
#[derive(Clone, PartialEq, Debug)]
pub struct Sheet {
    /// How whoever asked for it reads.
    pub locale: Locale,
    /// Its heading.
    pub title: String,
    /// What stands under it, from top to bottom.
    pub blocks: Vec<Block>,
    /// The same with more left out, and counted, for paper where the whole does not fit one page; the longest first.
    pub shorter: Vec<Vec<Block>>,
    /// The foot: whose it is and of which day.
    pub foot: Foot,
    /// When it was made.
    pub made: Moment,
}

impl Sheet {
    /// The words whose pictures belong on it.
    #[must_use]
    pub fn words(&self) -> BTreeSet<WordId> {
        let of_block = |block: &Block| -> Vec<WordId> {
            match block {
                Block::Table(table) => table.rows.iter().filter_map(|row| row.word).collect(),
                Block::Labels { labels, .. } => labels.iter().map(|label| label.word).collect(),
                _ => Vec::new(),
            }
        };
        self.blocks.iter().flat_map(of_block).collect()
    }
}

/// The foot of a sheet.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Foot {
    /// Name of the home.
    pub home: String,
    /// The day, written.
    pub day: String,
}

/// A part of a sheet.
#[derive(Clone, PartialEq, Debug)]
pub enum Block {
    /// A heading of the second level.
    Heading(String),
    /// A paragraph.
    Paragraph(Paragraph),
    /// A list.
    List {
        /// Its items.
        items: Vec<String>,
        /// Larger than the rest: what is read from across a kitchen.
        big: bool,
    },
    /// How much more there is than the sheet has room for, which a page says with the way to it.
    More {
        /// What it says.
        text: String,
        /// Where the rest is.
        at: Rest,
    },
    /// A label with a line to write on after it.
    ToWrite(String),
    /// Names with what they stand for.
    Facts(Vec<(String, String)>),
    /// A table.
    Table(Table),
    /// Text with its charts beside it.
    Beside {
        /// The text.
        text: Vec<Block>,
        /// The charts, one under the other.
        charts: Vec<Chart>,
    },
    /// Labels to cut out.
    Labels {
        /// How large each is.
        size: LabelSize,
        /// What they say.
        labels: Vec<LabelText>,
    },
}

/// Where the rest of something stands that a sheet has no room for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Rest {
    /// The animal's evidence, word by word.
    Evidence,
    /// What coach and home agreed, said and asked.
    Talk,
}

/// How a paragraph looks.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Look {
    /// As text.
    Plain,
    /// Smaller: how to read what stands above.
    Quiet,
    /// In a frame: what must not be missed.
    Boxed,
    /// In a heavy frame: what must not be done.
    Stop,
}

/// A paragraph: words in bold, then the rest.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Paragraph {
    /// What stands first, in bold; may be empty.
    pub lead: String,
    /// The rest; may be empty.
    pub text: String,
    /// How it looks.
    pub look: Look,
}

impl Paragraph {
    pub(crate) fn block(lead: impl Into<String>, text: impl Into<String>, look: Look) -> Block {
        Block::Paragraph(Self { lead: lead.into(), text: text.into(), look })
    }
}

/// A table: the first cell of a row names it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Table {
    /// What the figures are of; may be empty.
    pub caption: String,
    /// Names of the columns.
    pub head: Vec<String>,
    /// Rows, each with as many cells as there are columns.
    pub rows: Vec<Row>,
    /// Kept on one page with what stands above it, where a page holds it.
    pub whole: bool,
}

/// A row of a table.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Row {
    /// The word it is about, if it is about one.
    pub word: Option<WordId>,
    /// Its cells.
    pub cells: Vec<Cell>,
}

/// A cell of a table.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Cell {
    /// What it says; where that is empty, there is room to write by hand.
    pub text: String,
    /// Smaller, under it.
    pub hints: Vec<String>,
    /// Further paragraphs.
    pub more: Vec<String>,
    /// In bold.
    pub strong: bool,
    /// A box to cross by hand, in place of text.
    pub crossed: bool,
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self { text, ..Self::default() }
    }
}

/// A chart with its text alternative.
#[derive(Clone, PartialEq, Debug)]
pub struct Chart {
    /// Caption.
    pub title: String,
    /// What it shows, with every figure.
    pub told: String,
    /// What is drawn.
    pub drawn: Drawn,
}

/// What a chart draws.
#[derive(Clone, PartialEq, Debug)]
pub enum Drawn {
    /// Bars side by side.
    Bars {
        /// Axis along.
        x: String,
        /// Axis up.
        y: String,
        /// The bars.
        bars: Vec<Bar>,
    },
    /// A row a thing on an axis of shares: a dot for the estimate, a line for its interval.
    Whiskers {
        /// The axis.
        x: String,
        /// A share drawn through all rows.
        level: Option<f64>,
        /// The rows.
        rows: Vec<Whisker>,
    },
}

/// A bar.
#[derive(Clone, PartialEq, Debug)]
pub struct Bar {
    /// What is written under it.
    pub tick: String,
    /// Its full name.
    pub name: String,
    /// Its height, a count.
    pub count: usize,
}

/// A row of whiskers.
#[derive(Clone, PartialEq, Debug)]
pub struct Whisker {
    /// Its name.
    pub name: String,
    /// The share, if anything can be said.
    pub value: Option<f64>,
    /// Its interval, if it has one.
    pub interval: Option<(f64, f64)>,
    /// Observations.
    pub n: usize,
}

impl Whisker {
    /// The row of an estimate.
    #[must_use]
    pub fn of(name: impl Into<String>, estimate: &Estimate) -> Self {
        let Estimate { value, low, high, n, .. } = *estimate;
        Self { name: name.into(), value, interval: low.zip(high), n }
    }
}

/// A label.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct LabelText {
    /// The word.
    pub word: WordId,
    /// What it says.
    pub says: String,
}

/// Sizes of labels.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum LabelSize {
    /// 40 × 25 mm.
    Small,
    /// 60 × 40 mm.
    #[default]
    Middle,
    /// 90 × 60 mm.
    Large,
}

impl LabelSize {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Small, Self::Middle, Self::Large];

    /// Name for programs.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Small => "small",
            Self::Middle => "middle",
            Self::Large => "large",
        }
    }

    /// The size of that name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|s| s.name() == name)
    }

    /// Width and height, mm.
    #[must_use]
    pub const fn mm(self) -> (u16, u16) {
        match self {
            Self::Small => (40, 25),
            Self::Middle => (60, 40),
            Self::Large => (90, 60),
        }
    }
}
