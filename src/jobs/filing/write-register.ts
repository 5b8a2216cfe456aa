import { rateChart } from "../../charts/rate-chart.ts";
import type { FilingDisk } from "../../filing/filing-disk.ts";
import { makeRegister } from "../../filing/make-register.ts";
import { ProblemList } from "../../problems/problem-list.ts";
import type { Register } from "../../record/register-form.ts";
import { registerColumns } from "../../report/columns/register-columns.tsx";
import { renderRegister } from "../../report/register-page.tsx";
import { namedRows } from "../../report/table/column.ts";
import { writeDelimited } from "../../workbook/files/write-delimited.ts";
import type { Disk } from "../disk.ts";
import { writeOrTell } from "../write-or-tell.ts";
import { openFolder } from "./open-folder.ts";

export type RegisterOptions = { today: string; soonDays: number };

/** What was written, or nothing where a problem stops it. */
export type WrittenRegister = { register: Register; page: string; table: string } | undefined;

/** Writes the register of a filing folder into it: a page for people, and the same as a table. */
export async function writeRegister(
  disks: { filing: FilingDisk; plain: Pick<Disk, "writeTogether"> },
  folder: string,
  { today, soonDays }: RegisterOptions,
): Promise<{ written: WrittenRegister; problems: ProblemList }> {
  const problems = new ProblemList();
  const index = await openFolder(disks.filing, folder, problems);
  if (index === undefined) return { written: undefined, problems };
  const register = makeRegister(index, today, soonDays);
  const page = `${folder}/register.html`;
  const table = `${folder}/register.csv`;
  const files = [
    { path: page, text: renderRegister(register, await rateChart(register.years)) },
    { path: table, text: writeDelimited(namedRows(registerColumns, register.rows)) },
  ];
  const isWritten = await writeOrTell(() => disks.plain.writeTogether(files), page, problems);
  return { written: isWritten ? { register, page, table } : undefined, problems };
}
