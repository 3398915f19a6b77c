/** An order as people or buttons name it: its number, or the record's own id. */
export type OrderRef = { readonly by: "number"; readonly number: number } | { readonly by: "id"; readonly id: number };

const refShape = /^(id:|#|order )?(\d{1,9})$/;

/** Reads `57`, `#57`, `order 57` or `id:12`; null when it is none. */
export function readOrderRef(text: string): OrderRef | null {
  const written = refShape.exec(text.slice(0, 40).trim().toLowerCase());
  const number = Number(written?.[2] ?? 0);
  if (number < 1) return null;
  return written?.[1] === "id:" ? { by: "id", id: number } : { by: "number", number };
}
