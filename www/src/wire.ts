// What goes into the core and what comes out of it.

export type Sections = "single" | "double" | "triple";
export type Shelter =
  | "open_ground"
  | "lone_home"
  | "homes_across_road"
  | "neighbours_apart"
  | "neighbours_close";
export type Alarm = "working" | "missing" | "expired" | "chirping" | "sounding";
export type StopKind = "out" | "off" | "today" | "soon";
export type Who = "resident" | "able_adult" | "qualified";
export type Confidence = "billed" | "measured" | "seen" | "guessed";

export interface Request {
  today: string;
  home?: Record<string, unknown> | null;
  people?: Record<string, unknown> | null;
  first_look?: Record<string, unknown> | null;
  heating?: Record<string, unknown> | null;
  electricity_usd_per_kwh?: number | null;
  furnace_filter?: Record<string, unknown> | null;
  water_heater?: Record<string, unknown> | null;
  bath_fan?: Record<string, unknown> | null;
  gaps?: Record<string, unknown>[] | null;
  heat_cable?: Record<string, unknown> | null;
}

export interface Phrase {
  key: string;
  args: { [name: string]: number | string | Phrase };
}

export interface Figure {
  value: number;
  low: number;
  high: number;
  unit: string;
  si_value: number;
  si_low: number;
  si_high: number;
  si_unit: string;
  confidence: Confidence;
  inputs: string[];
  sources: string[];
  text: Phrase;
}

export interface Place {
  zip: string;
  station: string;
  name: string;
  state: string;
  distance_km: number;
  elevation_ft: number;
  zone: string;
  by_area: boolean;
}

export interface Stop {
  code: string;
  kind: StopKind;
  text: Phrase;
  because: Phrase;
  meanwhile: Phrase[];
  card: Phrase[];
}

export interface Warning {
  code: string;
  text: Phrase;
}

export interface Material {
  item: Phrase;
  quantity: number;
  unit: Phrase;
}

export interface Step {
  id: string;
  text: Phrase;
  why: Phrase;
  when: Phrase;
  who: Who;
  cost: Figure;
  saving: Figure | null;
  saving_energy: Figure | null;
  payback: Phrase | null;
  cautions: Warning[];
  materials: Material[];
}

export interface Finding {
  item: string;
  text: Phrase;
  figure: Figure | null;
}

export interface Use {
  key: string;
  name: Phrase;
  energy: Figure;
  cost: Figure | null;
}

export interface Reminder {
  uid: string;
  date: string;
  title: Phrase;
  detail: Phrase;
  repeat: string | null;
  alarm_days_before: number;
}

export interface SourceNote {
  key: string;
  cite: string;
  place: string;
  obtained: string;
}

export interface Answer {
  version: string;
  today: string;
  place: Place | null;
  stops: Stop[];
  savings_hidden: boolean;
  firsts: Step[];
  later: Step[];
  findings: Finding[];
  look_next: Phrase[];
  do_not_touch: Phrase[];
  warnings: Warning[];
  uses: Use[];
  shopping: Material[];
  reminders: Reminder[];
  notes: Phrase[];
  sources: SourceNote[];
  credit: Phrase;
}

export interface Problem {
  path: string;
  code: string;
  message: string;
  args: Record<string, unknown>;
}
