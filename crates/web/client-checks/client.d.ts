// Names for what the client's modules hand to each other. What goes over the wire comes from the notebook's own document.

import type { components } from "./types";

type Schemas = components["schemas"];
export type Event = Schemas["Event"];
export type Body = Schemas["Body"];
export type Kind = Body["kind"];
export type Now = Schemas["Now"];
export type FirstLesson = Schemas["FirstLesson"];
export type WordNow = Schemas["WordNow"];
export type RewardNow = Schemas["RewardNow"];
export type Problem = Schemas["Problem"];
export type Outcome = Schemas["Outcome"];
export type SignLevel = Schemas["SignLevel"];
export type Answer = Schemas["Answer"];
export type Then = Schemas["Then"];
export type PressedBy = Schemas["PressedBy"];
export type EndReason = Schemas["EndReason"];
export type InvitationResult = Schemas["InvitationResult"];
export type Way = Schemas["InvitationKind"];
export type SwapNow = Schemas["SwapNow"];

/** The content of one kind. */
export type Of<K extends Kind> = Extract<Body, { kind: K }>;
/** An event of one kind. */
export type Told<K extends Kind> = Event & { body: Of<K> };
/** A row of the outbox; `n` is given by the database. */
export interface Row {
  n: number;
  id: string;
  tap: string;
  event: Event;
  state: "held" | "kept" | "sent" | "refused";
  at: number;
  until?: number;
  sticky?: boolean;
  problems?: Problem[];
}

/** How it stands with the notebook. */
export type Link = "ok" | "waiting" | "unpaired" | "forbidden";

/** How taps are kept. */
export interface Keeping {
  hold?: number;
  sticky?: boolean;
  memo?: [string, unknown];
  tap?: string;
  aside?: boolean;
}

/** A round as this device remembers it. */
export interface RoundMemo {
  round: string;
  words: string[];
  calls: number;
  begun: number;
  next: number;
  stopped?: boolean;
  word?: undefined;
}
/** A round that may be gone on with, and the word its next call draws. */
export type OpenRound = Omit<RoundMemo, "word"> & { word: string };

/** How far an invitation has got. */
export interface InvitationMemo {
  step?: "waiting" | "late" | "after" | "shown" | "left";
  at?: number;
  id?: string;
  press?: string;
  result?: string;
  tappedAt?: number;
  call?: { round: string; number: number };
  word?: string;
  other?: string;
  way?: Way;
  wait?: number;
  late?: string;
  delivery?: string;
  myself?: boolean;
  /** Opened by the plan while showing: it leads back there. */
  back?: boolean;
}

/** One that is going on: what was offered, when, and how long the wait is. */
export type Going = InvitationMemo & { at: number; word: string; wait: number };

/** What was planned and advised when a session began; it holds until that ends. */
export interface SessionPlan {
  session: string;
  /** Showings by word. */
  showings: Record<string, number>;
  /** Times to offer a word first, by word. */
  invitations?: Record<string, number>;
  minutes?: number;
  advice?: Record<string, Pick<WordNow, "stage" | "may_invite" | "draws">>;
}

/** What the pad remembers between loads. */
export interface Memo {
  mode?: string;
  carriedOnAt?: number;
  swapsOnAt?: number;
  aside?: string[];
  round?: RoundMemo;
  invitation?: InvitationMemo;
  swap?: { press: string; is: "not_now" | "failed" };
  /** The plan a session was begun with. */
  plan?: SessionPlan;
  /** Words a person draws beyond the plan. */
  beside?: string[];
  /** The ended session whose summary was put away. */
  seen?: string;
  /** The delivery of which nobody saw what came after it. */
  unseen?: string;
  /** The stop of swaps whose notice was put away. */
  swapsSeen?: string;
  /** Lessons that opened by themselves, by whose: one that is due, or that it was put away. */
  lessons?: Record<string, Partial<Record<FirstLesson["at"], FirstLesson | "seen">>>;
}

/** A tenth of a second of sound. */
export interface Block {
  position: number;
  samples: Int16Array;
  peak: number;
  at: number;
}

/** Samples of a stream, with the position of the first. */
export type Piece = Pick<Block, "position" | "samples">;

/** What is asked of the notebook when a stream begins. */
export interface Listening {
  only?: boolean;
  keepUnsure?: boolean;
  take?: boolean;
}

/** Samples on their way to the notebook. */
export interface Stream {
  lost: number;
  readonly link: "over" | "ok" | "waiting";
  readonly waiting: number;
  add(piece: Piece): void;
  anew(at: number): void;
  keepUnsure(keep: boolean): void;
  end(): Promise<unknown>;
}

/** An open microphone. */
export interface Microphone {
  rate: number;
  /** What the browser says it does to the sound. */
  settings: MediaTrackSettings;
  stop(): Promise<void>;
  /** Asks for sound again where the browser halted it. */
  resume(): void;
}

/** A recording without a gap. */
export interface Take {
  readonly seconds: number;
  /** Presses marked so far. */
  readonly marked: number;
  /** Takes what came; false where sound before it is missing. */
  add(block: Block): boolean;
  /** Marks a press at this moment of the device's clock, milliseconds. */
  mark(now: number): void;
  /** The sound and the seconds of presses that had `tail` seconds to sound; what comes after those is cut away. */
  end(tail: number): { samples: Int16Array; presses: number[] };
}

/** A sound file of a recording kit. */
export interface KitFile {
  bytes: Uint8Array<ArrayBuffer>;
  seconds: number;
}

/** A recording of a kit; no word where nothing was pressed. */
export interface KitTake {
  word: string | null;
  distance_m: number;
  room: string;
  noise: string;
  marked: string;
  presses: number[];
  sound: KitFile;
}

/** A press as the engine tells it: which clip, seconds since the stream began, and how it sounded. */
export interface HeardNow {
  clip: number;
  onset: number;
  confidence: number;
  speed: number;
  level: number;
  share: number;
}

/** What the engine's module offers; see crates/ear/src/exports.rs. */
export interface Parts {
  memory: WebAssembly.Memory;
  room(samples: number): number;
  clip(rate: number, word: number): number;
  at_speeds(centre: number, width: number): void;
  begin(rate: number): number;
  prove(rate: number, word: number): number;
  cut(rate: number): number;
  said(): number;
  wrong(): number;
  push(): number;
  gap(samples: number): number;
  finish(): number;
  presses(): number;
  fault(): number;
}

/** One ear. */
export interface Engine {
  clip(samples: Float32Array, rate: number, word: number, speeds?: [number, number]): void;
  prove(samples: Float32Array, rate: number, word: number): Proof;
  cut(samples: Float32Array, rate: number): Stretches;
  begin(rate: number): void;
  push(samples: Float32Array): HeardNow[];
  gap(samples: number): HeardNow[];
  finish(): HeardNow[];
  bytes(): number;
}

/** What the page asks of the engine's worker, one of these a message. */
export interface ToEar {
  /** `words`: for each clip the place of the first that says the same; `speeds`: what to listen for, slowest and fastest. */
  open: {
    module: ArrayBuffer;
    clips: Float32Array[];
    words: number[];
    speeds: ([number, number] | undefined)[];
    clipRate: number;
  };
  begin: { stream: string; rate: number };
  sound: Piece;
  prove: Taken & { word: number };
  cut: Taken;
  end: Record<string, never>;
}

/** What the worker answers. */
export interface FromEar {
  ready?: { bytes: number };
  heard?: HeardNow[];
  /** The stream they were heard in. */
  stream?: string;
  /** How many samples were taken. */
  samples?: number;
  proof?: Proof;
  cut?: Stretches;
  ended?: boolean;
  wrong?: string;
}

/** What came of a proof; see crates/listen/src/proof.rs. */
export type Proof =
  | { outcome: "heard"; confidence: number; speed: number }
  | { outcome: "unsure"; confidence: number }
  | { outcome: "nothing" }
  | { outcome: "too_quiet"; over_room_db: number }
  | { outcome: "too_far"; below_db: number }
  | { outcome: "wrong_speed"; speed: number }
  | { outcome: "another_word"; word: string; confidence: number }
  | { outcome: "another_sound" };

/** What sounds between two pauses; see crates/listen/src/stretches.rs. */
export interface Stretch {
  from: number;
  to: number;
  level_db: number;
  over_room_db: number;
  beep: boolean;
  quiet: boolean;
  long: boolean;
}

/** A sound cut at its pauses. */
export interface Stretches {
  room_db: number;
  sounds: Stretch[];
}

/** Sound that was taken, one channel. */
export interface Taken {
  samples: Int16Array;
  rate: number;
}

/** Sound being taken. */
export interface Taking {
  stop(): Promise<void>;
  /** What was taken so far. */
  sofar(): Taken;
}

/** Judges sound by the recordings in use. */
export interface Judge {
  /** Whether in the page itself. */
  here: boolean;
  vocabulary: Vocabulary;
  prove(sound: Taken, word: string): Promise<Proof>;
  cut(sound: Taken): Promise<Stretches>;
  close(): void;
}

/** What is listened for, and what presses are noted with. */
export interface Vocabulary {
  home: string;
  zone: string;
  rate: number;
  words: { word: string; says: string; clip: string; speeds?: [number, number] }[];
  left_out: string[];
}

/** A worker whose engine is ready. */
export interface Ear {
  worker: Worker;
  words: Vocabulary;
  bytes: number;
}

/** How a stream is heard on this device. */
export interface EarOptions {
  opening: Promise<Ear>;
  rate: number;
  began: number;
  options: Listening;
  animal: string | undefined;
  session: (at: number) => Promise<string | undefined>;
  tell: (kind: string, content: any) => void;
  changed: () => void;
}

/** A time that was not heard, in milliseconds. */
export interface Gap {
  from: number;
  to: number;
}

export type Stop = "strong" | "left" | "mild";

/** What the last events amount to. */
export interface View {
  stand: Event[];
  session: string | undefined;
  /** The last end of a session today, while none is open. */
  ended: Told<"session_end"> | undefined;
  /** Whether the animal has joined the session and not gone since. */
  here: boolean;
  startedAt: number | undefined;
  joined: boolean;
  stop: Stop | undefined;
  shownNow: Record<string, number>;
  /** Invitations since the session began. */
  invitedNow: Record<string, number>;
  shownToday: Record<string, number>;
  showings: number;
  perMinute: number | undefined;
  delay: number | undefined;
  delays: number;
  pending: Record<string, Told<"press">>;
  last: Told<"delivery"> | undefined;
}

export interface RationLeft {
  given: number;
  left: number | undefined;
  /** Whole pieces, and by which limit: the smaller of the day's food and the card's most a day. */
  bound(food: Dosed): { n: number; by: "food" | "card" } | undefined;
  pieces(food: Dosed): number | undefined;
}

/** What tells how much of a food may be given. */
type Dosed = { id?: string; kcal?: number | null; most_per_day?: number | null };

/** What a session amounts to. */
export interface Summary {
  minutes: number | undefined;
  shown: Record<string, number>;
  pressed: Record<string, number>;
  /** Of those pressed, what looked like a stumble. */
  stumbled: Record<string, number>;
  invited: Record<string, number>;
  /** Whether any of them was no call of a round. */
  undrawn: boolean;
  given: number;
  presses: number;
  waiting: Told<"press">[];
}

/** The pad of one animal. */
export interface Pad {
  now: Now;
  own: Row[];
  knows: Set<string>;
  clockOff: number;
  memo: Memo;
  view: View;
  ration: RationLeft;
  /** Words, with what the running session's plan advised. */
  words: WordNow[];
  /** When strong signs were seen in the last seven days, milliseconds. */
  strong: number[];
  /** What the address had the Board open with, until another is chosen. */
  asked: string | undefined;
  /** Whether the notebook gives no answer; undefined until that is known. */
  offline: boolean | undefined;
  /** Whether the server answers and lets nobody in here any more. */
  left: boolean;
  broken?: string;
  look(): View;
  word(id: string | undefined): WordNow | undefined;
  says(id: string | undefined): string;
  reward(id: string | null | undefined): RewardNow | undefined;
  rewardOf(word: string | undefined): RewardNow | undefined;
  /** Showings planned for the session that runs, else for the next, by word. */
  planned(): Record<string, number>;
  /** Times that session is planned to offer a word before it is shown, by word. */
  invitations(): Record<string, number>;
  /** Those words. */
  invites(): string[];
  /** How long that session is planned at most. */
  minutes(): number | undefined;
  /** The plan of a session that begins now. */
  plan(session: string): SessionPlan;
  event<B extends Body>(body: B, at?: number): Event & { body: B };
  in(): { session?: string };
  note(bodies: (Body | Event)[], options?: Keeping): Promise<Event[]>;
  amend(event: Event, change: object): Promise<void>;
  press(word: string, by: PressedBy, more?: Partial<Of<"press">>): Promise<Event[]>;
  deliver(asked: Told<"press"> | Told<"catch">, answer?: Answer, more?: Partial<Of<"delivery">>): Promise<Event>;
  setMemo(change: Memo): Promise<void>;
  reload(): Promise<void>;
  refresh(): Promise<void>;
  begin(): Promise<void>;
}

export type Child = Node | string | false | undefined | null | 0;
/** What a part of the page shows: built anew when `key` changes, brought up to date at every tick. */
export interface Panel {
  key: string;
  build(): Child[];
  tick?(node: HTMLElement): void;
}
/** One way to use the pad. */
export interface Mode {
  panel(pad: Pad): Panel;
  padState(pad: Pad, word: string): PadState;
  padsHidden?(pad: Pad): boolean;
  tap(pad: Pad, word: string): unknown;
}

/** How one word's pad looks. */
export interface PadState {
  name?: string;
  does?: string;
  count?: string;
  off?: boolean;
}

/** A moment of a rehearsal, as the notebook tells it. */
export interface Moment {
  at: number;
  what: string;
  thing?: number;
  level?: string;
  /** Places of two things held out: on the animal's left and on its right. */
  pair?: [number, number];
  mine: boolean;
  says: string;
}
/** All of a rehearsal that follows from what was done so far. */
export interface Moments {
  begins: [number, number];
  motions: [number, number, number, number, number, number][];
  told: Moment[];
  over_ms: number;
  over: string;
}
/** A button, and since when. */
export interface SinceThen {
  thing: number;
  at: number;
}
/** How things stand at a moment of a rehearsal. */
export interface StandsNow {
  own?: SinceThen;
  shown?: SinceThen;
  waits?: SinceThen;
  then?: SinceThen;
  sign: string;
  /** Whether a mild sign asks for a pause where an invitation waits, or its wait was over. */
  pauses: boolean;
  lit?: SinceThen;
  lies: boolean;
  holds: boolean;
  /** Two things that are held out. */
  pair?: [number, number];
  treats: number;
  /** Invitations so far. */
  offers: number;
  /** Whether the animal has gone. */
  gone: boolean;
  /** Whether the person has just called, or stood in the way. */
  calls: boolean;
  bars: boolean;
}
