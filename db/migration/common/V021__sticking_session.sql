-- The sticking session: the house around a run, the plant behind a batch, and what was asked about.

alter table sticking_run add column mist_on_s integer check (mist_on_s >= 0);
alter table sticking_run add column mist_every_min numeric(5, 1) check (mist_every_min > 0);
alter table sticking_run add column air_c numeric(4, 1) check (air_c between 0 and 50);
alter table sticking_run add column shade_percent integer check (shade_percent between 0 and 100);
alter table sticking_run add column humidity_percent integer check (humidity_percent between 0 and 100);
alter table sticking_run add column solution_made_on date;
alter table sticking_run add column asked varchar(2000);
alter table sticking_run add column checked varchar(300);

alter table batch add column solution_made_on date;
alter table batch add column source_unit_id uuid references unit;
alter table batch add column asked varchar(2000);
alter table batch add column checked varchar(300);

create index batch_source_unit on batch (source_unit_id);

-- a batch that was entered by mistake and taken back before anything was recorded on it
create table undone_batch (
  id           uuid primary key,
  run_id       uuid not null references sticking_run,
  accession_id uuid not null references accession,
  code         varchar(40) not null,
  trays        integer not null,
  stuck        integer not null,
  stuck_on     date not null,
  person_id    uuid references person,
  account      varchar(60) not null,
  recorded_at  timestamp(6) with time zone not null
);

create index undone_batch_run on undone_batch (run_id);
