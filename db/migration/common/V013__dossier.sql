-- Protection: what starts a clock, the routes and their periods, what has been filed.

create table filing_route (
  id                   uuid primary key,
  code                 varchar(20) not null unique,
  name                 varchar(80) not null,
  territory            varchar(40) not null,
  law                  varchar(200),
  home_years           integer not null check (home_years >= 0),
  elsewhere_years      integer not null check (elsewhere_years >= 0),
  elsewhere_years_tree integer not null,
  started_by           varchar(120) not null,
  priority_months      integer,
  term_years           integer,
  term_years_tree      integer,
  evidence             varchar(20) not null,
  check (elsewhere_years_tree >= elsewhere_years)
);

create table disclosure (
  id               uuid primary key,
  accession_id     uuid not null references accession,
  on_date          date not null,
  kind             varchar(14) not null
                   check (kind in ('SALE', 'OFFER', 'GIFT', 'TRIAL_SHIPMENT', 'EXHIBIT', 'PUBLICATION')),
  territory        varchar(40) not null,
  number           integer check (number > 0),
  agreement        varchar(80),
  to_whom          varchar(120),
  learned_on       date,
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references disclosure,
  supersede_reason varchar(300)
);

create index disclosure_accession on disclosure (accession_id);

create table filing (
  id               uuid primary key,
  accession_id     uuid not null references accession,
  route_id         uuid not null references filing_route,
  on_date          date not null,
  number           varchar(60),
  note             varchar(300),
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references filing,
  supersede_reason varchar(300)
);

create index filing_accession on filing (accession_id);
