// The outbox's decisions, without a browser. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { backoff, reason, sendable, settled } from "../../src/client/outbox.js";
import { uuid7 } from "../../src/client/uuid.js";

const row = (n, state, until) => ({ n, id: `id-${n}`, state, until });

test("kept rows go in order; held ones once their time is up; sent and refused never", () => {
  const all = [
    row(4, "kept"),
    row(1, "sent"),
    row(2, "held", 100),
    row(3, "held", 300),
    row(5, "refused"),
    row(0, "kept"),
  ];
  assert.deepEqual(
    sendable(all, 200).map((r) => r.n),
    [0, 2, 4],
  );
  assert.deepEqual(
    sendable(all, 200, 2).map((r) => r.n),
    [0, 2],
  );
});

test("each row is settled by its own answer; one without an answer stays kept", () => {
  const after = settled(
    [row(1, "kept"), row(2, "kept"), row(3, "held", 0), row(4, "kept"), row(5, "kept")],
    [
      { result: "new" },
      { result: "refused", problems: [{ field: "body", what: "is wrong" }] },
      { result: "duplicate" },
      { result: "conflict" },
    ],
  );
  assert.deepEqual(
    after.map((r) => r.state),
    ["sent", "refused", "sent", "refused", "kept"],
  );
  assert.equal(after[1].problems[0].what, "is wrong");
});

test("what stops the notebook for a while is told in its own words, anything else is not shown", () => {
  const error = "The notebook's disk is full: make room on the machine it is on.";
  assert.equal(reason({ status: 507, body: { error } }), error);
  assert.equal(reason({ status: 503, body: { error: "busy" } }), "busy");
  assert.equal(reason({ status: 500, body: { error: "x" } }), undefined);
  assert.equal(reason({ status: 507, body: undefined }), undefined);
});

test("waits double up to a limit", () => {
  assert.deepEqual(
    [1, 2, 3, 20].map((k) => backoff(k, 0)),
    [1000, 2000, 4000, 20000],
  );
  assert.ok(backoff(1, 1) <= 1250);
});

test("ids are version 7, ascend, and hold the time", () => {
  const now = 1_800_000_000_000;
  const ids = Array.from({ length: 5000 }, () => uuid7(now));
  assert.equal(new Set(ids).size, 5000);
  assert.deepEqual([...ids].sort(), ids);
  for (const id of ids) assert.match(id, /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.equal(parseInt(ids[0].replaceAll("-", "").slice(0, 12), 16), now);
  assert.ok(uuid7(now - 60_000) > ids.at(-1), "a clock set back does not disturb the order");
});
