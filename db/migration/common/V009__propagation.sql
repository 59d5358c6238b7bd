-- Sticking runs, their batches and trays, and everything counted on a tray.

create table sticking_run (
  id                 uuid primary key,
  code               varchar(30) not null unique,
  crop_id            uuid not null references crop,
  from_date          date not null,
  to_date            date not null,
  check_accession_id uuid not null references accession,
  crew               varchar(120),
  bench              varchar(60),
  mist               varchar(120),
  bottom_heat_c      numeric(4, 1) check (bottom_heat_c between 0 and 50),
  cutting            varchar(60),
  length_mm          integer check (length_mm between 20 and 300),
  wounding           varchar(40),
  hormone            varchar(40),
  form               varchar(40),
  ppm                integer check (ppm between 0 and 30000),
  dip_s              integer check (dip_s between 0 and 86400),
  medium             varchar(80),
  note               varchar(300),
  account            varchar(60) not null,
  recorded_at        timestamp(6) with time zone not null,
  check (to_date >= from_date)
);

create table batch (
  id       uuid primary key,
  run_id   uuid not null references sticking_run,
  code     varchar(40) not null unique,
  source   varchar(16) not null check (source in ('ORTET', 'STOCK_PLANT', 'CONTAINER_PLANT')),
  wounding varchar(40),
  hormone  varchar(40),
  form     varchar(40),
  ppm      integer check (ppm between 0 and 30000),
  note     varchar(300)
);

create index batch_run on batch (run_id);

create table tray (
  unit_id     uuid primary key references unit,
  batch_id    uuid not null references batch,
  cells       integer not null check (cells between 1 and 600),
  stuck_on    date not null,
  stuck       integer not null,
  block       varchar(10),
  place       varchar(10),
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null,
  check (stuck between 1 and cells)
);

create index tray_batch on tray (batch_id);

-- whether a tray counts; the latest ruling holds, and none means that it counts
create table tray_ruling (
  id          uuid primary key,
  tray_id     uuid not null references tray,
  on_date     date not null,
  counts      boolean not null,
  reason      varchar(300) not null,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null
);

create index tray_ruling_tray on tray_ruling (tray_id);

-- an interim look: a sample of the tray on a day
create table tray_look (
  id               uuid primary key,
  tray_id          uuid not null references tray,
  on_date          date not null,
  lifted           integer not null,
  rooted           integer not null,
  alive            integer not null,
  dead_removed     integer not null,
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references tray_look,
  supersede_reason varchar(300),
  check (rooted between 0 and lifted),
  check (lifted between 0 and alive),
  check (dead_removed >= 0)
);

create index tray_look_tray on tray_look (tray_id, on_date);

-- cuttings that left the tray before the final count
create table taken_out (
  id               uuid primary key,
  tray_id          uuid not null references tray,
  on_date          date not null,
  number           integer not null check (number > 0),
  rooted           boolean not null,
  fate             varchar(10) not null check (fate in ('POTTED', 'SAMPLED', 'ROTTED', 'GIVEN_AWAY', 'MOVED')),
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references taken_out,
  supersede_reason varchar(300)
);

create index taken_out_tray on taken_out (tray_id);

-- the final count closes on what was stuck: the four sum to it (the entity checks, it knows the tray)
create table final_count (
  id                  uuid primary key,
  tray_id             uuid not null references tray,
  on_date             date not null,
  rooted              integer not null check (rooted >= 0),
  alive_without_roots integer not null check (alive_without_roots >= 0),
  dead                integer not null check (dead >= 0),
  taken_out           integer not null check (taken_out >= 0),
  taken_out_rooted    integer not null,
  root_score          integer check (root_score between 0 and 5),
  note                varchar(300),
  person_id           uuid references person,
  account             varchar(60) not null,
  recorded_at         timestamp(6) with time zone not null,
  supersede_reason    varchar(300),
  check (taken_out_rooted between 0 and taken_out)
);

create index final_count_tray on final_count (tray_id);

-- two phones may finish one tray differently: both stay, and the count a person settles on
-- supersedes them all
create table superseded_count (
  count_id uuid primary key references final_count,
  by_id    uuid not null references final_count,
  check (by_id <> count_id)
);

-- after the last mist: how the rooted ones live without it
create table weaning (
  id               uuid primary key,
  tray_id          uuid not null references tray,
  last_mist        date not null,
  on_date          date not null,
  alive            integer not null check (alive >= 0),
  wilted           integer check (wilted >= 0),
  shock            integer check (shock >= 0),
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references weaning,
  supersede_reason varchar(300),
  check (on_date >= last_mist)
);

create index weaning_tray on weaning (tray_id);
