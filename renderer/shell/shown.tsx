import type { ReactNode } from "react";
import { Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { view } from "../state/index.ts";
import "./dialogs.css";

/** A sheet laid over the board, with a title and one way out besides Escape. */
export function Shown({ title, children }: { title: string; children: ReactNode }) {
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
