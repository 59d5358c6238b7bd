-- A candidate: an accession with a stage, which only a gate decision moves, and a standing.

create table candidate (
  accession_id uuid primary key references accession,
  version      integer not null,
  stage        varchar(12) not null
               check (stage in ('FIELD', 'PROPAGATION', 'CONTAINER_1', 'CONTAINER_2', 'TRIAL', 'DOSSIER', 'RELEASED')),
  standing     varchar(10) not null check (standing in ('ACTIVE', 'ON_HOLD', 'DISCARDED', 'RELEASED')),
  hold_until   date,
  check (standing <> 'ON_HOLD' or hold_until is not null)
);

create index candidate_stage on candidate (stage, standing);

-- what happened to the ortet, to its identity, and whether the breeder marked something outstanding
create table candidate_event (
  id           uuid primary key,
  accession_id uuid not null references candidate,
  on_date      date not null,
  kind         varchar(24) not null
               check (kind in ('ORTET_STANDING', 'ORTET_MOVED', 'ORTET_LOST', 'IDENTITY_PROVISIONAL',
                               'IDENTITY_CONFIRMED', 'MARKED_OUTSTANDING', 'NO_LONGER_OUTSTANDING', 'REOPENED')),
  note         varchar(300) not null,
  person_id    uuid references person,
  account      varchar(60) not null,
  recorded_at  timestamp(6) with time zone not null
);

create index candidate_event_accession on candidate_event (accession_id, on_date);
