import type { ScreenName } from './screens-of-entries.table.ts';

/** Numbers that are explained and criticised here and that no plan is made from. */
const EVIDENCE_ONLY = ['load'];

export const isEvidenceOnly = (id: string): boolean => EVIDENCE_ONLY.includes(id.split('/')[0] ?? '');

/** Where a screen is found; those of one person need somebody to show. */
export const pathOfScreen = (screen: ScreenName, person: string | null): string | null => {
  switch (screen) {
    case 'Desk':
      return '/';
    case 'Programmes':
      return '/programmes';
    case 'In and out':
      return '/in-and-out';
    case 'Settings':
      return '/settings';
    case 'Sheet':
    case 'Card':
      return person === null ? null : `/people/${person}`;
    case 'Road':
    case 'Capacity':
    case 'Crossing':
    case 'Record':
      return person === null ? null : `/people/${person}/${screen.toLowerCase()}`;
  }
};
