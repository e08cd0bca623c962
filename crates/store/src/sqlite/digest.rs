//! The digest of a backup: SHA-256 over every row of the log, column by column, and the hashes of the recordings. It
//! stands in the backup in a table of its own, so that a backup can be told from a damaged one.

use crate::error::StoreError;
use crate::row::Row;
use crate::sqlite::db::Db;
use crate::sqlite::log;
use sha2::{Digest as _, Sha256};

/// Rows read at a time.
const PAGE: i64 = 2_000;

/// A digest in the making.
pub(crate) struct Digest(Sha256);

impl Digest {
    pub fn new() -> Self {
        let mut hash = Sha256::new();
        hash.update(b"sayso backup 1");
        Self(hash)
    }

    /// Takes in a row; rows come in the order of arrival.
    pub fn row(&mut self, row: &Row) {
        self.0.update([1]);
        self.0.update(row.seq.to_be_bytes());
        self.part(row.id.as_bytes());
        self.part(row.home.as_bytes());
        self.part(row.kind.as_bytes());
        self.part(row.amends.as_ref().map_or(&[], |id| id.as_bytes().as_slice()));
        self.part(row.content.as_bytes());
    }

    /// Takes in a recording by its name, which is the SHA-256 of its bytes; names come in the order of the alphabet.
    pub fn clip(&mut self, name: &str) {
        self.0.update([2]);
        self.part(name.as_bytes());
    }

    // With its length first, so that nothing can move from one part to the next.
    fn part(&mut self, bytes: &[u8]) {
        self.0.update((bytes.len() as u64).to_be_bytes());
        self.0.update(bytes);
    }

    /// 64 lower-case hexadecimal digits.
    pub fn finish(self) -> String {
        self.0.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// Takes in all rows up to a place in a log; answers how many they are and the last one's place.
pub(crate) async fn rows(
    db: &mut Db,
    up_to: i64,
    digest: &mut Digest,
    each: &mut (dyn FnMut(Row) -> Result<(), StoreError> + Send),
) -> Result<(usize, i64), StoreError> {
    let (mut count, mut last) = (0, 0);
    loop {
        let page = log::after(db, last, PAGE).await?;
        let Some(end) = page.last() else { return Ok((count, last)) };
        let done = end.seq >= up_to;
        for row in page.into_iter().filter(|row| row.seq <= up_to) {
            digest.row(&row);
            (count, last) = (count + 1, row.seq);
            each(row)?;
        }
        if done {
            return Ok((count, last));
        }
    }
}
