import { soak } from "./soak.ts";

/** `npm run drill:soak -- [MESSAGES] [SEED]`: three event weeks of orders in a chat that fails, and what was lost or repeated. */
const [messages = "2100", seed = "20270503"] = process.argv.slice(2);
const from = performance.now();
const figures = await soak({ orders: Number(messages), weeks: 3, burst: 10, seed: Number(seed), report: (line) => console.log(line) });
console.log(
  `${figures.orders} orders of ${messages} messages (the rest were asked about), ${figures.confirmed} confirmed by a press, ${figures.built} built`,
);
console.log(
  `${figures.posts} posts, ${figures.interactions} presses, ${figures.answeredByPost} of them answered by a post; the bot lived ${figures.lives} lives`,
);
console.log(`faults met: ${[...figures.met].map(([name, count]) => `${name} ${count}`).join(", ")}`);
console.log(`${Math.round((performance.now() - from) / 1000)} s`);
console.log(figures.faults.length === 0 ? "nothing lost, repeated, out of order or unanswered" : figures.faults.join("\n"));
process.exitCode = figures.faults.length === 0 ? 0 : 1;
