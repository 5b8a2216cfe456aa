import { expect, test } from "vitest";
import { checkSeal } from "../../../src/proof/check-seal.ts";
import { checkSignatures } from "../../../src/proof/check-signatures.ts";
import { signingState } from "../../../src/proof/signing-state.ts";
import { readSealedRecord } from "../../../src/record/read-sealed-record.ts";
import { ada, ines, recordToSign, signedBy, signers } from "../../proof/sample-signing.ts";
import { json, page, sign, signersTable, signingDisk } from "../signed-disk.ts";

const record = recordToSign();
const performed = signedBy(record, [ines, "performed"]);

test("a record is signed by one after the other, and issued with the last; page and JSON are written together", async () => {
  const disk = await signingDisk(record);
  const first = await sign(disk, "ines", "performed");
  expect(first).toMatchObject({ told: [], signed: [{ page, signedBy: "Ines Example", signedAs: "performed" }] });
  expect([...disk.written.keys()]).toEqual([page, json]);
  expect(disk.written.get(page)).toContain("Draft, not yet authorised");
  const second = await sign(disk, "ada", "authorised", { paths: [json], now: "2026-11-25T16:02:00+01:00" });
  expect(second.told).toEqual([]);
  const written = [page, json].map((path) => readSealedRecord(disk.written.get(path) ?? "", path));
  for (const one of written) {
    if (!("record" in one)) throw new Error("what was written is a record");
    expect(one.record).toEqual(second.signed[0]?.record);
    expect(checkSeal(one.record)).toEqual([]);
    expect(checkSignatures(one.record, signers)).toEqual([]);
    expect(signingState(one.record).issuedAt).toBe("2026-11-25T16:02:00+01:00");
    expect({ ...one.record, signOff: record.signOff }).toEqual(record);
  }
  expect(disk.written.get(page)).toContain("Issued 2026-11-25");
});

test("the page is a function of the record: written again from its JSON it is the same, byte for byte", async () => {
  const disk = await signingDisk(record);
  await sign(disk, "ines", "performed");
  const { recordFiles } = await import("../../../src/jobs/records/write-record.ts");
  const read = readSealedRecord(disk.written.get(json) ?? "", json);
  if (!("record" in read)) throw new Error("what was written is a record");
  const again = await recordFiles(read.record, "records/LT-204/C-0001");
  for (const { path, text } of again) expect(text === disk.written.get(path), path).toBe(true);
});

test("page and JSON on one command line are one record, and are signed once", async () => {
  const disk = await signingDisk(record);
  const { signed, told } = await sign(disk, "ines", "performed", { paths: [page, json] });
  expect(told).toEqual([]);
  expect(signed).toHaveLength(1);
});

test("the passphrase is asked for once, with the path of the key, whatever the number of records", async () => {
  const other = await signingDisk(record);
  const asked: string[] = [];
  const ask = async (question: string) => {
    asked.push(question);
    return "twelve characters";
  };
  await sign(other, "ines", "performed", { paths: [page, "records/none.html"], ask });
  expect(asked).toEqual(["passphrase of ines.pem: "]);
  await sign(other, "ines", "performed", { paths: ["records/none.html"], ask });
  expect(asked).toHaveLength(1);
});

test("one record that may not be signed does not keep another from it", async () => {
  const disk = await signingDisk(record, { "records/LT-204/broken.html": "<!doctype html>" });
  const { signed, codes } = await sign(disk, "ines", "performed", { paths: ["records/LT-204/broken.html", page] });
  expect(codes).toEqual(["options/not-a-record"]);
  expect(signed.map((one) => one.page)).toEqual([page]);
});

test("a table of signers that is named wins over the one beside the record", async () => {
  const disk = await signingDisk(record, { "mine.csv": signersTable([ada.signer]) });
  const { codes } = await sign(disk, "ines", "performed", { signers: "mine.csv" });
  expect(codes).toEqual(["signing/key-unknown"]);
});

test("by a table in which something is wrong nobody signs, and it is told once", async () => {
  const table = `${signersTable()}Zoe,engineer,short,2026-01-01,,\n`;
  const disk = await signingDisk(record, { "records/signers.csv": table });
  const other = new TextDecoder().decode((await disk.read(page))?.files[0]?.bytes);
  const two = await signingDisk(record, { "records/signers.csv": table, "records/LT-204/copy.html": other });
  const { signed, codes } = await sign(two, "ines", "performed", { paths: [page, "records/LT-204/copy.html"] });
  expect(signed).toEqual([]);
  expect(codes).toEqual(["signing/public-key-form"]);
});

test("nobody signs a page that is not the one of its record, though the record in it is whole", async () => {
  const disk = await signingDisk(record);
  const changed = (
    disk.written.get(page) ?? new TextDecoder().decode((await disk.read(page))?.files[0]?.bytes)
  ).replace("LT-204</bdi></h1>", "LT-205</bdi></h1>");
  const { codes, told } = await sign(await signingDisk(record, { [page]: changed }), "ines", "performed");
  expect(codes).toEqual(["signing/record-doubtful"]);
  expect(told[0]).toContain(`${page} is not what this record gives`);
});

test("nor one whose JSON beside it is another's: nothing that is there is lost", async () => {
  const other = `${JSON.stringify(performed, null, 2)}\n`;
  const { codes, told } = await sign(await signingDisk(record, { [json]: other }), "ines", "performed");
  expect(codes).toEqual(["signing/record-doubtful"]);
  expect(told[0]).toContain(`${json} is not what this record gives`);
});

test("a signing that was ended between its two files does not stand in the way of the next one", async () => {
  const { recordFiles } = await import("../../../src/jobs/records/write-record.ts");
  const [signedPage] = await recordFiles(performed, "records/LT-204/C-0001");
  const cutOff = () => signingDisk(record, { [page]: signedPage?.text ?? "" });
  const later = { now: "2026-11-25T16:02:00+01:00" };
  const disk = await cutOff();
  const { told, signed } = await sign(disk, "ada", "authorised", later);
  expect(told).toEqual([]);
  expect(signingState(signed[0]?.record ?? record).isIssued).toBe(true);
  expect([...disk.written.keys()]).toEqual([page, json]);
  // The file with fewer signatures is not built upon: one of them would be lost.
  expect((await sign(await cutOff(), "ada", "authorised", { ...later, paths: [json] })).signed).toEqual([]);
});

test("a page alone is enough: the JSON is written again", async () => {
  const whole = await signingDisk(record);
  const text = new TextDecoder().decode((await whole.read(page))?.files[0]?.bytes);
  const { memoryDisk } = await import("../memory-disk.ts");
  const keys = { "ines.pem": (await whole.read("ines.pem"))?.files[0]?.bytes ?? "" };
  const disk = memoryDisk({ [page]: text, ...keys, "records/LT-204/signers.csv": signersTable() });
  expect((await sign(disk, "ines", "performed")).told).toEqual([]);
  expect([...disk.written.keys()]).toEqual([page, json]);
});

test("what another check finds keeps a record from being signed", async () => {
  const doubtsOf = () => [{ about: "figures" as const, place: "phases", says: "the zero error is another" }];
  const disk = await signingDisk(record);
  const { told } = await sign(disk, "ines", "performed", { doubtsOf });
  expect(told).toEqual([
    `${page}: the record cannot be signed: the zero error is another; accepted: a record as spanwright report wrote it`,
  ]);
  expect(disk.written.size).toBe(0);
});

test("a disk that refuses leaves both files as they were", async () => {
  const disk = await signingDisk(record, {}, (path) => path === json);
  const { signed, codes } = await sign(disk, "ines", "performed");
  expect(signed).toEqual([]);
  expect(codes).toEqual(["options/cannot-write"]);
  expect(disk.written.size).toBe(0);
});

test("a signature that does not hold is not built upon", async () => {
  const forged = { ...performed, signOff: { signatures: [{ ...performed.signOff.signatures[0]!, signature: "AA" }] } };
  const { told } = await sign(await signingDisk(forged), "ada", "authorised");
  expect(told[0]).toContain("the record cannot be signed: the signature 1: it does not fit");
});
