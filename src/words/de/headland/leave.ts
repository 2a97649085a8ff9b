import type { leaveWords as EN } from '../../en/headland/leave.ts';
import type { Translated } from '../../translation.ts';

/** Gefragt, bevor eine Datei an die Stelle eines Dokuments mit Aufzeichnungen tritt. */
export const leaveWords: Translated<typeof EN> = {
  records: (n) =>
    `Das offene Dokument enthält ${n === 1 ? '1 Aufzeichnung, die nicht in dieser Datei ist' : `${n} Aufzeichnungen, die nicht in dieser Datei sind`}. Beim Öffnen tritt die Datei an die Stelle des Dokuments auf diesem Gerät. ` +
    'Zuerst das Dokument speichern oder seine Aufzeichnungen exportieren. Die Datei trotzdem öffnen?'
};
