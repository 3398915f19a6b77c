import type { BoardPrintBar, ReadyBoardPrint } from "../../../../bot/prints/ready/readyBoardPrint.ts";

const MIN = 60_000;
/** 09:00 at the venue. */
const nine = Date.parse("2027-05-03T08:00:00Z");
const at = (clock: string): number => {
  const [hour = 0, minute = 0] = clock.split(":").map(Number);
  return nine + ((hour - 9) * 60 + minute) * MIN;
};

/** `57 driver 9:10 9:14`: a number, what it is, from when to when. */
function bars(text: string, kind: { readonly wait?: boolean } = {}): readonly BoardPrintBar[] {
  return text.split(", ").map((one, index) => {
    const words = one.split(" ");
    const [from, to] = [at(words.at(-2) ?? ""), at(words.at(-1) ?? "")];
    return { from, to, label: words.slice(0, -2).join(" "), wait: kind.wait ?? false, underWay: index === 0 && from <= at("9:06") };
  });
}

type Order = ReadyBoardPrint["orders"][number];
const order = (title: string, likely: string | null, promise: string | null, by: string | null): Order => ({
  number: Number.parseInt(title, 10),
  title,
  likelyAt: likely === null ? null : at(likely),
  promiseAt: promise === null ? null : at(promise),
  byAt: by === null ? null : at(by),
});

const plover = { truck: "Plover", zone: "Europe/Lisbon", now: at("9:06"), from: at("9:00"), rollOutAt: null, closed: [] } as const;

/** One driver on an empty bench. */
export const driverAlone: ReadyBoardPrint = {
  ...plover,
  to: at("10:00"),
  rows: [
    { label: "Dessa", kind: "technician", bars: bars("57 driver 9:03 9:12, 57 driver 9:18 9:21, 57 driver 9:22 9:24") },
    { label: "Bench", kind: "station", bars: bars("57 9:03 9:06, 57 9:18 9:19") },
    { label: "Bonding", kind: "station", bars: bars("57 9:07 9:12") },
    { label: "Gripping", kind: "station", bars: bars("57 9:19 9:21") },
    { label: "Setting", kind: "station", bars: bars("57 glue 9:12 9:18", { wait: true }) },
  ],
  orders: [order("57 OXTOBY RH driver", "9:26", "9:29", "9:45")],
};

/** Eight orders, two technicians, a break, roll-out at the end; two wanted before they are promised, one held, one wanted an hour ago. */
export const twoTechnicians: ReadyBoardPrint = {
  ...plover,
  to: at("13:00"),
  rollOutAt: at("13:00"),
  closed: [{ from: at("10:30"), to: at("10:45") }],
  rows: [
    {
      label: "Dessa",
      kind: "technician",
      bars: bars("57 driver 9:00 9:14, 41 SW 9:14 9:26, 57 driver 9:26 9:31, 60 4i–PW 9:31 10:30, 60 4i–PW 10:45 11:30, 63 3w 11:40 12:05"),
    },
    { label: "Callan", kind: "technician", bars: bars("58 driver 9:04 9:30, 59 7w 9:30 9:52, 61 LW 9:55 10:20, 62 putter 10:50 11:15") },
    { label: "Loft and lie", kind: "station", bars: bars("41 9:14 9:22, 61 9:55 10:15, 60 10:45 11:10") },
    { label: "Bench", kind: "station", bars: bars("58 9:04 9:09, 59 9:30 9:34, 60 9:35 9:50, 63 11:40 11:44") },
    { label: "Cutter", kind: "station", bars: bars("58 9:09 9:13, 59 9:34 9:37, 60 9:50 10:00") },
    { label: "Gripping", kind: "station", bars: bars("57 9:26 9:29, 60 11:10 11:30") },
    { label: "Setting", kind: "station", bars: bars("57 glue 9:14 9:26, 59 glue 9:52 10:04, 60 glue 10:16 10:40", { wait: true }) },
    { label: "Setting 2", kind: "station", bars: bars("58 glue 9:30 9:42, 60 glue 10:10 10:34, 63 glue 12:05 12:17", { wait: true }) },
  ],
  orders: [
    order("41 QUARRIE RH SW", "9:28", "9:33", "8:15"),
    order("57 OXTOBY RH driver", "9:33", "9:37", "9:45"),
    order("58 HALLOWAY LH driver", "9:46", "9:52", "9:50"),
    order("59 WEXCOMBE RH 7w", "10:12", "10:22", null),
    order("60 TOLL RH 4i–PW", "11:32", "11:50", "12:30"),
    order("61 HALLOWAY LH LW", "10:22", "10:29", "11:00"),
    order("62 CASTABEL RH swap putter", null, null, "12:00"),
    order("63 WEXCOMBE RH 3w", "12:30", "13:20", "12:45"),
  ],
};

const names = ["OXTOBY", "HALLOWAY", "QUARRIE", "TOLL", "WEXCOMBE", "CASTABEL", "FERREVAL", "KIPLINGTHORPE-DUNMORE"];
const clubs = ["driver", "3w", "7w", "4i–PW", "SW", "reshaft driver ×3", "putter", "regrip 14 clubs"];
const forty = Array.from({ length: 40 }, (_, index) => 101 + index);
const clock = (minutes: number): string => `${9 + Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
const each = (count: number, text: (index: number) => string): string => Array.from({ length: count }, (_, index) => text(index)).join(", ");

/** Forty orders, three technicians, a long day: more than a picture for a phone holds. */
export const fullBench: ReadyBoardPrint = {
  ...plover,
  to: at("18:30"),
  rollOutAt: at("18:30"),
  closed: [{ from: at("12:30"), to: at("13:15") }],
  rows: [
    ...["Dessa", "Callan", "Maximilienne-Aurelia"].map((label, person) => ({
      label,
      kind: "technician" as const,
      bars: bars(
        each(40, (index) => `${101 + ((3 * index + person) % 40)} ${clubs[index % 8]} ${clock(4 + 13 * index)} ${clock(4 + 13 * index + 11)}`),
      ),
    })),
    ...["Bench", "Bench 2", "Cutter", "Bonding", "Gripping", "Loft and lie", "Scale", "Marking"].map((label, station) => ({
      label,
      kind: "station" as const,
      bars: bars(each(30, (index) => `${101 + ((station + index) % 40)} ${clock(6 + 17 * index)} ${clock(6 + 17 * index + 4 + station)}`)),
    })),
    ...Array.from({ length: 18 }, (_, row) => ({
      label: row === 0 ? "Setting" : `Setting ${row + 1}`,
      kind: "station" as const,
      bars: bars(
        each(6, (index) => `${101 + ((row + 7 * index) % 40)} glue ${clock(15 + 80 * index + 5 * row)} ${clock(15 + 80 * index + 5 * row + 24)}`),
        { wait: true },
      ),
    })),
  ],
  orders: forty.map((number, index) =>
    order(
      `${number} ${names[index % 8]} ${index % 3 === 0 ? "LH" : "RH"} ${clubs[(index + (index >> 3)) % 8]}`,
      clock(25 + 13 * index),
      clock(30 + 14 * index),
      index % 4 === 3 ? null : clock(60 + 13 * index - (index % 6 === 5 ? 45 : 0)),
    ),
  ),
};

export const emptyBoard: ReadyBoardPrint = {
  ...plover,
  to: at("10:00"),
  rows: [
    { label: "Dessa", kind: "technician", bars: [] },
    { label: "Callan", kind: "technician", bars: [] },
  ],
  orders: [],
};
