-- Anything with a code that can be propagated or used as a parent.

create table accession (
  id               uuid primary key,
  version          integer not null,
  crop_id          uuid not null references crop,
  code             varchar(30) not null unique,
  code_key         varchar(30) not null unique,
  kind             varchar(12) not null
                   check (kind in ('CANDIDATE', 'SEED_PARENT', 'CULTIVAR', 'WILD_PLANT', 'COMPARISON')),
  talk_name        varchar(60),
  description      varchar(300),
  seed_parent_id   uuid references accession,
  pollen_parent_id uuid references accession,
  pollination      varchar(8) check (pollination in ('OPEN', 'CROSS', 'SELF', 'UNKNOWN')),
  origin           varchar(300),
  used_as_parent   boolean not null,
  check (seed_parent_id <> id),
  check (pollen_parent_id <> id)
);

create index accession_seed_parent on accession (seed_parent_id);
create index accession_pollen_parent on accession (pollen_parent_id);

create table accession_alias (
  alias_key    varchar(30) primary key,
  alias        varchar(30) not null,
  accession_id uuid not null references accession
);

-- the checks of a crop and what each is there for
create table crop_check (
  id           uuid primary key,
  crop_id      uuid not null references crop,
  accession_id uuid not null references accession,
  role         varchar(12) not null check (role in ('BENCH', 'MARKET', 'SUSCEPTIBLE', 'RESISTANT', 'HARDY')),
  unique (crop_id, role, accession_id)
);

create table accession_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  crop_id uuid, code varchar(30), code_key varchar(30), kind varchar(12), talk_name varchar(60),
  description varchar(300), seed_parent_id uuid, pollen_parent_id uuid, pollination varchar(8),
  origin varchar(300), used_as_parent boolean,
  primary key (id, rev)
);
