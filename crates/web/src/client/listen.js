// The listen switch: the microphone's sound to the engine on this device, or to the notebook where the browser cannot run
// it, and what was heard in it.

import { button, el, find, text } from "./dom.js";
import { gaps, hearsHere, makeEar, noteGap, openEar, prepare, scripts } from "./ear.js";
import { heardAt, keepFresh } from "./last.js";
import { inWords, noMicrophone, openMicrophone } from "./microphone.js";
import { begin, rows } from "./outbox.js";
import { number, say, timeSeconds } from "./say.js";
import { sitting } from "./sitting.js";
import { makeStream } from "./stream.js";

/** @import { Block, Ear, Gap, Listening, Microphone, Piece, Stream } from "../../client-checks/client" */

const SHOWN = 8;
const SHOWN_GAPS_MS = 86_400_000;
const DRAW_MS = 250;
const STEADY = 5; // blocks looked at before it is said when the sound began
const LOOK_BACK = 20; // blocks over which the sound's clock is compared with the device's
const JUMP_MS = 600; // a sound that is off its clock by this much was held up, as by a locked phone
const QUIET_PEAK = 0.003;
const NO_SOUND_MS = 3_000; // blocks come ten times a second
const SLOW_S = 2;

/** @param {string | number} at */
const clock = (at) => timeSeconds(new Date(at));

/** @param {number} confidence */
const sure = (confidence) => Math.min(99, Math.round(100 * confidence));

/** @param {{ at: string | number, confidence: number }} press */
const lastSays = ({ at, confidence }) => say("client-ear-last", { time: clock(at), sure: sure(confidence) });

/** @param {HTMLElement} root */
function wire(root) {
  /** @param {string} name */
  const at = (name) => find(`[data-ear="${name}"]`, root);
  /** The box "only this animal uses the board", where there are several. @type {HTMLInputElement | null} */
  const only = root.querySelector("[data-ear=only]");
  const onOff = at("switch");
  /** When each word was last heard. @type {HTMLElement | null} */
  const lastHeard = root.querySelector("[data-ear=last]");
  if (lastHeard) keepFresh(lastHeard);
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
  let lastBlock = 0;
  /** @type {number | undefined} */
  let mutedAt;
  /** @type {number | undefined} */
  let lostAt; // since when there is no sound, though nobody switched it off
  /** @type {Promise<Ear> | undefined} */
  let opening;
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
  const { module, vocabulary: words = "", listen: socket, animal } = root.dataset;
  const here = module !== undefined && hearsHere();
  root.dataset.way = here ? "here" : "notebook";
  if (!here && !socket) {
    state("unable", say("client-ear-no-way"));
    return;
  }
  text(at("way"), here ? say("client-ear-here") : say("client-ear-there"));
  at("keeping").hidden = here;
  if (here) getReady().catch((error) => console.warn("not ready to listen offline", error));
  gaps().then((all) => all.filter(({ to }) => Date.now() - to < SHOWN_GAPS_MS).forEach(showGap));

  /** Keeps what hearing needs, so that it can begin while the notebook is away. */
  async function getReady() {
    await prepare({ module: module ?? "", words });
    const ready = await navigator.serviceWorker?.ready;
    ready?.active?.postMessage(scripts);
  }

  /** @param {Gap} gap */
  function showGap({ from, to }) {
    at("gaps").hidden = false;
    at("gaps").prepend(
      el("li", { "data-test": "listen-gap" }, say("client-ear-gap", { from: clock(from), to: clock(to) })),
    );
    while (at("gaps").children.length > SHOWN) at("gaps").lastChild.remove();
  }

  /**
   * Silence in this time does not mean that nothing was pressed.
   * @param {number} from
   * @param {number} to
   */
  function gap(from, to) {
    if (to - from < JUMP_MS) return;
    showGap({ from, to });
    noteGap({ from, to }).catch((error) => console.error("gap", error));
  }

  /**
   * The session of this animal that was open at a time, as far as this device knows.
   * @param {number} time
   */
  async function session(time) {
    const board = document.getElementById("board")?.dataset.now;
    const own = (await rows()).filter((r) => r.state !== "refused" && r.event.animal === animal).map((r) => r.event);
    return sitting([...(board ? JSON.parse(board).today : []), ...own], time).session;
  }

  function draw() {
    if (root.dataset.state !== "on" || !stream) return;
    at("level").value = peak > 0 ? Math.max(0, 1 + Math.log10(peak) / 3) : 0;
    if (peak > QUIET_PEAK) lastLoud = Date.now();
    peak = 0;
    const quiet = Date.now() - lastLoud > 20_000;
    const halted = Date.now() - lastBlock > NO_SOUND_MS ? say("client-ear-no-sound", { time: clock(lastBlock) }) : "";
    const slow = stream.waiting > SLOW_S ? ` ${say("client-ear-behind", { seconds: number(stream.waiting) })}` : "";
    const link = here
      ? say("client-ear-hearing") + slow
      : stream.link === "ok"
        ? say("client-ear-connected")
        : say("client-ear-waiting", { seconds: number(stream.waiting) });
    const lost = stream.lost > 0 ? say("client-ear-lost", { seconds: number(stream.lost) }) : "";
    const held = trouble ? say("client-ear-held", { why: trouble }) : "";
    text(
      at("link"),
      [link, lost, held, halted || (quiet ? say("client-ear-silent") : "")].filter((s) => s !== "").join(" "),
    );
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
      if (lastHeard) heardAt(lastHeard, content.says, new Date(content.at).getTime(), lastSays(content));
      heard.unshift(content);
      root.dataset.heard = String(heard.length);
      navigator.vibrate?.(10);
      if (!here) document.dispatchEvent(new Event("sayso-heard"));
      if (root.dataset.state === "on") listening(listenedFor);
      at("heard").prepend(
        el(
          "li",
          { "data-test": "listen-press", "data-says": content.says },
          el("strong", {}, content.says),
          el(
            "span",
            { class: "quiet num" },
            say("client-ear-press", { time: clock(content.at), sure: sure(content.confidence), state: content.state }) +
              (content.kept ? `; ${say("client-ear-kept")}` : ""),
          ),
        ),
      );
      while (at("heard").children.length > SHOWN) at("heard").lastChild.remove();
    }
    if (kind === "trouble") trouble = content;
    if (kind === "gap") gap(content.from, content.to);
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
    lastBlock = Date.now();
    const { rate } = microphone;
    offsets.push(stamp - (1000 * (position + samples.length - base)) / rate);
    if (offsets.length > LOOK_BACK) offsets.shift();
    // Being late is an accident, being early is not: the least of them is nearest to the truth.
    const least = Math.min(...offsets);
    if (began === undefined) {
      if (offsets.length < STEADY) return early.push({ position, samples });
      began = least;
      if (lostAt !== undefined) gap(lostAt, began);
      lostAt = undefined;
      const ours = { rate, began, options, tell, changed: draw };
      stream =
        here && opening
          ? makeEar({ ...ours, opening, session, animal: options.only ? animal : undefined })
          : makeStream({ ...ours, url: (root.dataset.listen ?? "").replace(/^http/, "ws") });
      for (const b of early.splice(0)) stream.add({ position: b.position - base, samples: b.samples });
    } else if (Math.abs(least - began) > JUMP_MS) {
      const heardUpto = began + (1000 * (position - base)) / rate;
      base = position;
      began = stamp - (1000 * samples.length) / rate;
      gap(heardUpto, began);
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
    lastBlock = lastLoud;
    mutedAt = undefined;
    // At the same time, so that it is ready sooner; that it failed is told by the stream.
    opening = here ? openEar({ module, words }) : undefined;
    opening?.catch(() => {});
    try {
      microphone = await openMicrophone(
        block,
        (words) => {
          const last = stream;
          lostAt = lastBlock;
          shut("off", `${say("client-ear-off")} ${words}`);
          last?.end();
        },
        (muted) => {
          if (!muted && mutedAt !== undefined) gap(mutedAt, Date.now());
          mutedAt = muted ? Date.now() : undefined;
        },
      );
    } catch (error) {
      opening?.then(({ worker }) => worker.terminate()).catch(() => {});
      state("off", inWords(error));
      return;
    }
    since = Date.now();
    state("starting", here ? say("client-ear-ready") : say("client-ear-connecting"));
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
    if (document.visibilityState === "visible") microphone?.resume();
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
const root = document.querySelector("section.listen");
if (root?.querySelector("[data-ear=switch]")) {
  if (root.dataset.listen) root.dataset.listen = new URL(root.dataset.listen, location.href).href;
  // The board sends what is noted; elsewhere nobody does yet.
  if (!document.getElementById("board")) begin().catch((error) => console.error("outbox", error));
  wire(root);
}
