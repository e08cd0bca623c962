// The listen switch: the microphone's sound to the notebook, and what it heard in it.

import { button, el, find, text } from "./dom.js";
import { inWords, noMicrophone, openMicrophone } from "./microphone.js";
import { makeStream } from "./stream.js";

/** @import { Block, Listening, Microphone, Piece, Stream } from "../../client-checks/client" */

const SHOWN = 8;
const DRAW_MS = 250;
const STEADY = 5; // blocks looked at before it is said when the sound began
const LOOK_BACK = 20; // blocks over which the sound's clock is compared with the device's
const JUMP_MS = 600; // a sound that is off its clock by this much was held up, as by a locked phone
const QUIET_PEAK = 0.003;

const NO_MICROPHONE = {
  insecure: [
    "This page came over plain HTTP, and browsers give the microphone only to pages that came safely. On the machine where Sayso runs, open it as http://localhost. For a phone, start Sayso with --lan --secure and open the address it then shows.",
  ],
  unable: [
    "This browser cannot listen. Use a newer one, or run ",
    el("code", {}, "sayso listen"),
    " on the machine where Sayso runs.",
  ],
};

/** @type {Record<string, string>} */
const STATES = { new: "noted", tapped: "noted; it was tapped too and counts once", known: "noted before" };

/** @param {string | number} at */
const clock = (at) => new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit", second: "2-digit" });

/** @param {HTMLElement} root */
function wire(root) {
  /** @param {string} name */
  const at = (name) => find(`[data-ear="${name}"]`, root);
  /** The box "only this animal uses the board", where there are several. @type {HTMLInputElement | null} */
  const only = root.querySelector("[data-ear=only]");
  const onOff = at("switch");
  /** @type {any[]} */
  const heard = [];
  /** @type {Microphone | undefined} */
  let microphone;
  /** @type {Stream | undefined} */
  let stream;
  /** @type {number} */
  let since;
  let peak = 0;
  /** @type {number[]} */
  let offsets = []; // of the last blocks: when the sound would have begun, by the device's clock
  let base = 0; // position at which the stream began
  /** @type {number | undefined} */
  let began;
  let lastLoud = 0;
  /** @type {string | null | undefined} */
  let trouble;
  /** @type {WakeLockSentinel | undefined} */
  let lock;

  /**
   * @param {string} name
   * @param {...(string | Element)} words
   */
  const state = (name, ...words) => {
    root.dataset.state = name;
    const said = words.map((w) => (typeof w === "string" ? w : w.textContent)).join("");
    if (at("state").textContent !== said) at("state").replaceChildren(...words);
    onOff.setAttribute("aria-checked", String(name === "on" || name === "starting"));
    onOff.disabled = ["starting", "ending", "unable"].includes(name);
    at("live").hidden = name !== "on";
    /** @type {HTMLElement | null} */
    const chip = document.querySelector("[data-ear-chip]");
    if (chip) chip.hidden = name !== "on";
  };

  const why = noMicrophone();
  if (why) {
    state("unable", ...NO_MICROPHONE[why]);
    return;
  }

  function draw() {
    if (root.dataset.state !== "on" || !stream) return;
    at("level").value = peak > 0 ? Math.max(0, 1 + Math.log10(peak) / 3) : 0;
    if (peak > QUIET_PEAK) lastLoud = Date.now();
    peak = 0;
    const quiet = Date.now() - lastLoud > 20_000;
    const link =
      stream.link === "ok"
        ? "Connected."
        : `No answer from the notebook; ${stream.waiting.toFixed(0)} s are kept here and sent later.`;
    const lost = stream.lost > 0 ? ` ${stream.lost.toFixed(0)} s could not be kept and were not heard.` : "";
    const held = trouble ? ` Presses are heard but cannot be stored just now: ${trouble}` : "";
    text(
      at("link"),
      `${link}${lost}${held}${quiet ? " Nothing sounds at the microphone: is it covered or switched off?" : ""}`,
    );
    root.dataset.link = stream.link;
  }

  /** @param {string} words */
  const listening = (words) => {
    const n = heard.length
      ? `${heard.length === 1 ? "1 press" : `${heard.length} presses`} heard.`
      : "No press heard yet.";
    state("on", `Listening for ${words} since ${clock(since)}. ${n}`);
  };
  let listenedFor = "";

  /**
   * @param {string} kind
   * @param {any} content
   */
  function tell(kind, content) {
    if (kind === "go") {
      const { words, left_out } = content;
      listenedFor = `${words.length === 1 ? "1 word" : `${words.length} words`}`;
      at("words").textContent =
        `Listened for: ${words.join(", ")}.${left_out.length ? ` Their sound is missing, so they are not: ${left_out.join(", ")}.` : ""}`;
      listening(listenedFor);
    }
    if (kind === "heard") {
      heard.unshift(content);
      root.dataset.heard = String(heard.length);
      navigator.vibrate?.(10);
      if (root.dataset.state === "on") listening(listenedFor);
      at("heard").prepend(
        el(
          "li",
          { "data-test": "listen-press", "data-says": content.says },
          el("strong", {}, content.says),
          el(
            "span",
            { class: "quiet num" },
            `${clock(content.at)}, ${Math.min(99, Math.round(100 * content.confidence))} % sure, ${STATES[content.state]}${content.kept ? "; its sound is kept to be judged" : ""}`,
          ),
        ),
      );
      while (at("heard").children.length > SHOWN) at("heard").lastChild.remove();
    }
    if (kind === "trouble") trouble = content;
    if (kind === "busy") {
      shut(
        "off",
        `Another page has been listening to this board since ${clock(content)}. `,
        button("Listen here instead", "listen-take", () => start(true)),
      );
    }
    if (kind === "taken") shut("off", "Off: another page listens now.");
    if (kind === "wrong") shut("off", content);
  }

  /**
   * @param {string} name
   * @param {...(string | Element)} words
   */
  async function shut(name, ...words) {
    const open = microphone;
    microphone = undefined;
    stream = undefined;
    await open?.stop();
    await lock?.release().catch(() => {});
    lock = undefined;
    state(name, ...words);
  }

  /**
   * Sound came: first it is found out when it began, then it goes to the stream.
   * @param {Block} sound
   */
  function block({ position, samples, peak: loud, at: stamp }) {
    if (!microphone) return;
    peak = Math.max(peak, loud);
    const { rate } = microphone;
    offsets.push(stamp - (1000 * (position + samples.length - base)) / rate);
    if (offsets.length > LOOK_BACK) offsets.shift();
    // Being late is an accident, being early is not: the least of them is nearest to the truth.
    const least = Math.min(...offsets);
    if (began === undefined) {
      if (offsets.length < STEADY) return early.push({ position, samples });
      began = least;
      stream = makeStream({
        url: (root.dataset.listen ?? "").replace(/^http/, "ws"),
        rate,
        began,
        options,
        tell,
        changed: draw,
      });
      for (const b of early.splice(0)) stream.add({ position: b.position - base, samples: b.samples });
    } else if (Math.abs(least - began) > JUMP_MS) {
      base = position;
      began = stamp - (1000 * samples.length) / rate;
      offsets = [began];
      stream?.anew(began);
    }
    stream?.add({ position: position - base, samples });
    return undefined;
  }
  /** @type {Piece[]} */
  const early = [];
  /** @type {Listening} */
  let options;

  async function start(take = false) {
    state("starting", "Asking for the microphone…");
    options = { only: only ? only.checked : true, keepUnsure: at("keep").checked, take };
    early.length = 0;
    offsets = [];
    base = 0;
    began = undefined;
    trouble = undefined;
    lastLoud = Date.now();
    try {
      microphone = await openMicrophone(block, (words) => {
        const last = stream;
        shut("off", `Off. ${words}`);
        last?.end();
      });
    } catch (error) {
      state("off", inWords(error));
      return;
    }
    since = Date.now();
    state("starting", "Connecting…");
    onOff.disabled = false;
    wake();
  }

  async function stop() {
    const last = stream;
    state("ending", "Hearing the last of it…");
    await microphone?.stop();
    await last?.end();
    await shut(
      "off",
      `Off. ${heard.length ? `${heard.length === 1 ? "1 press was" : `${heard.length} presses were`} heard.` : "Nothing was heard."}`,
    );
  }

  // A screen that goes dark takes the microphone away on many phones.
  async function wake() {
    if (!microphone || document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
    lock = await navigator.wakeLock.request("screen").catch(() => undefined);
  }

  onOff.addEventListener("click", () => (onOff.getAttribute("aria-checked") === "true" ? stop() : start()));
  at("keep").addEventListener("change", () => stream?.keepUnsure(at("keep").checked));
  document.addEventListener("visibilitychange", wake);
  window.addEventListener("pagehide", () => stream?.end());
  setInterval(draw, DRAW_MS);
  onOff.disabled = false;
  root.dataset.ready = "yes";
}

/** @type {HTMLElement | null} */
const root = document.querySelector("[data-listen]");
if (root?.dataset.listen) {
  root.dataset.listen = new URL(root.dataset.listen, location.href).href;
  wire(root);
}
