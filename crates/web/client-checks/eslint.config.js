// Recommended rules, for the page's modules, the three that run elsewhere, and the tests.
import js from "@eslint/js";
import globals from "globals";

const stricter = { eqeqeq: "error", "no-var": "error", "prefer-const": "error", "object-shorthand": "error" };

export default [
  js.configs.recommended,
  { rules: stricter },
  { files: ["src/client/*.js"], languageOptions: { globals: globals.browser } },
  { files: ["src/client/worker.js"], languageOptions: { globals: globals.serviceworker } },
  { files: ["src/client/ear-worker.js"], languageOptions: { globals: globals.worker } },
  { files: ["src/client/capture.js"], languageOptions: { globals: globals.audioWorklet } },
  { files: ["tests/client/*.mjs"], languageOptions: { globals: globals.node } },
];
