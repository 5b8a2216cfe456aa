import { mkdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { nodeDisk } from "../../src/cli/node-disk.ts";
import { CannotFile } from "../../src/filing/cannot-file.ts";
import { filePage } from "../../src/filing/file-page.ts";
import { filingFolder } from "../../src/filing/filing-folder.ts";
import { changeFiledTag } from "../../src/jobs/filing/change-filed-tag.ts";
import { decideFiledFinding } from "../../src/jobs/filing/decide-filed-finding.ts";
import { disposeFiledPages } from "../../src/jobs/filing/dispose-filed-pages.ts";
import { fileRecords } from "../../src/jobs/filing/file-records.ts";
import { restoreFiledPage, withdrawFiledPage } from "../../src/jobs/filing/withdraw-filed-page.ts";
import { amendRecord } from "../../src/jobs/records/amend-record.ts";
import { recordVerifier } from "../../src/jobs/signing/verify-record.ts";
import { filingProblems } from "../../src/problems/filing-problems.ts";
import type { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { amended, diskWith, onPaper, pageOf, recordOf, samplePage, temporaryFolder } from "../filing/sample-pages.ts";
import { bySignatures } from "../jobs/filing/by-signatures.ts";
import { smallestWorkbook, withText } from "../workbook/smallest-workbook.ts";

type FilingCode = keyof typeof filingProblems;
type Contents = Readonly<Record<string, Uint8Array | string>>;

const first = samplePage();
const second = amended(first.record, "put right");
const filedFirst = "filed/LT-1/2026-03-04_C-1_r1.html";
const text = new TextDecoder().decode(first.bytes);

/** A folder with these files, and the sentences that something in it leads to, without the folder's own name. */
async function told(contents: Contents, act: (folder: string) => Promise<ProblemList>): Promise<readonly string[]> {
  const folder = temporaryFolder();
  for (const [name, content] of Object.entries(contents)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return (await act(folder)).all.map((problem) => sentence(problem).replaceAll(`${folder}/`, ""));
}

const file = (contents: Contents, paper: string | undefined = "binder 7", disk = diskWith()) =>
  told(contents, async (folder) => {
    const pages = Object.keys(contents).filter((name) => !name.includes("/"));
    const paths = pages.map((name) => join(folder, name));
    return (await fileRecords(disk, paths, { ...bySignatures, into: join(folder, "filed"), paper })).problems;
  });

const decide = (page = samplePage({ isOutOfTolerance: true }), words = {}, change = (_: string) => {}) =>
  told({}, async (folder) => {
    await filePage(filingFolder(diskWith(), folder), page, {});
    change(join(folder, "LT-1/2026-03-04_C-1_r1.html"));
    const decided = { tag: "LT-1", calibration: "C-1", decision: "no impact", by: "A. Example", ...words };
    return (await decideFiledFinding(diskWith(), folder, decided)).problems;
  });

const withdraw = (revision: string, pages = [first]) =>
  told({}, async (folder) => {
    for (const page of pages) await filePage(filingFolder(diskWith(), folder), page, onPaper);
    const asked = { tag: "LT-1", calibration: "C-1", revision, reason: "a slip", by: "A. Example" };
    return (await withdrawFiledPage(diskWith(), folder, asked)).problems;
  });

const later = samplePage({ calibration: "C-2", performedOn: "2026-05-04" });
const disposal = { before: "2026-04-01", reason: "kept long enough", by: "A. Example" };

const changeOf = (tag: string, to: string) =>
  told({}, async (folder) => {
    await filePage(filingFolder(diskWith(), folder), first, onPaper);
    const asked = { tag, reason: "new tags", by: "A. Example", change: { action: "renamed", to } as const };
    return (await changeFiledTag(diskWith(), folder, asked)).problems;
  });

const issued = pageOf(await recordOf(smallestWorkbook));
const amend = (page: string, workbook: object = smallestWorkbook, isFiled = true) =>
  told(
    { "C-1.html": issued.bytes, ...Object.fromEntries(Object.entries(workbook).map(([n, t]) => [`book/${n}`, t])) },
    async (folder) => {
      const filing = filingFolder(diskWith(), join(folder, "filed"));
      if (isFiled) for (const one of [issued, amended(issued.record, "x")]) await filePage(filing, one, onPaper);
      const disks = { disk: nodeDisk, filing: diskWith() };
      const { problems } = await amendRecord(disks, join(folder, page), {
        ...{ workbook: join(folder, "book"), reason: "a slip", by: "T. Example", out: join(folder, "out") },
        ...{ today: "2026-11-25", now: "2026-11-25T14:05:00+01:00", softwareVersion: "0.0.0" },
      });
      return problems;
    },
  );

/** A clock that runs away, so that nobody has to wait. */
function hastyDisk() {
  let now = 0;
  return diskWith({
    host: "here",
    elapsedMilliseconds: () => now,
    pause: async () => {
      now += 1_000;
    },
  });
}

const draftWords = "it is not yet signed as performed and authorised";

/** The smallest input that provokes each code; the type asks for every one. */
const provocations: Readonly<Record<FilingCode, { told: () => Promise<readonly string[]>; says: string }>> = {
  "filing/data-alone": {
    told: () => file({ "a.json": JSON.stringify(first.record) }),
    says: "a.json: this is the data of a record without its page; accepted: the page (.html) as it was signed",
  },
  "filing/no-record": {
    told: () => file({ "a.html": "" }),
    says: "a.html: this is no calibration record: no record is embedded in it; accepted: a page of a record, as spanwright report and spanwright sign write it",
  },
  "filing/seal-broken": {
    told: () => file({ "a.html": text.replace('"figureBasis":"', '"figureBasis":"x') }),
    says: "a.html: the content of the record is not the one that was sealed; accepted: the page as it was signed; spanwright verify tells what differs",
  },
  "filing/not-issued": {
    told: () =>
      told({ "a.html": first.bytes }, async (folder) => {
        return (
          await fileRecords(diskWith(), [join(folder, "a.html")], { ...bySignatures, into: join(folder, "filed") })
        ).problems;
      }),
    says: `a.html: the record is a draft: ${draftWords}; accepted: a record with every signature that it needs, or --signed-on-paper with the place where the signed paper lies`,
  },
  "filing/signature-doubtful": {
    told: () => {
      const signOff = { signatures: [{ protected: "e30", signature: "AA" }] };
      const signed = text.replace('"signOff":{"signatures":[]}', `"signOff":${JSON.stringify(signOff)}`);
      return file({ "a.html": signed, "filed/signers.csv": "name,role,public_key,valid_from\n" });
    },
    says: "a.html: the signature 1: its header lacks or misstates alg, kid, typ, name, role, meaning, signedAt; accepted: a page of which spanwright verify doubts no signature",
  },
  "filing/page-doubtful": {
    told: () =>
      told({ "a.html": first.bytes }, async (folder) => {
        const options = { ...bySignatures, verify: recordVerifier(), into: join(folder, "filed"), paper: "binder 7" };
        return (await fileRecords(diskWith(), [join(folder, "a.html")], options)).problems;
      }),
    says: "a.html: calibration: its parts are not in the order in which a record is written; and 1 further doubt; accepted: a page that spanwright verify does not doubt",
  },
  "filing/issued-already": {
    told: () => file({ "a.html": first.bytes, "b.html": text.replace("<p>", "<p>other") }),
    says: "b.html: LT-1/2026-03-04_C-1_r1.html is issued already, with other content; accepted: the very same bytes, or a new revision made by spanwright amend",
  },
  "filing/tag-like-another": {
    told: () => file({ "a.html": first.bytes, "b.html": samplePage({ tag: "lt-1" }).bytes }),
    says: "b.html: its tag lt-1 looks like LT-1, of which pages are filed: they differ by capitals, spaces or characters that look the same; accepted: one spelling of each tag; spanwright withdraw takes a page out that has the wrong one",
  },
  "filing/replaces-nothing": {
    told: () => file({ "a.html": pageOf({ ...first.record, revision: 2 }).bytes }),
    says: "a.html: it is revision 2, and does not say rightly which revision it replaces; accepted: a revision made by spanwright amend",
  },
  "filing/revision-missing": {
    told: () => file({ "a.html": second.bytes }),
    says: "a.html: it is revision 2, and revision 1 is not in the folder; accepted: the revisions of a calibration in their order",
  },
  "filing/replaces-another": {
    told: () => file({ "a.html": pageOf({ ...first.record, figureBasis: "another" }).bytes, "b.html": second.bytes }),
    says: "b.html: it replaces a revision 1 that is not the one filed as LT-1/2026-03-04_C-1_r1.html; accepted: an amendment of the filed record",
  },
  "filing/ledger-broken": {
    told: () => file({ "a.html": first.bytes, "filed/ledger.jsonl": "\n" }),
    says: "a.html: the ledger does not hold together: line 1 is no line of a ledger; accepted: the ledger as it was written, from a backup; spanwright verify tells more",
  },
  "filing/locked": {
    told: () =>
      told({ "a.html": first.bytes }, async (folder) => {
        mkdirSync(join(folder, "filed"));
        symlinkSync("nowhere", join(folder, "filed/filing.lock"));
        const options = { ...bySignatures, into: join(folder, "filed"), paper: "binder 7" };
        return (await fileRecords(hastyDisk(), [join(folder, "a.html")], options)).problems;
      }),
    says: "a.html: the folder is kept by something unreadable; accepted: a folder that nobody else files into at the moment; if nobody does, remove filed/filing.lock",
  },
  "filing/lock-lost": {
    told: () => {
      const { createOnce, remove } = diskWith();
      const disk = diskWith({
        createOnce: async (path, content, keeping) => {
          if (path.endsWith(".html")) await remove(join(path, "../../filing.lock"));
          return createOnce(path, content, keeping);
        },
      });
      return file({ "a.html": first.bytes }, "binder 7", disk);
    },
    says: "a.html: another process took the folder over, because this one stood still too long; nothing was entered; accepted: the same command once more",
  },
  "filing/record-unknown": {
    told: () => decide(first, { calibration: "C-9" }),
    says: "no record of calibration C-9 of the tag LT-1 is filed there; accepted: tag and calibration as the register shows them",
  },
  "filing/revision-unknown": {
    told: () => withdraw("2"),
    says: "no page of revision 2 of calibration C-1 of the tag LT-1 counts there; accepted: tag, calibration and --revision as the register shows them",
  },
  "filing/disposed-of": {
    told: () =>
      told({}, async (folder) => {
        for (const page of [first, later]) await filePage(filingFolder(diskWith(), folder), page, onPaper);
        await disposeFiledPages(diskWith(), folder, disposal);
        writeFileSync(join(folder, "a.html"), first.bytes);
        const options = { ...bySignatures, into: folder, paper: "binder 7" };
        return (await fileRecords(diskWith(), [join(folder, "a.html")], options)).problems;
      }),
    says: "a.html: line 3 of the ledger disposed of LT-1/2026-03-04_C-1_r1.html; accepted: a page that was not disposed of; this one is kept no more",
  },
  "filing/nothing-to-dispose-of": {
    told: () =>
      told({}, async (folder) => {
        await filePage(filingFolder(diskWith(), folder), first, onPaper);
        return (await disposeFiledPages(diskWith(), folder, disposal)).problems;
      }),
    says: "no page is of work before 2026-04-01, and replaced by a later one or out of use; accepted: --before with a later day; the last record of a loop in use is kept, and so is a finding that nobody decided",
  },
  "filing/nothing-withdrawn": {
    told: () =>
      told({}, async (folder) => {
        await filePage(filingFolder(diskWith(), folder), first, onPaper);
        const asked = { tag: "LT-1", calibration: "C-1", revision: "1", reason: "a slip", by: "A. Example" };
        return (await restoreFiledPage(diskWith(), folder, asked)).problems;
      }),
    says: "no page of revision 1 of calibration C-1 of the tag LT-1 was withdrawn there; accepted: tag, calibration and --revision of the line that withdrew it",
  },
  "filing/tag-unknown": {
    told: () => changeOf("LT-9", "LT-10"),
    says: "no page of the tag LT-9 is filed there; accepted: a tag as the register shows it",
  },
  "filing/tag-the-same": {
    told: () => changeOf("LT-1", "LT-1"),
    says: "LT-1 is called so already; accepted: another tag",
  },
  "filing/rested-upon": {
    told: () => withdraw("1", [first, second]),
    says: "revision 2 replaces revision 1, and rests on it; accepted: the last revision first, then the one before it",
  },
  "filing/nothing-to-decide": {
    told: () => decide(first),
    says: "the loop was found in tolerance (LT-1/2026-03-04_C-1_r1.html); accepted: a record whose as-found result needs a decision",
  },
  "filing/page-unreadable": {
    told: () => decide(undefined, {}, rmSync),
    says: "LT-1/2026-03-04_C-1_r1.html: the page is missing; accepted: the page as it was filed; spanwright verify tells more",
  },
  "filing/words-missing": {
    told: () => decide(undefined, { by: " " }),
    says: "command line: the option --by is empty; accepted: the name of whoever decided",
  },
  "filing/amends-draft": {
    told: () => amend("C-1.html", undefined, false),
    says: `C-1.html: the record is a draft: ${draftWords}, and no folder of records has it; accepted: an issued or a filed page; a draft is made anew by spanwright report`,
  },
  "filing/superseded": {
    told: () => amend(filedFirst),
    says: `${filedFirst}: revision 1 is replaced already by revision 2; accepted: the last revision of the calibration`,
  },
  "filing/not-in-workbook": {
    told: () =>
      amend("filed/LT-1/2026-03-04_C-1_r2.html", {
        ...smallestWorkbook,
        "calibrations.csv": smallestWorkbook["calibrations.csv"].replace("C-1", "C-7"),
        "readings.csv": smallestWorkbook["readings.csv"].replaceAll("C-1", "C-7"),
      }),
    says: "book: the workbook has no calibration C-1 of the tag LT-1; accepted: a workbook with the calibration that is amended",
  },
  "filing/nothing-differs": {
    told: () =>
      told({}, async (folder) => {
        const page = pageOf(await recordOf(withText("readings.csv", "50,12.01", "50,12.02")));
        const { line } = await filePage(filingFolder(diskWith(), folder), page, {});
        for (const [name, content] of Object.entries(withText("readings.csv", "50,12.01", "50,12.02"))) {
          mkdirSync(join(folder, "book"), { recursive: true });
          writeFileSync(join(folder, "book", name), content);
        }
        const { problems } = await amendRecord({ disk: nodeDisk, filing: diskWith() }, join(folder, line.path), {
          ...{ workbook: join(folder, "book"), reason: "a slip", by: "T. Example", out: join(folder, "out") },
          ...{ today: "2026-11-25", now: "2026-11-25T14:05:00+01:00", softwareVersion: "0.0.0" },
        });
        return problems;
      }),
    says: "book: the workbook says the same as the record; accepted: a workbook in which something of the calibration was put right",
  },
};

test.each(Object.entries(provocations))("%s is told to the user in these words", async (_, { told: provoke, says }) => {
  const [only, ...others] = await provoke();
  expect(others).toEqual([]);
  // A folder of its own, which each test has, stands before what is about the folder as a whole.
  expect(only?.replace(/^\/\S*spanwright-filing-\w+: /u, "")).toBe(says);
});

test("every code stops what it touches, and is thrown as what it is", () => {
  for (const [code, { severity }] of Object.entries(filingProblems)) expect([code, severity]).toEqual([code, "stop"]);
  expect(new CannotFile("filing/locked", { holder: "x" })).toMatchObject({
    code: "filing/locked",
    values: { holder: "x" },
  });
});
