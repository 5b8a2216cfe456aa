import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";

/** A part of the built command: what it exports, once it has run. */
type Part = { exports: Record<string, unknown> };

/** What stands around the text of a part, on its first line, so that a trace names the lines of the file. */
type PartFunction = (
  exports: Part["exports"],
  require: (name: string) => unknown,
  module: Part,
  partUrl: string,
) => void;
const [before, after] = ["(function (exports, require, module, partUrl) {", "\n})"];

/** Each script that was made, with the path of its part: from these the build keeps V8's code. */
export type ScriptMade = (path: string, script: Script) => void;

/**
 * Loads parts of the built command, each once, with V8's code of them where the build left it beside: then nothing is
 * compiled. Code that does not fit, as that of another version of Node, V8 passes over, and compiles the text.
 *
 * @param folder where the parts lie; a part takes itself to lie one above, beside what starts the command
 * @param onScript told of each script that is made
 * @returns what loads a part by its name
 */
export function partLoader(folder: string, onScript?: ScriptMade): (name: string) => unknown {
  const parts = new Map<string, Part>();
  const ofNode = createRequire(join(folder, "part.js"));
  const load = (name: string): unknown => {
    if (!name.startsWith("./")) return ofNode(name);
    const known = parts.get(name);
    if (known !== undefined) return known.exports;
    const part: Part = { exports: {} };
    parts.set(name, part);
    const path = join(folder, name);
    const script = scriptOf(path);
    onScript?.(path, script);
    const run = script.runInThisContext() as PartFunction;
    run(part.exports, load, part, pathToFileURL(join(folder, "..", name)).href);
    return part.exports;
  };
  return load;
}

function scriptOf(path: string): Script {
  const text = before + readFileSync(path, "utf8") + after;
  const cachedData = codeOf(path);
  return new Script(text, { filename: path, ...(cachedData && { cachedData }) });
}

function codeOf(path: string): Buffer | undefined {
  try {
    return readFileSync(`${path}.code`);
  } catch {
    return undefined;
  }
}
