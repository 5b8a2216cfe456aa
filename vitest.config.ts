import { readFileSync } from "node:fs";
import { defineConfig } from "vitest/config";

/** The build's loader for fonts, for the tests: a .woff2 file is its base64 text. */
const fontAsBase64 = {
  name: "font-as-base64",
  enforce: "pre" as const,
  load(id: string) {
    if (!id.endsWith(".woff2")) return null;
    return `export default ${JSON.stringify(readFileSync(id).toString("base64"))}`;
  },
};

/** The build's loader for scripts that run in a page: a .client.js file is its text. */
const scriptAsText = {
  name: "script-as-text",
  enforce: "pre" as const,
  load(id: string) {
    return id.endsWith(".client.js") ? `export default ${JSON.stringify(readFileSync(id, "utf8"))}` : null;
  },
};

export default defineConfig({
  plugins: [fontAsBase64, scriptAsText],
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    testTimeout: 30_000,
    // Modules hold no state, so that files may share them: the whole run takes three fifths of the time.
    isolate: false,
  },
});
