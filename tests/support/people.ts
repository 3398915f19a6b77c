/** Members of the demo week, each where they work: fixtures/scenario/people.csv. */
export const maren = { person: "maren", channel: "plover-orders" };
export const iver = { person: "iver", channel: "plover-orders" };
export const dessa = { person: "dessa", channel: "plover-bench" };
export const petra = { person: "petra", channel: "plover-orders" };
export const akiko = { person: "akiko", channel: "general" };
export const callan = { person: "callan", channel: "plover-bench" };
