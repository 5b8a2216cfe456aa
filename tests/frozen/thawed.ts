import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { gunzipSync } from "node:zlib";

const frozen = fileURLToPath(new URL(".", import.meta.url));

/** The files that a version wrote, byte for byte, by their paths below its folder. */
export function thawed(version: string): ReadonlyMap<string, Buffer> {
  const folder = join(frozen, version);
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  const files = entries.map(({ parentPath, name }): [string, Buffer] => {
    const path = join(parentPath, name);
    const bytes = readFileSync(path);
    const below = path.slice(folder.length + 1).replaceAll("\\", "/");
    return below.endsWith(".gz") ? [below.slice(0, -3), gunzipSync(bytes)] : [below, bytes];
  });
  return new Map(files.sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** Those of them below one folder, written into another. */
export function thawInto(target: string, version: string, below: string): readonly string[] {
  const files = [...thawed(version)].filter(([path]) => path.startsWith(`${below}/`));
  return files.map(([path, bytes]) => {
    const place = join(target, path.slice(below.length + 1));
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(place, bytes);
    return place;
  });
}
