import { Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import {
  materialById,
  type Layer,
  type MaterialLookup,
  type Option,
  type Path,
  type Project,
} from "../../../solver/index.ts";
import { freeLayerId, onLayer, putLayer } from "../../state/edits.ts";
import { applyEdit, useViewStore, view, type Units } from "../../state/index.ts";
import { MaterialSearch } from "./material-search.tsx";

interface MaterialDialogProps {
  readonly project: Project;
  readonly option: Option;
  readonly path: Path;
  readonly lookup: MaterialLookup;
  readonly units: Units;
}

/** The thickness that a layer gets with its material: none for membranes, its own where it has one, else the stock size. */
function withMaterial(layer: Layer, id: string, stock_m: number | null, lookup: MaterialLookup): Layer {
  const { thickness_m, ...rest } = layer;
  const isMembrane = lookup(id)?.kind === "membrane";
  return { ...rest, material: id, ...(isMembrane ? {} : { thickness_m: thickness_m ?? stock_m ?? 0.05 }) };
}

/** Asks for a material, for a new layer or in the place of another. */
export function MaterialDialog({ project, option, path, lookup, units }: MaterialDialogProps) {
  const asking = useViewStore((state) => state.askingMaterial);
  const layerId = useViewStore((state) => state.layer);
  const throughAll = useViewStore((state) => state.throughAll);
  const at = Math.max(
    0,
    path.layers.findIndex((layer) => layer.id === layerId),
  );
  const layer = path.layers[at]!;
  if (asking === null) return null;
  const close = (): void => view({ askingMaterial: null });

  const choose = (id: string, stock_m: number | null): void => {
    const name = lookup(id)?.name ?? id;
    if (asking === "replace") {
      applyEdit(
        `Make layer ${at + 1} of ${option.id} ${name}`,
        onLayer(option.id, path.id, layer.id, throughAll, (found) => withMaterial(found, id, stock_m, lookup)),
      );
      return close();
    }
    const added = { id: freeLayerId(option, id.replaceAll("_", "-")), material: id };
    const usual = materialById(id)?.usualAirChangesPerHour ?? null;
    applyEdit(
      `Add ${name} to ${option.id}`,
      putLayer(option.id, path.id, layer.id, throughAll, {
        ...withMaterial(added, id, stock_m, lookup),
        ...(usual === null ? {} : { ventilation: { airChangesPerHour: usual } }),
      }),
    );
    view({ layer: added.id, askingMaterial: null });
  };

  return (
    <ModalOverlay className="dialog-ground" isOpen isDismissable onOpenChange={(open) => !open && close()}>
      <Modal className="dialog-frame">
        <Dialog className="dialog">
          <div className="head">
            <Heading slot="title" className="lead">
              {asking === "add" ? `A new layer inward of layer ${at + 1}` : `Another material for layer ${at + 1}`}
            </Heading>
            <button type="button" className="verb" onClick={close}>
              Close
            </button>
          </div>
          <MaterialSearch own={project.materials ?? []} units={units} onChoose={choose} />
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
