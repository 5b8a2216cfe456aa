import { CannotWrite, type Disk, type NewFile, type PartedDisk, type PartedFile } from "../../src/jobs/disk.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";

export type MemoryDisk = Disk & PartedDisk & { readonly written: ReadonlyMap<string, string> };

/** A disk that lies in memory; `refuses` says to which paths nothing can be written. */
export function memoryDisk(texts: Texts, refuses: (path: string) => boolean = () => false): MemoryDisk {
  const files = new Map(Object.entries(texts).map(([path, content]) => [path, bytesOf(content)]));
  const written = new Map<string, string>();
  const writeTogether = async (newFiles: readonly NewFile[]) => {
    const refused = newFiles.find(({ path }) => refuses(path));
    if (refused !== undefined) throw new CannotWrite(`no room for ${refused.path}`);
    for (const { path, text } of newFiles) {
      written.set(path, typeof text === "string" ? text : new TextDecoder("latin1").decode(text));
      files.set(path, bytesOf(text));
    }
  };
  return {
    written,
    read: async (path, isWanted = () => true) => {
      const file = files.get(path);
      if (file !== undefined) return { isFolder: false, files: [fileAt(path, file)] };
      const inside = childrenOf(path, files.keys());
      if (inside.length === 0) return undefined;
      const wanted = inside.filter((name) => isWanted(name.slice(path.length + 1)));
      return { isFolder: true, files: wanted.map((name) => fileAt(name, files.get(name) ?? new Uint8Array())) };
    },
    namesIn: async (folder) => {
      const inside = childrenOf(folder, files.keys());
      return inside.length === 0 ? undefined : inside.map((name) => name.slice(folder.length + 1));
    },
    writeTogether,
    streamTogether: async (parted) => writeTogether(await Promise.all(parted.map(wholeFile))),
  };
}

/** The texts of a workbook, below a folder. */
export function inFolder(folder: string, texts: Texts): Texts {
  return Object.fromEntries(Object.entries(texts).map(([name, content]) => [`${folder}/${name}`, content]));
}

async function wholeFile({ path, parts }: PartedFile): Promise<NewFile> {
  const whole: Buffer[] = [];
  for await (const part of parts()) whole.push(Buffer.from(part));
  return { path, text: Buffer.concat(whole).toString("utf8") };
}

function fileAt(path: string, bytes: Uint8Array) {
  return { name: path.slice(path.lastIndexOf("/") + 1), path, bytes };
}

function childrenOf(folder: string, paths: Iterable<string>): readonly string[] {
  return [...paths].filter((path) => path.startsWith(`${folder}/`) && !path.slice(folder.length + 1).includes("/"));
}

function bytesOf(content: string | Uint8Array): Uint8Array {
  return typeof content === "string" ? new TextEncoder().encode(content) : content;
}
