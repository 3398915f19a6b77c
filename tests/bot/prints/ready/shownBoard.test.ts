import { describe, expect, it } from "vitest";
import { promisedFirst, shownBoard } from "../../../../bot/prints/ready/shownBoard.ts";
import { fullBench, twoTechnicians } from "./someBoards.ts";

const HOUR = 60 * 60_000;

describe("shownBoard", () => {
  it("shows all of a board that a phone can show", () => {
    expect(shownBoard(twoTechnicians)).toEqual({ board: twoTechnicians, left: { orders: 0, lateOrders: 0, rows: 0, fromAt: null } });
  });

  it("shows six hours, and cuts what lies across the edge", () => {
    const { board, left } = shownBoard(fullBench);
    expect(board.to).toBe(fullBench.from + 6 * HOUR);
    const ends = board.rows.flatMap(({ bars }) => bars.map(({ to }) => to));
    expect(Math.max(...ends)).toBe(board.to);
    expect(left.fromAt).toBe(board.to);
  });

  it("shows a long day to its end when nothing is left to do after six hours", () => {
    const { board, left } = shownBoard({ ...twoTechnicians, to: twoTechnicians.from + 7 * HOUR });
    expect(board.to).toBe(twoTechnicians.from + 6 * HOUR);
    expect(left.fromAt).toBeNull();
  });

  it("shows closed hours within the day only", () => {
    const { from } = twoTechnicians;
    const closed = [
      { from: from - HOUR, to: from },
      { from: from - HOUR, to: from + HOUR },
    ];
    expect(shownBoard({ ...twoTechnicians, closed }).board.closed).toEqual([{ from, to: from + HOUR }]);
  });
});

describe("promisedFirst", () => {
  it("keeps those promised first in the order they came, and one without a promise while there is room", () => {
    const numbers = (most: number): readonly number[] => promisedFirst(twoTechnicians.orders, most).map(({ number }) => number);
    expect(numbers(3)).toEqual([41, 57, 58]);
    expect(numbers(5)).toEqual([41, 57, 58, 59, 61]);
    expect(numbers(7)).toEqual([41, 57, 58, 59, 60, 61, 63]);
    expect(numbers(8)).toHaveLength(8);
    expect(promisedFirst([], 3)).toEqual([]);
  });
});
