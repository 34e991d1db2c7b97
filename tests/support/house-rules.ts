/** Who may import whom, as data: src/ROOM and what its files may name. Everything that is not listed is refused. */
export interface Room {
  /** Rooms whose values and types may be imported. */
  readonly rooms: readonly string[];
  /** Rooms of which only types may be imported. */
  readonly typesOf?: readonly string[];
  /** Packages, by exact name, or by their beginning where the entry ends in "*". */
  readonly packages: readonly string[];
  /** Nothing in it may know that it runs in a page. */
  readonly withoutPage?: true;
  /** Components and rune modules may stand in it. */
  readonly components?: true;
  /** Files outside src that may be imported, by the beginning of their path. */
  readonly outside?: readonly string[];
}

const EVERY_ROOM_OF_THE_PRODUCT = [
  'units',
  'physics',
  'plan',
  'analysis',
  'editor',
  'exchange',
  'storage',
  'workers',
  'scenes',
  'canvas',
  'ui',
  'i18n',
  'cli'
];
const PAGE_PACKAGES = ['svelte', 'svelte/*', '@lucide/svelte', '@lucide/svelte/*', 'd3-*', '$app/*'];

export const ROOMS: Readonly<Record<string, Room>> = {
  units: { rooms: ['i18n'], packages: [], withoutPage: true },
  i18n: { rooms: [], packages: [], withoutPage: true },
  physics: { rooms: ['units'], packages: [], withoutPage: true },
  plan: { rooms: ['i18n', 'units'], packages: ['zod'], withoutPage: true },
  analysis: { rooms: ['i18n', 'units', 'physics', 'plan'], packages: [], withoutPage: true },
  editor: { rooms: ['i18n', 'units', 'plan'], packages: [], withoutPage: true },
  exchange: {
    rooms: ['i18n', 'units', 'plan', 'analysis', 'scenes'],
    packages: ['papaparse', 'jspdf', '@tarikjabiri/dxf', 'dxf'],
    withoutPage: true
  },
  storage: { rooms: ['i18n', 'plan'], packages: ['idb'] },
  workers: { rooms: ['i18n', 'plan', 'analysis'], packages: ['comlink'] },
  cli: { rooms: ['i18n', 'units', 'plan', 'analysis', 'exchange'], packages: ['node:*'], withoutPage: true },
  scenes: {
    rooms: ['i18n', 'units', 'plan', 'editor'],
    typesOf: ['analysis'],
    packages: [],
    withoutPage: true
  },
  canvas: {
    rooms: ['i18n', 'units', 'plan', 'editor', 'scenes'],
    typesOf: ['analysis'],
    packages: ['konva', 'konva/*']
  },
  ui: {
    rooms: ['units', 'plan', 'editor', 'analysis', 'scenes', 'canvas', 'i18n'],
    typesOf: ['exchange'],
    packages: [...PAGE_PACKAGES, 'pdfjs-dist/*', 'dejavu-fonts-ttf/*'],
    components: true
  },
  app: {
    rooms: EVERY_ROOM_OF_THE_PRODUCT,
    packages: [...PAGE_PACKAGES, 'comlink', 'dejavu-fonts-ttf/*'],
    components: true,
    outside: ['samples/', 'lessons/']
  },
  routes: { rooms: ['app', 'ui'], packages: PAGE_PACKAGES, components: true, outside: ['src/app.css'] },
  tooling: { rooms: [], packages: ['node:*', 'sirv', 'vite', '@playwright/test'], withoutPage: true }
};

/** The files that stand in src itself, and the packages that each may import. */
export const ROOT_FILES: Readonly<Record<string, readonly string[]>> = {
  'app.html': [],
  'app.css': [],
  'app.d.ts': [],
  'hooks.server.ts': ['@sveltejs/kit'],
  'service-worker.ts': ['$service-worker']
};

export const MOST_LINES = 400;

/** The globals that only a page has; a name bound in the file itself, such as a parameter, is not one of them. */
export const PAGE_GLOBALS = [
  'window',
  'document',
  'self',
  'navigator',
  'location',
  'localStorage',
  'sessionStorage',
  'HTMLElement',
  'requestAnimationFrame'
];
