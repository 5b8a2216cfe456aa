import { readFileSync } from "node:fs";
import { defineConfig } from "vitest/config";
import { fontPart, fontPartModule } from "./font-subsets.mjs";
import { packedProgram, packedProgramModule } from "./packed-program.mjs";
import { slowTests } from "./tests/slow-tests.ts";

/** The build's loader for fonts, for the tests: a part of a .woff2 file is its base64 text. */
const fontInParts = {
  name: "font-in-parts",
  enforce: "pre" as const,
  load(id: string) {
    return fontPart.test(id) ? fontPartModule(id) : null;
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

/** The build's loader for programs that run in a page: bundled and packed. */
const programPacked = {
  name: "program-packed",
  enforce: "pre" as const,
  load(id: string) {
    return packedProgram.test(id) ? packedProgramModule(id) : null;
  },
};

const slow = Object.keys(slowTests).map((name) => `tests/${name}`);

export default defineConfig({
  plugins: [fontInParts, scriptAsText, programPacked],
  test: {
    projects: [
      {
        extends: true,
        test: { name: "fast", include: ["tests/**/*.test.{ts,tsx}"], exclude: slow, testTimeout: 20_000 },
      },
      {
        extends: true,
        test: { name: "slow", include: slow, setupFiles: ["tests/slow-limit.ts"] },
      },
    ],
    // Modules hold no state, so that files may share them: the whole run takes three fifths of the time.
    isolate: false,
    // One for each core: vitest by itself leaves a core free, which of two is half of the machine.
    maxWorkers: "100%",
  },
});
