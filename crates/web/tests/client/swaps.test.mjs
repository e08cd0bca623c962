// How agreed swaps stand, and what is drawn for a press. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { drawFor, standing } from "../../src/client/swaps.js";

const T0 = Date.parse("2026-03-01T10:00:00Z");
const plan = {
  swap: "S",
  words: ["ball", "out"],
  one_in: 8,
  begins: "2026-03-01T10:00:00Z",
  ends: "2026-03-29T10:00:00Z",
};
const at = (minutes) => T0 + minutes * 60_000;
const event = (body, minutes) => ({ id: `e${minutes}`, happened_at: new Date(at(minutes)).toISOString(), body });
const sign = (level, minutes) => event({ kind: "sign", sign: "x", level, when: "during" }, minutes);
const stop = (reason, minutes) => event({ kind: "swap_stop", swap: "S", reason }, minutes);

test("swaps run from their beginning to their end, or to their stop", () => {
  assert.equal(standing({ swap: plan }, [], at(1)).plan, plan);
  assert.equal(standing({ swap: plan }, [], at(-1)), undefined);
  assert.equal(standing({ swap: plan }, [], Date.parse(plan.ends)), undefined);
  assert.equal(standing({ swap: plan }, [stop("home", 5)], at(6)), undefined);
  assert.equal(standing({ swap: null }, [], at(6)), undefined);
});

test("a stop because of signs is told for ten minutes", () => {
  assert.ok(standing({ swap: plan }, [stop("signs", 5)], at(6)).stopped);
  assert.equal(standing({ swap: null }, [stop("signs", 5)], at(16)), undefined);
});

test("a strong sign, or mild ones in a row, propose a stop; one mild sign or signs from before do not", () => {
  const signs = (...all) => standing({ swap: plan }, all, at(60)).signs;
  assert.equal(signs(sign("strong", 5)), "strong");
  assert.equal(signs(sign("mild", 5), sign("mild", 9)), "mild");
  assert.equal(signs(sign("mild", 5)), undefined);
  assert.equal(signs(sign("mild", 5), sign("joining", 7), sign("mild", 9)), undefined);
  assert.equal(signs(sign("strong", -5)), undefined);
  assert.equal(standing({ swap: plan }, [sign("mild", 5), sign("mild", 9)], at(60), at(10)).signs, undefined);
  // When it was, so that a session begun since is not told of it.
  assert.equal(standing({ swap: plan }, [sign("mild", 5), sign("mild", 9)], at(60)).seen, at(9));
});

test("the word's own thing or its partner's is drawn, as the shared reference has it", () => {
  const shared = new URL("../../../../tests/reference/draws.json", import.meta.url);
  for (const c of JSON.parse(readFileSync(shared, "utf8")).swapped) {
    const drawn = drawFor({ ...plan, swap: c.swap, one_in: c.one_in }, c.press, "ball", at(1));
    assert.deepEqual(drawn, { partner: "out", give: c.is ? "out" : "ball" });
  }
});

test("nothing is drawn for a word that takes no part, has no partner in these days, or before the beginning", () => {
  assert.equal(drawFor(plan, "e", "rest", at(1)), undefined);
  assert.equal(drawFor({ ...plan, words: ["ball", "out", "rest"] }, "e", "ball", at(1)), undefined);
  assert.equal(drawFor(plan, "01a34039-ef11-7416-96f2-3eefbde5c099", "ball", at(-1)), undefined);
});

test("a stop names signs only while such signs stand", () => {
  const by = (...all) => standing({ swap: null }, all, at(8)).by;
  assert.equal(by(sign("strong", 5), stop("signs", 5)), "strong");
  assert.equal(by(sign("mild", 3), sign("mild", 4), stop("signs", 5)), "mild");
  assert.equal(by(stop("signs", 5)), undefined, "taken back");
  assert.equal(by(stop("signs", 5), sign("strong", 6)), undefined, "of later");
});
