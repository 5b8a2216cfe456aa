import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Phase } from "../model/calibration-words.ts";
import { handingBack } from "./handing-back.ts";
import { AdjustmentPart, AfterPart, BeforePart, peopleList } from "./parts/calibration-part.tsx";
import { CautionsPart } from "./parts/cautions-part.tsx";
import { ChecksPart } from "./parts/checks-part.tsx";
import { goOn } from "./parts/go-on.ts";
import { HandBackPart } from "./parts/hand-back-part.tsx";
import { pasteBlock } from "./parts/paste-block.ts";
import { PhasePart } from "./parts/phase-part.tsx";
import { Kept, type RowView, SheetContext } from "./parts/sheet-context.ts";
import { StateLine } from "./parts/state-line.tsx";
import { TripsPart } from "./parts/trips-part.tsx";
import type { PlannedRow, SheetData, TypedTableName } from "./sheet-data.ts";
import type { SheetLoop } from "./sheet-loop.ts";
import { type Entries, noEntries } from "./state/entries.ts";
import { isFilled, rowsOf } from "./state/entry-tables.ts";
import { type Judgement, judgeSheet, type SheetProblem } from "./state/judge-sheet.ts";
import { rowsSay, type SaidBefore } from "./state/row-says.ts";
import { type PhaseSoFar, soFar } from "./state/so-far.ts";
import { useSheetState } from "./use-sheet-state.ts";
import type { World } from "./world.ts";

/** How long nothing has to be typed before everything is judged anew, milliseconds. */
const restBefore = 350;

/** A judgement, and the entries that it is about. */
type Judged = Judgement & { of: Entries };

const nothingJudged: Judged = { record: undefined, problems: [], of: noEntries };
const noProblems: readonly SheetProblem[] = [];

type AppProps = { data: SheetData; loop: SheetLoop; world: World };

/** The entry sheet: what is typed, what it says, and what is handed back. */
export function App({ data, loop, world }: AppProps) {
  const state = useSheetState(data, world);
  const { entries, actions, offered, typedIn } = state;
  const judgement = useJudgement(data, entries, world);
  const [told, setTold] = useState("");
  const views = useViews(data, entries, judgement);
  const known = { ...loop, record: judgement.record, isCurrent: judgement.of === entries };
  const asFound = usePhase("as_found", views, known);
  const asLeft = usePhase("as_left", views, known);
  const calibration = views.calibrations[0] as RowView;
  const locked = lockedBecause(calibration, asLeft.soFar.filled);
  const trips = { asFound: useSame(tripsOf(views, "as_found")), asLeft: useSame(tripsOf(views, "as_left")) };
  const sheet = useMemo(
    () => ({ data, instrument: loop.instrument, outputs: loop.outputs, ...actions }),
    [data, loop, actions],
  );
  const shown = useRef(views);
  shown.current = views;
  const isRestored = views.loop_checks.some(({ cells }) => cells.item === "restored" && cells.result === "pass");
  if (!state.isOpen) return <p>{state.keeping.says}</p>;
  return (
    <SheetContext.Provider value={sheet}>
      <form
        onSubmit={(event) => event.preventDefault()}
        onKeyDown={goOn}
        onPaste={(event) => pasteBlock(event, shown.current, actions)}
        autoComplete="off"
      >
        <Kept of={[offered]} draw={() => <CautionsPart offered={offered} takeOver={actions.replace} />} />
        <Kept of={[data]} draw={() => <People names={data.people} />} />
        <Kept of={[calibration]} draw={() => <BeforePart view={calibration} />} />
        <Kept of={[asFound]} draw={() => <PhasePart phase="as_found" {...asFound} />} />
        <Kept of={[trips.asFound]} draw={() => <TripsPart phase="as_found" views={trips.asFound} />} />
        <Kept of={[calibration]} draw={() => <AdjustmentPart view={calibration} />} />
        <Kept of={[asLeft, locked]} draw={() => <PhasePart phase="as_left" {...asLeft} locked={locked} />} />
        <Kept
          of={[trips.asLeft, locked]}
          draw={() => <TripsPart phase="as_left" views={trips.asLeft} locked={locked} />}
        />
        <Kept of={[views.loop_checks]} draw={() => <ChecksPart views={views.loop_checks} meanings={loop.checks} />} />
        <Kept of={[calibration]} draw={() => <AfterPart view={calibration} />} />
        <Kept
          of={[judgement, told, typedIn]}
          draw={() => (
            <HandBackPart {...judgement} told={told} {...handingBack({ data, world, actions, typedIn, setTold })} />
          )}
        />
      </form>
      <StateLine
        asFound={asFound.soFar}
        asLeft={asLeft.soFar}
        isRestored={isRestored}
        keeping={state.keeping}
        canUndo={entries.undo.length > 0}
        undo={actions.undo}
        takeOver={actions.takeOver}
      />
    </SheetContext.Provider>
  );
}

/** Names that are offered where one is asked for. */
function People({ names }: { names: readonly string[] }) {
  return (
    <datalist id={peopleList}>
      {names.map((name) => (
        <option key={name} value={name} />
      ))}
    </datalist>
  );
}

function tripsOf({ trips }: Views, phase: Phase): readonly RowView[] {
  return trips.filter(({ cells }) => cells.phase === phase);
}

/** The same list as before where every item of it is the same. */
function useSame<Item>(items: readonly Item[]): readonly Item[] {
  const before = useRef(items);
  const isSame = before.current.length === items.length && before.current.every((one, place) => one === items[place]);
  if (!isSame) before.current = items;
  return before.current;
}

/** The readings of a phase and what they say, reckoned anew only when one of them has changed. */
function usePhase(
  phase: Phase,
  { readings }: Views,
  { instrument, record, isCurrent }: SheetLoop & Pick<PhaseSoFar, "record" | "isCurrent">,
) {
  const views = useSame(readings.filter(({ cells }) => cells.phase === phase));
  const before = useRef<SaidBefore>(new WeakMap());
  return useMemo(() => {
    const typed = views.filter(isViewFilled).map(({ row, cells }) => ({ id: row.id, cells }));
    const says = rowsSay(typed, instrument, before.current);
    const filled = typed.length;
    return { views, says, soFar: soFar({ phase, filled, of: views.length, says: says.values(), record, isCurrent }) };
  }, [views, record, isCurrent]);
}

function isViewFilled({ row, cells }: RowView): boolean {
  return isFilled(noEntries, { ...row, cells });
}

/** As left is read after something was adjusted, and only then. */
function lockedBecause({ cells }: RowView, filled: number): string | undefined {
  const { adjustment = "" } = cells;
  if (filled > 0 || (adjustment !== "" && adjustment !== "none")) return undefined;
  return "Opens when what was adjusted is named above.";
}

/** Everything judged anew, as the command would, a moment after the last key. */
function useJudgement(data: SheetData, entries: Entries, world: World): Judged {
  const [judgement, setJudgement] = useState(nothingJudged);
  useEffect(() => {
    const judge = () => setJudgement({ ...judgeSheet(data, entries, world.now().slice(0, 10)), of: entries });
    const timer = setTimeout(judge, restBefore);
    return () => clearTimeout(timer);
  }, [data, entries, world]);
  return judgement;
}

type Views = Readonly<Record<TypedTableName, readonly RowView[]>>;

/** Every row with its texts; one that did not change is the same object as before, so that it is not drawn anew. */
function useViews(data: SheetData, entries: Entries, { problems }: Judgement): Views {
  const known = useRef(new Map<string, RowView>());
  const problemsByRow = useMemo(() => {
    const byRow = new Map<string, SheetProblem[]>();
    for (const problem of problems) {
      if (problem.row !== undefined && problem.isOfRow)
        byRow.set(problem.row, [...(byRow.get(problem.row) ?? []), problem]);
    }
    return byRow;
  }, [problems]);
  const view = (row: PlannedRow): RowView => {
    const typed = entries.cells[row.id];
    const own = problemsByRow.get(row.id) ?? noProblems;
    const before = known.current.get(row.id) as (RowView & { typed?: unknown }) | undefined;
    if (before?.row === row && before.typed === typed && before.problems === own) return before;
    const fresh = { row, cells: { ...row.cells, ...typed }, problems: own, typed };
    known.current.set(row.id, fresh);
    return fresh;
  };
  const of = (table: TypedTableName) => rowsOf(data, entries, table).map(view);
  return {
    calibrations: useSame(of("calibrations")),
    readings: useSame(of("readings")),
    trips: useSame(of("trips")),
    loop_checks: useSame(of("loop_checks")),
  };
}
