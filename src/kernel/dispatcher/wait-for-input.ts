import { receiveMessageOnPort } from 'node:worker_threads';
import { SharedState, type IoThreadData } from '../transport/ipc.js';

/** Sends a question to the user and sleeps until the answer arrives. The I/O thread stays awake meanwhile. */
export function waitForInput({ flags, answers }: IoThreadData, ask: () => void): string {
  while (receiveMessageOnPort(answers)) {
    // An answer to a question that was interrupted.
  }
  Atomics.store(flags, SharedState.input, 0);
  ask();
  for (;;) {
    Atomics.wait(flags, SharedState.input, 0);
    const received = receiveMessageOnPort(answers);
    if (received) return String(received.message);
    Atomics.store(flags, SharedState.input, 0);
  }
}
