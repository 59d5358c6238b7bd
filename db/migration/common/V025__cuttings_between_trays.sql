-- Cuttings that went from one tray into another.

create table tray_passage (
  id           uuid primary key,
  from_tray_id uuid not null references tray,
  to_tray_id   uuid not null references tray,
  on_date      date not null,
  number       integer not null check (number > 0),
  begins       boolean not null,
  note         varchar(300),
  person_id    uuid references person,
  account      varchar(60) not null,
  recorded_at  timestamp(6) with time zone not null,
  check (from_tray_id <> to_tray_id)
);

create index tray_passage_from on tray_passage (from_tray_id);
create index tray_passage_to on tray_passage (to_tray_id);

-- a passage that was taken back counts for nothing and stays readable
create table passage_taken_back (
  passage_id  uuid primary key references tray_passage,
  reason      varchar(300) not null,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);

-- By how many a tray grew or shrank on a day. A tray holds what was stuck in it and these. A tray
-- that began with cuttings of another has them as its stuck already.
create view tray_change as
  select p.to_tray_id as tray_id, p.on_date, p.number as cuttings from tray_passage p
  where not p.begins
    and not exists (select 1 from passage_taken_back b where b.passage_id = p.id)
  union all
  select p.from_tray_id, p.on_date, -p.number from tray_passage p
  where not exists (select 1 from passage_taken_back b where b.passage_id = p.id);
