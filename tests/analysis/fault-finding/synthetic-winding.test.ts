import { checkCauses, checkSound } from './synthetic';

checkSound();
checkCauses(['shorted turns', 'wrong turns', 'wrong wire']);
