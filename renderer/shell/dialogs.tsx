import type { ReactNode } from "react";
import { Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { useViewStore, view } from "../state/index.ts";
import { About } from "./about.tsx";
import { KeySheet } from "./key-sheet.tsx";
import "./dialogs.css";

function Shown({ title, children }: { title: string; children: ReactNode }) {
  return (
    <ModalOverlay
      className="dialog-ground"
      isOpen
      isDismissable
      onOpenChange={(open) => {
        if (!open) view({ openDialog: null });
      }}
    >
      <Modal className="dialog-frame">
        <Dialog className="dialog">
          <div className="head">
            <Heading slot="title" className="lead">
              {title}
            </Heading>
            <button type="button" className="verb" onClick={() => view({ openDialog: null })}>
              Close
            </button>
          </div>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

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
    default:
      return null;
  }
}
