// An offer that is cut off: what is not known is not noted, and a press is noted once, at the moment of its tap.

import assert from "node:assert/strict";
import test from "node:test";
import { drop, result, state } from "../../src/client/inviting.js";

const TAPPED = 50_000;

function board(invitation, strong = []) {
  const noted = [];
  const pad = {
    now: { animal: "pip", words: [], zone: "UTC" },
    strong,
    view: { session: "s1", joined: true, stand: [] },
    memo: { invitation: { word: "ball", wait: 5, way: "offer_in_view", at: 40_000, ...invitation } },
    noted,
    setMemo: (change) => void Object.assign(pad.memo, change),
    event: (body, at) => ({ id: `e${noted.length}`, body, at }),
    note: (events) => void noted.push(...events),
  };
  return pad;
}
const kinds = (pad) => pad.noted.map((e) => `${e.body.kind} of ${e.body.word} at ${e.at}`);

test("an offer that was cut off while it waited leaves no record", async () => {
  const pad = board({ step: "waiting" });
  await drop(pad, undefined);
  assert.deepEqual([kinds(pad), state(pad).step], [[], undefined]);
});

test("after a strong sign what was chosen by hand is not offered again, else it stays chosen", async () => {
  const chosen = { step: "waiting", myself: true };
  const rests = board(chosen, [Date.now() - 1_000]);
  await drop(rests, undefined);
  assert.deepEqual([state(rests).myself, state(rests).word], [false, undefined]);
  const calm = board(chosen);
  await drop(calm, undefined);
  assert.deepEqual([state(calm).myself, state(calm).word], [true, "ball"]);
});

test("a press after the wait is noted all the same, and only once", async () => {
  const pad = board({ step: "late", late: "out", tappedAt: TAPPED });
  await drop(pad, undefined);
  assert.deepEqual(kinds(pad), [`press of out at ${TAPPED}`]);
  assert.deepEqual([state(pad).step, state(pad).late], [undefined, undefined]);
  // The next offer in which nothing came knows of no press.
  Object.assign(pad.memo.invitation, { step: "waiting", word: "ball", at: 90_000 });
  await result(pad, { outcome: "nothing_by_wait" });
  assert.deepEqual(kinds(pad).slice(1), ["invitation of ball at 90000"]);
});

test("a press that came after the wait has the moment of its tap, whatever came of the offer", async () => {
  const pad = board({ step: "late", late: "out", tappedAt: TAPPED });
  await result(pad, { outcome: "left" }, TAPPED);
  assert.deepEqual(kinds(pad), [`press of out at ${TAPPED}`, "invitation of ball at 40000"]);
});
