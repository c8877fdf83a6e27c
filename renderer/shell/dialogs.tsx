import { useViewStore } from "../state/index.ts";
import { About } from "./about.tsx";
import { KeySheet } from "./key-sheet.tsx";
import { NewWall } from "./new-wall.tsx";
import { Words } from "./words.tsx";
import { Shown } from "./shown.tsx";

export function Dialogs() {
  const open = useViewStore((state) => state.openDialog);
  switch (open) {
    case "keys":
      return (
        <Shown title="Keys">
          <KeySheet />
        </Shown>
      );
    case "about":
      return (
        <Shown title="About Wallyear">
          <About />
        </Shown>
      );
    case "words":
      return (
        <Shown title="Words and sources">
          <Words />
        </Shown>
      );
    case "newWall":
      return (
        <Shown title="A new wall">
          <NewWall />
        </Shown>
      );
    case "material":
    case null:
      return null;
  }
}
