import { foldersOfLibrary, mayImport, onlyInCommandLine, programsOfPages } from "./import-table.ts";
import { folderOf, type SourceFile } from "./source-files.ts";

type Import = { readonly specifier: string; readonly isTypeOnly: boolean };

const staticImport = /\b(?:import|export)\b([^"';()]*?)\bfrom\s*["']([^"']+)["']|\bimport\s*["']([^"']+)["']/gu;
const dynamicImport = /\b(?:import|require)\s*\(\s*(?:["'`]([^"'`$]+)["'`])?/gu;

/** Every import that its folder is not allowed, types and dynamic ones too, and every reach for the world outside. */
export function importFaults(files: readonly SourceFile[]): readonly string[] {
  return files.flatMap(({ path, text }) => {
    const folder = folderOf(path);
    if (mayImport[folder] === undefined) return [`${path}: the folder ${folder} has no line in the import table`];
    const imports = importsOf(text).flatMap((found) => faultOf(found, folder, path) ?? []);
    return [...imports, ...outsideFaults(path, text)].map((fault) => `${path}: ${fault}`);
  });
}

/** Read from the text as it stands: one inside a comment counts too, so nothing is overlooked. */
export function importsOf(text: string): readonly Import[] {
  const fixed = [...text.matchAll(staticImport)].map(([, names = "", from, bare]) => ({
    specifier: from ?? bare ?? "",
    isTypeOnly: isTypeOnly(names.trim()),
  }));
  const dynamic = [...text.matchAll(dynamicImport)].map(([, specifier = ""]) => ({ specifier, isTypeOnly: false }));
  return [...fixed, ...dynamic];
}

function isTypeOnly(names: string): boolean {
  if (names.startsWith("type ")) return true;
  const braces = /^\{(.*)\}$/su.exec(names)?.[1];
  const parts = braces?.split(",").map((name) => name.trim()) ?? [];
  return parts.length > 0 && parts.every((name) => name === "" || name.startsWith("type "));
}

function faultOf({ specifier, isTypeOnly: typeOnly }: Import, folder: string, path: string): string | undefined {
  if (specifier === "") return "imports a name that is computed; the import table cannot hold it";
  if (!specifier.startsWith(".")) return libraryFault(specifier, folder);
  const target = new URL(specifier, `file:///${path}`).pathname.slice(1);
  if (!target.startsWith("src/")) {
    return target === "package.json" && folder === "cli" ? undefined : `imports ${target}, which is outside src`;
  }
  const to = folderOf(target);
  const allowed = mayImport[folder] ?? [];
  if (to === folder || allowed.includes(to)) return undefined;
  if (!allowed.includes(`types of ${to}`)) return `imports ${to}; ${folder} may import ${listed(allowed)}`;
  return typeOnly ? undefined : `imports more than types of ${to}; ${folder} may import ${listed(allowed)}`;
}

function libraryFault(specifier: string, folder: string): string | undefined {
  const library = Object.keys(foldersOfLibrary).find(
    (name) => specifier === name || specifier.startsWith(name.endsWith(":") ? name : `${name}/`),
  );
  if (library === undefined) return `imports the library ${specifier}, which has no line in the import table`;
  const folders = foldersOfLibrary[library] ?? [];
  return folders.includes(folder) ? undefined : `imports ${specifier}, which belongs in ${listed(folders)}`;
}

function outsideFaults(path: string, text: string): readonly string[] {
  if (folderOf(path) === "cli" || programsOfPages.test(path)) return [];
  return onlyInCommandLine
    .filter(([, pattern]) => pattern.test(text))
    .map(([name]) => `reaches for ${name}; only cli may`);
}

function listed(names: readonly string[]): string {
  return names.length === 0 ? "nothing of ours" : names.join(", ");
}
