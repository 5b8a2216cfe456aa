import { rateChart } from "../../charts/rate-chart.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { makeRegister } from "../../filing/make-register.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Register } from "../../record/register-form.ts";
import { registerColumns } from "../../report/columns/register-columns.tsx";
import { renderRegister } from "../../report/register-page.tsx";
import { namedRows } from "../../report/table/column.ts";
import { withDecimalMark } from "../../units/decimal-mark.ts";
import { writeDelimited } from "../../workbook/files/write-delimited.ts";
import type { Disk } from "../disk.ts";
import { readDecimalMark } from "../workbook/decimal-mark-option.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { openFolder } from "./open-folder.ts";

/** The day, how soon is soon, and `--decimal-mark` as it was typed. */
export type RegisterOptions = { today: string; soonDays: number; decimalMark?: string | undefined };

/** What was written, or nothing where a problem stops it. */
export type WrittenRegister = { register: Register; page: string; table: string } | undefined;

/** Writes the register of a filing folder into it: a page for people, and the same as a table. */
export async function writeRegister(
  disks: { filing: FilingDisk; plain: Pick<Disk, "writeTogether"> },
  folder: string,
  { today, soonDays, decimalMark }: RegisterOptions,
): Promise<{ written: WrittenRegister; problems: ProblemList }> {
  const problems = new ProblemList();
  const mark = readDecimalMark(decimalMark, problems);
  const index = problems.hasStop ? undefined : await openFolder(disks.filing, folder, problems);
  if (index === undefined) return { written: undefined, problems };
  const register = makeRegister(index, today, soonDays);
  const page = `${folder}/register.html`;
  const table = `${folder}/register.csv`;
  const rates = await withDecimalMark(mark, () => rateChart(register.years));
  const files = withDecimalMark(mark, () => [
    { path: page, text: renderRegister(register, rates) },
    { path: table, text: writeDelimited(namedRows(registerColumns, register.rows), { mark }) },
  ]);
  const isWritten = await writeOrTell(() => disks.plain.writeTogether(files), page, problems);
  return { written: isWritten ? { register, page, table } : undefined, problems };
}
