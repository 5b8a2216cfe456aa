import { createHash } from "node:crypto";
import { chmodSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { nodeFilingDisk } from "../../../src/cli/node-filing-disk.ts";
import { fileRecords } from "../../../src/jobs/filing/file-records.ts";
import { recordJson, recordPage } from "../../../src/jobs/records/write-record.ts";
import { type Verified, verifyFiles } from "../../../src/jobs/signing/verify-files.ts";
import { temporaryFolder } from "../../filing/sample-pages.ts";
import { ada, ines, signedBy } from "../../proof/sample-signing.ts";
import type { Texts } from "../../workbook/smallest-workbook.ts";
import { withText } from "../../workbook/smallest-workbook.ts";
import { bySignatures } from "../filing/by-signatures.ts";
import { reportedRecord, softwareVersion } from "../reported-records.ts";
import { signersTable } from "../signed-disk.ts";

const { record, page, json } = await reportedRecord(withText("calibrations.csv", "T. Example", "I. Example"));
const signed = signedBy(record, [ines, "performed"], [ada, "authorised"]);
const signedPage = await recordPage(signed);
const register = "<!doctype html><title>Register of calibrations</title><p>LT-1";

/** A new folder with these files in it. */
function folderWith(texts: Texts): string {
  const folder = temporaryFolder();
  for (const [name, content] of Object.entries(texts)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return folder;
}

async function verified(folder: string, paths: readonly string[] = [""], signers?: string, notedHead?: string) {
  const seen: Verified[] = [];
  const disks = { disk: nodeDisk, filing: nodeFilingDisk(() => undefined) };
  const { problems, tables } = await verifyFiles(
    disks,
    paths.map((path) => join(folder, path)),
    {
      softwareVersion,
      notedHead,
      ...(signers !== undefined && { signers: join(folder, signers) }),
      onVerified: (one, done) => {
        seen.push(one);
        expect(done).toBe(seen.length);
      },
    },
  );
  return {
    lines: seen.map(({ outcome, path, what }) => {
      const [short] = what.split(", head ");
      return `${outcome} ${path.slice(folder.length + 1)}: ${short}`;
    }),
    heads: seen.flatMap(({ what }) => what.split(", head ")[1] ?? []),
    doubts: seen.flatMap(({ doubts }) => doubts),
    codes: problems.all.map(({ code }) => code),
    tables: tables.map(({ path, sha256 }) => [path.slice(folder.length + 1), sha256]),
  };
}

describe("a folder", () => {
  test("of records is verified in order; what is no record is passed over and said", async () => {
    const folder = folderWith({ "LT-1/C-1.html": page, "LT-1/C-1.json": json, "register.html": register, "a.csv": "" });
    expect(await verified(folder)).toMatchObject({
      lines: [
        "ok LT-1/C-1.html: LT-1, C-1, revision 1, not signed",
        "ok LT-1/C-1.json: LT-1, C-1, revision 1, not signed",
        "passed over register.html: no record in it",
      ],
      doubts: [],
      codes: [],
    });
  });

  test("with damaged records tells each of them: none is taken for something else", async () => {
    const bytes = new TextEncoder().encode(page);
    bytes[bytes.length - 40] = 0xff;
    const folder = folderWith({
      "bytes.html": bytes,
      "cut.html": page.slice(0, -120),
      "element.html": page.replace('id="record"', 'id="recorc"'),
      "form.json": json.replace("spanwright-record/2", "spanwright-recorc/2"),
      "mark.html": page.replace("calibration record", "calibration recorc"),
      "mark.json": `\uFEFF${json}`,
    });
    const { lines, doubts } = await verified(folder);
    expect(lines).toEqual([
      "doubt bytes.html: damaged",
      "doubt cut.html: no record that can be read",
      "doubt element.html: no record that can be read",
      "doubt form.json: no record that can be read",
      "doubt mark.html: LT-1, C-1, revision 1, not signed",
      "doubt mark.json: no record that can be read",
    ]);
    expect(doubts.map(({ about }) => about)).toEqual(["file", "file", "file", "file", "page", "file"]);
  });

  test("without any record is not verified: a slip of the pen in its name must not look like a good end", async () => {
    expect((await verified(folderWith({ "register.html": register }))).codes).toEqual(["options/no-records"]);
    expect((await verified(folderWith({}))).codes).toEqual(["options/no-records"]);
  });
});

describe("a file that was named", () => {
  test("and holds no record is a doubt", async () => {
    const folder = folderWith({ "register.html": register });
    expect((await verified(folder, ["register.html"])).doubts).toMatchObject([{ about: "file" }]);
  });

  test("and is not there stops before anything is verified", async () => {
    const folder = folderWith({ "a.html": page });
    expect(await verified(folder, ["a.html", "gone.html"])).toMatchObject({
      lines: [],
      doubts: [],
      codes: ["options/no-records"],
    });
  });

  test.skipIf(process.getuid?.() === 0)("and may not be read is a doubt, and the next is verified", async () => {
    const folder = folderWith({ "a.html": page, "b.html": page });
    chmodSync(join(folder, "a.html"), 0);
    expect((await verified(folder)).lines[1]).toContain("ok b.html");
  });

  test("and went away, or cannot be read, keeps nobody from verifying the others", async () => {
    const folder = folderWith({ "a.html": page, "b.html": page, "c.html": page });
    const seen: Verified[] = [];
    const disk: Pick<typeof nodeDisk, "read"> = {
      read: (path, isWanted) => {
        if (path.endsWith("a.html")) return Promise.reject(new Error("EIO: i/o error"));
        return path.endsWith("b.html") ? Promise.resolve(undefined) : nodeDisk.read(path, isWanted);
      },
    };
    await verifyFiles({ disk, filing: nodeFilingDisk(() => undefined) }, [folder], {
      softwareVersion,
      onVerified: (one) => seen.push(one),
    });
    expect(seen.map(({ doubts }) => doubts[0]?.says)).toEqual([
      "it cannot be read: EIO: i/o error",
      "it cannot be read: it is not there any more",
      undefined,
    ]);
  });
});

describe("signatures", () => {
  test("are checked by the table in the folder above, or by the one that was given", async () => {
    const folder = folderWith({ "r/LT-1/a.html": signedPage, "r/signers.csv": signersTable(), "o/b.html": signedPage });
    expect((await verified(folder, ["r"])).lines).toEqual(["ok r/LT-1/a.html: LT-1, C-1, revision 1, signed"]);
    expect((await verified(folder, ["o"])).doubts).toMatchObject([{ about: "signatures", place: "signOff" }]);
    expect((await verified(folder, ["o"], "r/signers.csv")).doubts).toEqual([]);
  });

  test("by somebody who is not in the table are a doubt", async () => {
    const folder = folderWith({ "a.html": signedPage, "signers.csv": signersTable([ines.signer]) });
    expect((await verified(folder)).doubts).toMatchObject([{ about: "signatures", place: "signOff.signatures[1]" }]);
  });

  test("are not checked by a table that is not there or that cannot be read: nothing is", async () => {
    const folder = folderWith({ "a.html": signedPage, "broken.csv": "name\n" });
    expect(await verified(folder, [""], "gone.csv")).toMatchObject({ lines: [], codes: ["signing/no-signers"] });
    expect((await verified(folder, [""], "broken.csv")).lines).toEqual([]);
  });

  test("of one of two are signed in part", async () => {
    const folder = folderWith({
      "a.json": recordJson(signedBy(record, [ines, "performed"])),
      "signers.csv": signersTable(),
    });
    expect((await verified(folder)).lines).toEqual(["ok a.json: LT-1, C-1, revision 1, signed in part"]);
  });
});

describe("a folder of filed records", () => {
  async function filed(): Promise<{ folder: string; path: string }> {
    const folder = folderWith({ "a.html": signedPage, "signers.csv": signersTable() });
    const disk = { ...nodeFilingDisk(() => undefined), now: () => "2026-12-24T10:00:00.000+01:00" };
    const { rows, problems } = await fileRecords(disk, [join(folder, "a.html")], {
      ...bySignatures,
      into: join(folder, "filed"),
    });
    expect(problems.all).toEqual([]);
    return { folder, path: (rows[0]?.path ?? "").slice(folder.length + 1) };
  }

  test("is verified with its ledger, page by page", async () => {
    const { folder, path } = await filed();
    const { lines, tables } = await verified(folder, ["filed"], "signers.csv");
    expect(tables).toEqual([["signers.csv", createHash("sha256").update(signersTable()).digest("hex")]]);
    expect(lines).toEqual([
      "ok filed/ledger.jsonl: ledger of 1 line",
      `ok ${path}: LT-1, C-1, revision 1, signed, filed 29 days after the last signature`,
    ]);
  });

  test("is verified against the head of its ledger that was noted before", async () => {
    const { folder } = await filed();
    const { heads } = await verified(folder, ["filed"], "signers.csv");
    expect(heads).toHaveLength(1);
    expect((await verified(folder, ["filed"], "signers.csv", heads[0])).doubts).toEqual([]);
    const { doubts } = await verified(folder, ["filed"], "signers.csv", "0123456789abcdef");
    expect(doubts.map(({ says }) => says)).toEqual([
      "no line has the noted head: lines that were there when it was noted are gone, or were altered",
    ]);
  });

  test("a noted head is of one ledger: without one nothing is verified", async () => {
    const folder = folderWith({ "a.html": signedPage, "signers.csv": signersTable() });
    const { lines, codes } = await verified(folder, [""], undefined, "0123456789abcdef");
    expect([lines, codes]).toEqual([[], ["options/one-ledger"]]);
  });

  test("of which a page was moved away is doubtful", async () => {
    const { folder, path } = await filed();
    renameSync(join(folder, path), join(folder, "taken.html"));
    const { lines, doubts } = await verified(folder, ["filed"], "signers.csv");
    expect(lines).toEqual(["doubt filed/ledger.jsonl: ledger of 1 line"]);
    expect(doubts[0]?.says).toContain("missing");
  });

  test("of which a page was exchanged for a draft of the same record is doubtful, though the draft is whole", async () => {
    const { folder, path } = await filed();
    writeFileSync(join(folder, path), page);
    const { lines, doubts } = await verified(folder, ["filed"], "signers.csv");
    expect(lines).toEqual([
      "doubt filed/ledger.jsonl: ledger of 1 line",
      `doubt ${path}: LT-1, C-1, revision 1, not signed`,
    ]);
    expect(doubts[0]?.says).toContain("changed after it was filed");
    expect(doubts[1]?.says).toBe("line 1 of the ledger filed another file under this name, by its SHA-256");
    expect(readFileSync(join(folder, path), "utf8")).toBe(page);
  });
});

test("a signature of a time that is yet to come is told by the clock that is given", async () => {
  const folder = folderWith({ "LT-1/C-1.html": signedPage, "signers.csv": signersTable() });
  const says: string[] = [];
  const disks = { disk: nodeDisk, filing: nodeFilingDisk(() => undefined) };
  await verifyFiles(disks, [folder], {
    ...{ softwareVersion, now: "2026-11-01T00:00:00+01:00" },
    onVerified: ({ doubts }) => says.push(...doubts.map((doubt) => doubt.says)),
  });
  expect(says).toEqual([
    expect.stringContaining("the signature 1: its time, 2026-11-25T14:00:00+01:00, is yet to come"),
    expect.stringContaining("the signature 2: its time, 2026-11-25T14:01:00+01:00, is yet to come"),
  ]);
});
