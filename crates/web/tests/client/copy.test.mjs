// What goes and what stays when a device may no longer read the notebook. Run: node --test crates/web/tests/client/

import assert from "node:assert/strict";
import { test } from "node:test";
import { asLines, ofOthers, unsent } from "../../src/client/copy.js";

const row = (state, id = state) => ({ id, state, event: { id, body: { kind: "press" } } });

test("whatever the notebook has not taken is unsent", () => {
  const all = [row("sent"), row("kept"), row("held"), row("refused")];
  assert.deepEqual(
    unsent(all).map((r) => r.state),
    ["kept", "held", "refused"],
  );
});

test("saved taps are one event a line, whole", () => {
  const lines = asLines([row("kept", "a"), row("held", "b")]);
  assert.ok(lines.endsWith("\n"));
  assert.deepEqual(
    lines
      .trim()
      .split("\n")
      .map((l) => JSON.parse(l).id),
    ["a", "b"],
  );
});

test("kept pages of homes that are not theirs any more are found, and of whom nobody said anything", () => {
  const kept = [
    ["/a/1/today", "one"],
    ["/a/1/board", "one"],
    ["/a/2/today", "two"],
    ["/a/3/board", undefined],
    ["/learn", undefined],
    ["/assets/0/base.css", undefined],
    ["/last", undefined],
  ];
  assert.deepEqual(ofOthers(kept, new Set(["one"])), ["/a/2/today", "/a/3/board", "/learn"]);
  assert.deepEqual(ofOthers(kept, new Set()), ["/a/1/today", "/a/1/board", "/a/2/today", "/a/3/board", "/learn"]);
});
