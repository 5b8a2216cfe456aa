import type { ComponentChildren } from "preact";
import type { SealedRecord } from "../../record/record-schema.ts";
import type { PageDrawings } from "../page-drawings.ts";
import { AmendmentPart } from "../parts/amendment.tsx";
import { Basis } from "../parts/basis.tsx";
import { Causes } from "../parts/causes.tsx";
import { ControllerLimits } from "../parts/controller-limits.tsx";
import { FiguresTable } from "../parts/figures-table.tsx";
import { History } from "../parts/history.tsx";
import { Impact } from "../parts/impact.tsx";
import { LoopChecks } from "../parts/loop-checks.tsx";
import { OtherPictures } from "../parts/pictures.tsx";
import { Recommendation } from "../parts/recommendation.tsx";
import { ReplacementFit } from "../parts/replacement-fit.tsx";
import { Reteach } from "../parts/reteach.tsx";
import { SafetyNotes } from "../parts/safety-notes.tsx";
import { Seal } from "../parts/seal.tsx";
import { SetPointTable } from "../parts/set-point-table.tsx";
import { Sound } from "../parts/sound.tsx";
import { Switching } from "../parts/switching.tsx";
import { Uncertainty } from "../parts/uncertainty.tsx";
import { WorkingSheets } from "../parts/working-sheet.tsx";
import type { NumberStyle } from "../style/number-style.ts";
import type { AnnexName } from "./annex.tsx";
import { Glossary } from "./glossary.tsx";

type AnnexOf = AnnexName & {
  /** Whether the record has anything for it. */
  isThere: (record: SealedRecord) => boolean;
  body: (record: SealedRecord, style: NumberStyle, drawings: PageDrawings) => ComponentChildren;
};

/** Every annex in the order of who asks; a letter means the same in every record, so that one without keeps it. */
export const annexes: readonly AnnexOf[] = [
  {
    ...{ letter: "A", title: "Working", isThere: () => true },
    body: (record, style) => <WorkingSheets record={record} style={style} />,
  },
  {
    ...{ letter: "B", title: "Figures in full", isThere: () => true },
    body: (record, style, drawings) => (
      <>
        <FiguresTable record={record} style={style} />
        <OtherPictures drawings={[...drawings.stages, ...drawings.others]} absent={drawings.absent} />
      </>
    ),
  },
  {
    ...{ letter: "C", title: "Uncertainty and decision", isThere: () => true },
    body: (record, style) => <Uncertainty record={record} style={style} />,
  },
  {
    ...{ letter: "D", title: "Switched outputs and loop check" },
    isThere: ({ switching, loopChecks }) => switching !== undefined || loopChecks !== undefined,
    body: (record) => (
      <>
        <Switching record={record} />
        <LoopChecks record={record} />
      </>
    ),
  },
  {
    ...{ letter: "E", title: "What is wrong, what to do" },
    isThere: ({ recommendation, causes, reteach, candidates }) =>
      [recommendation, causes, reteach, candidates].some((part) => part !== undefined),
    body: (record, style, drawings) => (
      <>
        <Recommendation record={record} />
        <Causes record={record} />
        <Reteach record={record} style={style} drawing={drawings.reteach} />
        <ReplacementFit record={record} />
      </>
    ),
  },
  {
    ...{ letter: "F", title: "Found out of tolerance: what it may have touched" },
    isThere: ({ impact }) => impact !== undefined,
    body: (record, style) => <Impact record={record} style={style} />,
  },
  {
    ...{ letter: "G", title: "Over the years", isThere: ({ overTheYears }) => overTheYears !== undefined },
    body: (record, _, drawings) => <History record={record} drawings={drawings.history} />,
  },
  {
    ...{ letter: "H", title: "Sound in air, set points and signals" },
    isThere: ({ sound, setPointTable }) => sound !== undefined || setPointTable !== undefined,
    body: (record, style, drawings) => (
      <>
        <Sound record={record} style={style} drawing={drawings.sound} />
        <SetPointTable record={record} />
        <ControllerLimits record={record} style={style} />
      </>
    ),
  },
  {
    ...{ letter: "I", title: "Basis of the result", isThere: () => true },
    body: (record) => (
      <>
        <AmendmentPart record={record} />
        <Basis record={record} />
        <SafetyNotes record={record} />
        <Seal record={record} />
      </>
    ),
  },
  {
    ...{ letter: "J", title: "Glossary", isThere: () => true },
    body: (record) => <Glossary record={record} />,
  },
];
