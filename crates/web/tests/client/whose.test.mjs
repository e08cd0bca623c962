// Whose press was heard: what is asked, for how long, and who is proposed. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { likely, open } from "../../src/client/whose.js";

const START = Date.parse("2026-03-02T12:00:00Z");
const at = (s) => START + 1000 * s;

let n = 0;
/** A press at a second: heard, or told by a person. */
const press = (s, { source = "heard", by = "unknown", word = "ball", animal = "tarn" } = {}) => ({
  id: `e${++n}`,
  ...(animal ? { animal } : {}),
  happened_at: new Date(at(s)).toISOString(),
  recorded_at: new Date(at(s)).toISOString(),
  source,
  body: { kind: "press", word, by },
});

/** A pad whose view holds these events, and whose device holds these rows. */
const pad = (stand, own = [], session = undefined) => ({
  now: { same_press_s: 1.5, name: "Tarn", animal: "tarn" },
  view: { stand, session },
  own: own.map((event) => ({ id: event.id, state: "kept", event })),
  word: (id) => ["ball", "out"].includes(id),
});

test("the newest heard press is asked about, while it is fresh", () => {
  const [first, second] = [press(0), press(3)];
  assert.equal(open(pad([first, second]), at(5)).id, second.id);
  assert.equal(open(pad([first, second]), at(47)).id, second.id);
  assert.equal(open(pad([first, second]), at(49)), undefined);
});

test("a press that a person told, or that was judged, is not asked about", () => {
  const tap = press(1.2, { source: "tap", by: "animal" });
  assert.equal(open(pad([press(0), tap]), at(5)), undefined);
  assert.notEqual(open(pad([press(0), press(1.2, { source: "tap", by: "animal", word: "out" })]), at(5)), undefined);
  assert.notEqual(open(pad([press(0), press(1.6, { source: "tap", by: "animal" })]), at(5)), undefined);
  assert.equal(open(pad([press(0, { by: "person" })]), at(5)), undefined);
});

test("where several use the board, a press of nobody yet is asked about until it is judged", () => {
  const nobodys = press(0, { animal: null });
  assert.equal(open(pad([], [nobodys]), at(5)).id, nobodys.id);
  const judged = { id: "c1", source: "tap", body: { kind: "correction", of: nobodys.id, body: nobodys.body } };
  assert.equal(open(pad([], [nobodys, judged]), at(5)), undefined);
  assert.equal(open(pad([], [press(0, { animal: null, word: "unknown to Tarn" })]), at(5)), undefined);
});

test("while words are shown the person is proposed, else the animal", () => {
  assert.equal(likely(pad([], [], "s"), "showing"), "person");
  assert.equal(likely(pad([], [], "s"), "invitation"), "animal");
  assert.equal(likely(pad([]), "showing"), "animal");
});
