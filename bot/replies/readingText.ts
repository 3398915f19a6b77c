import { shown } from "./shown.ts";

/** One reading as the bench can hold it, in its own unit. */
export function readingText(quantity: string, value: number): string {
  switch (quantity) {
    case "lengthMm":
      return shown.length(value);
    case "swingWeightPoints":
      return shown.swing(value);
    case "soledFaceDeg":
      return shown.face(value);
    case "wraps":
      return String(value);
    case "totalMassG":
    case "headMassG":
      return shown.mass(value);
    case "gripAt2InMm":
    case "gripAt6InMm":
    case "balancePointMm":
      return `${shown.angle(value)} mm`;
    case "frequencyCpm":
      return `${Math.round(value)} cpm`;
    default:
      return shown.angle(value);
  }
}
