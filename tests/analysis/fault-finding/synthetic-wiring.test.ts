import { checkCauses } from './synthetic';

checkCauses(['reversed loop', 'missing loop', 'parallel for series', 'series for parallel']);
