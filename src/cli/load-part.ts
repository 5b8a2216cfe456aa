import { openSync, readFileSync, readSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";

/** Where in its file a text or a code begins, and how long it is; in bytes. */
type Place = readonly [start: number, length: number];
/** Of each part by its name: its text, and what V8 made of it, where the build kept that. */
export type PartIndex = Readonly<Record<string, { text: Place; code?: Place }>>;

/** A part of the built command: what it exports, once it has run. */
type Part = { exports: Record<string, unknown> };

/** What stands around the text of a part, on its first line, so that a trace names the lines of the part. */
type PartFunction = (
  exports: Part["exports"],
  require: (name: string) => unknown,
  module: Part,
  partUrl: string,
) => void;
const [before, after] = ["(function (exports, require, module, partUrl) {", "\n})"];

/** Each script that was made, with the name of its part: from these the build keeps V8's code. */
export type ScriptMade = (name: string, script: Script) => void;

/**
 * Loads parts of the built command, each once, with V8's code of them where the build kept it: then nothing is compiled.
 * Code that does not fit, as that of another version of Node, V8 passes over, and compiles the text.
 *
 * @param folder where parts.json, parts.txt and parts.code lie; a part takes itself to lie there too, under its name
 * @param onScript told of each script that is made
 * @returns what loads a part by its name, such as "./cli.js"
 */
export function partLoader(folder: string, onScript?: ScriptMade): (name: string) => unknown {
  const index = JSON.parse(readFileSync(join(folder, "parts.json"), "utf8")) as PartIndex;
  const [textOf, codeOf] = [readerOf(join(folder, "parts.txt")), readerOf(join(folder, "parts.code"))];
  const parts = new Map<string, Part>();
  const ofNode = createRequire(join(folder, "part.js"));
  const load = (name: string): unknown => {
    const places = index[name];
    if (places === undefined) return ofNode(name);
    const known = parts.get(name);
    if (known !== undefined) return known.exports;
    const part: Part = { exports: {} };
    parts.set(name, part);
    const filename = join(folder, name);
    const cachedData = places.code && codeOf(places.code);
    const text = before + textOf(places.text).toString("utf8") + after;
    const script = new Script(text, { filename, ...(cachedData && { cachedData }) });
    onScript?.(name, script);
    const run = script.runInThisContext() as PartFunction;
    run(part.exports, load, part, pathToFileURL(filename).href);
    part.exports = asValues(part.exports);
    return part.exports;
  };
  return load;
}

/**
 * What a part exports, as values: a bundler exports what asks for them each time, which V8 cannot see through, and no
 * export of ours changes after its part has run. Parts that import each other got what asks.
 */
function asValues(exports: Part["exports"]): Part["exports"] {
  return Object.defineProperty({ ...exports }, "__esModule", { value: true });
}

/** Reads from a file that stays open, for parts are loaded until the command ends. */
function readerOf(path: string): (place: Place) => Buffer {
  let file: number | undefined;
  return ([start, length]) => {
    file ??= openSync(path, "r");
    const bytes = Buffer.allocUnsafeSlow(length);
    for (let read = 0; read < length; ) {
      const more = readSync(file, bytes, read, length - read, start + read);
      if (more === 0) throw new Error(`${path} ends before it should`);
      read += more;
    }
    return bytes;
  };
}
