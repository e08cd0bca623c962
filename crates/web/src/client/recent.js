// The last taps of this device, to be taken back or put right on the spot.

import { button, el, openSheet } from "./dom.js";
import { chooseWord } from "./showing.js";

const MOST = 6;

/** What an event says, in a few words. */
export function inWords(pad, body) {
  const says = pad.says(body.word);
  switch (body.kind) {
    case "press":
      return `${{ person: "I pressed", animal: "It pressed", unknown: "Pressed" }[body.by]} ${says}${body.accident === "likely" ? " (stumble)" : ""}`;
    case "delivery":
      return `${says}: ${{ given: "given", partly: "partly given", declined: "not now", alternative: "not now, something else", missed: "missed" }[body.answer]}${body.then ? `, ${{ took: "took it", ignored: "ignored it", left: "left", pressed_again: "pressed again" }[body.then]}` : ""}`;
    case "feed":
      return `One piece of ${pad.reward(body.reward)?.name ?? body.food ?? "food"}`;
    case "invitation":
      return `Invited ${says}: ${{ pressed: `pressed ${pad.says(body.result.word)} at ${body.result.after_s} s`, without_button: "answered without a button", nothing_by_wait: "nothing by the wait", left: "left" }[body.result.outcome]}`;
    case "swap_stop":
      return "Swaps stopped";
    case "catch":
      return `Asked for ${says} without a button`;
    case "brush":
      return `Brushed ${says}`;
    case "look":
      return body.word ? `Looked at ${says}` : "Looked at the board";
    case "sign":
      return `Sign (${body.level}): ${body.sign}`;
    case "session_start":
      return "Session started";
    case "session_end":
      return `Session ended: ${body.reason.replaceAll("_", " ")}`;
    case "joining":
      return "Joined";
    case "leaving":
      return "Left";
    default:
      return body.kind.replaceAll("_", " ");
  }
}

// What was drawn stands: it is not taken back here.
const DRAWN = ["round", "swap_draw"];

/** Taps of this device that still stand, newest first. */
function taps(pad) {
  const standing = new Map(pad.view.stand.map((e) => [e.id, e]));
  const groups = new Map();
  for (const row of pad.own) {
    const event = standing.get(row.id);
    if (!event || row.state === "refused" || DRAWN.includes(event.body.kind)) continue;
    const group = groups.get(row.tap) ?? { tap: row.tap, events: [], sent: true };
    group.events.push(event);
    group.sent &&= row.state === "sent";
    groups.set(row.tap, group);
  }
  return [...groups.values()].slice(-MOST).reverse();
}

/** Draws the list anew where it changed. */
export function drawRecent(node, pad) {
  const all = taps(pad);
  const key = JSON.stringify(all.map((t) => [t.tap, t.sent, t.events.map((e) => e.body)]));
  if (node.dataset.key === key) return;
  node.dataset.key = key;
  node.hidden = all.length === 0;
  node.querySelector("ol").replaceChildren(
    ...all.map((tap) => {
      const main = tap.events.at(-1);
      const what = inWords(pad, main.body);
      return el(
        "li",
        { "data-test": "tap" },
        el("span", { class: "what" }, what, el("span", { class: "quiet" }, ` ${new Date(main.happened_at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", second: "2-digit" })}${tap.sent ? "" : " · kept here"}`)),
        fixable(main.body) && button("Fix", "fix", () => fix(pad, main), { "aria-label": `Fix: ${what}` }),
        button("Undo", "undo", () => undo(pad, tap), { "aria-label": `Undo: ${what}` }),
      );
    }),
  );
}

/** Takes back a whole tap. The first records stay in the log. */
const undo = (pad, tap) => pad.note(tap.events.map((e) => ({ kind: "withdrawal", of: e.id })));

const fixable = (body) => ["press", "delivery", "catch", "brush"].includes(body.kind);

const correct = (pad, event, change) => pad.note([{ kind: "correction", of: event.id, body: { ...event.body, ...change } }]);

function fix(pad, event) {
  const { body } = event;
  const put = (text, change, close) => button(text, "fix-choice", () => { close(); correct(pad, event, change); }, { class: "wide" });
  openSheet(inWords(pad, body), (close) => [
    button("Another word…", "fix-word", () => chooseWord(pad, "Which word was it?", (word) => correct(pad, event, { word })), { class: "wide" }),
    ...(body.kind === "press"
      ? [
          body.by !== "animal" && put(`${pad.now.name} pressed it, not I`, { by: "animal", accident: "unsure" }, close),
          body.by !== "person" && put("I pressed it", { by: "person", accident: "no" }, close),
          body.accident !== "likely" && body.by === "animal" && put("It looked like a stumble", { accident: "likely" }, close),
          body.accident === "likely" && put("It looked meant", { accident: "no" }, close),
        ].filter(Boolean)
      : []),
    ...(body.kind === "delivery"
      ? [
          ["given", "It was given"],
          ["partly", "It was partly given"],
          ["declined", "It was: not now"],
          ["missed", "It was missed"],
        ]
          .filter(([name]) => name !== body.answer)
          .map(([name, words]) => put(words, { answer: name, alternative: undefined }, close))
      : []),
    el("p", { class: "quiet" }, "The first record stays visible in the log. Time and more can be changed there."),
  ]);
}
