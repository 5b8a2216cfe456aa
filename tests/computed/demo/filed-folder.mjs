/**
 * A filing folder as it would have come about from 2021 to 2026: the records of data-demo/history, signed and filed each
 * at its time, an amendment, a decision, and the register and calendar of a day. The same bytes each run.
 */
import { rmSync } from "node:fs";
import { basename } from "node:path";
import { version } from "../../../package.json";
import { assembleRecord } from "../../../src/assembly/assemble-record.ts";
import { nodeDisk } from "../../../src/cli/node-disk.ts";
import { nodeFilingDisk } from "../../../src/cli/node-filing-disk.ts";
import { decideFiledFinding } from "../../../src/jobs/filing/decide-filed-finding.ts";
import { fileRecords } from "../../../src/jobs/filing/file-records.ts";
import { listDue } from "../../../src/jobs/filing/list-due.ts";
import { writeHistory } from "../../../src/jobs/filing/write-history.ts";
import { writeRegister } from "../../../src/jobs/filing/write-register.ts";
import { amendRecord } from "../../../src/jobs/records/amend-record.ts";
import { recordPage } from "../../../src/jobs/records/write-record.ts";
import { readWorkbook } from "../../../src/jobs/workbook/read-workbook.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { signRecord } from "../../../src/proof/sign-record.ts";
import { refusalsOf, signerOf } from "../../../src/proof/signing-refusals.ts";
import { signingState } from "../../../src/proof/signing-state.ts";
import { recordSummary } from "../../../src/record/record-summary.ts";
import { writeDelimited } from "../../../src/workbook/files/write-delimited.ts";
import { readSigners } from "../../../src/workbook/read-signers.ts";
import { inventedSigners, signerRows } from "./invented-signers.mjs";

const years = [2021, 2022, 2023, 2024, 2025, 2026];
const today = "2026-11-25";
const filedBy = "Ada Specimen (invented)";

const amendment = {
  day: "2024-04-09",
  page: "LT-120/2024-03-12_C-2024-010_r1.html",
  workbook: "2024-amended",
  reason: "typing error: one signal was entered as 8.020 mA, the sheet of the day says 8.002 mA",
  by: "Ines Example",
};
const decision = {
  day: "2023-11-07",
  tag: "LT-430",
  calibration: "C-2023-050",
  decision: "no impact, because the silo was never filled above 80 % between the two records; gasket list corrected",
  by: filedBy,
};

/** Makes the folder from nothing; a workbook a year lies in the other. */
export async function makeFiledFolder(into, workbooks) {
  for (const folder of [into, `${into}-histories`]) rmSync(folder, { recursive: true, force: true });
  const clock = { now: "" };
  const filing = { ...nodeFilingDisk((text) => process.stderr.write(`${text}\n`)), now: () => clock.now };
  const folder = { into, workbooks, clock, filing, signers: await writeSigners(into), summaries: new Map() };
  for (const { day, act } of await everythingInOrder(workbooks)) await act(folder, day);
  await writeOverviews(folder);
}

async function writeSigners(into) {
  const text = writeDelimited(signerRows);
  await nodeDisk.writeTogether([{ path: `${into}/signers.csv`, text }]);
  const problems = new ProblemList();
  const signers = readSigners({ name: "signers.csv", bytes: new TextEncoder().encode(text) }, problems);
  withoutProblems({ problems });
  return signers.map(({ row }) => row);
}

async function everythingInOrder(workbooks) {
  const calibrations = [];
  for (const year of years) {
    const reading = await readWorkbook(nodeDisk, `${workbooks}/${year}`, { today, firstLook: {} });
    withoutProblems(reading);
    for (const { read } of reading.cases) {
      const one = read();
      const act = (folder, day) => reportAndFile(folder, day, one, reading.digests);
      calibrations.push({ day: one.calibration.row.performedOn, act });
    }
  }
  const others = [
    { day: amendment.day, act: amendAndFile },
    { day: decision.day, act: decide },
  ];
  return [...calibrations, ...others].sort((one, other) => (one.day < other.day ? -1 : 1));
}

async function reportAndFile(folder, day, one, digests) {
  const history = [...(folder.summaries.get(one.instrument.row.tag)?.values() ?? [])];
  const context = { softwareVersion: version, digests, warnings: one.warnings, history };
  await signAndFile(folder, day, sealRecord(assembleRecord(one, context)));
}

async function amendAndFile(folder, day) {
  const disk = { ...nodeDisk, writeTogether: async () => {} };
  const { written, problems } = await amendRecord({ disk, filing: folder.filing }, `${folder.into}/${amendment.page}`, {
    ...{ workbook: `${folder.workbooks}/${amendment.workbook}`, reason: amendment.reason, by: amendment.by },
    ...{ out: "not written", today, now: at(day, "13:40:00"), softwareVersion: version },
  });
  withoutProblems({ problems });
  await signAndFile(folder, day, written.record);
}

async function decide({ into, clock, filing }, day) {
  clock.now = at(day, "11:20:00.000");
  const { tag, calibration, by } = decision;
  withoutProblems(await decideFiledFinding(filing, into, { tag, calibration, by, decision: decision.decision }));
}

/** The pages were made and signed a moment ago; the tests verify the folder as a whole. */
async function* noDoubts() {}

/** Who performed the work signs it the same afternoon, the quality manager two days later. */
async function signAndFile(folder, day, record) {
  const later = new Date(Date.parse(day) + 2 * 86_400_000).toISOString().slice(0, 10);
  const performed = signed(folder, record, record.calibration.performedBy, "performed", at(day, "15:35:00"));
  const issued = signed(folder, performed, "Ada Specimen", "authorised", at(later, "10:10:00"));
  const page = `${record.calibration.calibration}.html`;
  const bytes = new TextEncoder().encode(await recordPage(issued));
  const filing = {
    ...folder.filing,
    read: async (path) => (path === page ? bytes : folder.filing.read(path)),
  };
  folder.clock.now = at(later, "10:15:00.000");
  const options = { into: folder.into, by: filedBy, verify: noDoubts, softwareVersion: version };
  withoutProblems(await fileRecords(filing, [page], options));
  const { tag, calibration, ...rest } = recordSummary(issued);
  const ofTag = folder.summaries.get(tag) ?? new Map();
  folder.summaries.set(tag, ofTag.set(calibration, { tag, calibration, ...rest }));
}

function signed({ signers }, record, name, meaning, signedAt) {
  const day = signedAt.slice(0, 10);
  const person = inventedSigners.find(
    (one) => one.name === name && one.validFrom <= day && (one.validTo === "" || day <= one.validTo),
  );
  const { keyId } = person.key;
  const found = signerOf(signers, keyId, signedAt);
  const proposed = { keyId, meaning, signedAt };
  const refusals = "code" in found ? [found] : refusalsOf(record, signingState(record).given, proposed, found.signer);
  if (refusals.length > 0) throw new Error(`${name}, ${record.calibration.calibration}: ${refusals[0].code}`);
  return signRecord(record, person.key, { name, role: person.role, meaning, signedAt });
}

/** Register and calendar inside the folder, the history of each loop beside it. */
async function writeOverviews({ into, filing, summaries }) {
  const disks = { filing, plain: nodeDisk };
  withoutProblems(await writeRegister(disks, into, { today, soonDays: 30 }));
  const now = at(today, "08:00:00");
  withoutProblems(await listDue(disks, into, { today, now, within: "30d", calendar: `${into}/due.ics` }));
  for (const tag of summaries.keys()) {
    const out = `${into}-histories/${tag}.html`;
    withoutProblems(await writeHistory(disks, into, { tag, out, linkTo: (path) => `../${basename(into)}/${path}` }));
  }
}

/** Date and time of day at the plant: summer time from April to October. */
function at(day, time) {
  const month = Number(day.slice(5, 7));
  return `${day}T${time}${month >= 4 && month <= 10 ? "+02:00" : "+01:00"}`;
}

function withoutProblems({ problems }) {
  if (problems.all.length > 0) throw new Error(problems.all.map(sentence).join("\n"));
}
