//! A small disk of its own, to fill.
#![allow(dead_code, clippy::unwrap_used)]

use std::path::Path;
use std::process::Command;

/// A file system in memory, mounted on a folder until dropped.
pub struct SmallDisk {
    dir: Option<tempfile::TempDir>,
}

impl SmallDisk {
    /// Mounts one of so many KiB; none where mounting is not permitted, having said why.
    pub fn of_kib(kib: u32) -> Option<Self> {
        let dir = tempfile::tempdir().unwrap();
        let mounted = Command::new("mount")
            .args(["-t", "tmpfs", "-o", &format!("size={kib}k"), "tmpfs"])
            .arg(dir.path())
            .output();
        match mounted {
            Ok(done) if done.status.success() => Some(Self { dir: Some(dir) }),
            Ok(done) => skipped(&String::from_utf8_lossy(&done.stderr)),
            Err(why) => skipped(&why.to_string()),
        }
    }

    pub fn path(&self) -> &Path {
        self.dir.as_ref().unwrap().path()
    }

    /// Makes it readable only, or writable again.
    pub fn read_only(&self, yes: bool) {
        let how = if yes { "remount,ro" } else { "remount,rw" };
        assert!(Command::new("mount").args(["-o", how]).arg(self.path()).status().unwrap().success());
    }

    /// Writes a file until nothing more goes in.
    pub fn fill(&self, name: &str) {
        use std::io::Write;
        let mut file = std::fs::File::create(self.path().join(name)).unwrap();
        while file.write_all(&[7; 1_024]).is_ok() {}
    }
}

fn skipped(why: &str) -> Option<SmallDisk> {
    println!("SKIPPED: no small disk could be mounted here: {}", why.trim());
    None
}

impl Drop for SmallDisk {
    fn drop(&mut self) {
        // Lazily: a connection may still be closing.
        let done = Command::new("umount").arg("-l").arg(self.path()).status();
        assert!(done.is_ok_and(|s| s.success()), "the small disk could not be taken away");
    }
}
