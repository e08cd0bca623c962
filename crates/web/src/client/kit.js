// Records a button from close by and at several distances, and saves it all as one file on this device. Nothing is sent.

import { button, el, find, text } from "./dom.js";
import { inWords, noMicrophone, openMicrophone } from "./microphone.js";
import { number, say } from "./say.js";
import { trimmed, wav } from "./sound.js";
import { makeTake } from "./take.js";
import { tar } from "./tar.js";

/** @import { Block, KitFile, KitTake, Microphone, Take } from "../../client-checks/client" */

const PRESSES = 10;
const FIRST_S = 6;
const EVERY_S = 6;
const WITHOUT_S = 180;
const WITHOUT_LEAST_S = 20;
const CLIP_S = 4;
const CLIP_LEAST_S = 0.15;
const TAIL_S = 1.5; // after the end of a clip, for its echo and a late finger
const SHOWN_NOW_S = 1;
const TICK_MS = 100;
const VERSION = 1;

/** @param {HTMLElement} root */
function wire(root) {
  /** @param {string} id */
  const field = (id) => find(`#${id}`, root);
  /** @param {string} id */
  const written = (id) => field(id).value.trim();
  /** @type {Map<string, { about: string, clip: KitFile }>} */
  const buttons = new Map();
  /** @type {(KitTake & { li: HTMLElement })[]} */
  const takes = [];
  /** @type {Record<string, boolean | null>} */
  let processing = {};
  let agreedAt = "";
  let unsaved = false;
  /** @type {((keep: boolean) => Promise<void>) | undefined} */
  let finish; // ends what is being recorded

  const said = {
    clip: el("p", { role: "status", "data-test": "kit-clip-said" }),
    take: el("p", { role: "status", "data-test": "kit-take-said" }),
    save: el("p", { role: "status", "data-test": "kit-save-said" }),
  };
  // Read from afar. While it records nothing is read out: a voice would be in the recording.
  const now = el("p", { class: "kit-now num", "data-test": "kit-now", "aria-live": "off", hidden: true });
  const level = el("meter", {
    class: "wide",
    min: 0,
    max: 1,
    value: 0,
    "aria-label": say("client-ear-loudness"),
    hidden: true,
  });
  const mark = el(
    "button",
    { type: "button", class: "primary wide kit-mark", "data-test": "kit-mark", hidden: true },
    say("client-kit-mark"),
  );
  const stop = button(say("client-kit-stop"), "kit-stop", () => finish?.(true), { class: "wide", hidden: true });
  const go = {
    clip: button(say("client-kit-clip"), "kit-clip", () => startClip(), { class: "wide" }),
    take: button(say("client-kit-presses", { count: PRESSES }), "kit-take", () => startTake(true), {
      class: "primary wide",
    }),
    without: button(say("client-kit-without"), "kit-without", () => startTake(false), { class: "wide" }),
    save: button(say("client-kit-save"), "kit-save", () => save(), { class: "primary wide" }),
  };
  find("[data-kit=clip]", root).append(go.clip, said.clip);
  find("[data-kit=take]", root).append(go.take, go.without, now, mark, stop, level, said.take);
  find("[data-kit=save]", root).append(go.save, said.save);

  const why = noMicrophone();
  if (why) {
    Object.values(go).forEach((b) => (b.disabled = true));
    text(said.clip, why === "insecure" ? say("client-ear-insecure") : say("client-ear-unable"));
    return;
  }

  /** @param {boolean} recording */
  function shown(recording) {
    root.dataset.state = recording ? "on" : "off";
    Object.values(go).forEach((b) => (b.disabled = recording));
    [go.take, go.without].forEach((b) => (b.hidden = recording));
    level.hidden = !recording;
    Object.values(said).forEach((p) => p.setAttribute("aria-live", recording ? "off" : "polite"));
    if (!recording) [now, mark, stop].forEach((e) => (e.hidden = true));
  }

  /** Whether enough is said to begin. @param {HTMLElement} tell */
  function ready(tell) {
    const enough =
      field("kit-agreed").checked && ["kit-word", "kit-button", "kit-phone"].every((id) => written(id) !== "");
    if (!enough) text(tell, say("client-kit-first"));
    return enough;
  }

  /**
   * Records until `tick` answers false or it is stopped; gives the recording, or nothing where it is of no use.
   * @param {HTMLElement} tell
   * @param {(take: Take) => boolean} tick
   * @returns {Promise<{ take: Take, rate: number } | undefined>}
   */
  async function record(tell, tick) {
    shown(true);
    text(tell, say("client-ear-asking"));
    /** @type {Microphone | undefined} */
    let microphone;
    /** @type {Take | undefined} */
    let take;
    /** @type {Block[]} */
    const early = [];
    /** @type {WakeLockSentinel | undefined} */
    let lock;
    return new Promise((resolve) => {
      /** @type {ReturnType<typeof setInterval> | undefined} */
      let timer;
      const end = async (/** @type {boolean} */ keep, /** @type {string} */ words = "") => {
        if (!finish) return;
        finish = undefined;
        clearInterval(timer);
        await microphone?.stop();
        await lock?.release().catch(() => undefined);
        shown(false);
        text(tell, words);
        resolve(keep && take && microphone ? { take, rate: microphone.rate } : undefined);
      };
      finish = (keep) => end(keep);
      /** @param {Block} block */
      const add = (block) => {
        if (!take) return early.push(block);
        level.value = block.peak > 0 ? Math.max(0, 1 + Math.log10(block.peak) / 3) : 0;
        if (!take.add(block)) end(false, say("client-kit-interrupted"));
        return undefined;
      };
      const muted = (/** @type {boolean} */ is) => is && end(false, say("client-kit-interrupted"));
      openMicrophone(add, (words) => end(false, words), muted)
        .then(async (open) => {
          microphone = open;
          const { echoCancellation, noiseSuppression, autoGainControl } = open.settings;
          processing = {
            echo_cancellation: echoCancellation === undefined ? null : Boolean(echoCancellation),
            noise_suppression: noiseSuppression ?? null,
            auto_gain_control: autoGainControl ?? null,
          };
          take = makeTake(open.rate);
          early.splice(0).forEach(add);
          timer = setInterval(() => take && !tick(take) && end(true), TICK_MS);
          lock = await navigator.wakeLock?.request("screen").catch(() => undefined);
        })
        .catch((error) => end(false, inWords(error)));
    });
  }

  async function startClip() {
    if (!ready(said.clip)) return;
    const done = await record(said.clip, (take) => {
      text(said.clip, say("client-kit-clip-now", { seconds: number(Math.max(0, Math.ceil(CLIP_S - take.seconds))) }));
      return take.seconds < CLIP_S;
    });
    if (!done) return;
    const clip = trimmed(done.take.end(0).samples, done.rate);
    const seconds = clip.length / done.rate;
    if (seconds < CLIP_LEAST_S || clip.every((s) => s === 0)) {
      text(said.clip, say("client-ear-record-nothing"));
      return;
    }
    const word = written("kit-word");
    buttons.set(word, { about: written("kit-button"), clip: { bytes: new Uint8Array(wav(clip, done.rate)), seconds } });
    unsaved = true;
    text(said.clip, say("client-kit-clip-kept", { word, seconds: number(seconds, 1) }));
  }

  /** @param {boolean} pressed */
  async function startTake(pressed) {
    if (!ready(said.take)) return;
    const word = written("kit-word");
    const clip = buttons.get(word)?.clip;
    if (pressed && !clip) {
      text(said.take, say("client-kit-clip-first", { word }));
      return;
    }
    const about = {
      distance_m: Number(field("kit-distance").value),
      room: field("kit-room").value,
      noise: field("kit-noise").value,
      marked: find("[name=kit-marked]:checked", root).value,
    };
    const tail = pressed ? (clip?.seconds ?? 0) + TAIL_S : 0;
    const tapped = pressed && about.marked === "tap";
    mark.onpointerdown = null;
    restedSince = Infinity;
    const done = await record(said.take, (take) => {
      if (stop.hidden) {
        stop.hidden = false;
        find("[data-kit=take]", root).scrollIntoView({ block: "center" });
      }
      if (!pressed) {
        text(
          said.take,
          say("client-kit-no-press", { seconds: number(Math.max(0, Math.ceil(WITHOUT_S - take.seconds))) }),
        );
        return take.seconds < WITHOUT_S;
      }
      if (tapped) {
        mark.hidden = false;
        mark.onpointerdown ??= () => take.mark(Date.now());
        text(
          said.take,
          `${say("client-kit-tap-now", { mark: say("client-kit-mark") })} ${say("client-kit-marked", { count: take.marked })}`,
        );
      } else counted(take);
      const last = take.seconds >= FIRST_S + EVERY_S * PRESSES + tail;
      return tapped ? take.marked < PRESSES || !rested(take, tail) : !last;
    });
    if (done) kept(done, pressed, word, about, tail);
  }

  let restedSince = Infinity;
  /** Whether the last tapped press had time to sound. @param {Take} take @param {number} tail */
  function rested(take, tail) {
    if (restedSince === Infinity) restedSince = take.seconds;
    const over = take.seconds > restedSince + tail + 1;
    if (over) restedSince = Infinity;
    return over;
  }

  /** Shows the countdown, and marks where it ends. @param {Take} take */
  function counted(take) {
    const due = FIRST_S + EVERY_S * take.marked;
    now.hidden = false;
    if (take.marked < PRESSES && take.seconds >= due) take.mark(Date.now());
    const since = take.seconds - (FIRST_S + EVERY_S * (take.marked - 1));
    const left = Math.ceil(FIRST_S + EVERY_S * take.marked - take.seconds);
    const pressing = take.marked > 0 && since < SHOWN_NOW_S;
    text(now, pressing ? say("client-kit-press-now") : take.marked < PRESSES && left <= 3 ? number(left) : "·");
    now.classList.toggle("pressing", pressing);
    text(said.take, say("client-kit-marked", { count: take.marked }));
  }

  /**
   * @param {{ take: Take, rate: number }} done
   * @param {boolean} pressed
   * @param {string} word
   * @param {{ distance_m: number, room: string, noise: string, marked: string }} about
   * @param {number} tail
   */
  function kept({ take, rate }, pressed, word, about, tail) {
    const { samples, presses } = take.end(tail);
    const seconds = samples.length / rate;
    if (pressed ? presses.length === 0 : seconds < WITHOUT_LEAST_S) {
      text(said.take, say("client-kit-too-short"));
      return;
    }
    /** @param {string} id */
    const chosen = (id) => field(id).selectedOptions[0].textContent;
    const told = {
      metres: number(about.distance_m, about.distance_m % 1 ? 1 : 0),
      room: chosen("kit-room"),
      noise: chosen("kit-noise"),
    };
    const words = pressed
      ? say("client-kit-take", { ...told, word, count: presses.length, seconds: number(seconds) })
      : say("client-kit-take-without", { ...told, seconds: number(seconds) });
    const li = el("li", { class: "line", "data-test": "kit-kept" }, el("span", {}, words));
    const made = {
      ...about,
      word: pressed ? word : null,
      presses,
      sound: { bytes: new Uint8Array(wav(samples, rate)), seconds },
      li,
    };
    li.append(
      button(say("client-kit-undo"), "kit-undo", () => {
        takes.splice(takes.indexOf(made), 1);
        li.remove();
      }),
    );
    takes.push(made);
    unsaved = true;
    find("[data-kit=list]", root).append(li);
    text(said.take, words);
  }

  async function save() {
    if (!ready(said.save)) return;
    if (buttons.size === 0 || takes.length === 0) {
      text(said.save, say("client-kit-nothing"));
      return;
    }
    /** @type {{ name: string, bytes: Uint8Array<ArrayBuffer> }[]} */
    const files = [];
    /** @param {string} name @param {KitFile} file */
    const sound = async (name, { bytes, seconds }) => {
      files.push({ name, bytes });
      const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
      return { file: name, sha256: [...hash].map((b) => b.toString(16).padStart(2, "0")).join(""), seconds };
    };
    const at = new Date();
    const manifest = {
      kit: VERSION,
      made_by: root.dataset.made,
      made_at: at.toISOString(),
      consent: {
        text: field("kit-consent").textContent,
        language: document.documentElement.lang,
        at: agreedAt,
        publish: field("kit-publish").checked,
      },
      phone: written("kit-phone"),
      microphone: processing,
      buttons: /** @type {unknown[]} */ ([]),
      takes: /** @type {unknown[]} */ ([]),
    };
    for (const [word, { about, clip }] of buttons) {
      manifest.buttons.push({ word, about, clip: await sound(`clip-${manifest.buttons.length + 1}.wav`, clip) });
    }
    for (const { word, distance_m, room, noise, marked, presses, sound: recorded } of takes) {
      const file = await sound(`take-${manifest.takes.length + 1}.wav`, recorded);
      manifest.takes.push({ word, distance_m, room, noise, marked, presses_s: presses, sound: file });
    }
    const first = { name: "manifest.json", bytes: new TextEncoder().encode(JSON.stringify(manifest, null, 1)) };
    const archive = new Blob(tar([first, ...files], at), { type: "application/x-tar" });
    const file = `sayso-kit-${at.toISOString().slice(0, 16).replace(/[-:]/g, "").replace("T", "-")}.tar`;
    const link = el("a", { href: URL.createObjectURL(archive), download: file, "data-test": "kit-file" }, file);
    link.click();
    unsaved = false;
    text(said.save, say("client-kit-saved", { file, megabytes: number(archive.size / 1e6, 1) }));
    find("[data-kit=save]", root).querySelector("[data-test=kit-file]")?.remove();
    find("[data-kit=save]", root).append(link);
  }

  field("kit-agreed").addEventListener("change", () => {
    agreedAt = new Date().toISOString();
  });
  window.addEventListener("beforeunload", (event) => {
    if (unsaved) event.preventDefault();
  });
}

const root = document.getElementById("record-kit");
if (root) wire(root);
