-- Trials at several sites, in randomised complete blocks, and the events that take records out.

create table trial (
  id              uuid primary key,
  code            varchar(20) not null unique,
  crop_id         uuid not null references crop,
  name            varchar(80) not null,
  objective       varchar(300),
  seed            bigint,
  blocks          integer not null check (blocks between 1 and 50),
  plants_per_plot integer not null check (plants_per_plot between 1 and 200),
  spacing_mm      integer check (spacing_mm > 0),
  account         varchar(60) not null,
  recorded_at     timestamp(6) with time zone not null
);

create table trial_entry (
  id           uuid primary key,
  trial_id     uuid not null references trial,
  accession_id uuid not null references accession,
  role         varchar(12) not null check (role in ('CANDIDATE', 'MARKET', 'SUSCEPTIBLE', 'RESISTANT', 'HARDY')),
  unique (trial_id, accession_id)
);

create table trial_site (
  id         uuid primary key,
  trial_id   uuid not null references trial,
  site_id    uuid not null references site,
  planted_on date not null,
  unique (trial_id, site_id)
);

create table plot (
  unit_id       uuid primary key references unit,
  trial_site_id uuid not null references trial_site,
  entry_id      uuid not null references trial_entry,
  block         integer not null check (block > 0),
  row_number    integer,
  column_number integer,
  plants        integer not null check (plants > 0)
);

create index plot_trial_site on plot (trial_site_id);
create index plot_entry on plot (entry_id);

create table site_event (
  id          uuid primary key,
  code        varchar(30) not null unique,
  site_id     uuid not null references site,
  trial_id    uuid references trial,
  on_date     date not null,
  kind        varchar(10) not null check (kind in ('HAIL', 'FROST', 'FLOOD', 'HERBICIDE', 'ANIMALS', 'OTHER')),
  note        varchar(300) not null,
  void_from   date,
  void_until  date,
  person_id   uuid references person,
  account     varchar(60) not null,
  recorded_at timestamp(6) with time zone not null,
  check (void_until >= void_from)
);

-- the traits an event takes out between its two dates
create table site_event_trait (
  event_id uuid not null references site_event,
  trait_id uuid not null references trait,
  primary key (event_id, trait_id)
);

-- the plots it takes out; none named means all of the site
create table site_event_plot (
  event_id uuid not null references site_event,
  plot_id  uuid not null references plot,
  primary key (event_id, plot_id)
);
