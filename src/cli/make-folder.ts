import { mkdir, stat } from "node:fs/promises";
import { dirname } from "node:path";

/**
 * Makes a folder and those above it that are missing; gives the topmost one that it made. Node's own recursive way never
 * ends where the system refuses with "no such file" though the folder above is there, as below /proc.
 */
export async function makeFolder(folder: string): Promise<string | undefined> {
  const fault = await made(folder);
  if (fault === undefined) return folder;
  if (fault.code === "EEXIST" && (await isFolder(folder))) return undefined;
  const above = dirname(folder);
  if (fault.code !== "ENOENT" || above === folder) throw fault;
  const first = await makeFolder(above);
  const second = await made(folder);
  // Another process may have made it in the meantime.
  if (second !== undefined && !(second.code === "EEXIST" && (await isFolder(folder)))) throw second;
  return first ?? folder;
}

function made(folder: string): Promise<NodeJS.ErrnoException | undefined> {
  return mkdir(folder).then(
    () => undefined,
    (fault: NodeJS.ErrnoException) => fault,
  );
}

function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
}
