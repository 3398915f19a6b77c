/** A stretch of work or of a wait; times in epoch ms. */
export interface BoardPrintBar {
  readonly from: number;
  readonly to: number;
  /** The order's number, with the club where there is room. */
  readonly label: string;
  readonly wait: boolean;
  readonly underWay: boolean;
}

/** What a truck's ready board shows and nothing else: plain JSON, times in epoch ms. */
export interface ReadyBoardPrint {
  readonly truck: string;
  readonly zone: string;
  readonly now: number;
  readonly from: number;
  readonly to: number;
  readonly rollOutAt: number | null;
  readonly closed: readonly { readonly from: number; readonly to: number }[];
  readonly rows: readonly { readonly label: string; readonly kind: "technician" | "station"; readonly bars: readonly BoardPrintBar[] }[];
  readonly orders: readonly {
    readonly number: number;
    readonly title: string;
    readonly likelyAt: number | null;
    readonly promiseAt: number | null;
    readonly byAt: number | null;
  }[];
}
