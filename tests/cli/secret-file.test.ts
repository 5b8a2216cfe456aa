import { readdirSync, readFileSync, statSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { writeSecretFile } from "../../src/cli/secret-file.ts";
import { CannotWrite } from "../../src/jobs/disk.ts";
import { temporaryFolder, written } from "./built-command.ts";

test("the file is its owner's alone, whole, and nothing is left beside it", async () => {
  const folder = temporaryFolder();
  const path = join(folder, "keys/ada.pem");
  await writeSecretFile(path, "secret\n");
  expect(readFileSync(path, "utf8")).toBe("secret\n");
  expect(statSync(path).mode & 0o777).toBe(0o600);
  expect(readdirSync(join(folder, "keys"))).toEqual(["ada.pem"]);
});

test("never over a file, a folder or a link that leads nowhere", async () => {
  const folder = written(temporaryFolder(), { "ada.pem": "other", "keys/inside": "" });
  symlinkSync(join(folder, "nowhere"), join(folder, "link.pem"));
  for (const name of ["ada.pem", "keys", "link.pem"]) {
    await expect(writeSecretFile(join(folder, name), "secret\n"), name).rejects.toThrow(CannotWrite);
  }
  expect(readFileSync(join(folder, "ada.pem"), "utf8")).toBe("other");
  expect(readdirSync(folder).sort()).toEqual(["ada.pem", "keys", "link.pem"]);
});
