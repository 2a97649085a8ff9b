import type { Weather } from '#core/weather/days.ts';
import type { RowProblem } from '#job/csv/header.ts';

/** What came of a weather file. */
export interface WeatherTaken {
  readonly name: string;
  readonly used: number;
  readonly refused: number;
  readonly problems: readonly RowProblem[];
  readonly more: number;
}

/** The weather file that was read last, for as long as the page lives. It is no part of the document: it is the user's own file. */
class WeatherFile {
  weather = $state.raw<Weather | null>(null);
  taken = $state.raw<WeatherTaken | null>(null);

  /** Reads a file in place of the one before; one that cannot be used leaves that as it is. */
  async read(name: string, text: string): Promise<boolean> {
    const { readWeather } = await import('#job/weather/read.ts');
    const { weather, ...taken } = readWeather(text);
    this.taken = { name, ...taken };
    if (weather) this.weather = weather;
    return weather !== null;
  }
  forget(): void {
    this.weather = null;
    this.taken = null;
  }
}

export const weatherFile = new WeatherFile();
