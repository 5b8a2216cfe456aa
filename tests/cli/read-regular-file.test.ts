import { execFileSync } from "node:child_process";
import { symlinkSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readRegularFile } from "../../src/cli/read-regular-file.ts";
import { temporaryFolder } from "./built-command.ts";

test("a file is read, through a link too; one that is not there is a fault of the disk", async () => {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "a"), "text");
  symlinkSync(join(folder, "a"), join(folder, "link"));
  for (const name of ["a", "link"]) {
    expect(new TextDecoder().decode(await readRegularFile(join(folder, name)))).toBe("text");
  }
  await expect(readRegularFile(join(folder, "b"))).rejects.toMatchObject({ code: "ENOENT", syscall: "open" });
  await expect(readRegularFile(folder)).rejects.toMatchObject({ code: "EISDIR", syscall: "read" });
});

test.skipIf(process.platform === "win32")("a pipe and a device, and links to them, are refused at once", async () => {
  const folder = temporaryFolder();
  execFileSync("mkfifo", [join(folder, "pipe")]);
  symlinkSync("/dev/zero", join(folder, "zero"));
  for (const name of ["pipe", "zero"]) {
    await expect(readRegularFile(join(folder, name))).rejects.toMatchObject({
      message: `${join(folder, name)} is a pipe or a device, and no file`,
      ...{ code: "EINVAL", syscall: "read" },
    });
  }
});

test("a file that is larger than any of ours is refused before it is read", async () => {
  const path = join(temporaryFolder(), "large");
  writeFileSync(path, "");
  truncateSync(path, 3 * 2 ** 30);
  await expect(readRegularFile(path)).rejects.toThrow("larger than 256 MB");
});
