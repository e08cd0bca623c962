// A rehearsal: the person acts, the notebook works out what comes of it, the page draws it. Nothing is kept anywhere: all that
// was done stands in the address that is asked, and the same address gives the same again.

import { find, text } from "./dom.js";
import { listenForKeys } from "./keys.js";
import { WAIT_MS, standing } from "./rehearsal.js";
import { makeCaptions, makeRoom } from "./room.js";
import { clock, say } from "./say.js";

/** @import { Moments, StandsNow } from "../../client-checks/client" */

/** Milliseconds until what could not be sent is tried again. */
const AGAIN_MS = 1500;
/** Milliseconds after an invitation in which a second tap on its button was meant for the first. */
const TWICE_MS = 700;
/** Milliseconds in which the key that ends is pressed again, meaning it: a slip must not end what cannot go on. */
const ENDS_MS = 4000;
/** Whether single keys count here: "no" where they were turned off. */
const KEYS = "sayso-rehearse-keys";
/** How an act of a button is written. @type {Record<string, string>} */
const LETTERS = {
  show: "s",
  give: "g",
  offer: "o",
  two: "t",
  again: "a",
  ready: "r",
  softer: "f",
  quiet: "q",
  "not-now": "n",
  instead: "i",
  call: "c",
  block: "b",
  back: "w",
  end: "e",
};

/** @type {HTMLElement} */
const root = find("#rehearse");
/** @type {(part: string) => any} */
const part = (name) => find(`[data-part=${name}]`, root);
const most = Number(root.dataset.most);
const name = root.dataset.name ?? "";
const treats = root.dataset.treats === undefined ? undefined : Number(root.dataset.treats);
const invitations = Number(root.dataset.invitations ?? 0);
/** What the person does, in words, by act and thing. @type {Record<string, string[]>} */
const yours = JSON.parse(root.dataset.yours ?? "{}");
const room = makeRoom(part("room"));
const captions = makeCaptions(part("captions"));
/** @type {HTMLButtonElement[]} */
const pads = [...root.querySelectorAll("[data-word]")].map((pad) => /** @type {HTMLButtonElement} */ (pad));
/** @type {HTMLButtonElement[]} */
const buttons = [...root.querySelectorAll("[data-does]")].map((b) => /** @type {HTMLButtonElement} */ (b));

/** @type {Moments} What happens if nothing more is done. */
let moments = JSON.parse(root.dataset.moments ?? "{}");
/** @type {string[]} What was done, as the address carries it. */
const acts = [];
/** @type {"" | "offer" | "instead"} Which button is still to be chosen for this. */
let choosing = "";
let began = 0; // by the page's own clock
let stood = 0; // milliseconds for which it stood still
let hiddenAt = 0;
let asked = 0; // the number of the newest question
let lastLook = -1;
let ends = -ENDS_MS; // when the key that ends was pressed once

const running = () => root.dataset.state === "runs";
const now = () => Math.min(Math.round((hiddenAt || performance.now()) - began - stood), most);

/** Asks what comes of all that was done; an older answer that comes late is left aside. */
async function ask() {
  const number = ++asked;
  try {
    const address = `${root.dataset.asks}&acts=${acts.join("_")}`;
    const response = await fetch(address, { credentials: "same-origin", headers: { accept: "application/json" } });
    if (!response.ok) throw new Error(`answered ${response.status}`);
    const answer = await response.json();
    if (number !== asked) return;
    moments = answer;
    part("away").hidden = true;
    root.dataset.answered = String(acts.length);
  } catch (error) {
    if (number !== asked) return;
    console.warn("no answer", error);
    text(part("away"), say("client-rehearse-away"));
    part("away").hidden = false;
    setTimeout(() => number === asked && ask(), AGAIN_MS);
  }
}

/**
 * The person does something.
 * @param {string} does
 * @param {number} [thing]
 */
function act(does, thing) {
  if (!running()) return;
  const at = now();
  acts.push(`${LETTERS[does]}${thing ?? ""}.${at}`);
  // Shown at once; what comes of it follows with the answer.
  const seen = moments.told.filter((m) => m.at <= at);
  const { gone } = standing(seen, at);
  const says = (gone && yours[`${does}-gone`]) || yours[does];
  moments = {
    ...moments,
    told: [
      ...seen,
      { at, what: does, ...(thing === undefined ? {} : { thing }), mine: true, says: says?.[thing ?? 0] ?? "" },
    ],
  };
  if (does === "end") moments.over_ms = at;
  navigator.vibrate?.(10);
  ask();
  look(at);
}

/**
 * Whether nothing is left of a thing: of treats there are so many.
 * @param {StandsNow} stands
 * @param {number} thing
 */
const isUsedUp = (stands, thing) => thing === 0 && treats !== undefined && stands.treats >= treats;

/** @param {number} thing */
function tap(thing) {
  const stands = standing(moments.told, now());
  if (choosing) {
    const does = choosing;
    // What is used up cannot be given instead; its pad says so.
    if (does === "instead" && isUsedUp(stands, thing)) return undefined;
    choosing = "";
    return act(does, thing);
  }
  if (stands.waits?.thing === thing && now() - stands.waits.at < TWICE_MS) return undefined;
  const gives = stands.own?.thing === thing || stands.shown?.thing === thing;
  // What is used up cannot be given; its pad says so.
  if (gives && isUsedUp(stands, thing)) return undefined;
  return act(gives ? "give" : "show", thing);
}

/** Whether the key that ends was pressed once, just before. @param {number} t */
const isEnding = (t) => t - ends < ENDS_MS;

/**
 * @param {string} does
 * @param {boolean} [byKey]
 */
function press(does, byKey = false) {
  if (does === "end" && byKey && !isEnding(now())) {
    ends = now();
    captions.say(
      [{ at: 0, what: `ends ${ends}`, mine: false, says: say("client-rehearse-end-again", { key: "E" }) }],
      0,
    );
    return look(now());
  }
  if (does === "offer" || does === "instead") {
    choosing = choosing === does ? "" : does;
    return look(now());
  }
  choosing = "";
  return act(does);
}

/**
 * What a pad says and is.
 * @param {StandsNow} stands
 * @param {number} thing
 * @param {number} t
 */
function padState(stands, thing, t) {
  if (choosing === "instead" && isUsedUp(stands, thing))
    return { state: "none", does: say("client-rehearse-none-here"), count: "" };
  if (choosing)
    return {
      state: "chosen",
      does: say(choosing === "offer" ? "client-rehearse-offer" : "client-rehearse-instead"),
      count: "",
    };
  const since = (/** @type {number} */ at) => `${Math.floor((t - at) / 1000)} s`;
  if (stands.own?.thing === thing && isUsedUp(stands, thing))
    return { state: "none", does: say("client-rehearse-none"), count: since(stands.own.at) };
  if (stands.shown?.thing === thing && isUsedUp(stands, thing))
    return { state: "none", does: say("client-rehearse-none-here"), count: "" };
  if (stands.own?.thing === thing)
    return { state: "give", does: say("client-rehearse-asked", { name }), count: since(stands.own.at) };
  if (stands.shown?.thing === thing)
    return { state: "give", does: say("client-rehearse-give"), count: since(stands.shown.at) };
  if (stands.waits?.thing === thing) return { state: "waits", does: say("client-rehearse-waits"), count: "" };
  if (stands.then?.thing === thing) return { state: "now", does: say("client-rehearse-now-press"), count: "" };
  return { state: "idle", does: say("client-rehearse-press"), count: "" };
}

/**
 * What is read rather than seen to move.
 * @param {number} t
 * @param {StandsNow} [stands]
 */
function look(t, stands = standing(moments.told, t)) {
  captions.say(moments.told, t);
  const left = treats === undefined ? undefined : Math.max(0, treats - stands.treats);
  pads.forEach((pad, thing) => {
    const { state, does, count } = padState(stands, thing, t);
    if (pad.dataset.state !== state) pad.dataset.state = state;
    // Closed, not gone: whoever comes to it by keyboard hears why.
    const closed = String(state === "none");
    if (pad.getAttribute("aria-disabled") !== closed) pad.setAttribute("aria-disabled", closed);
    text(pad.querySelector(".does"), does);
    text(pad.querySelector(".count"), count);
  });
  for (const button of buttons) {
    const does = button.dataset.does ?? "";
    const chosen = String(choosing === does);
    if ((does === "offer" || does === "instead") && button.getAttribute("aria-pressed") !== chosen)
      button.setAttribute("aria-pressed", chosen);
    const idle = (does === "not-now" || does === "instead") && !stands.own;
    if (button.disabled !== (idle || !running())) button.disabled = idle || !running();
  }
  if (choosing === "instead" && !stands.own) choosing = "";
  text(part("clock"), say("client-rehearse-of", { passed: clock(t), most: clock(most) }));
  if (invitations > 0) {
    const n = Math.min(stands.offers, invitations);
    text(part("count"), say("client-rehearse-invited", { n, all: invitations }));
  }
  const waits = stands.waits ? Math.max(1, Math.ceil((stands.waits.at + WAIT_MS - t) / 1000)) : 0;
  const asks = isEnding(t)
    ? say("client-rehearse-end-again", { key: "E" })
    : stands.holds
      ? say("client-rehearse-hold")
      : choosing
        ? say("client-rehearse-which")
        : stands.pauses
          ? say("client-rehearse-pause")
          : waits
            ? say("client-rehearse-wait", { seconds: waits })
            : stands.then
              ? say("client-rehearse-then")
              : left === undefined
                ? ""
                : say("client-rehearse-treats", { count: left });
  text(part("ask"), asks);
}

function over() {
  root.dataset.state = "over";
  for (const control of [...pads, ...buttons]) control.disabled = true;
  for (const pad of pads) {
    pad.dataset.state = "idle";
    for (const told of [".does", ".count"]) text(pad.querySelector(told), "");
  }
  const see = part("see");
  see.href = `${root.dataset.went}&acts=${acts.join("_")}`;
  text(part("ask"), "");
  part("over").hidden = false;
  captions.say([{ at: 0, what: "over", mine: false, says: moments.over }], 0);
  see.focus({ preventScroll: true });
}

function frame() {
  if (!running()) return;
  const t = now();
  const stands = standing(moments.told, t);
  room.draw(moments, stands, t);
  // Ten times a second is enough for what is read.
  if (Math.floor(t / 100) !== lastLook) {
    lastLook = Math.floor(t / 100);
    look(t, stands);
  }
  // The end by one's own hand is known once it was answered.
  if (t >= moments.over_ms && Number(root.dataset.answered ?? 0) === acts.length) return over();
  requestAnimationFrame(frame);
}

function start() {
  root.dataset.state = "runs";
  root.dataset.answered = "0";
  began = performance.now();
  part("before").hidden = true;
  for (const control of [...pads, ...buttons]) control.disabled = false;
  captions.say([{ at: 0, what: "begun", mine: false, says: say("client-rehearse-begun") }], 0);
  root.scrollIntoView();
  (pads[0] ?? buttons[0])?.focus({ preventScroll: true });
  requestAnimationFrame(frame);
}

document.addEventListener("visibilitychange", () => {
  if (!running()) return;
  if (document.visibilityState === "hidden") hiddenAt = performance.now();
  else if (hiddenAt) {
    stood += performance.now() - hiddenAt;
    hiddenAt = 0;
    captions.say([{ at: 0, what: `paused ${stood}`, mine: false, says: say("client-rehearse-paused") }], 0);
  }
});

part("start").addEventListener("click", start);
pads.forEach((pad, thing) => pad.addEventListener("click", () => tap(thing)));
// A letter stands for a tap without being one.
for (const button of buttons)
  button.addEventListener("click", (click) => press(button.dataset.does ?? "", !click.isTrusted));
const letters = part("letters");
letters.checked = localStorage.getItem(KEYS) !== "no";
letters.addEventListener("change", () => localStorage.setItem(KEYS, letters.checked ? "yes" : "no"));
listenForKeys(root, () => letters.checked);
text(part("ask"), say("client-rehearse-ready"));
root.dataset.ready = "yes";
