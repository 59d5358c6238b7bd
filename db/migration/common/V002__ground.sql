-- Ground data: places, crops, what is observed on them, the pots they stand in.

create table site (
  id             uuid primary key,
  version        integer not null,
  code           varchar(20) not null unique,
  name           varchar(80) not null,
  place          varchar(120),
  hardiness_zone varchar(3),
  latitude       numeric(9, 6) check (latitude between -90 and 90),
  longitude      numeric(9, 6) check (longitude between -180 and 180),
  cooperator     varchar(80)
);

create table crop (
  id                  uuid primary key,
  version             integer not null,
  code                varchar(20) not null unique,
  botanical_name      varchar(120) not null,
  common_name         varchar(80) not null,
  woody               boolean not null,
  rooting_from_days   integer not null check (rooting_from_days > 0),
  rooting_to_days     integer not null,
  look_days           varchar(120) not null,
  check_floor_percent integer not null check (check_floor_percent between 0 and 100),
  denomination_class  varchar(80),
  check (rooting_to_days >= rooting_from_days)
);

create table trait (
  id           uuid primary key,
  version      integer not null,
  crop_id      uuid not null references crop,
  code         varchar(20) not null,
  name         varchar(80) not null,
  kind         varchar(12) not null check (kind in ('MEASUREMENT', 'SCORE', 'COUNT', 'DATE', 'COLOUR', 'TEXT')),
  unit         varchar(20),
  lowest       numeric(12, 4),
  highest      numeric(12, 4),
  decimals     integer not null check (decimals between 0 and 6),
  better       varchar(8) not null check (better in ('HIGHER', 'LOWER', 'TARGET', 'NEITHER')),
  window_from  varchar(5),
  window_until varchar(5),
  youngest_age varchar(10),
  taken_on     varchar(60) not null,
  part         varchar(60),
  described    boolean not null,
  unique (crop_id, code),
  check (highest >= lowest)
);

create table trait_step (
  id       uuid primary key,
  trait_id uuid not null references trait,
  step     integer not null,
  meaning  varchar(200) not null,
  scale    varchar(40) not null,
  unique (trait_id, scale, step)
);

create table container_class (
  id             uuid primary key,
  code           varchar(10) not null unique,
  lowest_litres  numeric(8, 3),
  highest_litres numeric(8, 3),
  remark         varchar(200)
);

-- history of what people edit by hand
create table site_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  code varchar(20), name varchar(80), place varchar(120), hardiness_zone varchar(3),
  latitude numeric(9, 6), longitude numeric(9, 6), cooperator varchar(80),
  primary key (id, rev)
);

create table crop_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  code varchar(20), botanical_name varchar(120), common_name varchar(80), woody boolean,
  rooting_from_days integer, rooting_to_days integer, look_days varchar(120),
  check_floor_percent integer, denomination_class varchar(80),
  primary key (id, rev)
);

create table trait_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  crop_id uuid, code varchar(20), name varchar(80), kind varchar(12), unit varchar(20),
  lowest numeric(12, 4), highest numeric(12, 4), decimals integer, better varchar(8),
  window_from varchar(5), window_until varchar(5), youngest_age varchar(10), taken_on varchar(60),
  part varchar(60), described boolean,
  primary key (id, rev)
);
