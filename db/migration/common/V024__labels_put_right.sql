-- Labels put right: which sayings were made together, what a question lies between, and who noticed it.

-- the same on all sayings of one correction; none on a saying made when a unit was set up
alter table tie add column correction_id uuid;
create index tie_correction on tie (correction_id);

-- a question between two units that should be of one accession on that day
alter table doubt add column other_unit_id uuid references unit;
create index doubt_other_unit on doubt (other_unit_id);

-- who noticed it; none where the records contradict each other by themselves
alter table doubt add column person_id uuid references person;

-- the correction that answered it
alter table doubt add column correction_id uuid;
create index doubt_correction on doubt (correction_id);

-- Every standing record that hangs on a unit, with its day: what a correction of labels moves.
create view unit_record as
  select l.tray_id as unit_id, l.on_date, 'look' as kind from tray_look l
  where not exists (select 1 from tray_look s where s.supersedes_id = l.id)
  union all
  select o.tray_id, o.on_date, 'taken out' from taken_out o
  where not exists (select 1 from taken_out s where s.supersedes_id = o.id)
  union all
  select f.tray_id, f.on_date, 'final count' from final_count f
  where not exists (select 1 from superseded_count s where s.count_id = f.id)
  union all
  select w.tray_id, w.on_date, 'weaning count' from weaning w
  where not exists (select 1 from weaning s where s.supersedes_id = w.id)
  union all
  select c.lot_id, c.on_date, 'lot count' from lot_count c
  where not exists (select 1 from lot_count s where s.supersedes_id = c.id)
  union all
  select x.lot_id, x.on_date, 'loss' from lot_loss x
  where not exists (select 1 from lot_loss s where s.supersedes_id = x.id)
  union all
  select g.lot_id, g.on_date, 'going out' from lot_outgoing g
  where not exists (select 1 from lot_outgoing s where s.supersedes_id = g.id)
  union all
  select v.unit_id, v.on_date, 'value' from observation v
  where not exists (select 1 from observation s where s.supersedes_id = v.id);
