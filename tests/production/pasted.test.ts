import { describe, expect, test } from "vitest";
import { knownOrders, pastedOrders } from "../../shared/production/pasted.ts";

// 4 December 2026 is a Friday.
const DAYS = ["2026-12-04", "2026-12-05"];
const read = (...rows: string[][]) => pastedOrders(rows.map((row) => row.join("\t")).join("\n"), DAYS);

describe("orders out of a pasted table", () => {
  test("a list with headings, in any order of its columns", () => {
    const { orders, faults } = read(
      ["Customer", "Product", "Size", "Pieces", "Day", "Note"],
      ["Café Mole", "Pier loaf", "large", "12", "Sat", "sliced"],
      ["", "Ferry bun", "", "1 200", ""],
      ["", "Total", "", "1212", ""],
    );
    expect(faults).toEqual([]);
    expect(orders).toEqual([
      { product: "Pier loaf", size: "large", customer: "Café Mole", day: "2026-12-05", pieces: 12, note: "sliced" },
      { product: "Ferry bun", size: "", customer: "", day: "2026-12-04", pieces: 1200, note: "" },
    ]);
  });

  test("a grid with days across, or customers", () => {
    const days = read(
      ["Product", "Size", "Fri", "2026-12-05", "Total"],
      ["Pier loaf", "large", "10", "", "10"],
      ["Rolls", "", "0", "6", "6"],
    );
    expect(days.orders.map(({ product, day, pieces }) => [product, day, pieces])).toEqual([
      ["Pier loaf", "2026-12-04", 10],
      ["Rolls", "2026-12-04", 0],
      ["Rolls", "2026-12-05", 6],
    ]);
    const customers = read(["Bread", "Café Mole", "Harbour inn"], ["Pier loaf", "10", "4"]);
    expect(customers.orders.map(({ customer, pieces }) => [customer, pieces])).toEqual([
      ["Café Mole", 10],
      ["Harbour inn", 4],
    ]);
  });

  test("without headings: a product, perhaps a size, and pieces; by semicolons too", () => {
    expect(pastedOrders("Pier loaf;large;12 pcs\r\nRolls;;30\r\n", DAYS).orders).toMatchObject([
      { product: "Pier loaf", size: "large", pieces: 12 },
      { product: "Rolls", size: "", pieces: 30 },
    ]);
    expect(pastedOrders("", DAYS)).toEqual({ orders: [], faults: [] });
  });

  test("what is no number of pieces is said with its row", () => {
    const { orders, faults } = read(["Product", "Pieces"], ["Pier loaf", "a dozen"], ["Rolls", "2.5"]);
    expect(orders).toEqual([]);
    expect(faults).toEqual([
      "Row 2, Pier loaf: “a dozen” is no number of pieces. Enter a whole number.",
      "Row 3, Rolls: “2.5” is no number of pieces. Enter a whole number.",
    ]);
  });

  test("unknown products are named with what is near, unknown sizes with those there are", () => {
    const items = [
      { product: "Pier loaf", size: "large" },
      { product: "Pier loaf", size: "small" },
      { product: "Rolls", size: "" },
    ];
    const order = (product: string, size = "") => ({ product, size });
    const known = knownOrders(
      [order("pier LOAF", "Large"), order("Rolls"), order("Peer loaf", "large"), order("Pier loaf")],
      items,
      () => ["Pier loaf"],
    );
    expect(known.orders).toEqual([order("Pier loaf", "large"), order("Rolls")]);
    expect(known.faults).toEqual([
      "There is no formula sheet “Peer loaf”. Perhaps “Pier loaf”?",
      "“Pier loaf” has the sizes “large”, “small”. Enter one of them.",
    ]);
  });
});
