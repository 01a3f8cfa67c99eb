import type { GroundpathTable } from '../../../trade/groundpath.ts';
import { groundpath } from '../../calculators/groundpath.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Groundpath(props: SumProps<GroundpathTable>) {
  return <SumSheet sum={groundpath} {...props} />;
}
