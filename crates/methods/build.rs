//! Packs the CMU Pronouncing Dictionary, which comes with the crate `cmudict-fast`, into a small sorted file that is
//! searched where it lies: no parsing at start-up. `src/words/dictionary.rs` reads it and describes the format.

use cmudict_fast::Rule;
use std::collections::BTreeMap;
use std::error::Error;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::{env, fs};

#[path = "src/words/arpabet.rs"]
mod arpabet;

const WORDS_A_BLOCK: usize = 32;

fn main() -> Result<(), Box<dyn Error>> {
    println!("cargo:rerun-if-changed=build.rs");
    println!("cargo:rerun-if-changed=src/words/arpabet.rs");
    let source = dictionary_package()?;
    let out = PathBuf::from(env::var("OUT_DIR")?);
    let text = fs::read_to_string(source.join("resources/cmudict.dict"))?;
    fs::write(out.join("pronunciations.bin"), pack(&read(&text)?)?)?;
    fs::copy(source.join("LICENSE-CMUDICT"), out.join("pronunciations-licence.txt"))?;
    Ok(())
}

// The crate keeps its data as a file and does not export it, so ask cargo where the crate lies. Offline first: whatever
// this build needs is already there; only a package of no concern to this build could be missing.
fn dictionary_package() -> Result<PathBuf, Box<dyn Error>> {
    let manifest = Path::new(&env::var("CARGO_MANIFEST_DIR")?).join("Cargo.toml");
    let ask = |more: &[&str]| -> Result<PathBuf, Box<dyn Error>> {
        let asked = Command::new(env::var("CARGO")?)
            .args(["metadata", "--format-version", "1", "--filter-platform", &env::var("TARGET")?, "--manifest-path"])
            .arg(&manifest)
            .args(more)
            .output()?;
        if !asked.status.success() {
            return Err(String::from_utf8_lossy(&asked.stderr).into_owned().into());
        }
        let answer: serde_json::Value = serde_json::from_slice(&asked.stdout)?;
        let found = answer["packages"].as_array().into_iter().flatten().find(|p| p["name"] == "cmudict-fast");
        let path =
            found.and_then(|p| p["manifest_path"].as_str()).ok_or("cargo metadata names no package cmudict-fast")?;
        Ok(Path::new(path).parent().ok_or("a manifest without a folder")?.to_owned())
    };
    ask(&["--offline"]).or_else(|_| ask(&[]))
}

// First pronunciation of each word, as codes without stress. Words with digits or full stops are left out.
fn read(text: &str) -> Result<BTreeMap<String, Vec<u8>>, Box<dyn Error>> {
    let mut words = BTreeMap::new();
    for line in text.lines().filter(|l| !l.starts_with(";;")) {
        let rule: Rule = line.split('#').next().unwrap_or_default().parse()?;
        let word = rule.label();
        if !word.bytes().all(|b| b.is_ascii_lowercase() || b == b'\'') {
            continue;
        }
        let codes = rule.pronunciation().iter().map(|sound| {
            let name = sound.to_string();
            let name = name.trim_end_matches(|c: char| c.is_ascii_digit());
            arpabet::ARPABET.iter().position(|a| *a == name).and_then(|i| u8::try_from(i).ok())
        });
        let codes: Vec<u8> = codes.collect::<Option<_>>().ok_or_else(|| format!("unknown sound in {line}"))?;
        words.entry(word.to_owned()).or_insert(codes);
    }
    Ok(words)
}

fn pack(words: &BTreeMap<String, Vec<u8>>) -> Result<Vec<u8>, Box<dyn Error>> {
    let (mut offsets, mut body, mut last): (Vec<u32>, Vec<u8>, &str) = (Vec::new(), Vec::new(), "");
    for (i, (word, codes)) in words.iter().enumerate() {
        if i % WORDS_A_BLOCK == 0 {
            offsets.push(u32::try_from(body.len())?);
            last = "";
        }
        let shared = word.bytes().zip(last.bytes()).take_while(|(a, b)| a == b).count();
        body.push(u8::try_from(shared)?);
        body.push(u8::try_from(word.len() - shared)?);
        body.extend(&word.as_bytes()[shared..]);
        body.push(u8::try_from(codes.len())?);
        body.extend(codes);
        last = word;
    }
    let mut packed = u32::try_from(offsets.len())?.to_le_bytes().to_vec();
    packed.extend(offsets.iter().flat_map(|o| o.to_le_bytes()));
    packed.extend(body);
    Ok(packed)
}
