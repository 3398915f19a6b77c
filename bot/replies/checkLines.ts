import type { FinalCheck } from "../../core/buildSheet/finalCheck.ts";
import type { Line } from "../chat/types.ts";
import { line } from "./card.ts";
import { shown } from "./shown.ts";

const words: Readonly<Record<string, string>> = {
  squaredLoftDeg: "loft",
  soledFaceDeg: "face",
  seatedLieDeg: "lie",
  bounceDeg: "bounce",
  lengthMm: "length",
  swingWeightPoints: "swing",
  totalMassG: "total",
  headMassG: "head",
  wraps: "wraps",
};

function value(quantity: string, amount: number): string {
  if (quantity === "lengthMm") {
    return shown.length(amount);
  }
  if (quantity === "swingWeightPoints") {
    return shown.swing(amount);
  }
  return quantity === "soledFaceDeg" ? shown.face(amount) : shown.angle(amount);
}

/** What was wanted > what was got, and `same`, `close` or `off` by how much. */
export function checkLines(check: FinalCheck): readonly Line[] {
  const rows = check.rows.map((row) => {
    const off = row.quantity === "lengthMm" ? `${shown.angle(Math.abs(row.got - row.wanted))} mm` : shown.angle(Math.abs(row.got - row.wanted));
    return line(`${words[row.quantity] ?? row.quantity} ${value(row.quantity, row.wanted)} > ${value(row.quantity, row.got)} `, {
      strong: row.verdict === "off" ? `off ${off}` : row.verdict,
    });
  });
  return check.unmeasured.length === 0
    ? rows
    : [...rows, line(`Still to measure: ${check.unmeasured.map((quantity) => words[quantity] ?? quantity).join(", ")}`)];
}
