-- A note on anything, and its photographs, cut to a size that a phone and a backup can carry.

create table note (
  id               uuid primary key,
  unit_id          uuid references unit,
  accession_id     uuid references accession,
  run_id           uuid references sticking_run,
  site_id          uuid references site,
  house_id         uuid references house,
  on_date          date not null,
  words            varchar(1000) not null,
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references note,
  supersede_reason varchar(300),
  check ((case when unit_id is null then 0 else 1 end)
       + (case when accession_id is null then 0 else 1 end)
       + (case when run_id is null then 0 else 1 end)
       + (case when site_id is null then 0 else 1 end)
       + (case when house_id is null then 0 else 1 end) = 1)
);

create index note_unit on note (unit_id);
create index note_accession on note (accession_id);
create index note_run on note (run_id);
create index note_site on note (site_id);
create index note_house on note (house_id);

create table photograph (
  id       uuid primary key,
  note_id  uuid not null references note,
  nth      integer not null check (nth > 0),
  sha256   varchar(64) not null,
  width    integer not null check (width > 0),
  height   integer not null check (height > 0),
  taken_on date,
  picture  bytea not null,
  small    bytea not null,
  unique (note_id, nth)
);
