import { describe, expect, test } from "vitest";
import { reportCalibrations } from "../../src/jobs/records/report-calibrations.ts";
import { newKey } from "../../src/jobs/signing/new-key.ts";
import { ProblemList } from "../../src/problems/problem-list.ts";
import { sentence } from "../../src/problems/sentence.ts";
import { signingProblems } from "../../src/problems/signing-problems.ts";
import { readSigners } from "../../src/workbook/read-signers.ts";
import { inFolder, memoryDisk } from "../jobs/memory-disk.ts";
import { page, sign, signersTable, signingDisk } from "../jobs/signed-disk.ts";
import { ada, ines, passphrase, recordToSign, signedBy, tom } from "../proof/sample-signing.ts";
import { smallestWorkbook } from "../workbook/smallest-workbook.ts";

type SigningCode = keyof typeof signingProblems;

const record = recordToSign();
const performed = signedBy(record, [ines, "performed"]);

/** What is told where the records' folder has another table of signers. */
const withTable = async (...args: Parameters<typeof signersTable>) =>
  (await sign(await signingDisk(record, { "records/signers.csv": signersTable(...args) }), "ines", "performed")).told;

function tableTold(text: string): readonly string[] {
  const problems = new ProblemList();
  readSigners({ name: "signers.csv", bytes: new TextEncoder().encode(text) }, problems);
  return problems.all.map(sentence);
}

async function keyTold(passphrases: string[], texts = {}): Promise<readonly string[]> {
  const disk = { ...memoryDisk(texts), writeSecret: async () => undefined };
  const who = { name: "Ada Specimen", role: "engineer", out: "ada.pem", today: "2026-11-25" };
  return (await newKey(disk, { ...who, ask: async () => passphrases.shift() })).problems.all.map(sentence);
}

/** The smallest input that provokes each code; the type asks for every one. */
const provocations: Readonly<Record<SigningCode, { told: () => Promise<readonly string[]>; says: string }>> = {
  "signing/public-key-form": {
    told: async () => tableTold("name,role,public_key,valid_from\nAda,engineer,short,2026-01-01\n"),
    says: 'signers.csv:2:public_key: this is no public key; read "short"; accepted: the 43 characters that spanwright keys new prints',
  },
  "signing/public-key-of-two": {
    told: async () => tableTold(signersTable([ada.signer, { ...tom.signer, publicKey: ada.signer.publicKey }])),
    says: "signers.csv:3:public_key: the key stands at line 2 too, for Ada Specimen; accepted: a key of its own for each person",
  },
  "signing/dates-reversed": {
    told: async () => tableTold(signersTable([{ ...ada.signer, validTo: "2025-12-31" }])),
    says: 'signers.csv:2:valid_to: valid_to comes before valid_from; read "2025-12-31"; accepted: the first day, then the last',
  },
  "signing/signers-heading": {
    // The column itself is told before.
    told: async () =>
      (await tableTold(signersTable([ada.signer]).replace("valid_to", "valid_until"))).filter(
        (one) => !/valid_until/u.test(one),
      ),
    says: "signers.csv:1: its heading lacks a column or has one that is not known, so that nobody in it is known to be a signer; accepted: a heading with the columns that spanwright keys new prints, each by its name",
  },
  "signing/no-signers": {
    told: async () => (await sign(await signingDisk(record), "ines", "performed", { signers: "none.csv" })).told,
    says: "none.csv: no table of signers was found beside the record or in the folder above it; accepted: signers.csv there, or --signers with its path",
  },
  "signing/key-file": {
    told: async () => (await sign(await signingDisk(record), "ines", "performed", { key: "none.pem" })).told,
    says: "none.pem: this cannot be signed with: there is no such file; accepted: a key file that spanwright keys new wrote",
  },
  "signing/key-file-there": {
    told: () => keyTold([passphrase, passphrase], { "ada.pem": "" }),
    says: "ada.pem: there is a file already, and a key is never written over another; accepted: a new name with --out",
  },
  "signing/passphrase-missing": {
    told: () => keyTold([]),
    says: "ada.pem: no passphrase was given; accepted: a line on the terminal, or on the standard input",
  },
  "signing/passphrase-short": {
    told: () => keyTold(["eleven char", "eleven char"]),
    says: "ada.pem: the passphrase has 11 characters; accepted: 12 characters or more",
  },
  "signing/passphrase-weak": {
    told: () => keyTold(["abababababab", "abababababab"]),
    says: "ada.pem: the passphrase repeats one piece, and would be guessed soon; accepted: several words that do not belong together, or characters by chance",
  },
  "signing/key-file-open": {
    told: async () => (await sign(await signingDisk(record), "ines", "performed", { openTo: async () => "644" })).told,
    says: "ines.pem: others of this computer may read it (mode 644), and try passphrases on it; accepted: a key file that its owner alone may read: chmod 600; where others may have read it, a new key",
  },
  "signing/revoked-at-form": {
    told: async () => tableTold(signersTable([{ ...ada.signer, revokedAt: "yesterday" }])),
    says: 'signers.csv:2:revoked_at: this is no date and time with offset, so that nobody knows until when the key counted; read "yesterday"; accepted: such as 2026-11-25T14:05:00+01:00',
  },
  "signing/key-revoked": {
    told: () => withTable([{ ...ines.signer, revokedAt: "2026-11-25T08:00:00+01:00", revokedReason: "laptop lost" }]),
    says: `${page}: the key of Ines Example was revoked at 2026-11-25T08:00:00+01:00: laptop lost; accepted: a signature from before, or by another key`,
  },
  "signing/other-than-stated": {
    told: async () =>
      (await sign(await signingDisk(recordToSign({}, { performedBy: "Ines Example" })), "tom", "performed")).told,
    says: `${page}: the record says that Ines Example did the work, and Tom Sample signs as performed; accepted: the name of who did the work in performed_by, and that person's signature`,
  },
  "signing/passphrases-differ": {
    told: () => keyTold([passphrase, `${passphrase} `]),
    says: "ada.pem: the two passphrases differ; accepted: the same passphrase twice",
  },
  "signing/passphrase-wrong": {
    told: async () =>
      (await sign(await signingDisk(record), "ines", "performed", { ask: async () => "another passphrase" })).told,
    says: "ines.pem: the passphrase does not open the key; accepted: the passphrase with which it was made",
  },
  "signing/key-unknown": {
    told: () => withTable([ada.signer]),
    says: `${page}: the key ${ines.key.keyId} is not in the table of signers; accepted: a key of the table`,
  },
  "signing/key-not-valid": {
    told: () => withTable([{ ...ines.signer, validTo: "2026-11-24" }]),
    says: `${page}: the key of Ines Example was not valid on 2026-11-25; accepted: a day from 2026-01-01 to 2026-11-24`,
  },
  "signing/meaning-not-allowed": {
    told: () => withTable([{ ...ines.signer, maySign: ["reviewed"] }]),
    says: `${page}: Ines Example may not sign as performed; accepted: reviewed`,
  },
  "signing/issued": {
    told: async () => (await sign(await signingDisk(signedBy(performed, [ada, "authorised"])), "tom", "reviewed")).told,
    says: `${page}: the record is issued: every signature that it needs is there, and it is changed no more; accepted: an amendment as a new revision: spanwright amend`,
  },
  "signing/signed-already": {
    told: async () => (await sign(await signingDisk(performed), "tom", "performed")).told,
    says: `${page}: Ines Example has signed as performed already; accepted: each meaning once`,
  },
  "signing/out-of-order": {
    told: async () => (await sign(await signingDisk(record), "ada", "authorised")).told,
    says: `${page}: authorised comes after performed, which is missing; accepted: the signatures in the order performed, authorised`,
  },
  "signing/four-eyes": {
    told: async () =>
      (
        await sign(
          await signingDisk(signedBy(recordToSign({ fourEyes: true }), [ines, "performed"])),
          "ines",
          "authorised",
        )
      ).told,
    says: `${page}: Ines Example may not both perform and review or authorise: the instrument asks for two people (four_eyes); accepted: another person for authorised`,
  },
  "signing/clock": {
    told: async () =>
      (await sign(await signingDisk(record), "ines", "performed", { now: "2026-03-01T12:00:00+01:00" })).told,
    says: `${page}: the time of signing, 2026-03-01T12:00:00+01:00, comes before the day of the work, 2026-03-02; accepted: a clock that is right`,
  },
  "signing/record-doubtful": {
    told: async () => (await sign(await signingDisk({ ...record, figureBasis: "another" }), "ines", "performed")).told,
    says: `${page}: the record cannot be signed: the content is not what was sealed: its SHA-256 is`,
  },
  "signing/would-overwrite": {
    told: async () => {
      const signed = { "out/LT-1/C-1.json": '{"signOff":{"signatures":[{}]}}' };
      const disk = memoryDisk({ ...inFolder("book", smallestWorkbook), ...signed });
      const options = { out: "out", today: "2026-11-25", firstLook: {}, softwareVersion: "0.0.0" };
      return (await reportCalibrations(disk, "book", options)).reading.problems.all.map(sentence);
    },
    says: "out/LT-1/C-1.html: the record there is signed, and was not written over; accepted: a new revision with spanwright amend, or another folder with --out",
  },
};

describe.each(Object.entries(provocations))("%s", (_, { told, says }) => {
  test("is told to the user in these words", async () => {
    const [first = "", ...others] = await told();
    expect(first.startsWith(says), first).toBe(true);
    expect(others).toEqual([]);
  });
});

test("every code of this stage but one stops what it touches, and all are provoked", () => {
  expect(Object.keys(provocations)).toEqual(Object.keys(signingProblems));
  const warned = Object.entries(signingProblems).filter(([, { severity }]) => severity === "warn");
  expect(warned.map(([code]) => code)).toEqual(["signing/other-than-stated"]);
});
