import { useViewStore } from "../state/index.ts";
import { DryingPage } from "./drying/page.tsx";
import { HowThickPage } from "./how-thick/page.tsx";
import { HumidityPage } from "./humidity/page.tsx";
import { WhatIfPage } from "./what-if/page.tsx";
import "./questions.css";

/** The questions that a series of runs answers. */
export default function QuestionsSheet() {
  const question = useViewStore((state) => state.question);
  switch (question) {
    case "howThick":
      return <HowThickPage />;
    case "drying":
      return <DryingPage />;
    case "whatIf":
      return <WhatIfPage />;
    case "humidity":
      return <HumidityPage />;
  }
}
