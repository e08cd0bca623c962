// The page draws what the notebook draws. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { block, called, partner, swapped } from "../../src/client/draw.js";

const shared = new URL("../../../../tests/reference/draws.json", import.meta.url);
const reference = JSON.parse(readFileSync(shared, "utf8"));
const words = (n) => Array.from({ length: n }, (_, i) => `word ${i}`);

test("calls are those of the shared reference", () => {
  assert.ok(reference.called.length >= 20);
  for (const c of reference.called)
    assert.equal(called(c.round, c.number, words(c.words)), `word ${c.index}`, JSON.stringify(c));
  assert.equal(called(reference.called[0].round, 1, []), undefined);
});

test("swaps are those of the shared reference, of both kinds", () => {
  const kinds = new Set(reference.swapped.map((c) => c.is));
  assert.equal(kinds.size, 2);
  for (const c of reference.swapped) assert.equal(swapped(c.swap, c.press, c.one_in), c.is, JSON.stringify(c));
});

test("partners are those of the shared reference", () => {
  assert.ok(
    reference.partner.some((c) => c.partner === null),
    "one sits out",
  );
  for (const c of reference.partner) {
    assert.equal(
      partner(words(c.words), c.block, `word ${c.word}`),
      c.partner === null ? undefined : `word ${c.partner}`,
      JSON.stringify(c),
    );
  }
});

test("partners are mutual and everybody meets everybody", () => {
  for (let n = 2; n <= 9; n++) {
    const all = words(n);
    const met = new Set();
    for (let b = 0; b < n + (n % 2) - 1; b++) {
      for (const w of all) {
        const p = partner(all, b, w);
        if (p === undefined) {
          assert.equal(n % 2, 1, "only an odd number leaves one out");
          continue;
        }
        assert.notEqual(p, w);
        assert.equal(partner(all, b, p), w);
        met.add(`${w}-${p}`);
      }
    }
    assert.equal(met.size, n * (n - 1), `${n} words`);
  }
  assert.equal(partner(words(1), 0, "word 0"), undefined);
  assert.equal(partner(words(3), 0, "another"), undefined);
});

test("a block lasts four days, and there is none before the beginning", () => {
  const day = 86_400_000;
  assert.deepEqual(
    [block(0, 0), block(0, 4 * day - 1), block(0, 4 * day), block(0, 27 * day), block(5, 4)],
    [0, 0, 1, 6, undefined],
  );
});
