import { checkCauses } from './synthetic';

checkCauses(['wet splice', 'cut insulation', 'steel near', 'other loop']);
