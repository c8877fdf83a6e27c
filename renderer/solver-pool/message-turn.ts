/**
 * Lets the worker's waiting messages in, a cancel among them. A message channel is used because timers are clamped to
 * several milliseconds, which would cost more than the marching itself.
 */
export function messageTurns(): () => Promise<void> {
  const { port1, port2 } = new MessageChannel();
  let wake: (() => void) | null = null;
  port1.onmessage = () => {
    wake?.();
    wake = null;
  };
  return () =>
    new Promise((resolve) => {
      wake = resolve;
      port2.postMessage(null);
    });
}
