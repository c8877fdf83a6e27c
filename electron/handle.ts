import type { IpcMain, IpcMainInvokeEvent, WebContents } from "electron";
import type { Channel, Reply } from "./shared/channels.ts";
import { payloads, type Payload } from "./shared/payloads.ts";
import { HostFailure } from "./host-failure.ts";
import type { Log } from "./log.ts";

interface Wiring {
  readonly ipcMain: Pick<IpcMain, "handle">;
  readonly isOwnAddress: (address: string) => boolean;
  readonly log: Log;
}

export type Handle = <C extends Channel>(
  channel: C,
  answer: (payload: Payload<C>, sender: WebContents) => unknown,
) => void;

/** Why the sender may not ask, or null where it may: only the top frame of the program's own page. */
function senderFault(event: IpcMainInvokeEvent, isOwnAddress: (address: string) => boolean): string | null {
  const frame = event.senderFrame;
  if (frame === null) return "the frame is gone";
  if (frame.parent !== null) return "the frame lies inside another";
  if (!isOwnAddress(frame.url)) return `the frame shows ${frame.url.slice(0, 200)}`;
  return null;
}

/**
 * The one way in for the window: each channel checks the sender, then the payload, then does its work.
 * Refusals are logged by channel and place, never with the payload's content.
 */
export function handleBy({ ipcMain, isOwnAddress, log }: Wiring): Handle {
  return (channel, answer) => {
    ipcMain.handle(channel, async (event, ...given: unknown[]): Promise<Reply> => {
      const fault = senderFault(event, isOwnAddress);
      if (fault !== null) {
        log(`Refused ${channel}: ${fault}.`);
        return { ok: false, message: "The program refused a request that did not come from its own window." };
      }
      const checked = given.length > 1 ? null : payloads[channel].safeParse(given[0]);
      if (checked === null || !checked.success) {
        const places = checked?.error.issues.map((issue) => `${issue.path.join(".") || "payload"} ${issue.code}`);
        log(`Refused ${channel}: ${places?.slice(0, 8).join(", ") ?? "more than one payload"}.`);
        return { ok: false, message: "The program refused a request of the wrong shape. Nothing was changed." };
      }
      try {
        return { ok: true, value: await answer(checked.data as Payload<typeof channel>, event.sender) };
      } catch (error) {
        if (error instanceof HostFailure) {
          log(`Failed ${channel}: ${error.message}`);
          return { ok: false, message: error.message };
        }
        log(`Failed ${channel}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
        return { ok: false, message: "Something went wrong in the program; its log says what. Your work is kept." };
      }
    });
  };
}
