import type { Door } from './door.ts';
import { DOCUMENT_DOORS } from './doors/documents.ts';
import { KEPT_DOORS } from './doors/kept.ts';
import { PICTURE_DOORS } from './doors/pictures.ts';
import { POINT_DOORS } from './doors/points.ts';
import { TABLE_DOORS } from './doors/tables.ts';
import { TYPED_DOORS } from './doors/typed.ts';

/** Every door of the program that takes what a stranger may have written. See docs/doors.md for what each of them is, and for those that are none. */
export const DOORS: readonly Door[] = [...DOCUMENT_DOORS, ...TABLE_DOORS, ...POINT_DOORS, ...PICTURE_DOORS, ...TYPED_DOORS, ...KEPT_DOORS];
