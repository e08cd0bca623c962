//! The sources of a crate as a table of items: where each stands, whether it is public, and what it names.

use proc_macro2::{TokenStream, TokenTree};
use quote::ToTokens;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use syn::{Attribute, ImplItem, Item, TraitItem, UseTree, Visibility};

/// A path of names, such as `methods::likes::fit::logistic`.
pub type Name = Vec<String>;

/// One item.
#[derive(Default)]
pub struct Node {
    /// Whether it is declared `pub`.
    pub public: bool,
    /// Paths it names, as written, to be looked up in its module.
    pub paths: BTreeSet<Name>,
    /// Methods it calls, by name alone: their types are not known here.
    pub calls: BTreeSet<String>,
}

/// One module.
#[derive(Default)]
pub struct Module {
    /// Names brought in, and what each stands for.
    pub uses: BTreeMap<String, Name>,
    /// Modules all of whose names are brought in.
    pub globs: Vec<Name>,
}

/// Crates, read without what is for tests only.
#[derive(Default)]
pub struct Sources {
    /// By full name.
    pub modules: BTreeMap<Name, Module>,
    /// By full name; methods of a type stand below it.
    pub nodes: BTreeMap<Name, Node>,
}

fn joined(module: &Name, name: impl ToString) -> Name {
    module.iter().cloned().chain([name.to_string()]).collect()
}

/// Whether the item is compiled for tests only.
fn for_tests(attributes: &[Attribute]) -> bool {
    attributes.iter().any(|a| {
        let text = a.meta.to_token_stream().to_string();
        text == "test" || text.starts_with("cfg (test") || text.starts_with("cfg (all (test")
    })
}

fn public(visibility: &Visibility) -> bool {
    matches!(visibility, Visibility::Public(_))
}

impl Sources {
    /// Reads every file below `folder` as the crate `name`.
    pub fn add(&mut self, name: &str, folder: &Path) {
        self.folder(&vec![name.to_owned()], folder);
    }

    fn folder(&mut self, module: &Name, folder: &Path) {
        self.modules.entry(module.clone()).or_default();
        let mut files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|f| f.unwrap().path()).collect();
        files.sort();
        for path in files {
            let stem = path.file_stem().unwrap().to_string_lossy().into_owned();
            if path.is_dir() {
                self.folder(&joined(module, stem), &path);
            } else if path.extension().is_some_and(|e| e == "rs") {
                let inside =
                    if ["lib", "main", "mod"].contains(&stem.as_str()) { module.clone() } else { joined(module, stem) };
                let text = std::fs::read_to_string(&path).unwrap();
                let file = syn::parse_file(&text).unwrap_or_else(|why| panic!("{}: {why}", path.display()));
                self.items(&inside, file.items);
            }
        }
    }

    fn items(&mut self, module: &Name, items: Vec<Item>) {
        self.modules.entry(module.clone()).or_default();
        for item in items {
            self.item(module, item);
        }
    }

    fn node(&mut self, name: Name, is_public: bool, tokens: TokenStream, owner: Option<&str>) {
        let node = self.nodes.entry(name).or_default();
        node.public |= is_public;
        read(tokens, owner, node);
    }

    fn item(&mut self, module: &Name, item: Item) {
        macro_rules! named {
            ($item:expr, $ident:expr) => {{
                let item = $item;
                if !for_tests(&item.attrs) {
                    let name = $ident.to_string();
                    self.node(joined(module, &name), public(&item.vis), item.to_token_stream(), Some(&name));
                }
            }};
        }
        match item {
            Item::Fn(i) => named!(&i, i.sig.ident),
            Item::Struct(i) => named!(&i, i.ident),
            Item::Enum(i) => named!(&i, i.ident),
            Item::Const(i) => named!(&i, i.ident),
            Item::Static(i) => named!(&i, i.ident),
            Item::Type(i) => named!(&i, i.ident),
            Item::Trait(mut i) => {
                // What a trait promises is reached with it; what it does by default too.
                i.items.retain(|t| !matches!(t, TraitItem::Macro(_)));
                named!(&i, i.ident);
            }
            Item::Mod(i) if !for_tests(&i.attrs) => {
                if let Some((_, items)) = i.content {
                    self.items(&joined(module, i.ident), items);
                }
            }
            Item::Use(i) if !for_tests(&i.attrs) => {
                let absolute = i.leading_colon.is_some();
                assert!(!absolute, "a path from the root: {}", i.to_token_stream());
                let scope = self.modules.entry(module.clone()).or_default();
                tree(&i.tree, vec![], scope);
            }
            Item::Impl(i) if !for_tests(&i.attrs) => self.implementation(module, i),
            // A macro is reached with its module.
            Item::Macro(i) if !for_tests(&i.attrs) => {
                self.node(joined(module, "!"), false, i.to_token_stream(), None);
            }
            _ => {}
        }
    }

    fn implementation(&mut self, module: &Name, block: syn::ItemImpl) {
        let syn::Type::Path(path) = block.self_ty.as_ref() else { return };
        let owner = path.path.segments.last().unwrap().ident.to_string();
        let of = joined(module, &owner);
        if block.trait_.is_some() {
            // Called through the trait, by no name of its own: reached with the type.
            self.node(joined(&of, "(traits)"), false, block.to_token_stream(), Some(&owner));
            return;
        }
        for item in block.items {
            let (name, vis, attributes) = match &item {
                ImplItem::Fn(f) => (f.sig.ident.to_string(), &f.vis, &f.attrs),
                ImplItem::Const(c) => (c.ident.to_string(), &c.vis, &c.attrs),
                _ => continue,
            };
            if !for_tests(attributes) {
                self.node(joined(&of, name), public(vis), item.to_token_stream(), Some(&owner));
            }
        }
    }
}

fn tree(tree: &UseTree, mut before: Name, scope: &mut Module) {
    match tree {
        UseTree::Path(p) => {
            before.push(p.ident.to_string());
            self::tree(&p.tree, before, scope);
        }
        UseTree::Name(n) if n.ident == "self" => {
            scope.uses.insert(before.last().unwrap().clone(), before);
        }
        UseTree::Name(n) => {
            before.push(n.ident.to_string());
            scope.uses.insert(n.ident.to_string(), before);
        }
        UseTree::Rename(r) => {
            if r.ident != "self" {
                before.push(r.ident.to_string());
            }
            scope.uses.insert(r.rename.to_string(), before);
        }
        UseTree::Glob(_) => scope.globs.push(before),
        UseTree::Group(g) => g.items.iter().for_each(|t| self::tree(t, before.clone(), scope)),
    }
}

/// Takes the paths and calls out of tokens, those inside of macros too. `Self` is the owner.
fn read(tokens: TokenStream, owner: Option<&str>, node: &mut Node) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    let punct = |at: usize, c: char| matches!(tokens.get(at), Some(TokenTree::Punct(p)) if p.as_char() == c);
    let mut at = 0;
    while at < tokens.len() {
        match &tokens[at] {
            TokenTree::Group(group) => read(group.stream(), owner, node),
            TokenTree::Ident(first) => {
                let mut path = vec![first.to_string()];
                let after_dot = at > 0 && punct(at - 1, '.') && !(at > 1 && punct(at - 2, '.'));
                while punct(at + 1, ':') && punct(at + 2, ':') {
                    let Some(TokenTree::Ident(next)) = tokens.get(at + 3) else { break };
                    path.push(next.to_string());
                    at += 3;
                }
                if after_dot {
                    let called = matches!(tokens.get(at + 1), Some(TokenTree::Group(_))) || punct(at + 1, ':');
                    if called {
                        node.calls.insert(path.remove(0));
                    }
                } else {
                    if let (Some(owner), "Self") = (owner, path[0].as_str()) {
                        path[0] = owner.to_owned();
                    }
                    node.paths.insert(path);
                }
            }
            _ => {}
        }
        at += 1;
    }
}
