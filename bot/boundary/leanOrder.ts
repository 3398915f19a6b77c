import type { AmountQuantity } from "./amountAt.ts";

export const leanOrder: readonly AmountQuantity[] = ["squaredLoftDeg", "lengthMm", "seatedLieDeg", "soledFaceDeg"];
