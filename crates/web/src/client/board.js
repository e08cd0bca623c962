// The pad's page: draws what `pad` knows and hands taps on.

import { brings } from "./brings.js";
import { begin, dismiss, nudge, onChange, resend, rows, status } from "./outbox.js";
import { button, el, find, openSheet, text } from "./dom.js";
import { makePad, nameOf } from "./pad.js";
import { signs } from "./signs.js";
import * as showing from "./showing.js";
import * as invitation from "./invitation.js";
import * as day from "./day.js";
import * as caught from "./catch.js";
import { announce, focused, keepFocus } from "./attend.js";
import { sum } from "./ending.js";
import { first } from "./first.js";
import { fit, once } from "./hand.js";
import { listenForKeys } from "./keys.js";
import { zones } from "./mat.js";
import { drawRecent, undoLast } from "./recent.js";
import { isFood } from "./sitting.js";
import { note } from "./resting.js";
import { cutOff, settled } from "./settle.js";
import { stopCard } from "./stop.js";
import { strip } from "./swaps.js";
import { tallest } from "./tallest.js";
import { whose } from "./whose.js";
import { clock, minutes, number, say, timeSeconds } from "./say.js";

/** @import { Child, Mode, Panel, View } from "../../client-checks/client" */

/** @type {Record<string, Mode>} */
const MODES = { showing, invitation, day, catch: caught };
const TICK_MS = 250;
const CLOCK_OFF_MINUTES = 3;

/** @type {HTMLElement} */
const root = find("#board");
/** @param {string} name */
const at = (name) => find(`[data-part="${name}"]`, root);
/** @param {string} selector */
const buttons = (selector) => /** @type {HTMLButtonElement[]} */ ([...root.querySelectorAll(selector)]);
const pads = buttons("[data-word]");
const fitBrings = brings(pads);
const pad = makePad(JSON.parse(root.dataset.now ?? ""), draw);
/** @type {string | undefined} */
let shownPanel;
/** The session that ran when it was last drawn; empty where none did. @type {string | undefined} */
let ran;
/** Finds out anew how much room there is; known once the page is wired. */
let measure = () => {};
/** Whether the notebook answered, as the line above last said it. @type {boolean | undefined} */
let toldOffline;
/** @type {{ word: string | undefined }} */
const lastTap = { word: undefined };
/** @param {string} name */
const action = (name) => find(`[data-action="${name}"]`, root);

const mode = () => {
  const wanted = pad.asked ?? pad.memo.mode;
  return wanted && Object.hasOwn(MODES, wanted) ? wanted : "showing";
};

/** Draws all that may have changed. */
function draw() {
  if (!pad.own) return;
  const view = pad.look();
  cutOff(pad);
  const now = MODES[mode()];
  // With a session all changes that stands on the screen: it is read from the top.
  const runs = view.session ?? "";
  if (ran !== undefined && ran !== runs) scrollTo(0, 0);
  ran = runs;
  for (const b of buttons("[data-mode]")) b.setAttribute("aria-pressed", String(b.dataset.mode === mode()));
  root.dataset.mode = mode();
  root.dataset.state = view.session ? "session" : "idle";
  // Where the plan has words invited, what they ask has its room from the start: no pad moves as one is opened.
  root.dataset.invites = String(Boolean(view.session) && pad.invites().length > 0);
  const held = focused(root);
  drawFigures(view);
  if (fill(at("stop"), stopCard(pad)) && view.stop) navigator.vibrate?.([120, 60, 120]);
  fill(at("rests"), note(pad));
  drawSwaps();
  fill(at("whose"), whose(pad, mode()));
  // The panel is rebuilt only when what it asks changes, so that a button under a finger stays.
  const panel = asked(now);
  const anew = panel.key !== shownPanel;
  if (anew) {
    shownPanel = panel.key;
    at("panel").replaceChildren(...panel.build().filter(Boolean));
  }
  panel.tick?.(at("panel"));
  announce(at("said"), at("panel"));
  at("mat").hidden = now.padsHidden?.(pad) ?? false;
  for (const b of pads) drawPad(b, view, now);
  fitBrings();
  // Whatever is being done, a growl can be noted; what belongs to a session, while one runs.
  at("actions").classList.toggle("idle", !view.session);
  action("joined").disabled = view.here;
  action("joined").classList.toggle("primary", !view.here);
  action("left").disabled = view.stop === "left";
  drawRecent(at("recent"), pad);
  if (pad.offline !== toldOffline) drawStatus();
  at("undo").disabled = at("recent").hidden;
  if (anew) measure();
  if (held) keepFocus(root, held, lastTap.word);
}

/**
 * What is asked, with a lesson that opens by itself and what the session that has just ended amounts to above it, whatever is being
 * done. In a session the lesson stands between the question and its answers.
 * @param {Mode} now
 * @returns {Panel}
 */
function asked(now) {
  const panel = now.panel(pad);
  const over = pad.view.session ? undefined : sum(pad);
  const lesson = first(pad, now === showing);
  const above = [lesson, over].filter((part) => part !== undefined);
  if (above.length === 0) return panel;
  // What warns or stops stands above them, that of batteries too: a lesson has many lines, and what is below the fold is not read.
  const warning = `.caution, .stop, .tell:has(> .caution)${lesson ? ", [data-warns]" : ""}`;
  const warns = (/** @type {Child} */ part) => part instanceof Element && part.matches(warning);
  const build = () => {
    const asks = panel.build().filter(Boolean);
    // What waits for an answer keeps it beside it, and comes before what is over.
    const answers = asks.findIndex((part) => part instanceof Element && part.matches(".slots:has(button)"));
    const question = pad.view.session
      ? asks.slice(0, 1)
      : answers < 0
        ? asks.filter(warns)
        : asks.slice(0, answers + 1);
    return [...question, ...above.flatMap((part) => part.build()), ...asks.filter((part) => !question.includes(part))];
  };
  return { ...panel, key: [...above, panel].map((part) => part.key).join("-"), build };
}

/**
 * @param {HTMLButtonElement} b
 * @param {View} view
 * @param {Mode} now
 */
function drawPad(b, view, now) {
  const word = pad.word(b.dataset.word);
  if (!word) {
    b.hidden = true;
    return;
  }
  const reward = pad.rewardOf(word.id);
  const state = now.padState(pad, word.id) ?? {};
  const left = isFood(reward) ? pad.ration.pieces(reward) : undefined;
  // What comes after the pause is not asked for yet.
  const aim = view.session || !pad.now.pause ? pad.planned()[word.id] : undefined;
  const here = view.session ? (view.shownNow[word.id] ?? 0) : 0;
  b.dataset.state = state.name ?? "idle";
  b.disabled = Boolean(reward?.never) || Boolean(state.off);
  b.classList.toggle("planned", aim !== undefined);
  b.classList.toggle("done", aim !== undefined && here >= aim);
  b.classList.toggle("unready", word.stage === "prepare");
  text(b.querySelector(".does"), reward?.never ? say("client-board-never-given") : (state.does ?? ""));
  const today = view.shownToday[word.id] ?? 0;
  const counts =
    aim !== undefined
      ? say("client-board-of-aim", { here, aim })
      : today > 0
        ? say("client-board-today-count", { n: today })
        : "";
  text(b.querySelector(".count"), state.count ?? counts);
  const food =
    reward && !reward.never
      ? left === undefined
        ? reward.name
        : say("client-board-food-left", { food: reward.name, n: left })
      : "";
  text(b.querySelector(".gives"), food);
  b.classList.toggle("spent", left === 0);
}

/** No middle of fewer. */
const LEAST_DELAYS = 5;

/** @param {View} view */
function drawFigures(view) {
  at("session-line").hidden = !view.session;
  at("figures").hidden = !view.session;
  text(at("clock"), clock(view.startedAt ? Math.max(0, Date.now() - view.startedAt) : 0));
  const most = pad.minutes();
  const over = showing.reached(pad);
  const planned = over ? "client-board-minutes-reached" : "client-board-of-minutes";
  text(at("planned-time"), most === undefined ? "" : say(planned, { n: minutes(most) }));
  at("session-line").dataset.reached = String(over);
  text(at("showings"), say("client-board-shown-count", { n: view.showings }));
  text(at("pace"), view.perMinute === undefined ? "–" : number(view.perMinute, 1));
  const delay = view.delays < LEAST_DELAYS ? undefined : view.delay;
  text(at("delay"), delay === undefined ? "–" : say("client-board-seconds", { s: number(delay, 1) }));
  text(at("delay-n"), delay === undefined ? "" : say("client-board-median-of", { n: view.delays }));
  text(at("joined"), say(view.joined ? "client-board-is-joined" : "client-board-not-joined"));
  const { left } = pad.ration;
  const why = pad.now.ration.refusal;
  const foods = pad.now.rewards.filter((r) => isFood(r) && !r.never);
  text(
    at("ration"),
    left === undefined
      ? say("client-board-ration-unknown", { why: why ?? say("client-board-no-figures") })
      : left <= 0
        ? say("client-board-used-up")
        : say("client-board-treats-left", {
            list:
              foods
                .map((r) => {
                  const left = pad.ration.bound(r);
                  return say("client-board-treat-left", { food: r.name, n: left?.n ?? 0, by: left?.by ?? "food" });
                })
                .join(", ") || say("client-board-kcal", { n: number(left) }),
          }),
  );
  at("ration").classList.toggle("caution", left !== undefined && left <= 0);
  at("broken").hidden = !pad.broken;
  text(at("broken"), pad.broken ?? "");
  const off = Math.round(Math.abs(pad.clockOff) / 60_000);
  at("clock-off").hidden = off < CLOCK_OFF_MINUTES;
  text(at("clock-off"), say("client-board-clock-off", { n: off, way: pad.clockOff > 0 ? "ahead" : "behind" }));
}

/**
 * Fills a box once what it says has changed; without something to say it is not there. Gives whether it has changed.
 * @param {HTMLElement} box
 * @param {Panel | undefined} says
 */
function fill(box, says) {
  const key = says?.key ?? "";
  if (box.dataset.key === key) return false;
  box.dataset.key = key;
  box.hidden = !says;
  box.replaceChildren(...(says?.build() ?? []).filter((part) => part instanceof Node));
  return true;
}

function drawSwaps() {
  const box = at("swaps");
  // What stops the session comes first; that swaps were stopped with it is read after it.
  const now = pad.view.stop ? undefined : strip(pad, mode() === "day", () => signs(pad));
  // What comes up in the middle of a session lies over the page: no pad may move under a thumb. Else it covers nothing.
  box.classList.toggle("laid", Boolean(now?.alert) && pad.view.session !== undefined);
  if (!fill(box, now)) return;
  box.classList.toggle("caution", Boolean(now?.alert));
  if (now?.alert) navigator.vibrate?.([120, 60, 120]);
}

async function drawStatus() {
  toldOffline = pad.offline;
  const s = await status();
  const node = at("outbox");
  const why = s.why ?? say("client-board-no-answer");
  // A page that came from this device's own copy knows what it sent, not that anything answers.
  const link = s.link === "ok" && pad.offline ? "waiting" : s.link;
  const words = {
    ok: s.kept ? say("client-board-waiting-to-send", { n: s.kept }) : say("client-board-all-saved"),
    waiting: say(s.kept ? "client-board-safe-later" : "client-board-none-waiting", { why, n: s.kept }),
    unpaired: say("client-board-unpaired", { n: s.kept }),
    forbidden: say("client-board-forbidden", { n: s.kept }),
  };
  node.dataset.kept = s.kept;
  node.dataset.sent = s.sent;
  node.dataset.refused = s.refused;
  node.dataset.link = link;
  // Until something was heard, nothing is claimed.
  if (pad.left) text(at("outbox-text"), say("client-board-left"));
  else if (link !== "ok" || s.kept > 0 || pad.offline !== undefined) text(at("outbox-text"), words[link]);
  at("pair").hidden = s.link !== "unpaired";
  at("attention").hidden = s.refused === 0;
  text(at("attention"), say("client-board-attention", { n: s.refused }));
}

async function attention() {
  const refused = (await rows()).filter((r) => r.state === "refused");
  openSheet(say("client-board-refused"), (close) => [
    el("p", { class: "quiet" }, say("client-board-refused-stay")),
    ...refused.map((r) =>
      el(
        "div",
        { class: "card" },
        el(
          "p",
          {},
          el("strong", {}, r.event.body.kind.replaceAll("_", " ")),
          ` · ${timeSeconds(new Date(r.event.happened_at))}`,
        ),
        el(
          "ul",
          {},
          ...(r.problems ?? []).map((/** @type {import("../../client-checks/client").Problem} */ p) =>
            el("li", {}, `${p.field} ${p.what}`.trim()),
          ),
        ),
        el(
          "div",
          { class: "row even" },
          button(say("client-board-try-again"), "refused-again", () => resend(r.id).then(close)),
          button(
            say("client-board-drop"),
            "refused-drop",
            () => confirm(say("client-board-drop-sure")) && dismiss(r.id).then(close),
          ),
        ),
      ),
    ),
  ]);
}

/** What was tapped last, once it is kept. @type {Promise<unknown>} */
let kept = Promise.resolve();

/**
 * What a tap on a pad means follows from those before it, also where the device is slow to keep them.
 * @param {() => unknown} tap
 */
function inTurn(tap) {
  const next = () => {
    pad.look();
    return tap();
  };
  kept = kept.then(next, next);
}

function wire() {
  for (const b of buttons("[data-mode]")) {
    b.addEventListener("click", () =>
      b.dataset.mode === mode() ? undefined : settled(pad, () => pad.setMemo({ mode: b.dataset.mode })),
    );
  }
  once(root);
  for (const b of pads) {
    b.addEventListener("click", () => {
      const { word } = b.dataset;
      lastTap.word = word;
      pad.broken = undefined;
      if (word) inTurn(() => MODES[mode()].tap(pad, word));
    });
  }
  for (const b of buttons("[data-part=actions] [data-action]")) {
    b.addEventListener("click", () => showing.action(pad, b.dataset.action ?? ""));
  }
  at("undo").addEventListener("click", () => undoLast(pad));
  at("attention").addEventListener("click", attention);
  at("outbox-text").addEventListener("click", nudge);
  zones(at("mat"), () => measure());
  listenForKeys(root);
  // Heard by way of the notebook: it is asked what it knows of it.
  document.addEventListener("sayso-heard", () => pad.refresh());
  measure = fit(root, (room) => tallest(pad, room));
}

/**
 * Opens what the address asks for, where Today sends a person to show or to answer; this once: what was chosen on the Board itself
 * stays what it opens with.
 */
function openAsAsked() {
  const asked = buttons("[data-asked]").find((b) => `#${b.dataset.asked}` === location.hash);
  if (!asked) return;
  pad.asked = asked.dataset.mode;
  history.replaceState(null, "", location.pathname + location.search);
}

async function main() {
  wire();
  at("unopened").remove();
  try {
    await pad.begin();
    openAsAsked();
    await begin();
  } catch (error) {
    pad.broken = say("client-board-cannot-keep", { why: nameOf(error) });
    draw();
    return;
  }
  onChange(drawStatus);
  await drawStatus();
  draw();
  root.dataset.ready = "yes";
  measure();
  setInterval(draw, TICK_MS);
  if ("serviceWorker" in navigator) {
    // Only where the page is a secure context, such as on this machine itself; without it the open page still keeps taps.
    navigator.serviceWorker
      .register("/sw.js")
      .then(() => navigator.serviceWorker.ready)
      .then((ready) => {
        const files = performance.getEntriesByType("resource").map((r) => r.name);
        ready.active?.postMessage([location.href, ...files]);
        root.dataset.offline = "ready";
      })
      .catch((error) => console.warn("no offline page", error));
  }
}

main();
