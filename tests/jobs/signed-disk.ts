import { recordFiles } from "../../src/jobs/records/write-record.ts";
import { type SignOptions, signRecords } from "../../src/jobs/signing/sign-records.ts";
import type { SignatureMeaning } from "../../src/model/signature-meanings.ts";
import type { Signer } from "../../src/model/signer.ts";
import { sentence } from "../../src/problems/sentence.ts";
import type { SealedRecord } from "../../src/record/record-schema.ts";
import { keyFiles, passphrase, signers } from "../proof/sample-signing.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";
import { type MemoryDisk, memoryDisk } from "./memory-disk.ts";

export type Who = "ines" | "tom" | "ada";

export function signersTable(rows: readonly Signer[] = signers): string {
  const hasRevoked = rows.some(({ revokedAt }) => revokedAt !== undefined);
  const lines = rows.map((row) => {
    const { name, role, publicKey, validFrom, validTo = "", maySign = [], revokedAt = "", revokedReason = "" } = row;
    const revoked = hasRevoked ? [revokedAt, revokedReason] : [];
    return [name, role, publicKey, validFrom, validTo, maySign.join("; "), ...revoked].join(",");
  });
  const revoked = hasRevoked ? ",revoked_at,revoked_reason" : "";
  return `name,role,public_key,valid_from,valid_to,may_sign${revoked}\n${lines.join("\n")}\n`;
}

/** A record in records/LT-204/C-0001, the table of signers in the folder above it, and the keys of everybody. */
export async function signingDisk(
  record: SealedRecord,
  more: Texts = {},
  refuses?: (path: string) => boolean,
): Promise<MemoryDisk> {
  const files = await recordFiles(record, "records/LT-204/C-0001");
  const texts = Object.fromEntries(files.map(({ path, text }) => [path, text]));
  return memoryDisk({ ...texts, ...keyFiles, "records/signers.csv": signersTable(), ...more }, refuses);
}

export const page = "records/LT-204/C-0001.html";
export const json = "records/LT-204/C-0001.json";

/** Signs on 2026-11-25 a minute past four. */
export async function sign(
  disk: MemoryDisk,
  who: Who,
  as: SignatureMeaning | string,
  options: Partial<SignOptions> & { paths?: readonly string[] } = {},
) {
  const { paths = [page], ...rest } = options;
  const { signed, problems } = await signRecords(disk, paths, {
    as,
    key: `${who}.pem`,
    now: "2026-11-25T16:01:00+01:00",
    softwareVersion: "0.0.0",
    ask: async () => passphrase,
    // The rows of the invented record do not hold what was computed from; those of a workbook do: tests/cli.
    doubtsOf: () => [],
    ...rest,
  });
  return { signed, told: problems.all.map(sentence), codes: problems.all.map(({ code }) => code) };
}
