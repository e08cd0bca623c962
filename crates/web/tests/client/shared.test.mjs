// Rules that exist in the notebook and here come to the same. Run: node --test crates/web/tests/client/
// fixtures/shared.json is written from the notebook's own functions by tests/http/shared.rs.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { PARTNER_DAYS } from "../../src/client/draw.js";
import { MAY } from "../../src/client/recent.js";
import { CALLS, OPEN_MS } from "../../src/client/round.js";
import { STILL_NEEDED_MS } from "../../src/client/pad.js";
import { LEAST_REST_MS, restsUntil, strongOf } from "../../src/client/rest.js";
import { SESSION_MS, ration, sitting, standing } from "../../src/client/sitting.js";
import { standing as swapsStand } from "../../src/client/swaps.js";

const shared = JSON.parse(readFileSync(new URL("../fixtures/shared.json", import.meta.url), "utf8"));
const told = (e) => ({ id: e.id, animal: e.animal, at: Date.parse(e.happened_at), body: e.body });

/** The same with the order turned and everything told twice: neither may matter. */
const orders = (events) => [events, [...events].reverse(), [...events, ...events]];

test("lengths and numbers", () => {
  const { session_open_s, still_needed_s, least_rest_s, round_open_s, calls, partner_days } = shared.constants;
  assert.deepEqual(
    [SESSION_MS / 1000, STILL_NEEDED_MS / 1000, LEAST_REST_MS / 1000, OPEN_MS / 1000, CALLS, PARTNER_DAYS],
    [session_open_s, still_needed_s, least_rest_s, round_open_s, calls, partner_days],
  );
});

test("what may be done with an event of each kind", () => {
  assert.deepEqual(MAY, shared.kinds);
});

test("what stands after corrections and withdrawals", () => {
  assert.ok(shared.standing.length >= 10);
  for (const c of shared.standing)
    for (const events of orders(c.events)) assert.deepEqual(standing(events).map(told), c.stands.map(told), c.what);
});

test("which session is open", () => {
  assert.ok(shared.sessions.some((c) => c.open === null) && shared.sessions.some((c) => c.open !== null));
  for (const c of shared.sessions)
    for (const events of orders(c.events))
      assert.equal(sitting(events, Date.parse(c.now)).session ?? null, c.open, c.what);
});

test("until when sessions rest after signs", () => {
  assert.ok(shared.rest.filter((c) => c.until).length > 5 && shared.rest.filter((c) => !c.until).length > 5);
  for (const c of shared.rest) {
    const until = restsUntil(strongOf(standing(c.events)), c.zone, Date.parse(c.now));
    assert.equal(until ?? null, c.until && Date.parse(c.until), c.what);
  }
});

test("what is left of the day's rewards, in whole pieces", () => {
  assert.ok(shared.rations.length >= 6);
  for (const c of shared.rations) {
    const feeds = c.fed_kcal.map((kcal, i) => ({ id: String(i), body: { kind: "feed", kcal } }));
    const left = ration(feeds, c.budget_kcal);
    assert.deepEqual(
      [left.left ?? null, left.pieces({ kcal: c.piece_kcal }) ?? null],
      [c.left_kcal, c.pieces],
      JSON.stringify(c),
    );
  }
});

test("whether agreed swaps run", () => {
  assert.ok(shared.swaps.some((c) => c.running) && shared.swaps.some((c) => !c.running));
  for (const c of shared.swaps) {
    const plan = c.events.find((e) => e.body.kind === "swap_plan");
    const begins = Date.parse(plan.happened_at);
    const ends = new Date(begins + plan.body.days * 86_400_000).toISOString();
    const swap = {
      swap: plan.body.swap,
      words: plan.body.words,
      one_in: plan.body.one_in,
      begins: plan.happened_at,
      ends,
    };
    const running = Boolean(swapsStand({ swap }, c.events, Date.parse(c.now))?.plan);
    assert.equal(running, c.running, c.what);
  }
});

test("a simulated day: what stands, what was shown, what is left", () => {
  const { events, now, stands, shown, budget_kcal, given_kcal, left_kcal, pieces } = shared.day;
  assert.ok(events.length > 20 && events.some((e) => e.body.of) && pieces.length > 0);
  const view = sitting(events, Date.parse(now));
  assert.deepEqual(view.stand.map((e) => e.id).sort(), [...stands].sort());
  assert.deepEqual(view.shownToday, shown);
  const left = ration(view.stand, budget_kcal);
  assert.ok(Math.abs(left.given - given_kcal) < 1e-9 && Math.abs(left.left - left_kcal) < 1e-9);
  for (const p of pieces) assert.equal(left.pieces(p) ?? null, p.pieces, JSON.stringify(p));
});
