// Stands in for the core while the page is being drawn (`npm run dev`). Never bundled into the page.
// Its sentences and figures are made up.

import type { Answer, Figure, Phrase, Problem, Request, Stop } from "../src/wire.js";

const say = (en: string, es: string): Phrase => ({ key: "fake", args: { en, es } });

const figure = (
  low: number,
  high: number,
  unit: string,
  confidence: Figure["confidence"],
): Figure => ({
  value: (low + high) / 2,
  low,
  high,
  unit,
  si_value: (low + high) / 2,
  si_low: low,
  si_high: high,
  si_unit: "",
  confidence,
  inputs: [],
  sources: [],
  text:
    unit === "$"
      ? say(`about $${low} to $${high}`, `unos $${low} a $${high}`)
      : say(`about ${low} to ${high} ${unit}`, `unos ${low} a ${high} ${unit}`),
});

function refuse(...problems: Problem[]): never {
  throw Object.assign(new Error("refused"), { problems });
}

export default async function init(): Promise<void> {}
export function load_climate(): void {}
export const version = (): string => "0.1.0";
export const schema = (): string => "{}";

export function words(phrase: Phrase, language: string): string {
  return String(phrase.args[language] ?? phrase.key);
}

export function measure(text: string, unit: string): { value: number; unit: string } {
  const celsius = /^(\d+(?:\.\d+)?) ?°?C$/i.exec(text.trim());
  if (celsius && unit === "f") return { value: (Number(celsius[1]) * 9) / 5 + 32, unit };
  const found = /^(?:(\d+(?:\.\d*)?)|(?:(\d+) )?(\d+)\/([1-9]\d*))"?$/.exec(text.trim());
  if (!found)
    refuse({ path: "", code: "not_a_measure", message: "cannot be read", args: { text } });
  const [, plain, whole, over, under] = found;
  if (plain !== undefined) return { value: Number(plain), unit };
  return { value: Number(whole ?? 0) + Number(over) / Number(under), unit };
}

export function calendar(request: Request): string {
  return `BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//fake//EN\r\nX-DAY:${request.today}\r\nEND:VCALENDAR\r\n`;
}

export function assess(request: Request, language: "en" | "es" = "en"): Answer {
  check(request, language);
  const stops = stopsOf(request);
  const hidden = stops.some(({ kind }) => kind === "out" || kind === "off");
  const out = stops.some(({ kind }) => kind === "out");
  return { ...base(request), stops, savings_hidden: hidden, ...(out ? NOTHING : {}) };
}

const NOTHING = { firsts: [], later: [], uses: [], shopping: [], reminders: [], findings: [] };

function check(request: Request, language: "en" | "es"): void {
  const zip = request.home?.zip;
  const width = Number(request.home?.width_ft ?? 14);
  const problems: Problem[] = [];
  const problem = (path: string, en: string, es: string) =>
    problems.push({ path, code: "fake", message: language === "es" ? es : en, args: {} });
  if (zip !== undefined && !/^\d{5}$/.test(String(zip))) {
    problem(
      "home.zip",
      `a ZIP has five digits, not ${zip}`,
      `un ZIP tiene cinco dígitos, no ${zip}`,
    );
  }
  if (width < 6 || width > 60) {
    problem(
      "home.width_ft",
      `width must be between 6 and 60 ft, not ${width}`,
      `el ancho debe ser de 6 a 60 pies, no ${width}`,
    );
  }
  for (const [row, gap] of (request.gaps ?? []).entries()) {
    if (Number(gap.width_in) > 12) {
      problem(
        `gaps[${row}].width_in`,
        `gap width must be at most 12 in, not ${gap.width_in}`,
        `el ancho de la rendija es a lo más 12, no ${gap.width_in}`,
      );
    }
  }
  if (problems.length > 0) refuse(...problems);
}

function stopsOf(request: Request): Stop[] {
  const stops: Stop[] = [];
  if (request.first_look?.gas_smell === true) {
    stops.push({
      code: "W-GAS-SMELL",
      kind: "out",
      mends: [],
      text: say(
        "Leave now, leave the door open. No switches, no phone, no flames inside. Call 911 and the gas supplier from far away.",
        "Salgan ya y dejen la puerta abierta. Adentro no usen interruptores, teléfono ni fuego. Desde lejos llamen al 911 y a la compañía de gas.",
      ),
      because: say("A gas smell was noted.", "Se anotó olor a gas."),
      meanwhile: [],
      card: [],
    });
  }
  if (request.heat_cable?.damaged === true) {
    stops.push({
      code: "W-HEAT-CABLE",
      kind: "off",
      mends: [],
      text: say(
        "Heat tape is damaged: pull its plug if it is dry and in easy reach, else its breaker. Do not touch the cable.",
        "El cable calefactor (heat tape) está dañado: desconéctelo si el enchufe está seco y a la mano; si no, baje el breaker. No toque el cable.",
      ),
      because: say(
        "Cracked, charred or melted cable can start a fire.",
        "Un cable agrietado o quemado puede causar un incendio.",
      ),
      meanwhile: [say("Get a new listed cable today.", "Consiga hoy un cable nuevo certificado.")],
      card: [
        say("Who stays where tonight?", "¿Quién se queda dónde esta noche?"),
        say(
          "Water heater off, main valve closed, all taps open, drain the pipe.",
          "Apague el calentador de agua, cierre la llave de paso, abra todas las llaves, vacíe el tubo.",
        ),
        say("Call 211 for emergency help.", "Llame al 211 para ayuda de emergencia."),
      ],
    });
  }
  if (Number(request.water_heater?.tap_f) >= 130) {
    stops.push({
      code: "W-SCALD",
      kind: "today",
      mends: [],
      text: say(
        "The tap water burns. Turn the dial down today.",
        "El agua de la llave quema. Baje hoy la perilla.",
      ),
      because: say(
        `${request.water_heater?.tap_f} °F at the tap, with a child in the home.`,
        `${request.water_heater?.tap_f} °F en la llave, con menores en casa.`,
      ),
      meanwhile: [
        say(
          "Cold first, then mix, then test with the thermometer.",
          "Primero fría, luego mezcle, luego mida con el termómetro.",
        ),
      ],
      card: [],
    });
  }
  return stops;
}

function base(request: Request): Omit<Answer, "stops" | "savings_hidden"> {
  const caution = {
    code: "W-BREAKER",
    text: say(
      "Before a breaker goes off: is oxygen, another medical machine or the pipe cable on it?",
      "Antes de bajar un breaker: ¿alimenta oxígeno, otro aparato médico o el cable de la tubería?",
    ),
  };
  const step = (id: string, en: string, es: string, low: number): Answer["firsts"][number] => ({
    id,
    text: say(en, es),
    why: say(
      "Cold air comes in here all winter, close to the floor.",
      "Aquí entra aire frío todo el invierno, cerca del piso.",
    ),
    when: say("this week", "esta semana"),
    who: "resident",
    cost: figure(low, low * 2, "$", "guessed"),
    saving: figure(low * 2, low * 5, "$", "measured"),
    saving_energy: figure(low * 10, low * 25, "kWh", "measured"),
    life: figure(3, 8, "years", "guessed"),
    worth: null,
    payback: say("in 3 to 9 months", "en 3 a 9 meses"),
    cautions: [caution],
    materials: [
      {
        item: say("door sweep, 36 in", "burlete inferior de puerta, 36 pulgadas"),
        quantity: 1,
        unit: say("piece", "pieza"),
      },
    ],
  });
  return {
    version: "0.1.0",
    today: request.today,
    place: request.home?.zip
      ? {
          zip: String(request.home.zip),
          station: "000000",
          name: "Sample Field",
          state: "MT",
          distance_km: 6,
          lifted_ft: null,
          elevation_ft: 3200,
          zone: "6B",
          by_area: false,
        }
      : null,
    firsts: [
      step(
        "seal_door",
        "Put a sweep under the front door",
        "Ponga un burlete debajo de la puerta de enfrente",
        12,
      ),
      step(
        "filter",
        "Put in a new furnace filter of the same size",
        "Ponga un filtro nuevo del mismo tamaño en la calefacción",
        6,
      ),
      step(
        "thermostat",
        "Give the heat tape a thermostat",
        "Póngale termostato al cable calefactor (heat tape)",
        30,
      ),
    ],
    later: [
      step("fan", "Duct the bath fan outdoors", "Saque el aire del extractor al exterior", 60),
    ],
    findings: [
      {
        item: "tap",
        text: say("At 124 °F a grown-up burns in", "A 124 °F una persona adulta se quema en"),
        figure: {
          ...figure(90, 170, "s", "measured"),
          text: say("about 2 minutes", "unos 2 minutos"),
        },
      },
      {
        item: "heater",
        text: say(
          "4 of 12 registers are closed.",
          "4 de 12 salidas de aire (registers) están cerradas.",
        ),
        figure: null,
      },
    ],
    look_next: [
      say("Measure the gap at the back door.", "Mida la rendija de la puerta de atrás."),
      say("Read the heat tape's tag.", "Lea la etiqueta del cable calefactor (heat tape)."),
    ],
    tap: null,
    do_not_touch: [
      say(
        "The water heater's air openings: leave them open.",
        "Las aberturas de aire del calentador (louvers): déjelas abiertas.",
      ),
      say(
        "The furnace burner: for a technician only.",
        "El quemador de la calefacción: solo para un técnico.",
      ),
    ],
    warnings: [
      {
        code: "W-BELLY-FREEZE",
        text: say(
          "The furnace also warms the floor pipes. In hard cold let it run part of every hour.",
          "La calefacción también calienta los tubos del piso. En frío fuerte déjela trabajar parte de cada hora.",
        ),
      },
    ],
    uses: [
      {
        key: "heating",
        name: say("Heating", "Calefacción"),
        energy: figure(9000, 14000, "kWh", "guessed"),
        cost: figure(820, 1270, "$", "guessed"),
      },
      {
        key: "hot_water",
        name: say("Hot water", "Agua caliente"),
        energy: figure(2600, 4100, "kWh", "measured"),
        cost: figure(390, 610, "$", "measured"),
      },
      {
        key: "leaks",
        name: say("Outdoor air coming in", "Aire de afuera que entra"),
        energy: figure(1500, 3900, "kWh", "measured"),
        cost: figure(140, 350, "$", "measured"),
      },
      {
        key: "cable",
        name: say("Heat tape", "Cable calefactor (heat tape)"),
        energy: figure(1200, 1472, "kWh", "measured"),
        cost: figure(180, 220, "$", "measured"),
      },
    ],
    shopping: [
      {
        item: say("door sweep, 36 in", "burlete inferior de puerta, 36 pulgadas"),
        quantity: 1,
        unit: say("piece", "pieza"),
      },
      {
        item: say("furnace filter, your size", "filtro de calefacción, de su medida"),
        quantity: 4,
        unit: say("pieces", "piezas"),
      },
    ],
    reminders: [
      {
        uid: "a",
        date: "2027-01-15",
        title: say("Look at the furnace filter", "Revise el filtro de la calefacción"),
        detail: say("Hold it against a flashlight.", "Póngalo contra una linterna."),
        repeat: "FREQ=MONTHLY",
      },
    ],
    notes: [
      say("Size of the home was taken as 14 by 66 ft.", "Se tomó la casa de 14 por 66 pies."),
    ],
    sources: [
      {
        key: "handbook-2021-ch16",
        cite: "Handbook of fundamentals, 2021, chapter 16",
        place: "table 4",
        obtained: "read",
      },
    ],
    credit: say(
      "Weather: public climate normals, prepared for this page.",
      "Clima: normales climáticas públicas, preparadas para esta página.",
    ),
  };
}
