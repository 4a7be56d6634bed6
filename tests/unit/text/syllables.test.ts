import { describe, expect, it } from 'vitest';
import { syllablesEs, syllablesPl } from '#domain/text/syllables.ts';

/** Divided by hand; a point stands between two syllables. */
const SPANISH = `
ni.ño ma.má pier.na de.dos pie pies pe.so cuer.da rue.da ven.da ta.lón tris.te san.gre a.ho.ra a.hí o.í.do
en.fer.me.ra en.fer.me.rí.a lla.ma.da bo.tón rui.do ciu.dad cui.da.do cuí.de.se mie.do a.gua fui rey hoy muy y
que quie.to quién a.quí gui.a.do pin.güi.no si.guien.te le.er prohi.bi.do al.co.hol pa.ís frí.a frí.os
dí.a dí.as rí.e ca.er.se tra.e mo.ja.da re.ír a.é.re.o le.í.ais o.í.a co.o.pe.rar co.lor más ex.tra.ño
ha.cia a.bier.to des.pués pro.ble.ma tie.ne buey pue.de me.di.ci.na res.pi.ra.ción ve.hí.cu.lo tran.qui.lo
vi.a.je ca.ma le.van.ta.do pul.sar no.che`;

const POLISH = `
dziec.ko no.ga sto.pa pal.ce nie bie.li.zna pie.lę.gniar.ka przy.cisk łóż.ko łóż.ka mię.sień cię.żar cia.sny
ban.daż ban.da.ża szpi.tal lin.ka kół.ko pię.ta skó.ra ko.la.no u.do zim.na ma.ma ta.ta i i.dzie.my
na.u.czyć za.u.waż za.u.wa.żyć au.to pau.za mu.ze.um neu.ro.log te.ra.peu.ta eu.ro nie.u.fny ra.dio bio.lo.gia
o.pa.tru.nek od.dy.cha zsi.nia.ła o.puch.nię.ta dziś w z są wcią.ga krew pły.nie siu.siu wi.dać
po.wie.dzieć na.tych.miast le.kar.stwo swę.dzi sta.ły pod.nie.sio.ny`;

const vectors = (list: string) =>
  list
    .trim()
    .split(/\s+/u)
    .map((divided): [string, number] => [divided.replaceAll('.', ''), divided.split('.').length]);

describe('Spanish syllables, counted by hand', () => {
  // guiado is spoken gui.a.do by some and guia.do by the spelling rule; viaje and via- likewise
  const custom = new Set(['guiado', 'viaje']);
  it.each(vectors(SPANISH).filter(([word]) => !custom.has(word)))('%s has %i', (word, count) => {
    expect(syllablesEs(word)).toBe(count);
  });

  it('follows the spelling rule where custom parts two vowels', () => {
    expect([...custom].map(syllablesEs)).toEqual([2, 2]);
  });

  it('does not mind capitals or how accents are stored', () => {
    expect(syllablesEs('FRÍA')).toBe(2);
    expect(syllablesEs('fri\u0301a')).toBe(2);
  });
});

describe('Polish syllables, counted by hand', () => {
  it.each(vectors(POLISH))('%s has %i', (word, count) => {
    expect(syllablesPl(word)).toBe(count);
  });

  it('i before a vowel softens, i alone is a syllable', () => {
    expect(syllablesPl('zima')).toBe(2);
    expect(syllablesPl('ziarno')).toBe(2);
  });
});
