// What stands at a moment of a rehearsal, and where the animal is: from what the notebook told, and nothing else.

/** @import { Moment, Moments, StandsNow } from "../../client-checks/client" */

/** Milliseconds that an invitation waits. */
export const WAIT_MS = 5000;
/** Milliseconds of a pause at a mild sign, at the least. */
const PAUSE_MS = 5000;
/** Milliseconds for which what was given lies there to be seen. */
const LIES_MS = 1500;
/** Milliseconds for which it is seen that somebody called, or stood in the way. */
const PUSHES_MS = 2500;

/** What ends a pause at a sign, or makes it another matter. */
const ENDS_PAUSE = ["show", "give", "instead", "offer", "pressed", "back", "leaves", "gone"];

/**
 * How things stand at a moment.
 * @param {Moment[]} told in time
 * @param {number} t milliseconds since it began
 * @returns {StandsNow}
 */
export function standing(told, t) {
  /** @type {StandsNow} */
  const s = {
    own: undefined,
    shown: undefined,
    waits: undefined,
    then: undefined,
    sign: "",
    pauses: false,
    lit: undefined,
    lies: false,
    holds: false,
    pair: undefined,
    treats: 0,
    offers: 0,
    gone: false,
    calls: false,
    bars: false,
  };
  // Whether it has left, and has not set out to come back: then nothing waits for it.
  let left = false;
  // When the last sign showed, and whether it ended what would come after an invitation.
  let signed = -Infinity;
  let spared = false;
  for (const m of told) {
    if (m.at > t) break;
    if (ENDS_PAUSE.includes(m.what)) spared = false;
    if (m.what === "leaves" || m.what === "gone") {
      s.waits = s.then = s.pair = undefined;
      s.holds = s.lies = false;
      left = true;
    }
    const here = m.thing === undefined ? undefined : { thing: m.thing, at: m.at };
    switch (m.what) {
      case "show":
        s.shown = here;
        s.waits = s.then = undefined;
        break;
      case "give": {
        // What was just shown is given for that, though another press waits; and a showing waits on while a press of something
        // else is answered.
        const forShown = s.shown?.thing === m.thing;
        const forOwn = s.own !== undefined && (s.own.thing === m.thing || !forShown);
        if (forShown || !forOwn) s.shown = undefined;
        // Its own press is answered: it is invited no longer.
        if (forOwn) s.own = s.waits = undefined;
        s.then = undefined;
        s.lies = true;
        break;
      }
      case "offer":
        s.waits = left ? undefined : here;
        s.offers += 1;
        s.shown = s.then = undefined;
        break;
      case "pressed":
        s.own = here;
        s.waits = s.then = undefined;
        break;
      case "wait-over":
        // A sign in the wait, or one that still stands: leaving room is right, and nothing more is asked for.
        spared ||= s.sign !== "" || (s.waits !== undefined && signed >= s.waits.at);
        s.waits = undefined;
        s.then = left || spared ? undefined : here;
        break;
      case "instead":
        if (s.own) s.own = s.waits = s.then = undefined;
        s.lies = true;
        break;
      case "not-now":
      case "unanswered":
        s.own = undefined;
        break;
      case "back":
        s.shown = s.waits = s.then = undefined;
        break;
      case "gone":
        s.own = s.shown = undefined;
        s.sign = "";
        s.gone = true;
        break;
      case "barred":
        left = false;
        break;
      case "comes":
      case "joined":
        left = s.gone = false;
        break;
      case "call":
        s.calls = t - m.at < PUSHES_MS;
        break;
      case "block":
        s.bars = t - m.at < PUSHES_MS;
        break;
      case "sign":
        s.sign = m.level ?? "";
        signed = m.at;
        spared ||= s.waits !== undefined || s.then !== undefined;
        s.then = undefined;
        break;
      case "held":
        s.holds = s.lies = true;
        s.pair = m.pair;
        break;
      case "chose":
      case "chose-none":
        s.holds = s.lies = false;
        s.pair = undefined;
        break;
      case "fetches":
        s.lies = false;
        break;
      case "fetched":
        s.lies = true;
        break;
      case "eases":
        s.sign = "";
        break;
      default:
    }
    if (here && ["show", "pressed"].includes(m.what)) s.lit = here;
    if (["give", "instead"].includes(m.what) && m.thing === 0) s.treats += 1;
    if (["took", "ignored"].includes(m.what)) s.lies = m.what === "ignored" && t - m.at < LIES_MS;
  }
  if (s.lit && t - s.lit.at > 700) s.lit = undefined;
  s.pauses = spared && s.sign !== "strong" && (s.sign === "mild" || t - signed < PAUSE_MS);
  return s;
}

/**
 * Whether a host's name is one that only a device or a home knows: loopback, private networks, names of the own network.
 * @param {string} host
 */
export function isAtHome(host) {
  return (
    /^([^.:]+$|\[::1\]|127\.|10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.|169\.254\.|\[f[cde])/i.test(host) ||
    /\.(local|localhost|lan|home\.arpa)$/i.test(host)
  );
}

/**
 * Where the animal is, and which way it looks.
 * @param {Moments} moments
 * @param {number} t
 * @param {boolean} still without going through what lies between
 * @returns {{ x: number, y: number, turn: number }}
 */
export function whereabouts(moments, t, still = false) {
  let [x, y] = moments.begins;
  let turn = 0;
  for (const [begins, ends, x0, y0, x1, y1] of moments.motions) {
    if (begins > t) break;
    const share = still || ends <= begins ? 1 : Math.min(1, (t - begins) / (ends - begins));
    x = x0 + (x1 - x0) * share;
    y = y0 + (y1 - y0) * share;
    if (Math.hypot(x1 - x0, y1 - y0) > 3) turn = (Math.atan2(x1 - x0, y0 - y1) * 180) / Math.PI;
  }
  return { x, y, turn };
}
