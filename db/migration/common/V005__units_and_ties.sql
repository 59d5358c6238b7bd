-- One row for every physical thing that records hang on, and what is said of whose plant it is.

create table unit (
  id        uuid primary key,
  kind      varchar(8) not null check (kind in ('POSITION', 'TRAY', 'LOT', 'PLANT', 'PLOT', 'STOCK')),
  label     varchar(60) not null unique,
  label_key varchar(60) not null unique,
  part_of   uuid references unit,
  site_id   uuid references site
);

create index unit_part_of on unit (part_of);

-- What was said: append-only. The later saying overrides the earlier for the days it covers.
create sequence saying_seq increment by 1;

create table tie (
  id           bigint primary key,
  unit_id      uuid not null references unit,
  accession_id uuid not null references accession,
  from_date    date not null,
  until_date   date,
  reason       varchar(300) not null,
  evidence     varchar(300),
  said_on      date not null,
  person_id    uuid references person,
  account      varchar(60) not null,
  recorded_at  timestamp(6) with time zone not null,
  check (until_date is null or until_date > from_date)
);

create index tie_unit on tie (unit_id);
create index tie_accession on tie (accession_id);

-- What follows from the sayings: for each unit, periods that neither overlap nor repeat.
-- Derived, rebuilt for a unit whenever a tie is added; queries read through it.
create table holding (
  unit_id      uuid not null references unit,
  from_date    date not null,
  until_date   date not null,
  accession_id uuid not null references accession,
  tie_id       bigint not null references tie,
  primary key (unit_id, from_date),
  check (until_date > from_date)
);

create index holding_accession on holding (accession_id);

-- Two records that contradict each other: kept, and asked about.
create table doubt (
  id          uuid primary key,
  unit_id     uuid not null references unit,
  on_date     date not null,
  question    varchar(300) not null,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null,
  answer      varchar(300),
  answered_by varchar(60),
  answered_at timestamp(6) with time zone
);

create index doubt_unit on doubt (unit_id);
