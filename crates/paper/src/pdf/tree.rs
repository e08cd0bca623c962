//! The sheet's structure, as screen readers follow it (ISO 32000-1, 14.8).

use krilla::tagging::{Identifier, ListNumbering, Node, TableHeaderScope, Tag, TagGroup, TagKind, TagTree};
use std::num::NonZeroU16;

/// A piece of what is drawn, in the order of its making.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Leaf(pub usize);

/// Kinds of elements.
#[derive(Clone, PartialEq, Debug)]
pub enum Kind {
    /// A heading with its level and text.
    Heading(NonZeroU16, String),
    P,
    List,
    Item,
    Label,
    Body,
    Table,
    Head,
    Rows,
    Row,
    ColumnName,
    RowName,
    Cell,
    Caption,
    /// A picture with its text alternative.
    Figure(String),
}

/// An element or a piece of what is drawn.
#[derive(Clone, PartialEq, Debug)]
pub enum Branch {
    Element(Kind, Vec<Branch>),
    Leaf(Leaf),
}

impl Branch {
    /// An element around one piece.
    pub fn around(kind: Kind, leaf: Leaf) -> Self {
        Self::Element(kind, vec![Self::Leaf(leaf)])
    }

    fn node(self, drawn: &mut [Vec<Identifier>]) -> Vec<Node> {
        match self {
            Self::Leaf(Leaf(at)) => {
                drawn.get_mut(at).map(std::mem::take).unwrap_or_default().into_iter().map(Node::from).collect()
            }
            Self::Element(kind, children) => {
                let children = children.into_iter().flat_map(|c| c.node(drawn)).collect();
                vec![Node::from(TagGroup::with_children(kind.tag(), children))]
            }
        }
    }
}

impl Kind {
    fn tag(self) -> TagKind {
        match self {
            Self::Heading(level, title) => Tag::Hn(level, Some(title)).into(),
            Self::P => Tag::P.into(),
            Self::List => Tag::L(ListNumbering::None).into(),
            Self::Item => Tag::LI.into(),
            Self::Label => Tag::Lbl.into(),
            Self::Body => Tag::LBody.into(),
            Self::Table => Tag::Table.into(),
            Self::Head => Tag::THead.into(),
            Self::Rows => Tag::TBody.into(),
            Self::Row => Tag::TR.into(),
            Self::ColumnName => Tag::TH(TableHeaderScope::Column).into(),
            Self::RowName => Tag::TH(TableHeaderScope::Row).into(),
            Self::Cell => Tag::TD.into(),
            Self::Caption => Tag::Caption.into(),
            Self::Figure(told) => Tag::Figure(Some(told)).into(),
        }
    }
}

/// The tree of the whole sheet; `drawn` holds the marks under which each leaf was drawn.
pub fn tag_tree(branches: Vec<Branch>, mut drawn: Vec<Vec<Identifier>>, language: &str) -> TagTree {
    let mut tree = TagTree::new().with_lang(Some(language.to_owned()));
    for node in branches.into_iter().flat_map(|b| b.node(&mut drawn)) {
        tree.push(node);
    }
    tree
}
