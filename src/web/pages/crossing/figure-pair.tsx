import type { CrossingDetail, CrossingWindow } from '#contract/windows/crossing-window.ts';
import { BodyFigure } from '../../body-figure/body-figure.tsx';

interface FigurePairProps {
  readonly crossing: CrossingWindow;
  readonly detail: CrossingDetail;
}

export function FigurePair({ crossing, detail }: FigurePairProps) {
  const load = detail.load;
  return (
    <BodyFigure
      sex={crossing.person.sex}
      stature={crossing.stature}
      shareModel={detail.shareModel}
      levels={detail.levels}
      bar={`bar ${Math.round(detail.bar)} kg`}
      machine={load === null ? 'no load' : `machine ${load.text}, ${Math.round(load.kilograms)} kg`}
    />
  );
}
