/** As many characters make one line of the largest words. */
const oneLine = 60;

/** An answer's first sentence, with those after it that fit on the same line, and the rest. A stop that no capital or figure follows ends nothing. */
export function splitAnswer(answer: string): { readonly first: string; readonly rest: string } {
  const sentences = answer.split(/(?<=[.?!])\s+(?=[A-Z0-9])/);
  let taken = 1;
  let first = sentences[0]!;
  while (taken < sentences.length && first.length + 1 + sentences[taken]!.length <= oneLine) {
    first += ` ${sentences[taken]!}`;
    taken += 1;
  }
  return { first, rest: sentences.slice(taken).join(" ") };
}
