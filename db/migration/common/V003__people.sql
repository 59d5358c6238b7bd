-- Who does the work (person) and who may sign in where (account): a phone in the mist
-- house is signed in once, and who counted is picked by initials on each form.

create table person (
  id       uuid primary key,
  version  integer not null,
  initials varchar(4) not null unique,
  name     varchar(80) not null,
  duty     varchar(80),
  active   boolean not null
);

create table person_aud (
  id uuid not null, rev bigint not null references revision, revtype smallint,
  initials varchar(4), name varchar(80), duty varchar(80), active boolean,
  primary key (id, rev)
);

create table account (
  id        uuid primary key,
  version   integer not null,
  username  varchar(60) not null unique,
  password  varchar(200) not null,
  role      varchar(14) not null
            check (role in ('ADMINISTRATOR', 'BREEDER', 'BENCH', 'DOSSIER', 'COOPERATOR', 'READER')),
  enabled   boolean not null,
  person_id uuid references person
);

-- the sites a cooperator may see; other roles need none
create table account_site (
  account_id uuid not null references account,
  site_id    uuid not null references site,
  primary key (account_id, site_id)
);

-- the one-time link that makes the first administrator; only its digest is kept
create table first_link (
  digest     varchar(64) primary key,
  expires_at timestamp(6) with time zone not null,
  used_at    timestamp(6) with time zone
);
