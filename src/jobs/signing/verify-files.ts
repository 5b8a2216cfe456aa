import { ProblemList } from "../../problems/problem-list.ts";
import { findTargets, type Target } from "../records/find-targets.ts";
import type { SignersTable } from "./find-signers.ts";
import { signersFor } from "./signers-for.ts";
import {
  type TargetVerifier,
  type Verification,
  type Verified,
  type VerifyDisks,
  verifyOneByOne,
} from "./verify-targets.ts";

export type { Verified, VerifyDisks } from "./verify-targets.ts";

export type VerifyFilesOptions = Verification & {
  /** Called for each file and ledger as soon as it is verified. */
  onVerified: (verified: Verified, done: number, all: number) => void;
  /** How so many records are verified, where not one after the other. */
  verifierFor?: (records: number) => Promise<TargetVerifier | undefined>;
};

/** Problems of the command line, and the tables of signers by which signatures were checked. */
export type VerifiedFiles = { problems: ProblemList; tables: readonly SignersTable[] };

/**
 * Verifies records in their order; a folder stands for every page and every record's JSON below it, and for the ledgers in
 * it. Problems are of the command line and of the table of signers that it names: where there is one, nothing was
 * verified.
 */
export async function verifyFiles(
  disks: VerifyDisks,
  paths: readonly string[],
  { onVerified, verifierFor, ...options }: VerifyFilesOptions,
): Promise<VerifiedFiles> {
  const problems = new ProblemList();
  const targets = await findTargets(disks, paths, problems);
  await signersFor(disks.disk, options.signers, problems);
  const { notedHead, since } = options;
  const ledgers = targets.filter(({ kind }) => kind === "ledger").length;
  for (const [option, noted] of [
    ["--ledger-head", notedHead],
    ["--since", since],
  ] as const) {
    if (noted !== undefined && ledgers !== 1)
      problems.add("options/one-ledger", { file: "command line" }, { values: { option } });
  }
  if (problems.hasStop) return { problems, tables: [] };
  const groups = groupsOf(targets);
  const verify = (await verifierFor?.(groups.length)) ?? verifyOneByOne(disks);
  const tables = new Map<string, SignersTable>();
  let isAllPassedOver = true;
  let done = 0;
  for await (const group of verify(groups, options)) {
    for (const { verified, table } of group) {
      if (table !== undefined) tables.set(table.path, table);
      if (verified.outcome !== "passed over") isAllPassedOver = false;
      done += 1;
      onVerified(verified, done, targets.length);
    }
  }
  if (isAllPassedOver) for (const path of paths) problems.add("options/no-records", { file: path });
  return { problems, tables: [...tables.values()] };
}

/** A page and the JSON beside it together, for what follows from their record is made once for both. */
function groupsOf(targets: readonly Target[]): readonly (readonly Target[])[] {
  const groups: Target[][] = [];
  for (const target of targets) {
    const last = groups.at(-1);
    if (last?.[0] !== undefined && stemOf(last[0]) === stemOf(target)) last.push(target);
    else groups.push([target]);
  }
  return groups;
}

function stemOf({ kind, path }: Target): string {
  return `${kind === "ledger" || kind === "unread" ? kind : "file"} ${path.replace(/\.(?:html?|json)$/iu, "")}`;
}
