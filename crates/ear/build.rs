//! Makes the module for pages: this crate once more, for WebAssembly with vectors of 128 bits, in release form whatever
//! the form around it (an ear of the dev profile would not keep up). Where the toolchain lacks the target the build passes
//! without it, and pages listen through the notebook.

#![allow(clippy::panic)]

use std::path::{Path, PathBuf};
use std::process::Command;
use std::{env, fs};

const TARGET: &str = "wasm32-unknown-unknown";

/// What the module is built as; `packaging` and the notebook's own profile have no say in it.
const PROFILE: [(&str, &str); 6] = [
    ("OPT_LEVEL", "3"),
    ("LTO", "fat"),
    ("CODEGEN_UNITS", "1"),
    ("PANIC", "abort"),
    ("STRIP", "symbols"),
    ("DEBUG", "false"),
];

/// What is set around this build and is meant for it alone.
const NOT_OURS: [&str; 9] = [
    "RUSTFLAGS",
    "CARGO_BUILD_RUSTFLAGS",
    "CARGO_BUILD_TARGET",
    "CARGO_BUILD_TARGET_DIR",
    "RUSTC_WRAPPER",
    "RUSTC_WORKSPACE_WRAPPER",
    "CARGO_PRIMARY_PACKAGE",
    "CLIPPY_ARGS",
    "CARGO_ENCODED_RUSTDOCFLAGS",
];

fn main() {
    let here = PathBuf::from(set("CARGO_MANIFEST_DIR"));
    let root = here.join("../..");
    for path in ["build.rs", "src", "Cargo.toml", "../listen/src", "../listen/Cargo.toml"] {
        println!("cargo::rerun-if-changed={}", here.join(path).display());
    }
    for path in ["Cargo.lock", "Cargo.toml"] {
        println!("cargo::rerun-if-changed={}", root.join(path).display());
    }
    let out = PathBuf::from(set("OUT_DIR"));
    let said = out.join("module.rs");
    if set("CARGO_CFG_TARGET_ARCH") == "wasm32" {
        return;
    }
    let content = if has_target() {
        let made = make(&here, &out.join("module"));
        format!("Some(include_bytes!({:?}))", made.display().to_string())
    } else {
        println!(
            "cargo::warning=the target {TARGET} is not installed, so pages will listen through the notebook; \
             `rustup target add {TARGET}` brings it"
        );
        "None".to_owned()
    };
    if let Err(why) = fs::write(&said, content) {
        panic!("{}: {why}", said.display());
    }
}

fn set(name: &str) -> String {
    env::var(name).unwrap_or_else(|_| panic!("cargo sets {name}"))
}

/// Whether this toolchain has the target's library. Looked at again once a target comes or goes.
fn has_target() -> bool {
    let done = Command::new(set("RUSTC")).args(["--print", "target-libdir", "--target", TARGET]).output();
    let libraries = match done {
        Ok(done) if done.status.success() => PathBuf::from(String::from_utf8_lossy(&done.stdout).trim()),
        _ => return false,
    };
    // Two up is the folder of that target, three up that of all of them.
    if let Some(all) = libraries.ancestors().nth(2) {
        println!("cargo::rerun-if-changed={}", all.display());
    }
    fs::read_dir(libraries).is_ok_and(|mut files| files.any(|f| f.is_ok_and(|f| is_core(&f.path()))))
}

fn is_core(file: &Path) -> bool {
    file.file_name().and_then(|n| n.to_str()).is_some_and(|n| n.starts_with("libcore-"))
}

/// Builds the module in a target directory of its own: that of the build around is locked by it. First with what is
/// here already, as a machine without a network must.
fn make(here: &Path, target: &Path) -> PathBuf {
    let build = |more: &[&str]| {
        let mut cargo = Command::new(set("CARGO"));
        cargo
            .args(["rustc", "--release", "--locked", "--lib", "--crate-type", "cdylib", "--target", TARGET])
            .args(["--manifest-path", &here.join("Cargo.toml").display().to_string()])
            .args(more)
            .current_dir(here)
            .env("CARGO_TARGET_DIR", target)
            .env("CARGO_ENCODED_RUSTFLAGS", "-Ctarget-feature=+simd128");
        for name in NOT_OURS {
            cargo.env_remove(name);
        }
        for (name, value) in PROFILE {
            cargo.env(format!("CARGO_PROFILE_RELEASE_{name}"), value);
        }
        cargo.output()
    };
    let made = target.join(TARGET).join("release/sayso_ear.wasm");
    let mut why = String::new();
    for more in [&["--offline"][..], &[]] {
        match build(more) {
            Ok(done) if done.status.success() => return made,
            Ok(done) => why.push_str(&String::from_utf8_lossy(&done.stderr)),
            Err(error) => why.push_str(&error.to_string()),
        }
    }
    panic!("the module for pages could not be built:\n{why}");
}
