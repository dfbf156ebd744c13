//! The types of all commands in TypeScript, for the screens: one file, made from the same table.

use std::any::TypeId;
use std::collections::{BTreeMap, HashSet};
use ts_rs::{Config, TS, TypeVisitor};

/// All declarations that were met, by name.
pub(crate) struct Declarations {
    config: Config,
    seen: HashSet<TypeId>,
    by_name: BTreeMap<String, String>,
    calls: Vec<String>,
}

impl Declarations {
    pub(crate) fn new() -> Self {
        Self {
            // JSON has no integers of its own; what is counted here stays far below 2^53.
            config: Config::new().with_large_int("number"),
            seen: HashSet::new(),
            by_name: BTreeMap::new(),
            calls: Vec::new(),
        }
    }

    /// One command with its question and answer.
    pub(crate) fn command<I: TS + 'static, O: TS + 'static>(&mut self, name: &str) {
        self.visit::<I>();
        self.visit::<O>();
        let (input, output) = (I::name(&self.config), O::name(&self.config));
        self.calls.push(format!("  '{name}': {{ input: {input}; output: {output} }};"));
    }

    /// A type that stands in one whose own writing was given by hand: such a one names no types of its own.
    pub(crate) fn named_by_hand<T: TS + 'static>(&mut self) {
        self.visit::<T>();
    }

    /// The whole file.
    pub(crate) fn text(&self) -> String {
        let types: Vec<&str> = self.by_name.values().map(String::as_str).collect();
        format!(
            "// Made by `cargo xtask types` from the Rust types. Do not edit.\n\n{}\n\n/** Every command with its \
             question and answer. */\nexport interface Commands {{\n{}\n}}\n",
            types.join("\n\n"),
            self.calls.join("\n")
        )
    }
}

impl TypeVisitor for Declarations {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        if !self.seen.insert(TypeId::of::<T>()) {
            return;
        }
        T::visit_dependencies(self);
        T::visit_generics(self);
        // What has no place of its own is written where it is used.
        if T::output_path().is_some() {
            let docs = T::docs().unwrap_or_default();
            let ident = T::ident(&self.config);
            let declared = format!("{docs}export {}", T::decl(&self.config));
            let old = self.by_name.insert(ident.clone(), declared.clone());
            assert!(
                old.is_none_or(|old| old == declared),
                "two types are called {ident}: rename one with #[ts(rename)]"
            );
        }
    }
}
