/** Every file that can be made of a site; what makes it is loaded when it is first asked for. */
import type { Exporter, ExportKind } from './exported';

/** Pixels need a page: whoever has one adds it. */
type Everywhere = Exclude<ExportKind, 'plan-png'>;

export const EXPORTERS: Readonly<Record<Everywhere, () => Promise<Exporter>>> = {
  'takeoff-csv': async () => (await import('./takeoff')).takeoffCsv,
  'takeoff-xlsx': async () => (await import('./takeoff')).takeoffXlsx,
  'readings-csv': async () => (await import('./readings')).readingsCsv,
  'readings-xlsx': async () => (await import('./readings')).readingsXlsx,
  'measured-csv': async () => (await import('./measured')).measuredCsv,
  'measured-xlsx': async () => (await import('./measured')).measuredXlsx,
  'cutting-csv': async () => (await import('./cutting')).cuttingCsv,
  'cutting-xlsx': async () => (await import('./cutting')).cuttingXlsx,
  'designs-csv': async () => (await import('./designs')).designsCsv,
  'designs-xlsx': async () => (await import('./designs')).designsXlsx,
  'plan-svg': async () => (await import('./plan-svg')).planSvg,
  'plan-dxf': async () => (await import('./plan-dxf')).planDxf,
  'sheet-pdf': async () => (await import('./sheet-pdf')).sheetPdf,
  'record-pdf': async () => (await import('./record-pdf')).recordPdf,
  'form-pdf': async () => (await import('./record-pdf')).formPdf,
  'report-json': async () => (await import('./report-json')).reportFile
};
