/** An answer this short is one line of the largest words. */
const oneLine = 88;

/**
 * Parts an answer after its first sentence; further sentences join it while they fit on one line. A stop after "in" is that of
 * an inch, unless a capital follows it.
 */
export function splitAnswer(text: string): { readonly first: string; readonly rest: string } {
  const sentences = text.split(/(?<=[.?])\s+(?=[A-Z0-9])/).filter((part) => part !== "");
  let first = sentences[0] ?? "";
  let taken = 1;
  while (taken < sentences.length && `${first} ${sentences[taken]!}`.length <= oneLine) {
    first = `${first} ${sentences[taken]!}`;
    taken += 1;
  }
  return { first, rest: sentences.slice(taken).join(" ") };
}
