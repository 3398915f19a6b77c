import type { FrequencySetUp } from "../../../core/club/frequencySetUp.ts";
import type { shaftTrim } from "../../../core/club/shaftTrim.ts";
import type { TrimmedShaft } from "../../../core/club/trimmedShaft.ts";
import type { Understood } from "../../boundary/calc/fields.ts";
import type { Json, Line, Reply } from "../../chat/types.ts";
import { line, reply } from "../card.ts";
import { faultWords } from "../faultWords.ts";
import { shown } from "../shown.ts";
import { calcCard } from "./calcCard.ts";
import { lengthWords } from "./calcNumbers.ts";

export interface TrimFacts {
  readonly named: string | null;
  readonly inputs: readonly Understood[];
  readonly unit: "in" | "mm";
  readonly lengthMm: number;
  readonly boreToGroundMm: number;
  readonly capMm: number;
  readonly tipTrimMm: number;
  readonly raw: { readonly rawLengthMm: number | null; readonly rawMassG: number | null; readonly rawBalanceFromTipMm: number | null };
  /** Of what named parts and the record say: nobody wrote it. */
  readonly hasKnownRaw: boolean;
  readonly parallelTipMm: number | null;
  readonly bareCutMm: number;
  /** Null without a raw length. */
  readonly trim: ReturnType<typeof shaftTrim> | null;
  readonly shaft: TrimmedShaft | null;
  readonly frequency: {
    readonly setUp: FrequencySetUp;
    readonly read: { readonly beforeCpm: number; readonly afterCpm: number; readonly tipTrimMm: number; readonly buttTrimMm: number } | null;
    /** Of a shaft of one stiffness throughout. */
    readonly uniformCpm: number | null;
  } | null;
  /** By how much a built club is longer than wished, below 0 shorter; null when there is none. */
  readonly shorterThanBuiltMm: number | null;
}

/** Up to this length every club is allowed where a committee limits it. */
const LIMIT_IN = 46;
const LIMIT_MM = LIMIT_IN * 25.4;
const cpm = (value: number): string => `${Math.round(value)} cpm`;

function rawLines(facts: TrimFacts): readonly Line[] {
  const { rawLengthMm, rawMassG, rawBalanceFromTipMm } = facts.raw;
  if (!facts.hasKnownRaw || rawLengthMm === null) return [];
  const rest =
    rawMassG === null || rawBalanceFromTipMm === null
      ? ""
      : `, ${shown.mass(rawMassG)}, balance ${lengthWords(rawBalanceFromTipMm, facts.unit)} from the tip`;
  return [
    line(`Bore to ground ${shown.both(facts.boreToGroundMm)}, cap ${facts.capMm.toFixed(1)} mm`),
    line(`Raw ${shown.both(rawLengthMm)}${rest}`),
  ];
}

function cutLines({ trim }: TrimFacts): readonly Line[] {
  if (trim === null) return [line("Say the raw length for what comes off the butt")];
  if (trim.kind === "refused") return trim.faults.map((fault) => line(faultWords(fault)));
  const tip = trim.tipTrimMm === 0 ? "Nothing off the tip" : `Tip ${shown.both(trim.tipTrimMm)} first`;
  return [line(`${tip}; after the dry fit butt ${shown.both(trim.buttTrimMm)}`)];
}

const shaftLines = ({ shaft, unit }: TrimFacts): readonly Line[] =>
  shaft === null
    ? []
    : [
        line(
          `Then ${shown.mass(shaft.massG)}, balance ${lengthWords(shaft.balanceFromTipMm, unit)} from the tip, ${lengthWords(shaft.balanceFromButtMm, unit)} from the butt`,
        ),
      ];

function frequencyLines({ frequency, unit }: TrimFacts): readonly Line[] {
  if (frequency === null) return [];
  const { read, uniformCpm, setUp } = frequency;
  const cut =
    read === null || read.tipTrimMm + read.buttTrimMm === 0
      ? "raw"
      : `tip ${lengthWords(read.tipTrimMm, unit)}, butt ${lengthWords(read.buttTrimMm, unit)} off`;
  return [
    ...(read === null ? [] : [line(`Read ${cpm(read.beforeCpm)} ${cut}: ${cpm(read.afterCpm)} after the cut`)]),
    ...(uniformCpm === null ? [] : [line(`By its stiffness ${cpm(uniformCpm)}, one stiffness throughout`)]),
    line(`Set-up: clamp ${lengthWords(setUp.clampMm, unit)}, tip mass ${shown.mass(setUp.tipMassG)}, grip off`),
  ];
}

/** Less than a bench can cut. */
const NO_CUT_MM = 0.8;

function builtLine({ shorterThanBuiltMm }: TrimFacts): readonly Line[] {
  if (shorterThanBuiltMm === null || Math.abs(shorterThanBuiltMm) < NO_CUT_MM) return [];
  if (shorterThanBuiltMm > 0) return [line(`The club as built: ${shown.both(shorterThanBuiltMm)} off the butt`)];
  return [line(`The club as built is ${shown.both(-shorterThanBuiltMm)} too short: it takes a new shaft`)];
}

const lengthLine = ({ named, lengthMm }: TrimFacts): readonly Line[] => (named === null ? [] : [line(`Playing length ${shown.both(lengthMm)}`)]);

const limitLine = ({ lengthMm }: TrimFacts): readonly Line[] =>
  lengthMm > LIMIT_MM + 1e-6 ? [line(`Over ${LIMIT_IN} in: not where the committee limits all but putters to it`)] : [];

function dataOf(facts: TrimFacts): { readonly [key: string]: Json } {
  const { trim, shaft, frequency } = facts;
  const cut = trim?.kind === "trim" ? trim : null;
  return {
    lengthMm: facts.lengthMm,
    boreToGroundMm: facts.boreToGroundMm,
    capMm: facts.capMm,
    bareCutMm: facts.bareCutMm,
    ...facts.raw,
    parallelTipMm: facts.parallelTipMm,
    tipTrimMm: facts.tipTrimMm,
    buttTrimMm: cut?.buttTrimMm ?? null,
    trimmedMassG: shaft?.massG ?? null,
    trimmedBalanceFromTipMm: shaft?.balanceFromTipMm ?? null,
    trimmedBalanceFromButtMm: shaft?.balanceFromButtMm ?? null,
    trimmedInertiaKgCm2: shaft?.ownInertiaKgCm2 ?? null,
    readCpm: frequency?.read?.beforeCpm ?? null,
    frequencyCpm: frequency?.read?.afterCpm ?? frequency?.uniformCpm ?? null,
    uniformCpm: frequency?.uniformCpm ?? null,
    clampMm: frequency?.setUp.clampMm ?? null,
    tipMassG: frequency?.setUp.tipMassG ?? null,
    shorterThanBuiltMm: facts.shorterThanBuiltMm,
    refused: trim?.kind === "refused" ? trim.faults.map((fault) => ({ ...fault })) : [],
  };
}

/** How a raw shaft is cut for a club: bare cut, tip, butt, what is left and how it will read. */
export function trimReply(facts: TrimFacts): Reply {
  const isRefused = facts.trim?.kind === "refused";
  const cut = `${isRefused ? "cannot be cut to" : "bare cut"} ${shown.both(facts.bareCutMm)}`;
  const left = facts.parallelTipMm === null && facts.tipTrimMm > 0 ? "The parallel section was not told and not checked: 1 1/2 in must stay. " : "";
  const cpmLimit = facts.frequency === null ? "" : " Frequency is good to 1 cpm, and only in its own set-up.";
  return reply(
    calcCard({
      view: "trim",
      title: facts.named === null ? `${cut[0]?.toUpperCase()}${cut.slice(1)}` : `${facts.named}: ${cut}`,
      tone: isRefused ? "attention" : "plain",
      inputs: facts.inputs,
      lines: [
        ...lengthLine(facts),
        ...rawLines(facts),
        ...cutLines(facts),
        ...shaftLines(facts),
        ...frequencyLines(facts),
        ...builtLine(facts),
        ...limitLine(facts),
      ],
      leavesOut: `${left}Length to the end of the cap, sole on the 60° plane. Mass and balance take a shaft of even density: of stepped steel or a weighted butt weigh the pieces (tip piece 2.1, butt piece 3).${cpmLimit}`,
      data: dataOf(facts),
    }),
  );
}
