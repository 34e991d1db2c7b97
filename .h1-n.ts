import { readFileSync } from 'node:fs';
import { netlistOf } from '#exchange/netlist';
import { readSite } from '#plan/read';
const r:any = readSite(readFileSync(process.argv[2]!,'utf8'));
for (const c of r.site.circuits) console.log(netlistOf(r.site,c.id));
