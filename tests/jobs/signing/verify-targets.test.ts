import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { nodeFilingDisk } from "../../../src/cli/node-filing-disk.ts";
import { ledgerHead } from "../../../src/filing/ledger-head.ts";
import { fileRecords } from "../../../src/jobs/filing/file-records.ts";
import { recordJson, recordPage } from "../../../src/jobs/records/write-record.ts";
import { verifierOf } from "../../../src/jobs/signing/verify-targets.ts";
import { temporaryFolder } from "../../filing/sample-pages.ts";
import { ada, ines, signedBy } from "../../proof/sample-signing.ts";
import { withText } from "../../workbook/smallest-workbook.ts";
import { bySignatures } from "../filing/by-signatures.ts";
import { reportedRecord, softwareVersion } from "../reported-records.ts";
import { signersTable } from "../signed-disk.ts";

const disks = { disk: nodeDisk, filing: nodeFilingDisk(() => undefined) };
const workbook = withText("calibrations.csv", "T. Example", "I. Example");
const { record } = await reportedRecord(workbook);
const first = signedBy(record, [ines, "performed"], [ada, "authorised"]);

/** A folder into which a signed page is filed, and the head of its ledger then. */
async function filed() {
  const folder = temporaryFolder();
  writeFileSync(join(folder, "signers.csv"), signersTable());
  writeFileSync(join(folder, "a.html"), await recordPage(first));
  const disk = { ...disks.filing, now: () => "2026-12-24T10:00:00.000+01:00" };
  const into = join(folder, "filed");
  const { rows } = await fileRecords(disk, [join(folder, "a.html")], { ...bySignatures, into });
  return { folder, into, path: rows[0]?.path ?? "", head: (await ledgerHead(disks.filing, into)).sha256 };
}

async function verified(folder: string, path: string, since: string) {
  const verification = { softwareVersion, signers: join(folder, "signers.csv"), since };
  const found = await verifierOf(disks, verification)([{ kind: "found", path }]);
  const [{ verified: one } = { verified: undefined }] = found;
  return { outcome: one?.outcome, note: one?.note, doubts: one?.doubts.map(({ about }) => about) };
}

test("what is unchanged since the head that was noted is not made again, and that is said", async () => {
  const { folder, path, head } = await filed();
  expect(await verified(folder, path, head)).toEqual({
    ...{ outcome: "ok", doubts: [] },
    note: "unchanged since the head that was noted: figures and page were not made again, seal and signatures were checked",
  });
});

test("by a head that no line has, or with other bytes, everything is made again", async () => {
  const { folder, path, head } = await filed();
  expect(await verified(folder, path, "0123456789abcdef")).toEqual({ outcome: "ok", note: undefined, doubts: [] });
  const page = await recordPage(first);
  writeFileSync(path, page.replace(">It passes: the worst", ">It fails: the worst"));
  expect((await verified(folder, path, head)).doubts).toEqual(["page", "ledger"]);
});

test("signatures are checked whatever was verified before: a key may have been revoked since", async () => {
  const { folder, path, head } = await filed();
  const [heading, ...rows] = signersTable().split("\n");
  writeFileSync(join(folder, "signers.csv"), [heading, ...rows.filter((row) => !row.startsWith("Ines"))].join("\n"));
  expect((await verified(folder, path, head)).doubts).toEqual(["signatures"]);
});

test("a ledger is held against the head that it was verified to", async () => {
  const { folder, into, head } = await filed();
  const doubtsOf = async (since: string) => {
    const [ledger] = await verifierOf(disks, { softwareVersion, since })([{ kind: "ledger", path: into }]);
    return ledger?.verified.doubts.map(({ says }) => says.slice(0, 27));
  };
  expect(await doubtsOf(head)).toEqual([]);
  expect(await doubtsOf("0123456789abcdef")).toEqual(["no line has the noted head:"]);
  expect(folder).not.toBe("");
});

test("a page and the JSON beside it come back together, in their order", async () => {
  const folder = temporaryFolder();
  const [page, json] = [join(folder, "a.html"), join(folder, "a.json")];
  writeFileSync(page, await recordPage(record));
  writeFileSync(json, recordJson(record));
  const found = await verifierOf(disks, { softwareVersion })([page, json].map((path) => ({ kind: "found", path })));
  expect(found.map(({ verified: { path, outcome } }) => [path, outcome])).toEqual([
    [page, "ok"],
    [json, "ok"],
  ]);
});

test("a record is parsed once for its page and the JSON beside it, and a JSON that was altered is doubted", async () => {
  const folder = temporaryFolder();
  const [page, json] = [join(folder, "a.html"), join(folder, "a.json")];
  writeFileSync(page, await recordPage(record));
  writeFileSync(json, recordJson(record));
  const verify = verifierOf(disks, { softwareVersion, now: undefined, signers: undefined });
  const parse = vi.spyOn(JSON, "parse");
  const timesRead = () => parse.mock.calls.filter(([text]) => text.includes('"seal":{')).length;
  const found = await verify([page, json].map((path) => ({ kind: "found" as const, path })));
  expect(found.map(({ verified }) => verified.outcome)).toEqual(["ok", "ok"]);
  // Once as it was read; once as its rows gave it again.
  expect(timesRead()).toBe(2);
  parse.mockRestore();
  writeFileSync(json, recordJson({ ...record, figureBasis: "another" }));
  const [ofPage, ofJson] = await verify([page, json].map((path) => ({ kind: "found" as const, path })));
  expect([ofPage?.verified.outcome, ofJson?.verified.outcome]).toEqual(["ok", "doubt"]);
  expect(ofJson?.verified.doubts.map(({ about }) => about)).toContain("seal");
});
