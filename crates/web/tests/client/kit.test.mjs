// A recording with its marks, and the archive it is saved in. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { makeTake } from "../../src/client/take.js";
import { tar } from "../../src/client/tar.js";

const RATE = 1000; // a tenth of a second is a hundred samples
const BEGAN = 50_000;

/** The n-th block of a recording that began at BEGAN, stamped `late` milliseconds late. */
const block = (n, late = 0) => ({
  position: 7_000 + 100 * n,
  samples: new Int16Array(100).fill(n),
  peak: 0.1,
  at: BEGAN + 100 * (n + 1) + late,
});

function recorded(blocks) {
  const take = makeTake(RATE);
  for (let n = 0; n < blocks; n += 1) assert.equal(take.add(block(n, n % 3 ? 40 : 0)), true);
  return take;
}

test("marks stand where they were made, on the sound's own clock", () => {
  const take = recorded(100);
  take.mark(BEGAN + 2_000);
  take.mark(BEGAN + 5_500);
  assert.deepEqual([take.seconds, take.marked], [10, 2]);
  const { samples, presses } = take.end(2);
  assert.deepEqual(presses, [2, 5.5]);
  assert.equal(samples.length, 10_000);
  assert.deepEqual([samples[0], samples[9_999]], [0, 99]);
});

test("a press that had no time to sound is cut away with its sound", () => {
  const take = recorded(100);
  [3_000, 9_000].forEach((ms) => take.mark(BEGAN + ms));
  const { samples, presses } = take.end(2);
  assert.deepEqual(presses, [3]);
  assert.equal(samples.length, 8_000);
});

test("sound that was held up is told, a single late block is not", () => {
  const take = recorded(40);
  assert.equal(take.add(block(40, 900)), true);
  assert.equal(take.add(block(41)), true);
  let whole = true;
  for (let n = 42; n < 70; n += 1) whole &&= take.add(block(n, 900));
  assert.equal(whole, false);
});

test("tar reads the archive, whatever the lengths", () => {
  const files = [0, 1, 511, 512, 513].map((n) => ({ name: `file-${n}.bin`, bytes: new Uint8Array(n).fill(65) }));
  const parts = tar(files, new Date("2026-03-01T10:00:00Z"));
  const folder = mkdtempSync(join(tmpdir(), "kit-"));
  try {
    const path = join(folder, "kit.tar");
    const all = Buffer.concat(parts);
    assert.equal(all.length % 512, 0);
    writeFileSync(path, all);
    const listed = execFileSync("tar", ["-tvf", path], { encoding: "utf8" }).trim().split("\n");
    assert.equal(listed.length, files.length);
    for (const { name, bytes } of files) {
      assert.deepEqual(execFileSync("tar", ["-xOf", path, name]), Buffer.from(bytes));
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});
