-- Planted blocks and the tags hung in them. A position becomes a row only when somebody marks it.

create table population (
  id                uuid primary key,
  version           integer not null,
  code              varchar(20) not null unique,
  crop_id           uuid not null references crop,
  site_id           uuid not null references site,
  name              varchar(80) not null,
  planted_on        date not null,
  row_count         integer not null check (row_count between 1 and 2000),
  positions_per_row integer not null check (positions_per_row between 1 and 5000),
  in_row_mm         integer not null check (in_row_mm between 150 and 3000),
  between_rows_mm   integer not null check (between_rows_mm between 500 and 6000),
  note              varchar(300)
);

create table field_tag (
  id              uuid primary key,
  population_id   uuid not null references population,
  row_number      integer not null check (row_number > 0),
  position_number integer not null check (position_number > 0),
  unit_id         uuid not null references unit,
  accession_id    uuid not null unique references accession,
  tagged_on       date not null,
  seen            varchar(300) not null,
  person_id       uuid references person,
  account         varchar(60) not null,
  recorded_at     timestamp(6) with time zone not null,
  -- POPULATION/ROW/POSITION while the tag hangs, empty once it is taken down
  live_position   varchar(60) unique
);
