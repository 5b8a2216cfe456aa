import type { TextTable } from "../workbook/text-rows.ts";
import { packed, takenIn } from "./hand-back.ts";
import type { SheetData, TypedTableName } from "./sheet-data.ts";
import { csvText, entryTables } from "./state/entry-tables.ts";
import type { SheetState } from "./use-sheet-state.ts";
import type { World } from "./world.ts";

export type HandingBack = {
  data: SheetData;
  world: World;
  actions: SheetState["actions"];
  typedIn: string;
  setTold: (says: string) => void;
};

/** What the buttons of the last part do: save, copy, take in; each says what came of it. */
export function handingBack({ data, world, actions, typedIn, setTold }: HandingBack) {
  const tables = () => entryTables(data, actions.current(), { typedIn });
  return {
    download: () => setTold(save(data, tables())),
    copy: (name: TypedTableName) => {
      const table = tables().find((one) => one.table === name);
      if (table === undefined) setTold(`${name}: nothing was typed.`);
      else void copied(csvText(table, data.mark)).then((says) => setTold(`${name}: ${says}`));
    },
    takeIn: (files: readonly File[]) => void takeFiles(files, { data, world, actions }).then(setTold),
  };
}

/** The browser's own way of saving a file. */
function save(data: SheetData, tables: readonly TextTable[]): string {
  const name = `${data.tag}_${data.calibration}.zip`.replace(/[^\w.-]+/gu, "-");
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([packed(tables, data.mark)], { type: "application/zip" }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), waitForSaving);
  return `${name} was handed to the browser to be saved.`;
}

/** How long a browser may ask where a file shall go, milliseconds. */
const waitForSaving = 60_000;

async function copied(text: string): Promise<string> {
  try {
    await navigator.clipboard.writeText(text);
    return "copied.";
  } catch {
    return "the browser does not let it be copied; download the tables instead.";
  }
}

type Taking = Pick<HandingBack, "data" | "world" | "actions">;

async function takeFiles(files: readonly File[], { data, world, actions }: Taking): Promise<string> {
  const says: string[] = [];
  for (const file of files) {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const result = takenIn(data, actions.current(), { name: file.name, bytes }, world.now());
    actions.replace(result.entries);
    says.push(`${file.name}: ${result.taken} taken in, ${result.same} here already.`, ...result.refused);
  }
  return says.join(" ");
}
