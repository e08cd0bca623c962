// The microphone as blocks of samples, unprocessed: what makes voices clear would make button and voice alike.

import { say } from "./say.js";

/** @import { Block } from "../../client-checks/client" */

const WANTED_RATE = 16_000;

/** @type {Record<string, keyof import("../../client-checks/messages").Messages>} */
const WORDS = {
  NotAllowedError: "client-ear-not-allowed",
  NotFoundError: "client-ear-not-found",
  NotReadableError: "client-ear-in-use",
};

/** Why no microphone can be had here; undefined where it can. */
export function noMicrophone() {
  if (!window.isSecureContext) return "insecure";
  if (!navigator.mediaDevices?.getUserMedia || !window.AudioWorkletNode) return "unable";
  return undefined;
}

/**
 * An error of the microphone in words.
 * @param {any} error
 */
export const inWords = (error) =>
  WORDS[error.name]
    ? /** @type {any} */ (say)(WORDS[error.name])
    : say("client-ear-not-opened", { why: `${error.name}: ${error.message}` });

/**
 * @param {MediaStream} media
 * @param {AudioContextOptions} [options]
 */
async function wired(media, options) {
  const context = new AudioContext(options);
  try {
    await context.audioWorklet.addModule(new URL("./capture.js", import.meta.url));
    const source = context.createMediaStreamSource(media);
    const node = new AudioWorkletNode(context, "capture");
    source.connect(node);
    node.connect(context.destination); // silent; a node that leads nowhere may not be run
    return { context, node };
  } catch (error) {
    await context.close();
    throw error;
  }
}

/**
 * Opens the microphone; `onBlock({ position, samples, peak, at })` is called ten times a second, `onLost(why)` when
 * the sound ends without having been stopped, `onMuted(muted)` when the system gives silence instead of it, or sound again.
 * Gives the rate, what the browser says it does to the sound, and a way to stop.
 * @param {(block: Block) => void} onBlock
 * @param {(why: string) => void} onLost
 * @param {(muted: boolean) => void} [onMuted]
 */
export async function openMicrophone(onBlock, onLost, onMuted = () => {}) {
  const plain = { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 };
  const media = await navigator.mediaDevices.getUserMedia({ audio: plain });
  const track = media.getAudioTracks()[0];
  let line;
  try {
    // Some browsers will not bring a microphone to another rate; then its own is sent.
    line = await wired(media, { sampleRate: WANTED_RATE }).catch(() => wired(media));
    await line.context.resume();
  } catch (error) {
    track.stop();
    throw error;
  }
  const { context, node } = line;
  let stopped = false;
  const stop = async () => {
    if (stopped) return;
    stopped = true;
    node.port.onmessage = null;
    node.port.postMessage("stop");
    track.stop();
    await context.close();
  };
  node.port.onmessage = (message) => onBlock(message.data);
  /** @param {string} why */
  const lost = (why) => {
    if (!stopped) stop().then(() => onLost(why));
  };
  track.onended = () => lost(say("client-ear-gone"));
  track.onmute = () => onMuted(true);
  track.onunmute = () => onMuted(false);
  const resume = () => {
    if (!stopped && context.state !== "running") context.resume().catch(() => {});
  };
  // A call or a locked phone halts it; sound is asked for again as soon as that may be.
  context.onstatechange = () => resume();
  node.onprocessorerror = () => lost(say("client-ear-stopped"));
  return { rate: context.sampleRate, settings: track.getSettings(), stop, resume };
}
