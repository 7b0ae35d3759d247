import { showEntered } from '#units/entered.ts';
import type { Test } from './tested.ts';

/** "greatest oxygen uptake 46.2 mL/(kg min), measured", "cycle stage 120 W, 128 1/min". */
export const showTest = (test: Test): string => {
  switch (test.what) {
    case 'greatest oxygen uptake':
      return `${test.what} ${showEntered(test.value)}, ${test.how}`;
    case 'cycle stage':
      return [`${test.what} ${showEntered(test.watts)}`, ...beside(test)].join(', ');
    case 'running stage':
      return [`${test.what} ${showEntered(test.speed)}`, ...beside(test)].join(', ');
    case 'greatest grip':
    case 'critical force':
    case 'heel raises':
      return `${test.what}, ${test.side}, ${showEntered(test.value)}`;
    case 'greatest heart rate':
    case 'resting heart rate':
    case 'jump height':
      return `${test.what} ${showEntered(test.value)}`;
  }
};

type Stage = Extract<Test, { readonly what: 'cycle stage' | 'running stage' }>;

const beside = ({ heartRate, uptake }: Stage): readonly string[] => [
  ...(heartRate ? [showEntered(heartRate)] : []),
  ...(uptake ? [showEntered(uptake)] : []),
];
