import { checkCauses } from './synthetic';

checkCauses(['open', 'resistive splice', 'short at splice', 'short in lead-in']);
