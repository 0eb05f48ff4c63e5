/** Clearance holes by the name of the thread, mm: a close fit. */
export const clearanceHoles: Readonly<Record<string, number>> = {
  ...{ 'M1.6': 1.7, M2: 2.2, 'M2.5': 2.7, M3: 3.2, 'M3.5': 3.7, M4: 4.3, M5: 5.3, M6: 6.4, M8: 8.4 },
  ...{ M10: 10.5, M12: 13 },
  ...{ '0 BA': 6.1, '1 BA': 5.4, '2 BA': 4.8, '3 BA': 4.2, '4 BA': 3.7, '5 BA': 3.3, '6 BA': 2.9 },
  ...{ '7 BA': 2.6, '8 BA': 2.25, '9 BA': 1.95, '10 BA': 1.75 },
  ...{ '1/8': 3.3, '5/32': 4.1, '3/16': 4.9, '7/32': 5.7, '1/4': 6.5, '9/32': 7.4, '5/16': 8.2, '3/8': 9.8 },
  ...{ '7/16': 11.5, '1/2': 13.1 },
};

/** Where each of the series was read. */
export const clearanceSources = {
  iso: 'Clearance holes of metric screws: a table after ISO 273, fine series (web page, read 2026)',
  ba: 'Clearance holes of BA screws: from memory; a model engineers’ table (web page, read 2026) has 0.1 mm more for 0 to 2 BA',
  inch: 'Clearance holes of inch screws: a model engineers’ table for Whitworth threads (web page, read 2026)',
  unified:
    'Unified threads and their clearance holes, close fit: a chart of drills for taps (web page, read 2026)',
} as const;
