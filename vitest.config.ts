import { readFileSync } from "node:fs";
import { relative } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification, type VitestPluginContext } from "vitest/node";
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

/** A test that takes every module of a pattern: a new one is none of what was kept. */
const globbing = /\/tests\/(?:examples\/docblock-examples|workbook\/checks\/every-check)\.test\.ts$/;

/** A module that is kept from run to run depends on more than its own file here: on the table of glyphs, or on all that is bundled. */
const keptModules = {
  name: "kept-modules",
  configureVitest({ experimental_defineCacheKeyGenerator: keyBy }: VitestPluginContext) {
    keyBy(({ id }) => {
      if (packedProgram.test(id) || globbing.test(id)) return false;
      return fontPart.test(id) ? readFileSync("src/report/style/font-glyphs.json", "utf8") : undefined;
    });
  },
};

/** Those with the longest limits first, lest one of them run alone at the end; the fast ones last. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const limitOf = ({ moduleId }: TestSpecification) => slowTests[relative("tests", moduleId)] ?? 0;
    return (await super.sort(files)).sort((one, other) => limitOf(other) - limitOf(one));
  }
}

const slow = Object.keys(slowTests).map((name) => `tests/${name}`);

export default defineConfig({
  plugins: [fontInParts, scriptAsText, programPacked, keptModules],
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
    sequence: { sequencer: LongestFirst },
    // What a module becomes is kept from run to run, which spares half a minute of a processor.
    experimental: { fsModuleCache: true },
    // Processes and not threads, for some tests set what V8 has once a process.
    // Modules hold no state, so that files may share them: the whole run takes three fifths of the time.
    isolate: false,
    // One for each core: vitest by itself leaves a core free, which of two is half of the machine.
    maxWorkers: "100%",
  },
});
