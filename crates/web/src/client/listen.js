// The listen switch: the microphone's sound to the notebook, and what it heard in it.

import { button, el, find, text } from "./dom.js";
import { inWords, noMicrophone, openMicrophone } from "./microphone.js";
import { number, say, timeSeconds } from "./say.js";
import { makeStream } from "./stream.js";

/** @import { Block, Listening, Microphone, Piece, Stream } from "../../client-checks/client" */

const SHOWN = 8;
const DRAW_MS = 250;
const STEADY = 5; // blocks looked at before it is said when the sound began
const LOOK_BACK = 20; // blocks over which the sound's clock is compared with the device's
const JUMP_MS = 600; // a sound that is off its clock by this much was held up, as by a locked phone
const QUIET_PEAK = 0.003;

/** @param {string | number} at */
const clock = (at) => timeSeconds(new Date(at));

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
    state("unable", why === "insecure" ? say("client-ear-insecure") : say("client-ear-unable"));
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
        ? say("client-ear-connected")
        : say("client-ear-waiting", { seconds: number(stream.waiting) });
    const lost = stream.lost > 0 ? say("client-ear-lost", { seconds: number(stream.lost) }) : "";
    const held = trouble ? say("client-ear-held", { why: trouble }) : "";
    text(at("link"), [link, lost, held, quiet ? say("client-ear-silent") : ""].filter((s) => s !== "").join(" "));
    root.dataset.link = stream.link;
  }

  /** @param {number} count of words */
  const listening = (count) => {
    const so = say("client-ear-listening", { count, time: clock(since) });
    state("on", `${so} ${say("client-ear-heard-now", { count: heard.length })}`);
  };
  let listenedFor = 0;

  /**
   * @param {string} kind
   * @param {any} content
   */
  function tell(kind, content) {
    if (kind === "go") {
      const { words, left_out } = content;
      listenedFor = words.length;
      const without = left_out.length ? ` ${say("client-ear-left-out", { words: left_out.join(", ") })}` : "";
      at("words").textContent = say("client-ear-words", { words: words.join(", ") }) + without;
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
            say("client-ear-press", {
              time: clock(content.at),
              sure: Math.min(99, Math.round(100 * content.confidence)),
              state: content.state,
            }) + (content.kept ? `; ${say("client-ear-kept")}` : ""),
          ),
        ),
      );
      while (at("heard").children.length > SHOWN) at("heard").lastChild.remove();
    }
    if (kind === "trouble") trouble = content;
    if (kind === "busy") {
      shut(
        "off",
        `${say("client-ear-busy", { time: clock(content) })} `,
        button(say("client-ear-take"), "listen-take", () => start(true)),
      );
    }
    if (kind === "taken") shut("off", say("client-ear-taken"));
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
    state("starting", say("client-ear-asking"));
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
        shut("off", `${say("client-ear-off")} ${words}`);
        last?.end();
      });
    } catch (error) {
      state("off", inWords(error));
      return;
    }
    since = Date.now();
    state("starting", say("client-ear-connecting"));
    onOff.disabled = false;
    wake();
  }

  async function stop() {
    const last = stream;
    state("ending", say("client-ear-ending"));
    await microphone?.stop();
    await last?.end();
    await shut("off", say("client-ear-off-heard", { count: heard.length }));
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
