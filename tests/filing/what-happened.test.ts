import { expect, test } from "vitest";
import { whatHappened } from "../../src/filing/what-happened.ts";
import { fileDigest } from "../../src/record/file-digest.ts";
import { sampleLines } from "./sample-lines.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const [first, second] = sampleLines(2).map((line) => ({ ...line, fileSha256: fileDigest(bytes(line.path)).sha256 }));
if (first === undefined || second === undefined) throw new TypeError("there are two lines");

const happened = async (there: string | undefined, strange: ReadonlyMap<string, { sha256: string }> = new Map()) => {
  const disk = { read: async () => (there === undefined ? undefined : bytes(there)) };
  return (await whatHappened({ disk, path: "f", filed: [first, second], strange }, first, "it cannot be read")).says;
};

test("missing, moved, changed, replaced and unreadable are told apart", async () => {
  expect(await happened(undefined)).toBe("the page is missing; line 1 filed it");
  expect(await happened(undefined, new Map([["x.html", { sha256: first.fileSha256 }]]))).toBe(
    "the page was moved to x.html",
  );
  expect(await happened("other bytes")).toBe("the page was changed after it was filed by line 1");
  expect(await happened(second.path)).toBe(`revision 1 was replaced by the page ${second.path}`);
  expect(await happened(first.path)).toBe("it cannot be read");
});

test("of a page that may not be read is said what was said before", async () => {
  const disk = { read: () => Promise.reject(new Error("EACCES")) };
  const folder = { disk, path: "f", filed: [first], strange: new Map() };
  expect((await whatHappened(folder, first, "it cannot be read")).says).toBe("it cannot be read");
});
