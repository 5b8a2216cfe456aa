import type { ProblemList } from "../../problems/problem-list.ts";
import { checkSeal } from "../../proof/check-seal.ts";
import type { SealedRecord } from "../../record/record-schema.ts";
import { type LabelForm, renderLabels } from "../../report/label-sheet.tsx";
import type { Disk } from "../disk.ts";
import { writeDerived } from "../filing/write-derived.ts";
import { readRecordFiles } from "./read-record-files.ts";

export type LabelOptions = LabelForm & { out: string };

/** Writes a page of labels for some records, each record once; gives how many labels it holds. */
export async function makeLabels(
  disk: Disk,
  paths: readonly string[],
  { out, ...form }: LabelOptions,
  problems: ProblemList,
): Promise<number> {
  const files = await readRecordFiles(disk, paths, problems);
  for (const { path, written } of files) {
    if (checkSeal(written).length > 0) problems.add("filing/seal-broken", { file: path });
  }
  const bySeal = new Map<string, SealedRecord>(files.map(({ record }) => [record.seal.sha256, record]));
  if (bySeal.size === 0 || problems.hasStop) return 0;
  const isWritten = await writeDerived(disk, out, renderLabels([...bySeal.values()], form), problems);
  return isWritten ? bySeal.size : 0;
}
