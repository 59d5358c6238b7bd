-- Every standing record that hangs on a unit, with its day, now with the care and grades of lots,
-- notes, rulings on trays, and cuttings and trays that were moved. A passage hangs on both its trays.

drop view unit_record;

create view unit_record as
  select l.tray_id as unit_id, l.on_date, 'look' as kind, l.id as record_id from tray_look l
  where not exists (select 1 from tray_look s where s.supersedes_id = l.id)
  union all
  select o.tray_id, o.on_date, 'taken out', o.id from taken_out o
  where not exists (select 1 from taken_out s where s.supersedes_id = o.id)
  union all
  select f.tray_id, f.on_date, 'final count', f.id from final_count f
  where not exists (select 1 from superseded_count s where s.count_id = f.id)
  union all
  select w.tray_id, w.on_date, 'weaning count', w.id from weaning w
  where not exists (select 1 from weaning s where s.supersedes_id = w.id)
  union all
  select r.tray_id, r.on_date, 'ruling', r.id from tray_ruling r
  union all
  select m.tray_id, m.from_date, 'new place', m.id from tray_place m
  union all
  select p.from_tray_id, p.on_date, 'move of cuttings', p.id from tray_passage p
  where not exists (select 1 from passage_taken_back b where b.passage_id = p.id)
  union all
  select p.to_tray_id, p.on_date, 'move of cuttings', p.id from tray_passage p
  where not exists (select 1 from passage_taken_back b where b.passage_id = p.id)
  union all
  select c.lot_id, c.on_date, 'lot count', c.id from lot_count c
  where not exists (select 1 from lot_count s where s.supersedes_id = c.id)
  union all
  select x.lot_id, x.on_date, 'loss', x.id from lot_loss x
  where not exists (select 1 from lot_loss s where s.supersedes_id = x.id)
  union all
  select g.lot_id, g.on_date, 'going out', g.id from lot_outgoing g
  where not exists (select 1 from lot_outgoing s where s.supersedes_id = g.id)
  union all
  select a.lot_id, a.on_date, 'pinch, pruning or cover', a.id from lot_care a
  where not exists (select 1 from lot_care s where s.supersedes_id = a.id)
  union all
  select d.lot_id, d.on_date, 'grading', d.id from lot_grade d
  where not exists (select 1 from lot_grade s where s.supersedes_id = d.id)
  union all
  select e.stock_id, e.on_date, 'move, test or death', e.id from stock_event e
  where not exists (select 1 from stock_event s where s.supersedes_id = e.id)
  union all
  select v.unit_id, v.on_date, 'value', v.id from observation v
  where not exists (select 1 from observation s where s.supersedes_id = v.id)
  union all
  select n.unit_id, n.on_date, 'note', n.id from note n
  where n.unit_id is not null
    and not exists (select 1 from note s where s.supersedes_id = n.id);
