// A picture of a sound: its outline, scaled to its loudest point.

import { say, number } from "./say.js";

const COLUMNS = 120;
const HIGH = 48;
const SVG = "http://www.w3.org/2000/svg";

/**
 * Lowest and highest sample per column, against the loudest.
 * @param {Int16Array} samples
 * @param {number} [columns]
 * @returns {[number, number][]}
 */
export function outline(samples, columns = COLUMNS) {
  const loudest = samples.reduce((most, v) => Math.max(most, Math.abs(v)), 1);
  return Array.from({ length: columns }, (_, c) => {
    const part = samples.subarray(
      Math.floor((c * samples.length) / columns),
      Math.max(Math.floor((c * samples.length) / columns) + 1, Math.floor(((c + 1) * samples.length) / columns)),
    );
    const low = part.reduce((m, v) => Math.min(m, v), 0);
    const high = part.reduce((m, v) => Math.max(m, v), 0);
    return [low / loudest, high / loudest];
  });
}

/**
 * @param {Int16Array} samples
 * @param {number} rate
 */
export function wave(samples, rate) {
  const step = 4;
  const middle = HIGH / 2;
  const d = outline(samples)
    .map(([low, high], i) => {
      const top = middle - high * middle;
      return `M${i * step} ${top.toFixed(1)}h${step}v${Math.max(0.6, (high - low) * middle).toFixed(1)}h-${step}z`;
    })
    .join("");
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("viewBox", `0 0 ${COLUMNS * step} ${HIGH}`);
  svg.setAttribute("preserveAspectRatio", "none");
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", say("client-enrol-picture", { seconds: number(samples.length / rate, 1) }));
  svg.setAttribute("class", "wave");
  const path = document.createElementNS(SVG, "path");
  path.setAttribute("class", "bar");
  path.setAttribute("d", d);
  svg.append(path);
  return svg;
}
