import type { TableRow } from "../model/calibration-case.ts";
import type { Signer } from "../model/signer.ts";
import type { ProblemList } from "../problems/problem-list.ts";
import { checkHeader } from "./check-header.ts";
import type { SourceFile } from "./files/raw-table.ts";
import { readDelimited } from "./files/read-delimited.ts";
import { readRows } from "./read-rows.ts";
import type { DraftRow } from "./table-row.ts";

/** 32 bytes in base64url: 43 characters, of which the last has two bits that are zero. */
const publicKeyForm = /^[\w-]{42}[AEIMQUYcgkosw048]$/u;

const momentForm = /^\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d)?(?:Z|[+-]\d\d:\d\d)$/u;

/** The table of signers; rows with a problem are left out, for whoever cannot be read cannot sign. */
export function readSigners(file: SourceFile, problems: ProblemList): readonly TableRow<Signer>[] {
  const raw = readDelimited(file, "signers", problems);
  if (raw.header.length === 0) return [];
  const before = problems.all.length;
  checkHeader(raw, false, problems);
  if (problems.all.length > before) {
    // A limit under a name that is not known would be no limit.
    problems.add("signing/signers-heading", { file: raw.file, line: raw.headerLine });
    return [];
  }
  const { rows, stopped } = readRows(raw, () => undefined, false, problems);
  const firstByKey = new Map<string, DraftRow<"signers">>();
  const kept = rows.filter((draft) => !stopped.has(draft)) as TableRow<Signer>[];
  return kept.filter((signer) => isSound(signer, firstByKey, raw.file, problems));
}

function isSound(
  signer: TableRow<Signer>,
  firstByKey: Map<string, DraftRow<"signers">>,
  file: string,
  problems: ProblemList,
): boolean {
  const { name, publicKey, validFrom, validTo, revokedAt } = signer.row;
  const place = (column: string) => ({ file, line: signer.line, column });
  if (!publicKeyForm.test(publicKey)) {
    problems.add("signing/public-key-form", place("public_key"), { read: publicKey });
    return false;
  }
  if (revokedAt !== undefined && !(momentForm.test(revokedAt) && Number.isFinite(Date.parse(revokedAt)))) {
    problems.add("signing/revoked-at-form", place("revoked_at"), { read: revokedAt });
    return false;
  }
  const first = firstByKey.get(publicKey);
  if (first === undefined) firstByKey.set(publicKey, signer);
  else if (first.row.name !== name) {
    const values = { firstLine: first.line, first: first.row.name ?? "" };
    problems.add("signing/public-key-of-two", place("public_key"), { values });
    return false;
  }
  if (validTo === undefined || validFrom <= validTo) return true;
  problems.add("signing/dates-reversed", place("valid_to"), { read: validTo });
  return false;
}
