//! What can be reached from the faces: an item is reached if a reached item names it.

use crate::source::{Name, Sources};
use std::collections::{BTreeMap, BTreeSet};

/// Longest chain of re-exports followed.
const DEEPEST: usize = 12;

/// Crates by the names under which others use them.
const CRATES: [(&str, &str); 7] = [
    ("sayso_methods", "methods"),
    ("sayso_advisor", "advisor"),
    ("sayso_web", "web"),
    ("sayso_wording", "wording"),
    ("sayso_cli", "cli"),
    ("sayso_paper", "paper"),
    ("sayso_host", "host"),
];

impl Sources {
    /// What a path written in a module stands for: an item's full name, or none if it is not of these crates.
    fn resolve(&self, module: &Name, path: &[String], depth: usize) -> Option<Name> {
        if depth > DEEPEST {
            return None;
        }
        let (first, rest) = path.split_first()?;
        let parent = || module[..module.len().saturating_sub(1)].to_vec();
        if let Some((_, name)) = CRATES.iter().find(|(used, _)| used == first) {
            return self.inside(vec![(*name).to_owned()], rest, depth);
        }
        match first.as_str() {
            "crate" => self.inside(vec![module[0].clone()], rest, depth),
            "self" => self.inside(module.clone(), rest, depth),
            "super" => self.inside_or_up(parent(), rest, depth),
            _ => self.inside(module.clone(), path, depth),
        }
    }

    fn inside_or_up(&self, module: Name, rest: &[String], depth: usize) -> Option<Name> {
        match rest.first() {
            Some(up) if up == "super" => {
                self.inside_or_up(module[..module.len().saturating_sub(1)].to_vec(), &rest[1..], depth)
            }
            _ => self.inside(module, rest, depth),
        }
    }

    /// Follows names down from a module or a type.
    fn inside(&self, at: Name, rest: &[String], depth: usize) -> Option<Name> {
        let Some((next, after)) = rest.split_first() else { return Some(at) };
        let below: Name = at.iter().cloned().chain([next.clone()]).collect();
        if self.nodes.contains_key(&below) {
            // A method of a type, or a variant, which is reached with its type.
            let method: Name = below.iter().cloned().chain(after.first().cloned()).collect();
            return Some(if self.nodes.contains_key(&method) { method } else { below });
        }
        // A module and a function may share a name, and `use` may bring in the one where the other stands.
        let module_first = self.modules.contains_key(&below) && !after.is_empty();
        let down = || self.modules.contains_key(&below).then(|| self.inside(below.clone(), after, depth)).flatten();
        let by_use = || {
            let module = self.modules.get(&at)?;
            let named = module.uses.get(next).map(|target| target.iter().chain(after).cloned().collect::<Name>());
            let by_glob = module.globs.iter().map(|glob| glob.iter().chain(rest).cloned().collect());
            named.into_iter().chain(by_glob).find_map(|full| self.resolve_use(&at, &full, depth + 1))
        };
        if module_first { down().or_else(by_use) } else { by_use().or_else(down) }
    }

    /// As [`Self::resolve`]; `use x::x` in a module does not mean itself.
    fn resolve_use(&self, module: &Name, path: &Name, depth: usize) -> Option<Name> {
        let itself = self.modules.get(module).is_some_and(|m| m.uses.get(&path[0]).is_some_and(|u| u[0] == path[0]));
        let below: Name = module.iter().cloned().chain([path[0].clone()]).collect();
        if itself && !self.modules.contains_key(&below) && !CRATES.iter().any(|(used, _)| *used == path[0]) {
            return None;
        }
        self.resolve(module, path, depth)
    }

    /// The module in which an item stands.
    pub fn module_of(&self, item: &Name) -> Name {
        let longest = (1..item.len()).rev().map(|n| item[..n].to_vec()).find(|m| self.modules.contains_key(m));
        longest.unwrap_or_else(|| vec![item[0].clone()])
    }
}

/// Who names whom.
pub struct Graph {
    /// Full names; an item's number is its place here.
    pub names: Vec<Name>,
    named: Vec<Vec<usize>>,
    calls: Vec<BTreeSet<String>>,
    /// Methods, and what a type does through traits, by the type they belong to.
    members: Vec<Vec<usize>>,
    /// Macros of a module, by the module.
    macros: BTreeMap<Name, usize>,
    modules: Vec<Name>,
}

impl Graph {
    /// Looks every name up, once.
    pub fn of(sources: &Sources) -> Self {
        let names: Vec<Name> = sources.nodes.keys().cloned().collect();
        let at: BTreeMap<Name, usize> = names.iter().cloned().zip(0..).collect();
        let modules: Vec<Name> = names.iter().map(|name| sources.module_of(name)).collect();
        let mut members = vec![Vec::new(); names.len()];
        let mut owners = vec![None; names.len()];
        for (i, name) in names.iter().enumerate() {
            // A type's methods may stand in another file than the type.
            let inside = &name[modules[i].len()..];
            let owner = if inside.len() > 1 { sources.resolve(&modules[i], &inside[..1], 0) } else { None };
            if let Some(&owner) = owner.and_then(|owner| at.get(&owner)) {
                members[owner].push(i);
                owners[i] = Some(owner);
            }
        }
        let find = |i: usize, path: &Name| -> Vec<usize> {
            let found = sources.resolve(&modules[i], path, 0).and_then(|found| at.get(&found)).copied();
            found.into_iter().chain(found.and_then(|f| owners[f])).collect()
        };
        let nodes: Vec<_> = sources.nodes.values().collect();
        let named = (0..names.len()).map(|i| nodes[i].paths.iter().flat_map(|path| find(i, path)).collect()).collect();
        let macros = names.iter().zip(0..).filter(|(name, _)| name.last().is_some_and(|l| l == "!"));
        Self {
            macros: macros.map(|(name, i)| (name[..name.len() - 1].to_vec(), i)).collect(),
            calls: nodes.iter().map(|node| node.calls.clone()).collect(),
            named,
            members,
            modules,
            names,
        }
    }

    /// Everything reached from the items for which `root` holds.
    pub fn reached(&self, root: impl Fn(&Name) -> bool) -> BTreeSet<Name> {
        let mut todo: Vec<usize> = (0..self.names.len()).filter(|i| root(&self.names[*i])).collect();
        let mut reached: BTreeSet<usize> = todo.iter().copied().collect();
        let mut calls: BTreeSet<&String> = BTreeSet::new();
        while !todo.is_empty() {
            let mut found = Vec::new();
            for i in std::mem::take(&mut todo) {
                calls.extend(&self.calls[i]);
                found.extend(&self.named[i]);
                found.extend(self.macros.get(&self.modules[i]));
            }
            // A method is reached once its type is and something reached calls one of that name.
            for &i in &reached {
                let last = |m: &&usize| self.names[**m].last();
                let called = |m: &&usize| last(m).is_some_and(|l| l == "(traits)" || calls.contains(l));
                found.extend(self.members[i].iter().filter(called));
            }
            todo.extend(found.into_iter().filter(|i| reached.insert(*i)));
        }
        reached.into_iter().map(|i| self.names[i].clone()).collect()
    }
}
