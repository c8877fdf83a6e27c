import { Suspense, useEffect } from "react";
import { Dialogs } from "./shell/dialogs.tsx";
import { NoticeLine } from "./shell/notice-line.tsx";
import { sheets } from "./shell/sheets.ts";
import { SheetGuard } from "./shell/sheet-guard.tsx";
import { TitleBlock } from "./shell/title-block.tsx";
import { TopStrip } from "./shell/top-strip.tsx";
import { useTheme, useViewStore } from "./state/index.ts";
import "./app.css";

/** One sheet of a drawing set: the strip with the sheets, the sheet, the title block. */
export function App() {
  const theme = useTheme();
  const sheet = useViewStore((state) => state.sheet);
  const { Component, id, title } = sheets.find((candidate) => candidate.id === sheet) ?? sheets[0]!;

  useEffect(() => {
    document.documentElement.dataset["theme"] = theme;
  }, [theme]);

  return (
    <div className="window">
      <TopStrip />
      <main className="board" aria-label={title}>
        <NoticeLine />
        <SheetGuard key={id}>
          <Suspense fallback={null}>
            <Component />
          </Suspense>
        </SheetGuard>
      </main>
      <TitleBlock />
      <Dialogs />
    </div>
  );
}
