import { useViewStore } from "../state/index.ts";
import { HowThickPage } from "./how-thick/page.tsx";
import "./questions.css";

/** The questions that a series of runs answers. */
export default function QuestionsSheet() {
  const question = useViewStore((state) => state.question);
  switch (question) {
    default:
      return <HowThickPage />;
  }
}
