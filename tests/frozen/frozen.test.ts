import { cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { version as present } from "../../package.json";
import { nodeDisk } from "../../src/cli/node-disk.ts";
import { nodeFilingDisk } from "../../src/cli/node-filing-disk.ts";
import { fileRecords } from "../../src/jobs/filing/file-records.ts";
import { listDue } from "../../src/jobs/filing/list-due.ts";
import { writeHistory } from "../../src/jobs/filing/write-history.ts";
import { writeRegister } from "../../src/jobs/filing/write-register.ts";
import { amendRecord } from "../../src/jobs/records/amend-record.ts";
import { makeLabels } from "../../src/jobs/records/make-labels.ts";
import { recordPage } from "../../src/jobs/records/write-record.ts";
import { signRecords } from "../../src/jobs/signing/sign-records.ts";
import { type Verified, verifyFiles } from "../../src/jobs/signing/verify-files.ts";
import { recordVerifier, verifyRecord } from "../../src/jobs/signing/verify-record.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { keyFileText } from "../../src/proof/signing-key.ts";
import { readSealedRecord } from "../../src/record/read-sealed-record.ts";
import { temporaryFolder } from "../filing/sample-pages.ts";
import { howMany } from "../how-many.ts";
import { ines } from "../proof/sample-signing.ts";
import { thawed, thawInto } from "./thawed.ts";

const today = "2026-11-25";
const now = `${today}T08:00:00+01:00`;
const filing = nodeFilingDisk(() => undefined);
const disks = { filing, plain: nodeDisk };
const verifying = { verify: recordVerifier(), softwareVersion: present };
const isRecord = (path: string) => /\.(?:html|json)$/u.test(path) && !path.startsWith("unsealed/");

async function verified(paths: readonly string[], signers?: string) {
  const seen: Verified[] = [];
  const { problems } = await verifyFiles({ disk: nodeDisk, filing }, paths, {
    ...{ softwareVersion: present, now, signers },
    onVerified: (one) => seen.push(one),
  });
  expect(problems.all).toEqual([]);
  return seen;
}

const told = (seen: readonly Verified[]) => seen.flatMap(({ doubts }) => doubts.map(({ says }) => says));

function filedFolder(version: string): string {
  const folder = temporaryFolder();
  thawInto(folder, version, "filed");
  return folder;
}

describe.each(["0.1.0", "0.2.0"])("of what spanwright %s wrote", (version) => {
  const records = [...thawed(version)].filter(([path]) => isRecord(path));
  const texts = records.map(([path, bytes]) => [path, bytes.toString("utf8")] as const);

  test("every record is read, in the present form for questions, and as it was written for proofs", () => {
    expect(texts).toHaveLength(22);
    for (const [path, text] of texts) {
      const read = readSealedRecord(text, path);
      if (!("record" in read)) throw new Error(`${path}: ${read.doubts[0]?.says}`);
      expect(read).toMatchObject({ form: 1, unknownFields: [], record: { software: { version } } });
      const json = /id="record">([^<]*)</u.exec(text)?.[1] ?? text;
      expect(read.written).toEqual(JSON.parse(json));
    }
  });

  test("drafts, half signed, signed, filed, amended and signed on paper are verified, and there is no doubt", async () => {
    const folder = temporaryFolder();
    for (const below of ["drafts", "signed", "filed"]) thawInto(join(folder, below), version, below);
    const seen = await verified([folder], join(folder, "filed/signers.csv"));
    expect(told(seen)).toEqual([]);
    expect(seen).toHaveLength(23);
    const notes = new Map(seen.map(({ path, note }) => [path.slice(folder.length + 1), note]));
    expect(notes.get("filed/LT-120/2024-03-12_C-2024-010_r2.html")).toMatch(
      new RegExp(
        `^written by spanwright ${version} in form 1, verified by ${present}; the \\d{3,4} figures that both versions define agree with its rows within 1 in 10\\^9; the page was not drawn again: its SHA-256 is that in line 5 of the ledger$`,
        "u",
      ),
    );
    expect(notes.get("drafts/C-2026-015.html")).toMatch(/the record inside it says was not checked$/u);
    for (const [path, note] of notes) if (isRecord(path)) expect(note, path).toMatch(/the \d+ figures that both/u);
  }, 120_000);

  /** Of the drafts so many are drawn, for the earlier form is read the same way in each. */
  const apart = howMany(6, 1);

  test("they are drawn, and each is labelled", async () => {
    const folder = temporaryFolder();
    const drafts = thawInto(folder, version, "drafts");
    for (const path of drafts.filter((draft) => draft.endsWith(".json")).filter((_, place) => place % apart === 0)) {
      const read = readSealedRecord(readFileSync(path, "utf8"), path);
      if (!("record" in read)) throw new Error(path);
      expect(await recordPage(read.record)).toContain(read.record.seal.fingerprint);
    }
    const problems = new ProblemList();
    const out = join(folder, "labels.html");
    expect(await makeLabels(nodeDisk, drafts, { out, isSheet: true, skipped: 0 }, problems)).toBe(13);
    expect(problems.all).toEqual([]);
  }, 120_000);

  test("the filed ones stand in register, history and due list, also when the index is made anew", async () => {
    for (const isIndexGone of [false, true]) {
      const folder = filedFolder(version);
      if (isIndexGone) rmSync(join(folder, "index.jsonl"));
      const register = await writeRegister(disks, folder, { today, soonDays: 30 });
      expect(register.problems.all.map(sentence)).toEqual([]);
      expect(register.written?.register).toMatchObject({ records: 5, openFindings: [] });
      expect(register.written?.register.rows.map(({ tag, revision }) => [tag, revision])).toEqual([
        ["LT-120", 2],
        ["LT-430", 1],
        ["LT-808", 1],
      ]);
      const due = await listDue(disks, folder, { today, now, within: "30d" });
      expect(due.problems.all).toEqual([]);
      expect(due.rows.map((row) => row[2])).toEqual(expect.arrayContaining(["LT-120", "LT-430", "LT-808"]));
      const { history, problems } = await writeHistory(disks, folder, { tag: "LT-120", out: join(folder, "h.html") });
      expect(problems.all.map(sentence)).toEqual([]);
      expect(history?.overTheYears.records.map(({ calibration }) => calibration)).toEqual(["C-2023-013", "C-2024-010"]);
    }
  });

  test("nobody signs a record further whose page this version would draw otherwise", async () => {
    const folder = temporaryFolder();
    const [part = ""] = thawInto(folder, version, "signed").filter((path) => path.endsWith("_part.json"));
    thawInto(folder, version, "filed");
    writeFileSync(join(folder, "ines.pem"), keyFileText(ines.key, "twelve characters"));
    const before = readFileSync(part);
    const { signed, problems } = await signRecords(nodeDisk, [part], {
      ...{ as: "authorised", key: join(folder, "ines.pem"), now, softwareVersion: present },
      ask: async () => "twelve characters",
    });
    expect(signed).toEqual([]);
    expect(problems.all.map(sentence).join()).toContain(`spanwright ${version} wrote it and this is ${present}`);
    expect(readFileSync(part)).toEqual(before);
  });

  test("a filed one is amended by this version, and the folder of both is verified without a doubt", async () => {
    const folder = filedFolder(version);
    const book = temporaryFolder();
    cpSync("data-demo/history/2023", book, { recursive: true });
    const readings = join(book, "readings.csv");
    const lines = readFileSync(readings, "utf8").split("\n");
    const at = lines.findIndex((line) => line.startsWith("C-2023-050"));
    writeFileSync(readings, lines.with(at, (lines[at] ?? "").replace(/\d(?=\D*$)/u, "3")).join("\n"));
    const page = join(folder, "LT-430/2023-10-10_C-2023-050_r1.html");
    const options = { workbook: book, reason: "a slip", by: "Ines Example", out: book, today, now };
    const amended = await amendRecord({ disk: nodeDisk, filing }, page, { ...options, softwareVersion: present });
    expect(amended.problems.all.map(sentence)).toEqual([]);
    const draft = amended.written?.page ?? "";
    const filed = await fileRecords(filing, [draft], { ...verifying, into: folder, paper: "binder 8" });
    expect(filed.problems.all.map(sentence)).toEqual([]);
    expect(told(await verified([folder]))).toEqual([]);
    const register = await writeRegister(disks, folder, { today, soonDays: 30 });
    expect(register.written?.register.rows[1]).toMatchObject({ tag: "LT-430", revision: 2 });
  }, 60_000);

  test("a page that was signed then is filed now, byte for byte", async () => {
    const folder = temporaryFolder();
    thawInto(folder, version, "signed");
    const page = join(folder, "C-2025-044.html");
    const into = join(folder, "filed");
    writeFileSync(join(folder, "signers.csv"), thawed(version).get("filed/signers.csv") ?? "");
    const { rows, problems } = await fileRecords(filing, [page], {
      ...verifying,
      into,
      signers: join(folder, "signers.csv"),
    });
    expect(problems.all.map(sentence)).toEqual([]);
    expect(readFileSync(rows[0]?.path ?? "").equals(readFileSync(page))).toBe(true);
    expect(told(await verified([into], join(folder, "signers.csv")))).toEqual([]);
  });

  describe("a changed byte", () => {
    test("of any JSON is a doubt", async () => {
      const json = texts.filter(([path]) => path.endsWith(".json")).at(-1)?.[1] ?? "";
      const step = Math.floor(json.length / howMany(5, 40));
      for (let place = 7; place < json.length; place += step) {
        const other = `${json.slice(0, place)}${json[place] === "7" ? "8" : "7"}${json.slice(place + 1)}`;
        expect(await doubtsOf(other), `at ${place}`).not.toEqual([]);
      }
    }, 60_000);

    test("of a filed page, wherever it stands, is a doubt, by the page alone too", async () => {
      const folder = filedFolder(version);
      const path = join(folder, "LT-808/2025-09-09_C-2025-044_r1.html");
      const page = readFileSync(path);
      for (const place of [20, page.indexOf("<h1"), page.indexOf("<svg") + 30, page.length - 3]) {
        const other = Buffer.from(page);
        other[place] = other[place] === 0x37 ? 0x38 : 0x37;
        writeFileSync(path, other);
        const seen = await verified([path], join(folder, "signers.csv"));
        expect(told(seen), `at ${place}`).toContain(
          "line 6 of the ledger filed another file under this name, by its SHA-256",
        );
      }
    });

    test("of a signed page that nobody filed is a doubt where it touches the record inside it", async () => {
      const page = texts.find(([path]) => path === "signed/C-2025-044.html")?.[1] ?? "";
      const start = page.indexOf('id="record">') + 12;
      for (let place = start + 1; place < page.indexOf("</script>", start); place += howMany(11_994, 1999)) {
        const other = `${page.slice(0, place)}${page[place] === "7" ? "8" : "7"}${page.slice(place + 1)}`;
        expect(await doubtsOf(other), `at ${place}`).not.toEqual([]);
      }
    });
  });
});

async function doubtsOf(text: string) {
  const doubts = await verifyRecord(text, "a.html", { softwareVersion: present, signers: [] });
  // There is no table of signers here.
  return doubts.filter(({ says }) => !says.includes("is not in the table of signers"));
}

test("a record from before records were sealed is told so", () => {
  const text = thawed("0.1.0").get("unsealed/C-2026-033.json")?.toString("utf8") ?? "";
  expect(readSealedRecord(text, "a.json")).toMatchObject({
    doubts: [{ says: "the record has no seal: nothing shows that it is as it was written" }],
  });
});
