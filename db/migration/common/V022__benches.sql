-- Benches, which of them the blocks of a run stand on, and where each tray has its place.

create table bench (
  id      uuid primary key,
  version integer not null,
  code    varchar(20) not null unique,
  name    varchar(80) not null,
  house   varchar(80),
  places  integer not null check (places between 1 and 1000),
  note    varchar(300)
);

create table bench_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  code varchar(20), name varchar(80), house varchar(80), places integer, note varchar(300),
  primary key (id, rev)
);

create table bench_block (
  id       uuid primary key,
  run_id   uuid not null references sticking_run,
  block    varchar(10) not null,
  bench_id uuid not null references bench,
  unique (run_id, block)
);

-- drawn by lot; the seed draws the same plan again
create table bench_plan (
  run_id      uuid primary key references sticking_run,
  seed        bigint not null,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);

-- nth: an accession stuck in two ways has two places in each block
create table planned_place (
  id           uuid primary key,
  run_id       uuid not null references sticking_run,
  block        integer not null check (block > 0),
  place        integer not null check (place > 0),
  accession_id uuid not null references accession,
  nth          integer not null check (nth > 0),
  unique (run_id, block, place),
  unique (run_id, block, accession_id, nth)
);

-- where a tray stands from a day on, once it stands elsewhere than where it was stuck
create table tray_place (
  id          uuid primary key,
  tray_id     uuid not null references tray,
  bench_id    uuid not null references bench,
  place       integer not null check (place > 0),
  from_date   date not null,
  reason      varchar(300) not null,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);

create index tray_place_tray on tray_place (tray_id, from_date);
