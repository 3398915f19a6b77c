import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvRows } from "../../../bot/boundary/csvRows.ts";

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => csvRows("parts.csv", bytes(text), ["name", "mass_g"]);

describe("csvRows", () => {
  it("reads rows by the name of their column, in any order of columns", () => {
    expect(read("mass_g,name\n52,Gorse\n").rows).toEqual([{ row: 2, cells: { name: "Gorse", mass_g: "52" } }]);
  });

  it("counts rows as an editor shows lines, past empty lines and line breaks in a cell", () => {
    expect(read('name,mass_g\n"a\nb",1\n\nc,2\n').rows.map(({ row }) => row)).toEqual([2, 5]);
  });

  it("counts rows alike with the line ends of another system", () => {
    expect(read('name,mass_g\r\n"a\r\nb",1\r\n\r\nc,2\r\n').rows.map(({ row }) => row)).toEqual([2, 5]);
  });

  it("reads past a byte order mark and keeps letters outside ASCII", () => {
    expect(read("\ufeffname,mass_g\nstrong ½,1\n").rows[0]?.cells.name).toBe("strong ½");
  });

  it("keeps a quote that is written twice and a comma within quotes", () => {
    expect(read('name,mass_g\n"a ""b"", c",1\n').rows[0]?.cells.name).toBe('a "b", c');
  });

  it.each([
    ["nothing at all", "", null, null, "a header: name,mass_g"],
    ["a column that is missing", "name\nGorse\n", 1, "mass_g", "the column mass_g"],
    ["a column that is not known", "name,mass_g,colour\nGorse,1,red\n", 1, "colour", "the columns name, mass_g"],
    ["a column written twice", "name,mass_g,name\nGorse,1,Gorse\n", 1, "name", "each column once"],
    ["a row with too few cells", "name,mass_g\nGorse,1\nHeather\n", 3, null, "2 cells, one under each column"],
    ["a row with too many cells", "name,mass_g\nGorse,1,2\n", 2, null, "2 cells, one under each column"],
    ["a quote that is not closed", 'name,mass_g\n"Gorse,1\n', 2, null, 'quotes around a whole cell, closed again; a quote inside written ""'],
    ["a cell of 501 characters", `name,mass_g\n${"x".repeat(501)},1\n`, 2, "name", "at most 500 characters"],
    ["a control character", "name,mass_g\nGo\u0007rse,1\n", 2, "name", "text without control characters"],
  ])("refuses %s", (_, text, row, column, accepted) => {
    expect(read(text).faults).toMatchObject([{ file: "parts.csv", row, column, accepted }]);
  });

  it("takes a cell of 500 characters", () => {
    expect(read(`name,mass_g\n${"x".repeat(500)},1\n`).faults).toEqual([]);
  });

  it("refuses bytes that are not UTF-8", () => {
    const latin1 = new Uint8Array([...bytes("name,mass_g\n"), 0xbd, ...bytes(",1\n")]);
    expect(csvRows("parts.csv", latin1, ["name", "mass_g"]).faults).toMatchObject([{ row: null, accepted: "text in UTF-8" }]);
  });

  it("refuses a file above 2 MB and one of more than 20,000 rows", () => {
    expect(read("x".repeat(2_000_001)).faults).toMatchObject([{ row: null, accepted: "a file of at most 2 MB" }]);
    expect(read(`name,mass_g\n${"a,1\n".repeat(20_000)}`).faults).toEqual([]);
    expect(read(`name,mass_g\n${"a,1\n".repeat(20_001)}`).faults).toMatchObject([{ row: null, accepted: "at most 20,000 rows under the header" }]);
  });

  it("names every fault of every row at once", () => {
    expect(read("name,mass_g\na\nb,1\nc,2,3\n").faults.map(({ row }) => row)).toEqual([2, 4]);
  });

  it("throws on no bytes at all", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (any) => {
        const { rows, faults } = csvRows("parts.csv", any, ["name", "mass_g"]);
        expect(rows.every(({ row, cells }) => row > 1 && Object.keys(cells).length === 2)).toBe(true);
        expect(faults.every(({ accepted }) => accepted.length > 0)).toBe(true);
      }),
      { seed: 417, numRuns: 300 },
    );
  });

  it("reads back every table it is given in quotes", () => {
    const cell = fc.string({ unit: "grapheme", maxLength: 20 }).map((text) => text.replace(/\p{Cc}/gu, "").trim());
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 20 }), (table) => {
        const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
        const { rows, faults } = read(`name,mass_g\n${table.map((row) => row.map(quoted).join(",")).join("\n")}\n`);
        expect(faults).toEqual([]);
        expect(rows.map(({ cells }) => [cells.name, cells.mass_g])).toEqual(table);
      }),
      { seed: 417, numRuns: 200 },
    );
  });
});
