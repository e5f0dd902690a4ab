import { Subject } from 'rxjs';
import { isFromThread, type Place, type ToThread } from './signals.js';

/** Seconds without a sign of life after which a thread is ended. Only its own time counts, not the page’s. */
const PATIENCE = 8;
/** The same until it has begun: its script may come over a slow line. */
const PATIENCE_AT_FIRST = 60;
const SECOND = 1000;

const newWorker = () => new Worker(new URL('./worker.js', import.meta.url), { name: 'calculation' });

interface Handlers {
  /** It gave no sign of life, at a formula, `about` there or elsewhere, or could not go on. */
  ended(place: Place | null, about: boolean): void;
  tooLarge(place: Place): void;
}

/**
 * The thread that calculates. It can be ended while it is busy, which nothing else in a page can; the next one begins
 * with nothing.
 */
export class Thread {
  readonly onMessage = new Subject<unknown>();
  readonly #handlers: Handlers;
  #worker: Worker | undefined;
  /** Kept until the thread is there to receive it. */
  #waiting: unknown[] | undefined;
  #place: Place | null = null;
  #about = false;
  #answered = false;
  #silent = 0;
  #watch = 0;

  constructor(handlers: Handlers) {
    this.#handlers = handlers;
  }

  begin() {
    this.end();
    this.#waiting = [];
    this.#place = null;
    this.#about = false;
    const worker = newWorker();
    worker.onmessage = ({ data }) => this.#take(data);
    worker.onerror = (event) => {
      event.preventDefault();
      this.#give();
    };
    this.#worker = worker;
    this.#expect();
  }

  /** Ends what is under way. Nothing is calculated until the next beginning. */
  end() {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#rest();
  }

  readonly send = (message: unknown) => {
    if (this.#waiting) this.#waiting.push(message);
    else this.#worker?.postMessage(message);
    this.#expect();
  };

  #give() {
    const [place, about] = [this.#place, this.#about];
    this.end();
    this.#handlers.ended(place, about);
  }

  #rest() {
    window.clearInterval(this.#watch);
    this.#watch = 0;
    this.#silent = 0;
    this.#answered = false;
  }

  /** A thread that was given something answers when it is through with it. */
  #expect() {
    if (this.#watch !== 0 || !this.#worker) return;
    this.#watch = window.setInterval(() => {
      this.#silent += 1;
      if (this.#answered) this.#ask();
      if (this.#silent > (this.#waiting ? PATIENCE_AT_FIRST : PATIENCE)) this.#give();
    }, SECOND);
    if (!this.#waiting) this.#ask();
  }

  #ask() {
    this.#answered = false;
    this.#worker?.postMessage({ ping: true } satisfies ToThread);
  }

  #take(message: unknown) {
    this.#silent = 0;
    const sent = this.#waiting;
    if (sent) {
      this.#waiting = undefined;
      for (const one of sent) this.#worker?.postMessage(one);
      this.#ask();
    }
    if (!isFromThread(message)) {
      this.onMessage.next(message);
    } else if ('at' in message) {
      this.#place = message.at;
      this.#about = message.about ?? false;
      this.#expect();
    } else if ('broken' in message) this.#give();
    else if ('tooLarge' in message) this.#handlers.tooLarge(message.tooLarge);
    // In the midst of a calculation of which not all is told, it is asked again.
    else if (this.#about) this.#answered = true;
    else this.#rest();
  }
}
