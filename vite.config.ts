import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vite';

/** What every station stands on. Cut into many small files, as the bundler would by itself, it compresses worse. */
const SPINE = [
  String.raw`core/(quantity|working|sprayer|dose|air|weather|advice|setting)/`,
  // Laser points and surveys of trees are asked for later.
  String.raw`core/canopy/\w+\.ts`,
  String.raw`words/(format|language|fill|names|naming|sentences|options|air)\.ts`,
  String.raw`words/en/(english|findings|refusals|options|sprayer|strategies|differences|formulas|screen|section)\.ts`,
  String.raw`workspace/(edits|history|workspace)\.`,
  String.raw`section/(frame|machine|measures|palette|scene|section|spray|tree)\.ts`,
  String.raw`ui/parts/(NumberField|Choice)\.`,
  String.raw`ui/section/`,
  String.raw`ui/nozzles/`,
  String.raw`ui/row/(RungStrip|Differences)\.`,
  String.raw`ui/setting/(AirPanel|FindingsList|OptionsTable|SettingPanel|FigureRow)\.`,
  String.raw`ui/shell/(Header|stations|OwnRow)\.`,
  String.raw`ui/spray/SpraySwitch\.`,
  String.raw`words/en/spray/switch\.`
];

export default defineConfig({
  plugins: [sveltekit()],
  build: {
    assetsInlineLimit: 0,
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'spine', test: new RegExp(`/src/(${SPINE.join('|')})`) }] } } }
  }
});
