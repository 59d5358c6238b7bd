-- Policies as data, what people attest, and the decisions with the evidence as it then stood.

create table gate_policy (
  id            uuid primary key,
  crop_id       uuid not null references crop,
  number        integer not null check (number > 0),
  in_force_from date not null,
  unique (crop_id, number)
);

create table criterion (
  id                            uuid primary key,
  policy_id                     uuid not null references gate_policy,
  gate                          varchar(12) not null
                                check (gate in ('FIELD', 'PROPAGATION', 'CONTAINER_1', 'CONTAINER_2', 'TRIAL', 'DOSSIER')),
  place                         integer not null,
  code                          varchar(40) not null,
  label                         varchar(120) not null,
  kind                          varchar(10) not null check (kind in ('FACT', 'CHANCE', 'ALLOWANCE', 'ATTESTED')),
  need                          varchar(6) not null check (need in ('MUST', 'PREFER')),
  metric                        varchar(60),
  trait_id                      uuid references trait,
  check_role                    varchar(12) check (check_role in ('BENCH', 'MARKET', 'SUSCEPTIBLE', 'RESISTANT', 'HARDY')),
  direction                     varchar(8) check (direction in ('AT_LEAST', 'AT_MOST')),
  advance_line                  numeric(12, 4),
  advance_chance                numeric(5, 4) check (advance_chance between 0 and 1),
  discard_line                  numeric(12, 4),
  discard_chance                numeric(5, 4) check (discard_chance between 0 and 1),
  least_units                   integer,
  least_replicates              integer,
  least_sites                   integer,
  least_seasons                 integer,
  discard_occasions             integer,
  discard_occasions_outstanding integer,
  allowed_percent               numeric(7, 4) check (allowed_percent between 0 and 100),
  why                           varchar(300) not null,
  unique (policy_id, gate, code)
);

create table attestation (
  id               uuid primary key,
  accession_id     uuid not null references candidate,
  criterion        varchar(40) not null,
  on_date          date not null,
  holds            boolean not null,
  expires_on       date,
  note             varchar(300) not null,
  person_id        uuid references person,
  account          varchar(60) not null,
  recorded_at      timestamp(6) with time zone not null,
  supersedes_id    uuid unique references attestation,
  supersede_reason varchar(300)
);

create index attestation_accession on attestation (accession_id);

create table decision (
  id              uuid primary key,
  accession_id    uuid not null references candidate,
  gate            varchar(12) not null,
  policy_id       uuid not null references gate_policy,
  on_date         date not null,
  choice          varchar(8) not null check (choice in ('ADVANCE', 'HOLD', 'DISCARD')),
  line            varchar(8) not null check (line in ('ADVANCE', 'HOLD', 'DISCARD')),
  reason          varchar(1000),
  hold_until      date,
  evidence        jsonb not null,
  evidence_schema integer not null,
  person_id       uuid references person,
  account         varchar(60) not null,
  recorded_at     timestamp(6) with time zone not null,
  check (choice = line or reason is not null),
  check (choice <> 'HOLD' or hold_until is not null)
);

create index decision_accession on decision (accession_id, on_date);

-- the evidence as it was shown, line by line
create table decision_line (
  decision_id uuid not null references decision,
  place       integer not null,
  criterion   varchar(40) not null,
  label       varchar(120) not null,
  need        varchar(6) not null,
  verdict     varchar(12) not null check (verdict in ('MEETS', 'FALLS_SHORT', 'NOT_SETTLED', 'NO_RECORD')),
  found       varchar(300) not null,
  asked       varchar(300) not null,
  because     varchar(600) not null,
  primary key (decision_id, place)
);
