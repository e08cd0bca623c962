// Which round may be gone on with, and with which word. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { called } from "../../src/client/draw.js";
import { known, openRound, past } from "../../src/client/round.js";

const A = "01a34039-ef11-7416-96f2-3eefbde5c099";
const B = "01a34a05-9e1d-7f17-a988-cc953fc1ea36";
const T0 = Date.parse("2026-03-01T10:00:00Z");
const words = ["ball", "out", "rest"];
const own = (more = {}) => ({ round: A, words, calls: 4, begun: T0, next: 1, ...more });
const there = (more = {}) => ({
  round: A,
  words,
  calls: 4,
  begun: "2026-03-01T10:00:00Z",
  until: "2026-03-01T11:00:00Z",
  next: 1,
  ...more,
});
const minutes = (n) => T0 + n * 60_000;

test("a round begun here goes on after a reload, with the word its id draws", () => {
  const open = openRound({ round: null }, { round: own({ next: 3 }) }, minutes(5));
  assert.deepEqual([open.next, open.word], [3, called(A, 3, words)]);
});

test("a round begun on another device goes on here", () => {
  assert.equal(openRound({ round: there({ next: 2 }) }, {}, minutes(5)).next, 2);
});

test("a call noted elsewhere is not drawn again, nor is one that was skipped here", () => {
  assert.equal(openRound({ round: there({ next: 3 }) }, { round: own({ next: 2 }) }, minutes(5)).next, 3);
  assert.equal(openRound({ round: there({ next: 2 }) }, { round: own({ next: 3 }) }, minutes(5)).next, 3);
});

test("skipping moves on to the next call and never back", () => {
  assert.equal(past(own({ next: 2 }), 2).next, 3);
  assert.equal(past(own({ next: 4 }), 2).next, 4);
});

test("a round is over after its calls, after an hour, or when stopped", () => {
  assert.equal(openRound({ round: null }, { round: own({ next: 5 }) }, minutes(5)), undefined);
  assert.equal(openRound({ round: there({ next: 5 }) }, { round: own({ next: 2 }) }, minutes(5)), undefined);
  assert.equal(openRound({ round: null }, { round: own() }, minutes(60)), undefined);
  assert.equal(openRound({ round: there() }, { round: own({ stopped: true }) }, minutes(5)), undefined);
});

test("of two rounds the later begun counts", () => {
  const later = there({ round: B, begun: "2026-03-01T10:10:00Z" });
  assert.equal(known({ round: later }, { round: own({ stopped: true }) }).round, B);
  assert.equal(known({ round: there() }, { round: own({ round: B, begun: minutes(10) }) }).round, B);
  assert.equal(known({}, {}), undefined);
});
