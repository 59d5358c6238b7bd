-- Houses: what was sprayed in them and from when one may go in again, how warm and wet they were.

create table house (
  id         uuid primary key,
  version    integer not null,
  name       varchar(60) not null,
  name_key   varchar(60) not null unique,
  propagates boolean not null,
  note       varchar(300)
);

create table house_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  name varchar(60), name_key varchar(60), propagates boolean, note varchar(300),
  primary key (id, rev)
);

create table house_spray (
  id               uuid primary key,
  house_id         uuid not null references house,
  ended_at         timestamp(6) with time zone not null,
  re_entry_hours   integer not null check (re_entry_hours between 0 and 336),
  re_entry_at      timestamp(6) with time zone not null,
  product          varchar(120) not null,
  rate             varchar(80),
  area             varchar(120) not null,
  reason           varchar(120),
  licence          varchar(60),
  asked            varchar(2000),
  checked          varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references house_spray,
  supersede_reason varchar(300),
  check (re_entry_at >= ended_at),
  check ((asked is null) = (checked is null))
);

create index house_spray_house on house_spray (house_id, ended_at);
create index house_spray_closed on house_spray (re_entry_at);

create table house_reading (
  id               uuid primary key,
  house_id         uuid not null references house,
  read_at          timestamp(6) with time zone not null,
  air_celsius            numeric(4, 1) check (air_celsius between -40 and 60),
  medium_celsius         numeric(4, 1) check (medium_celsius between -40 and 60),
  humidity         integer check (humidity between 0 and 100),
  shade            integer check (shade between 0 and 100),
  mist_seconds        integer check (mist_seconds > 0),
  mist_interval_seconds     integer,
  note             varchar(300),
  asked            varchar(2000),
  checked          varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references house_reading,
  supersede_reason varchar(300),
  check ((mist_seconds is null) = (mist_interval_seconds is null)),
  check (mist_interval_seconds > mist_seconds),
  check ((asked is null) = (checked is null))
);

create index house_reading_house on house_reading (house_id, read_at);
