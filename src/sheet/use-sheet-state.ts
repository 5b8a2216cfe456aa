import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { Keeper, type Keeping } from "./keeper.ts";
import { CannotKeep, entriesOf, type KeptSheet, typedIn } from "./kept-sheet.ts";
import type { Sheet } from "./parts/sheet-context.ts";
import type { PlannedRow, SheetData } from "./sheet-data.ts";
import {
  changed,
  type Entries,
  freshId,
  noEntries,
  textAt,
  typing,
  undone,
  withoutRow,
  withRow,
} from "./state/entries.ts";
import type { World } from "./world.ts";

/** What a sheet holds while it is open. */
export type SheetState = {
  /** Nothing is typed before it is known what was kept. */
  isOpen: boolean;
  entries: Entries;
  /** Number of the sheet on this device. */
  typedIn: string;
  keeping: Keeping;
  /** What another sheet of this calibration kept on this device, where this one is empty. */
  offered: KeptSheet | undefined;
  actions: Pick<Sheet, "type" | "leave" | "set" | "add" | "remove" | "freshId"> & {
    undo: () => void;
    replace: (entries: Entries) => void;
    takeOver: () => void;
    current: () => Entries;
  };
};

/** How often it is asked whether another page has the same sheet open, milliseconds. */
const lookEvery = 2000;

/** Everything typed, kept on the disk at each key press. */
export function useSheetState(data: SheetData, world: World): SheetState {
  const [entries, setEntries] = useState<Entries>(noEntries);
  const [keeping, setKeeping] = useState<Keeping>({ isSafe: true, says: "Opening what was kept …" });
  const [offered, setOffered] = useState<KeptSheet>();
  const [device, setDevice] = useState("");
  const [isOpen, setIsOpen] = useState(false);
  const latest = useRef(entries);
  const keeper = useRef<Keeper | undefined>(undefined);

  const put = (next: Entries) => {
    if (next === latest.current) return;
    latest.current = next;
    setEntries(next);
    keeper.current?.keep(next);
  };

  /** What the device keeps is what is shown; from then on this page is the one that writes. */
  const open = async () => {
    const opened = await openKept(data, world, setKeeping);
    keeper.current = opened.keeper;
    setDevice(opened.device);
    setOffered(opened.offered);
    latest.current = opened.entries;
    setEntries(opened.entries);
    await opened.keeper.takeOver(opened.entries);
  };

  useEffect(() => {
    open()
      .catch((error: unknown) => setKeeping({ isSafe: false, says: cannotKeep(error) }))
      .finally(() => setIsOpen(true));
    const timer = setInterval(() => void keeper.current?.look().catch(() => undefined), lookEvery);
    const stopLeaving = world.onLeaving(() => {
      const unkept = keeper.current?.unkept;
      if (unkept !== undefined) world.leaveNote(noteOf(data), JSON.stringify(unkept));
    });
    return () => {
      clearInterval(timer);
      stopLeaving();
    };
  }, []);

  const actions = useMemo(() => actionsOf({ world, latest, put, open }), []);
  return { isOpen, entries, typedIn: typedIn({ sheet: data.sheet, device }), keeping, offered, actions };
}

function noteOf({ calibration, sheet }: SheetData): string {
  return `spanwright ${calibration} ${sheet}`;
}

/** A page that is left within the few milliseconds of a write leaves a note, which is newer than what was written. */
function noted(data: SheetData, world: World): Entries | undefined {
  const note = world.takeNote(noteOf(data));
  return note === undefined ? undefined : entriesOf({ entries: JSON.parse(note) });
}

function cannotKeep(error: unknown): string {
  const why = error instanceof CannotKeep || error instanceof Error ? error.message : "the browser refused";
  return `Nothing typed here is kept: ${why}. Hand back what was typed before this page is closed.`;
}

async function openKept(data: SheetData, world: World, tell: (keeping: Keeping) => void) {
  const store = await world.openStore();
  const all = await store.read(data.calibration);
  const kept = all.find(({ sheet }) => sheet === data.sheet);
  const device = kept?.device ?? world.chance();
  const { calibration, sheet, program } = data;
  const keeper = new Keeper({
    store,
    sheet: { form: 1, calibration, sheet, device, program, writer: `${world.now()}-${world.chance()}` },
    now: world.now,
    tell,
  });
  const entries = noted(data, world) ?? entriesOf(kept);
  const others = all.filter((one) => one.sheet !== data.sheet && entriesOf(one).log.length > 0);
  const newest = others.toSorted((one, other) => (one.at < other.at ? 1 : -1))[0];
  return { entries, device, keeper, offered: entries.log.length === 0 ? newest : undefined };
}

type ActionsOf = {
  world: World;
  latest: { current: Entries };
  put: (entries: Entries) => void;
  open: () => Promise<void>;
};

function actionsOf({ world, latest, put, open }: ActionsOf): SheetState["actions"] {
  return {
    type: (row, column, text) => put(typing(latest.current, row.id, column, text)),
    leave: (row, column, before) => {
      const after = textAt(latest.current, row, column);
      put(changed(latest.current, [{ at: world.now(), row: row.id, column, before, after }]));
    },
    set: (cells) => {
      const changes = cells.map(({ row, column, text }) => ({
        ...{ at: world.now(), row: row.id, column },
        before: textAt(latest.current, row, column),
        after: text,
      }));
      put(changed(latest.current, changes));
    },
    add: (rows: readonly PlannedRow[]) => put(rows.reduce(withRow, latest.current)),
    remove: (row) => put(withoutRow(latest.current, row.id)),
    freshId: (table) => freshId(latest.current, table),
    undo: () => put(undone(latest.current, world.now())),
    replace: put,
    takeOver: () => void open(),
    current: () => latest.current,
  };
}
