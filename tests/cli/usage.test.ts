import { describe, expect, test } from "vitest";
import { wall } from "./wall.ts";

describe("wrong usage ends with 64, says what is right and prints no result", () => {
  test.each([
    [[], /Usage: wall COMMAND/],
    [["walk"], /no command "walk".*run.*side-by-side/s],
    [["run"], /Usage: wall run FILE/],
    [["run", "a", "b"], /Usage: wall run FILE/],
    [["run", "demo", "--colour", "red"], /--option, --path, --weather/],
    [["run", "demo", "--years"], /--years/],
    [["run", "demo", "--years", "0"], /from 1 to 30/],
    [["run", "demo", "--years", "2.5"], /whole number/],
    [["run", "demo", "--option", "Z"], /no option Z. It has A, B/],
    [["run", "demo", "--path", "roof"], /no path roof. It has bay, stud/],
    [["side-by-side", "demo", "A"], /Usage: wall side-by-side FILE A B/],
    [["side-by-side", "demo", "A", "A"], /Name two/],
    [["how-thick", "demo"], /--layer/],
    [["how-thick", "demo", "--layer", "straw"], /No path has layer straw/],
    [["drying", "demo", "--layer", "sheathing", "--date", "13-40"], /like 10-01/],
    [["drying", "demo", "--layer", "sheathing", "--water", "1", "--moisture", "20"], /not both/],
  ])("%j", async (words, says) => {
    const { code, out, err } = await wall(words);
    expect(err).toMatch(says);
    expect(code).toBe(64);
    expect(out).toBe("");
    expect(err).not.toMatch(/^ +at /m);
  });
});

test("help names every command on standard output and ends with 0", async () => {
  const { code, out } = await wall(["--help"]);
  expect(code).toBe(0);
  for (const name of [
    "run",
    "side-by-side",
    "how-thick",
    "drying",
    "what-if",
    "humidity",
    "check",
    "weather",
    "materials",
  ])
    expect(out).toContain(`  ${name}`);
});

test("a command's help names each of its options", async () => {
  const { code, out } = await wall(["run", "--help"]);
  expect(code).toBe(0);
  for (const option of ["--option", "--path", "--weather", "--years", "--out", "--json"]) expect(out).toContain(option);
});
